package linkwright.lesson;

/** What a question is about. */
public enum Topic {
  NEXT("what comes next"),
  DANGER("what can hurt"),
  CARD("cautions"),
  LOOK_FOR("what to look for"),
  WHY("why so"),
  FAULT("what a fault means"),
  REMEDY("what helps"),
  FATE("redo, scrap or go on"),
  DRAWN("what a drawing shows"),
  GRADE("which solder"),
  WAIT("how long it waits"),
  NUMBER("how many, how much"),
  WORD("words of the trade"),
  OWN("the routine's own questions");

  private final String words;

  Topic(String words) {
    this.words = words;
  }

  /** What it is called in a report. */
  public String words() {
    return words;
  }
}
