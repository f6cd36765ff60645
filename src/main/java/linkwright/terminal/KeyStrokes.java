package linkwright.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.MouseAction;
import com.googlecode.lanterna.input.MouseActionType;
import java.util.Locale;
import java.util.Optional;
import linkwright.coach.keys.Key;

/** Lanterna's key strokes as our inputs, for displays whose keys Lanterna reads. */
final class KeyStrokes {
  private KeyStrokes() {}

  /** The input that a key stroke means; empty for one that Linkwright has no use for. */
  static Optional<Input> read(KeyStroke stroke) {
    if (stroke instanceof MouseAction action) {
      boolean pressed =
          action.getActionType() == MouseActionType.CLICK_DOWN && action.getButton() == 1;
      return pressed
          ? Optional.of(
              new Input.Clicked(action.getPosition().getColumn(), action.getPosition().getRow()))
          : Optional.empty();
    }
    if (stroke.getKeyType() == KeyType.EOF) {
      return Optional.of(new Input.Ended());
    }
    if (stroke.getKeyType() == KeyType.Character) {
      return character(stroke);
    }
    boolean jumps = stroke.isCtrlDown() || stroke.isAltDown();
    if (jumps && stroke.getKeyType() == KeyType.ArrowLeft) {
      return Optional.of(new Input.Pressed(Key.of(Key.Kind.WORD_LEFT)));
    }
    if (jumps && stroke.getKeyType() == KeyType.ArrowRight) {
      return Optional.of(new Input.Pressed(Key.of(Key.Kind.WORD_RIGHT)));
    }
    return kind(stroke.getKeyType()).map(kind -> new Input.Pressed(Key.of(kind)));
  }

  private static Optional<Input> character(KeyStroke stroke) {
    char c = stroke.getCharacter();
    if (stroke.isAltDown() || Character.isISOControl(c)) {
      return Optional.empty();
    }
    String text = String.valueOf(c);
    if (!stroke.isCtrlDown()) {
      return Optional.of(new Input.Pressed(Key.of(text)));
    }
    String letter = text.toLowerCase(Locale.ROOT);
    return Optional.of(
        letter.equals("c") ? new Input.Ended() : new Input.Pressed(Key.ctrl(letter)));
  }

  private static Optional<Key.Kind> kind(KeyType type) {
    return switch (type) {
      case Enter -> Optional.of(Key.Kind.ENTER);
      case Escape -> Optional.of(Key.Kind.ESCAPE);
      case Backspace -> Optional.of(Key.Kind.BACKSPACE);
      case Delete -> Optional.of(Key.Kind.DELETE);
      case Tab -> Optional.of(Key.Kind.TAB);
      case ReverseTab -> Optional.of(Key.Kind.BACK_TAB);
      case ArrowUp -> Optional.of(Key.Kind.UP);
      case ArrowDown -> Optional.of(Key.Kind.DOWN);
      case ArrowLeft -> Optional.of(Key.Kind.LEFT);
      case ArrowRight -> Optional.of(Key.Kind.RIGHT);
      case PageUp -> Optional.of(Key.Kind.PAGE_UP);
      case PageDown -> Optional.of(Key.Kind.PAGE_DOWN);
      case Home -> Optional.of(Key.Kind.HOME);
      case End -> Optional.of(Key.Kind.END);
      default -> Optional.empty();
    };
  }
}
