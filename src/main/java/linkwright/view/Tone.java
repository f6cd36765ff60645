package linkwright.view;

/**
 * What a piece of text means on the screen; a theme turns it into colours and attributes. A tone
 * never carries a state alone: the words or the glyph say the same.
 */
public enum Tone {
  /** Ordinary text, in the terminal's own colour. */
  PLAIN,
  /** What is happening now: the one copper accent. */
  ACCENT,
  /** Text to be seen first: headings, key figures. */
  STRONG,
  /** Text that may be passed over: units, hints, what is done. */
  FAINT,
  /** Something needs attention: a problem, a caution. */
  WARNING,
  /** The row or choice that the next key acts on. */
  REVERSED,
  /** A place to type in. */
  FIELD,
  /** A timer that ended and waits for an answer: the accent, turned round. */
  ALARM
}
