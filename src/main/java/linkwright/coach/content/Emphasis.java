package linkwright.coach.content;

/** How much something is to be minded; never the only sign of a state. */
public enum Emphasis {
  /** What is happening now. */
  NOW,
  /** To be seen first. */
  MAIN,
  /** Ordinary. */
  PLAIN,
  /** May be passed over. */
  ASIDE,
  /** Something is wrong or needs care. */
  TROUBLE
}
