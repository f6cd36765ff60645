package linkwright.walks;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import linkwright.coach.keys.Key;
import linkwright.terminal.Display;
import linkwright.terminal.DisplayWishes;
import linkwright.terminal.Displays;
import linkwright.terminal.Environment;
import linkwright.terminal.Input;
import linkwright.view.BigFigures;
import linkwright.view.Canvas;
import linkwright.view.Tone;

/** A small program that shows each input it gets: the display, and nothing else, is tried on it. */
public final class EchoProgram {
  private static final int KEPT = 12;

  private EchoProgram() {}

  public static void main(String[] arguments) {
    DisplayWishes wishes =
        arguments.length > 0 && arguments[0].equals("window")
            ? new DisplayWishes(
                true,
                linkwright.terminal.Look.named(System.getenv().getOrDefault("LOOK", "dark")),
                Integer.parseInt(arguments[1]),
                true)
            : DisplayWishes.NONE;
    Optional<Display> chosen = Displays.choose(Environment.here(), wishes);
    if (chosen.isEmpty()) {
      System.out.println("plain");
      return;
    }
    try (Display display = chosen.get()) {
      run(display);
    }
    System.out.println("bye");
  }

  private static void run(Display display) {
    Deque<String> got = new ArrayDeque<>();
    display.told().ifPresent(got::add);
    int count = 0;
    while (true) {
      show(display, got, count);
      Optional<Input> input = display.poll(10_000);
      if (input.isPresent()) {
        count++;
        got.addLast(told(input.get()));
        if (got.size() > KEPT) {
          got.removeFirst();
        }
        if (input.get() instanceof Input.Ended) {
          return;
        }
        if (input.get() instanceof Input.Pressed pressed && !act(display, pressed.key())) {
          return;
        }
      }
    }
  }

  private static boolean act(Display display, Key key) {
    if (key.is("b")) {
      display.bell();
    } else if (key.is("x")) {
      throw new IllegalStateException("told to fail");
    } else if (key.is("X")) {
      System.exit(7);
    }
    return !key.is("e");
  }

  private static String told(Input input) {
    if (input instanceof Input.Pressed pressed) {
      Key key = pressed.key();
      return key.is(Key.Kind.CHARACTER)
          ? (key.ctrl() ? "ctrl-" : "") + "<" + key.text() + ">"
          : "<" + key.kind().name().toLowerCase(Locale.ROOT) + ">";
    }
    if (input instanceof Input.Pasted pasted) {
      return "pasted(" + pasted.text() + ")";
    }
    if (input instanceof Input.PasteDropped) {
      return "dropped";
    }
    if (input instanceof Input.Clicked clicked) {
      return "clicked(" + clicked.x() + "," + clicked.y() + ")";
    }
    if (input instanceof Input.Resized resized) {
      return "resized(" + resized.columns() + "," + resized.rows() + ")";
    }
    return "ended";
  }

  private static void show(Display display, Deque<String> got, int count) {
    Display.GridSize size = display.size();
    Canvas canvas = new Canvas(size.columns(), size.rows(), display.glyphs());
    canvas.text(0, 0, "echo " + size.columns() + " x " + size.rows(), Tone.STRONG);
    canvas.text(0, 1, "0.9 × 14 mm ⣿⣀ 銀 – copper", Tone.ACCENT);
    canvas.text(0, 2, "faint", Tone.FAINT);
    canvas.text(8, 2, "warning", Tone.WARNING);
    canvas.text(18, 2, "chosen", Tone.REVERSED);
    canvas.text(26, 2, "field  ", Tone.FIELD);
    canvas.text(36, 2, "alarm", Tone.ALARM);
    BigFigures.draw(
        canvas.area(0, 4, canvas.width(), canvas.height() - 8), "" + count, Tone.ACCENT);
    canvas.wrapped(0, size.rows() - 3, size.columns(), 2, String.join(" ", got), Tone.PLAIN);
    canvas.text(0, size.rows() - 1, "end of the " + count, Tone.FAINT);
    display.show(canvas.toGrid());
  }
}
