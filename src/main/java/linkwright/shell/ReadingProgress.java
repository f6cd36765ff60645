package linkwright.shell;

/** Is told how far a long reading has come, and answers whether it is to go on. */
@FunctionalInterface
interface ReadingProgress {
  /** Waits to the end, whatever it takes. */
  ReadingProgress ENDLESS = (done, all) -> true;

  /**
   * Told before each piece of the work.
   *
   * @param done pieces done, 0 or more
   * @param all pieces there are
   * @return whether to go on; the rest is left out when not
   */
  boolean goOn(int done, int all);

  /** Whether what takes long may be left for later: somebody asks for it between keys. */
  default boolean later() {
    return false;
  }
}
