package linkwright.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import linkwright.coach.keys.Key;

/**
 * Bytes from a terminal, one by one, to inputs. A sequence that it doesn't know is swallowed whole,
 * however it arrives cut up, so that no tail of it passes for a key: on a screen where one key
 * counts a piece, that would be a piece nobody made.
 *
 * <p>After an ESC nothing tells whether more will come but time: the caller waits {@link
 * #patienceMillis} and then calls {@link #expire}.
 */
final class KeyDecoder {
  private static final int ESC = 0x1B;

  /** Terminals send the bytes of one sequence together; 30 ms also bridges a network's hiccup. */
  private static final int PATIENCE_MILLIS = 30;

  private static final int MOST_ANSWERS = 16;
  private static final int LONGEST_ANSWER = 256;

  private enum State {
    GROUND,
    /** In a character of several bytes. */
    CHARACTER,
    /** After ESC. */
    ESCAPE,
    /** After ESC, in a key held with Alt whose character has several bytes. */
    ALT_CHARACTER,
    /** After ESC [. */
    CONTROL,
    /** After ESC O: a keypad's or a function key's letter is to come. */
    SHIFT,
    /** After ESC [ [, the Linux console's way for function keys. */
    CONSOLE,
    /** After ESC [ M, the oldest way to tell a click: three bytes. */
    OLD_MOUSE,
    /** In a string that the terminal answers with: up to BEL or ESC \. */
    STRING,
    STRING_ESCAPE
  }

  private final Charset charset;
  private final Queue<Input> inputs = new ArrayDeque<>();
  private final StringBuilder parameters = new StringBuilder();
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final Pasting pasting;
  private final StringBuilder string = new StringBuilder();
  private final Queue<String> answers = new ArrayDeque<>();
  private State state = State.GROUND;
  private int escapes;
  private int missing;

  KeyDecoder(Charset charset) {
    this.charset = charset;
    this.pasting = new Pasting(charset, inputs::add);
  }

  /** The next input that is complete. */
  Optional<Input> next() {
    return Optional.ofNullable(inputs.poll());
  }

  /** The next answer of the terminal to what it was asked; no key. */
  Optional<String> answer() {
    return Optional.ofNullable(answers.poll());
  }

  /** Whether something has begun that more bytes, or their absence, will finish. */
  boolean isPending() {
    return state != State.GROUND || pasting.isPending();
  }

  /** How long to wait for the next byte while something is pending. */
  int patienceMillis() {
    return pasting.isOn() ? pasting.patienceMillis() : PATIENCE_MILLIS;
  }

  /** No more bytes came: ESC was the Escape key, and any other beginning is dropped. */
  void expire() {
    for (byte key : pasting.expire()) {
      take(key & 0xFF);
    }
    if (state == State.ESCAPE) {
      for (int i = 0; i < escapes; i++) {
        press(Key.Kind.ESCAPE);
      }
    }
    ground();
    pasting.goOnWaiting();
  }

  /** Takes the next byte, 0 to 255. */
  void take(int b) {
    if (pasting.isOn() && pasting.take(b)) {
      return;
    }
    switch (state) {
      case GROUND -> ground(b);
      case CHARACTER, ALT_CHARACTER -> character(b);
      case ESCAPE -> escape(b);
      case CONTROL -> control(b);
      case SHIFT -> shift(b);
      case CONSOLE -> ground();
      case OLD_MOUSE -> oldMouse(b);
      case STRING, STRING_ESCAPE -> string(b);
    }
  }

  private void ground() {
    state = State.GROUND;
    escapes = 0;
    missing = 0;
    parameters.setLength(0);
    bytes.reset();
  }

  private void ground(int b) {
    switch (b) {
      case ESC -> {
        state = State.ESCAPE;
        escapes = 1;
      }
      case '\r', '\n' -> press(Key.Kind.ENTER);
      case '\t' -> press(Key.Kind.TAB);
      case 0x08, 0x7F -> press(Key.Kind.BACKSPACE);
      case 0x03 -> inputs.add(new Input.Ended());
      default -> {
        if (b >= 0x80) {
          begin(b, State.CHARACTER);
        } else if (b >= ' ') {
          inputs.add(new Input.Pressed(Key.of(String.valueOf((char) b))));
        } else if (b >= 1 && b <= 26) {
          inputs.add(new Input.Pressed(Key.ctrl(String.valueOf((char) ('a' + b - 1)))));
        }
      }
    }
  }

  /** Begins a character of several bytes; how many is told by the first (RFC 3629, section 3). */
  private void begin(int b, State next) {
    bytes.write(b);
    missing = 0;
    if (charset.equals(StandardCharsets.UTF_8)) {
      missing =
          b >= 0xF0 && b < 0xF5 ? 3 : b >= 0xE0 && b < 0xF0 ? 2 : b >= 0xC2 && b < 0xE0 ? 1 : 0;
      if (missing == 0) {
        ground();
        return;
      }
    }
    state = next;
    if (missing == 0) {
      finishCharacter();
    }
  }

  private void character(int b) {
    if (b < 0x80 || b >= 0xC0) {
      // Not a continuation: what began is broken, the byte is one of its own.
      ground();
      take(b);
      return;
    }
    bytes.write(b);
    missing--;
    if (missing == 0) {
      finishCharacter();
    }
  }

  private void finishCharacter() {
    String text = bytes.toString(charset);
    if (state == State.CHARACTER
        && !text.isEmpty()
        && text.indexOf('\uFFFD') < 0
        && !Character.isISOControl(text.codePointAt(0))) {
      inputs.add(new Input.Pressed(Key.of(text)));
    }
    ground();
  }

  private void escape(int b) {
    switch (b) {
      case ESC -> {
        if (escapes == 2) {
          press(Key.Kind.ESCAPE);
        } else {
          escapes++;
        }
      }
      case '[' -> state = State.CONTROL;
      case 'O' -> state = State.SHIFT;
      case ']', 'P', 'X', '^', '_' -> {
        string.setLength(0);
        state = State.STRING;
      }
      // Any other key after ESC in one go was held with Alt: no key of ours.
      default -> {
        if (b >= 0x80) {
          begin(b, State.ALT_CHARACTER);
        } else {
          ground();
        }
      }
    }
  }

  /** Parameters, then one final byte (ECMA-48, 5.4). */
  private void control(int b) {
    if (b >= 0x20 && b <= 0x3F) {
      if (parameters.length() < 64) {
        parameters.append((char) b);
      }
    } else if (b == '[' && parameters.length() == 0) {
      state = State.CONSOLE;
    } else if (b == 'M' && parameters.length() == 0) {
      state = State.OLD_MOUSE;
    } else if (b >= 0x40 && b <= 0x7E) {
      String given = parameters.toString();
      ground();
      if (b == '~' && given.equals("200")) {
        pasting.begin();
      } else {
        if (given.startsWith("?") && answers.size() < MOST_ANSWERS) {
          answers.add(given + (char) b);
        }
        ControlKeys.read(given, (char) b).ifPresent(inputs::add);
      }
    } else {
      ground();
      take(b);
    }
  }

  private void shift(int b) {
    if ((b >= '0' && b <= '9') || b == ';') {
      // Some terminals put a modifier before the letter.
      return;
    }
    ground();
    if (b >= 0x40 && b <= 0x7E) {
      ControlKeys.keypad((char) b).ifPresent(inputs::add);
    } else {
      take(b);
    }
  }

  private void oldMouse(int b) {
    bytes.write(b);
    if (bytes.size() == 3) {
      byte[] told = bytes.toByteArray();
      ground();
      int x = (told[1] & 0xFF) - 33;
      int y = (told[2] & 0xFF) - 33;
      if (told[0] == 32 && x >= 0 && y >= 0) {
        inputs.add(new Input.Clicked(x, y));
      }
    }
  }

  private void string(int b) {
    if (b == 0x07 || (state == State.STRING_ESCAPE && b == '\\')) {
      if (answers.size() < MOST_ANSWERS) {
        answers.add(string.toString());
      }
      ground();
    } else {
      if (b != ESC && string.length() < LONGEST_ANSWER) {
        string.append((char) b);
      }
      state = b == ESC ? State.STRING_ESCAPE : State.STRING;
    }
  }

  private void press(Key.Kind kind) {
    inputs.add(new Input.Pressed(Key.of(kind)));
  }
}
