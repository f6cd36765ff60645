package linkwright.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * The bytes between the marks that a terminal puts around what is pasted (xterm's "Control
 * Sequences", bracketed paste mode). They are text up to the mark of their end, and a line that
 * stalls for a few seconds in the middle makes no keys of the rest. A mark that never comes would
 * make text of every key from then on: after some seconds of quiet, or once what comes after a
 * stall comes like keys that are pressed, the paste is dropped and told. What comes before anyone
 * can have read that is none of a key either; and the rest of the paste may still come, so what
 * comes in one go up to the mark of an end is text.
 *
 * <p>A text may itself hold that mark. So what comes in one go with a paste, before the keyboard is
 * quiet, is text too if another mark closes it, else keys.
 */
final class Pasting {
  private static final int ESC = 0x1B;
  private static final int CTRL_C = 0x03;

  /** ESC [ 2 0 0 ~ begins a paste, ESC [ 2 0 1 ~ ends it. */
  private static final String MARK = "\u001b[20?~";

  private static final int WHICH = MARK.indexOf('?');

  /** After this long a stalled paste is given on as far as it came. */
  private static final int STALL_MILLIS = 1000;

  /** So many stalls or keys, and the end is not waited for any longer. */
  private static final int SIGNS = 5;

  /** What comes in one go and is no longer may be one key, so the paste does not go on. */
  private static final int ONE_KEY = 4;

  /** No hand is so quick: neither after a paste nor from one key to the next. */
  private static final int HAND_MILLIS = 30;

  /** Nobody has read sooner that the paste is dropped. */
  private static final int READ_MILLIS = 300;

  /** So much is kept before it is given on as a part; a field's text is far shorter. */
  private static final int PART = 64 * 1024;

  private enum State {
    NONE,
    TEXT,
    /** In the text, and nothing has come since what there was of it was given on. */
    STALLED,
    /** After a stall ESC came alone so far: the Escape key, if it stays alone. */
    STALLED_ESCAPE,
    /** Behind the mark of an end. */
    BEHIND,
    /** It is being told that the paste is dropped. */
    TOLD,
    /** Dropped; its rest may come. */
    DROPPED
  }

  private final Charset charset;
  private final Consumer<Input> inputs;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final byte[] mark = new byte[MARK.length()];
  private int ofAMark;
  private State state = State.NONE;
  private boolean hasStalled;
  private int signs;
  private int stallsSinceAByte;
  private int bytesInOneGo;

  Pasting(Charset charset, Consumer<Input> inputs) {
    this.charset = charset;
    this.inputs = inputs;
  }

  /** The mark of a beginning has come. */
  void begin() {
    state = State.TEXT;
    hasStalled = false;
    signs = 0;
    stallsSinceAByte = 0;
    bytesInOneGo = 0;
  }

  /** Whether bytes belong here. */
  boolean isOn() {
    return state != State.NONE;
  }

  /** Whether time makes a difference. */
  boolean isPending() {
    return isOn() && !(state == State.DROPPED && bytesInOneGo == 0);
  }

  /** How long after the last byte {@link #expire} is due. */
  int patienceMillis() {
    if (state == State.TOLD && bytesInOneGo == 0) {
      return STALL_MILLIS * stallsSinceAByte + READ_MILLIS;
    }
    return state == State.BEHIND || isDropped() || comesAnew()
        ? HAND_MILLIS
        : STALL_MILLIS * (1 + stallsSinceAByte);
  }

  /** Whether it is to be told apart what comes after a stall: the rest of the paste, or keys. */
  private boolean comesAnew() {
    return hasStalled && state == State.TEXT;
  }

  private boolean isDropped() {
    return state == State.TOLD || state == State.DROPPED;
  }

  /** Takes a byte, 0 to 255; answers false if it is no text but the key that leaves the paste. */
  boolean take(int b) {
    if (b == CTRL_C && (state == State.STALLED || (isDropped() && bytesInOneGo == 0))) {
      leave();
      return false;
    }
    stallsSinceAByte = 0;
    bytesInOneGo++;
    if (bytesInOneGo > ONE_KEY && !isDropped()) {
      signs = 0;
    }
    boolean afterAStall = state == State.STALLED;
    if (state != State.BEHIND && !isDropped()) {
      state = afterAStall && b == ESC && ofAMark == 0 ? State.STALLED_ESCAPE : State.TEXT;
    }
    if (markEndsWith(b)) {
      give(takeOutWhole());
      if (mark[WHICH] == '1') {
        state = State.BEHIND;
      } else if (isDropped()) {
        begin();
      } else {
        state = State.TEXT;
      }
    } else if (bytes.size() >= PART && (state == State.TEXT || isDropped())) {
      give(takeOutWhole());
      if (isDropped()) {
        begin();
      }
    }
    return true;
  }

  /** After what {@link #expire} answered with is taken: the rest of what was dropped may come. */
  void goOnWaiting() {
    if (state == State.NONE && signs > 0) {
      state = State.DROPPED;
    }
  }

  /** Nothing more came: answers with the bytes that turned out to be keys. */
  byte[] expire() {
    switch (state) {
      case TEXT, STALLED -> {
        give(takeOutWhole());
        boolean key = comesAnew() && bytesInOneGo <= ONE_KEY;
        boolean stall = !comesAnew();
        // The quiet behind a key is no second sign.
        boolean behindAKey = hasStalled && stall && stallsSinceAByte == 0 && signs > 0;
        signs += key || (stall && !behindAKey) ? 1 : 0;
        stallsSinceAByte += stall ? 1 : 0;
        hasStalled = true;
        bytesInOneGo = 0;
        state = State.STALLED;
        if (signs >= SIGNS) {
          ofAMark = 0;
          bytes.reset();
          state = State.TOLD;
          inputs.accept(new Input.PasteDropped());
        }
      }
      case TOLD -> {
        give(takeOutWhole());
        leave();
        signs = SIGNS;
        state = State.DROPPED;
      }
      case STALLED_ESCAPE -> leave();
      case BEHIND -> {
        return takeOutKeys();
      }
      case DROPPED -> {
        int left = signs - 1;
        byte[] keys = takeOutKeys();
        signs = left;
        return keys;
      }
      case NONE -> {
        // Nothing begun.
      }
    }
    return new byte[0];
  }

  private byte[] takeOutKeys() {
    bytes.write(mark, 0, ofAMark);
    byte[] keys = bytes.toByteArray();
    leave();
    return keys;
  }

  private void leave() {
    state = State.NONE;
    signs = 0;
    bytesInOneGo = 0;
    ofAMark = 0;
    bytes.reset();
  }

  /** Adds a byte to the text or to the mark that may be coming; true when that is whole. */
  private boolean markEndsWith(int b) {
    boolean fits = ofAMark == WHICH ? b == '0' || b == '1' : b == MARK.charAt(ofAMark);
    if (fits) {
      mark[ofAMark] = (byte) b;
      ofAMark = (ofAMark + 1) % mark.length;
      return ofAMark == 0;
    }
    bytes.write(mark, 0, ofAMark);
    ofAMark = 0;
    if (b == ESC) {
      mark[0] = ESC;
      ofAMark = 1;
    } else {
      bytes.write(b);
    }
    return false;
  }

  private void give(String text) {
    if (!text.isEmpty()) {
      inputs.accept(new Input.Pasted(text));
    }
  }

  /** Takes out what has come; of a letter that is not whole yet the beginning stays. */
  private String takeOutWhole() {
    byte[] all = bytes.toByteArray();
    int whole = all.length - begunLetter(all);
    bytes.reset();
    bytes.write(all, whole, all.length - whole);
    return new String(all, 0, whole, charset);
  }

  /** Bytes at the end that begin a letter of more bytes (RFC 3629, section 3). */
  private int begunLetter(byte[] all) {
    if (!charset.equals(StandardCharsets.UTF_8)) {
      return 0;
    }
    for (int back = 1; back <= Math.min(3, all.length); back++) {
      int b = all[all.length - back] & 0xFF;
      if (b >= 0xC0) {
        int wanted = b >= 0xF0 ? 4 : b >= 0xE0 ? 3 : 2;
        return back < wanted ? back : 0;
      }
      if (b < 0x80) {
        return 0;
      }
    }
    return 0;
  }
}
