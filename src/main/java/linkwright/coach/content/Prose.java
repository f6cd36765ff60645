package linkwright.coach.content;

/**
 * A text of a kind.
 *
 * @param kind what sort of text
 * @param text the sentences; a blank text says nothing and is laid out nowhere
 */
public record Prose(Kind kind, String text) implements Part {
  /** What sort of text it is. */
  public enum Kind {
    /** What the place or step is called. */
    HEAD("", Emphasis.NOW),
    /** What a caution is called. */
    CAUTION_TITLE("", Emphasis.TROUBLE),
    DO("do", Emphasis.PLAIN),
    DO_NOT("beware", Emphasis.PLAIN),
    /** What waits at other places. */
    ELSEWHERE("waits", Emphasis.PLAIN),
    LOOK_FOR("look for", Emphasis.PLAIN),
    MIND("mind", Emphasis.PLAIN),
    MEASURE("measure", Emphasis.PLAIN),
    /** All that is laid out before a routine begins. */
    LAY_OUT("lay out", Emphasis.PLAIN),
    /** What a step takes in hand. */
    TOOLS("tools", Emphasis.PLAIN),
    CAUTION("caution", Emphasis.TROUBLE),
    WHY("why", Emphasis.PLAIN),
    WRONG("wrong", Emphasis.PLAIN),
    /** The steps after this one. */
    NEXT("next", Emphasis.ASIDE),
    REMEDY("remedy", Emphasis.NOW),
    IF_SO("if so", Emphasis.PLAIN),
    WEAR("wear", Emphasis.PLAIN),
    SIGNS("signs", Emphasis.PLAIN),
    SOURCE("from", Emphasis.ASIDE),
    /** A plain sentence. */
    SAYS("", Emphasis.PLAIN),
    /** What is to be seen first. */
    MAIN("", Emphasis.MAIN),
    /** Left out where it has no room: a key shows it by itself. */
    SPARE("", Emphasis.PLAIN),
    /** May be passed over. */
    ASIDE("", Emphasis.ASIDE),
    /** Something is wrong, or a proviso that must not be lost. */
    STOP("", Emphasis.TROUBLE);

    private final String label;
    private final Emphasis emphasis;

    Kind(String label, Emphasis emphasis) {
      this.label = label;
      this.emphasis = emphasis;
    }

    /** The word in the margin; empty for none. */
    public String label() {
      return label;
    }

    /** How much it is to be minded. */
    public Emphasis emphasis() {
      return emphasis;
    }

    /** Whether it may wait for another page while what comes before it is read. */
    public boolean later() {
      return this == WHY || this == WRONG || this == TOOLS || this == NEXT;
    }
  }

  /** A plain sentence. */
  public static Prose says(String text) {
    return new Prose(Kind.SAYS, text);
  }

  /** A sentence that may be passed over. */
  public static Prose aside(String text) {
    return new Prose(Kind.ASIDE, text);
  }

  /** A sentence of what is wrong. */
  public static Prose stop(String text) {
    return new Prose(Kind.STOP, text);
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.prose(this);
  }
}
