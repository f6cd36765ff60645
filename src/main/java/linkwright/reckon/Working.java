package linkwright.reckon;

/** One sum and how it is worked out; {@link Reckoner} lists them. */
interface Working {
  /** What it asks for. */
  Sum sum();

  /** Reads the answers, notes on them what is wrong, and puts what comes out into the outcome. */
  void work(Answers answers, Outcome outcome);
}
