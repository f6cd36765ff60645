package linkwright.plan;

/** Where a figure comes from, the best that is known first. */
public enum FigureSource {
  /** Measured of a piece that was made: a sample link, a trial length, a finished chain. */
  MEASURED("measured"),
  /** Reckoned from what pieces taught of these hands, or what this job's pieces showed. */
  LEARNED("learned"),
  /** Typed by her. */
  HERS("yours"),
  /** Reckoned from sizes and material alone. */
  RECKONED("reckoned"),
  /** Taken because nothing better is known: a usual value. */
  USUAL("usual");

  private final String word;

  FigureSource(String word) {
    this.word = word;
  }

  /** The word for it beside a figure. */
  public String word() {
    return word;
  }
}
