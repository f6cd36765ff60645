package linkwright.coach.form;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.keys.Key;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;
import linkwright.text.Narrowing;

/**
 * One line of a form that is being filled in.
 *
 * @param id the name of what it holds
 * @param label what it asks for
 * @param line what is typed so far; never lost, right or wrong
 * @param hint an example of what would be right
 * @param choices the only right answers; empty for a free text
 * @param trouble what is wrong with the text, if anything
 * @param nature what it takes and how it is told
 */
public record Field(
    String id,
    String label,
    LineEdit line,
    String hint,
    List<Offered> choices,
    Optional<String> trouble,
    Nature nature) {
  /** So many of the choices are named in a question. */
  private static final int MOST_NAMED = 5;

  /**
   * What a field takes and how it is told.
   *
   * @param measure what it takes
   * @param units the user's units, for a number without one
   * @param help what it is and what it changes
   * @param aside whether it stands folded away until the form is unfolded
   * @param whole whether a part of a choice is never taken for it
   */
  record Nature(Measure measure, UnitStyle units, String help, boolean aside, boolean whole) {
    static final Nature WORDS = new Nature(Measure.WORDS, UnitStyle.METRIC, "", false, false);

    Nature aside(boolean other) {
      return new Nature(measure, units, help, other, whole);
    }

    Nature helped(String other) {
      return new Nature(measure, units, other, aside, whole);
    }
  }

  /** A field for free text. */
  public static Field of(String id, String label, String text, String hint) {
    return new Field(
        id, label, LineEdit.marked(text), hint, List.of(), Optional.empty(), Nature.WORDS);
  }

  /** A field for an amount, with its examples in the user's units. */
  public static Field of(
      String id, String label, String text, String hint, Measure measure, UnitStyle units) {
    String example = SaidIn.units(Measure.inUnits(hint, units), units);
    return of(id, label, text, example).takes(measure, units);
  }

  /** A field that takes one of a few words. */
  public static Field choice(
      String id, String label, String text, String hint, List<String> choices) {
    return choiceOf(id, label, text, hint, choices.stream().map(Offered::of).toList());
  }

  /** A field that takes one of these. */
  public static Field choiceOf(
      String id, String label, String text, String hint, List<Offered> choices) {
    return new Field(
        id,
        label,
        LineEdit.marked(text),
        hint,
        List.copyOf(choices),
        Optional.empty(),
        Nature.WORDS);
  }

  /** The same field, taking that. */
  public Field takes(Measure measure, UnitStyle units) {
    return with(new Nature(measure, units, nature.help(), nature.aside(), nature.whole()));
  }

  /** The same field with what it is and what it changes. */
  public Field helped(String help) {
    return with(nature.helped(SaidIn.units(help, nature.units())));
  }

  /** The same field, in which a part of a choice stays what it is and is not taken for one. */
  public Field whole() {
    return with(new Nature(nature.measure(), nature.units(), nature.help(), nature.aside(), true));
  }

  /** Whether the only choice that holds a part is what is meant by it. */
  public boolean takesParts() {
    return !nature.whole();
  }

  /** Whether any words may stand in it. */
  public boolean isFree() {
    return nature.measure() == Measure.WORDS && choices.isEmpty();
  }

  /** The same field, folded away. */
  public Field aside() {
    return with(nature.aside(true));
  }

  /** The same field, shown whether the form is unfolded or not. */
  public Field unfolded() {
    return with(nature.aside(false));
  }

  /** The same field with that trouble told beside it, or with none. */
  public Field with(Optional<String> told) {
    Optional<String> said = told.map(sentence -> SaidIn.units(sentence, nature.units()));
    return new Field(id, label, line, hint, choices, said, nature);
  }

  /** The same field with another example beside it. */
  public Field hinted(String other) {
    return new Field(id, label, line, other, choices, trouble, nature);
  }

  /** The same field with what it asks for in the user's trade words. */
  public Field inWords(TradeWords words) {
    Nature told = nature.helped(words.show(nature.help()));
    List<Offered> offered = choices.stream().map(choice -> choice.inWords(words)).toList();
    return new Field(id, words.show(label), line, words.show(hint), offered, trouble, told);
  }

  /** The same field with its examples and its help in those units. */
  public Field inUnits(UnitStyle units) {
    return hinted(SaidIn.units(hint, units)).helped(SaidIn.units(help(), units));
  }

  /** The same field with another text, which the first character typed replaces. */
  public Field withText(String other) {
    return with(LineEdit.marked(other));
  }

  /** What is typed so far, as it was typed. */
  public String text() {
    return line.text();
  }

  /** Where the next character goes, counted in characters, 0 to the text's length. */
  public int caret() {
    return line.caret();
  }

  /**
   * The hint as it stands beside what is typed: in brackets, and an example with a word before it,
   * so that nobody takes it for what is in the field. Empty where there is none, or where what is
   * typed says the same.
   */
  public String beside() {
    boolean typed = hint.strip().equalsIgnoreCase(value().strip());
    return hint.isBlank() || typed
        ? ""
        : "(" + (hint.matches("\\d.*") ? "such as " : "") + hint + ")";
  }

  /** The hint as a sentence of its own: an example where it gives figures, else what it asks. */
  private String hintTold() {
    return hintTold(hint);
  }

  /** A hint as a sentence: after "Example: " where it gives figures, else as what it asks. */
  public static String hintTold(String hint) {
    if (hint.isBlank()) {
      return "";
    }
    boolean example = hint.chars().anyMatch(Character::isDigit);
    String told =
        example
            ? "Example: " + hint
            : hint.substring(0, 1).toUpperCase(Locale.ROOT) + hint.substring(1);
    return told.replaceAll("[.…]+$", "") + ".";
  }

  /** What it is and what it changes; empty if that was not said. */
  public String help() {
    return nature.help();
  }

  /**
   * What is meant by what is typed: a number with the user's unit, the one choice that goes by that
   * name or alone holds it; the text itself where it is neither.
   */
  public String value() {
    if (choices.isEmpty()) {
      return nature.measure().complete(line.text(), nature.units());
    }
    return line.text().isBlank() || isChoice() || !takesParts()
        ? line.text()
        : meant().map(Offered::id).orElse(line.text());
  }

  /** The one choice that goes by what is typed, or alone holds it; empty where several do. */
  public Optional<Offered> meant() {
    List<Offered> called = Narrowing.called(line.text(), choices, Offered::names);
    List<Offered> near = called.isEmpty() ? offered() : called;
    return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
  }

  /** Asks which is meant, where what is typed may be several of the choices. */
  public Optional<String> whichOne() {
    boolean several = takesParts() && !line.text().isBlank() && !isChoice() && offered().size() > 1;
    return several && meant().isEmpty() ? Optional.of(which()) : Optional.empty();
  }

  /** Whether that is asked beside it already. */
  boolean asks(String question) {
    return trouble.equals(Optional.of(question));
  }

  private String which() {
    List<String> near = offered().stream().map(Offered::id).toList();
    int more = near.size() - MOST_NAMED;
    return "Which “%s”? %s%s."
        .formatted(
            line.text().strip(),
            String.join(", ", near.subList(0, Math.min(MOST_NAMED, near.size()))),
            more > 0 ? " and %d more".formatted(more) : "");
  }

  /** What it stands at, in the user's units, a number with its unit; as typed where it is not. */
  public String now() {
    String value = value();
    boolean amount = choices.isEmpty() && nature.measure() != Measure.WORDS;
    String said = amount ? SaidIn.units(value, nature.units()) : value;
    return said.equals(value) ? value : said + " (typed as " + value + ")";
  }

  /** What will be added to the text when it is left: the unit. */
  public String unitToCome() {
    String value = value();
    return choices.isEmpty() && value.startsWith(line.text().strip())
        ? value.substring(line.text().strip().length())
        : "";
  }

  /** The choices that hold what is typed, the best first; all while a whole one stands there. */
  public List<Offered> offered() {
    return isChoice() ? choices : Narrowing.of(line.text(), choices, Offered::names);
  }

  /** What may be typed here without being lost to a key of the form. */
  boolean words() {
    return choices.isEmpty() && nature.measure() == Measure.WORDS;
  }

  /** Whether one of its choices begins with that word. */
  public boolean offers(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    return choices.stream()
        .anyMatch(
            each ->
                each.id().toLowerCase(Locale.ROOT).startsWith(lower)
                    || each.says().toLowerCase(Locale.ROOT).startsWith(lower));
  }

  private boolean isChoice() {
    return choices.stream().anyMatch(choice -> choice.id().equals(line.text()));
  }

  /** The same field as it is left: what is meant stands in it; a note goes on where it ended. */
  Field left() {
    if (whichOne().isPresent()) {
      return asked();
    }
    return !line.marked() && isNote(line.text())
        ? with(LineEdit.at(line.text()))
        : withText(value());
  }

  /** The same field, which asks after what may be several, the text going on where it ended. */
  Field asked() {
    return whichOne().map(which -> with(LineEdit.at(text())).with(Optional.of(which))).orElse(this);
  }

  /** The same field with what is meant standing in it; where that stands already, as it is. */
  Field completed() {
    return value().equals(line.text()) ? this : withText(value());
  }

  /** The same field with what was typed in it before; a note goes on where it ended. */
  Field resumed(String before) {
    return isNote(before) ? with(LineEdit.at(before)) : withText(before);
  }

  /** Words of hers that were not entered go on where they ended; figures have a unit behind. */
  Field goneOnWith() {
    return words() ? with(LineEdit.at(line.text())) : this;
  }

  /** Words that nobody would write anew to add one; a name or a figure is typed anew. */
  private boolean isNote(String text) {
    return words() && text.strip().contains(" ");
  }

  Field key(Key key) {
    boolean choosing = !choices.isEmpty() && !key.ctrl();
    return choosing && (key.is(Key.Kind.LEFT) || key.is(Key.Kind.RIGHT))
        ? stepped(key.is(Key.Kind.LEFT) ? -1 : 1)
        : with(line.key(key));
  }

  private Field stepped(int by) {
    List<Offered> offered = offered();
    List<Offered> among = offered.isEmpty() ? choices : offered;
    int at = among.stream().map(Offered::id).toList().indexOf(line.text());
    boolean narrowed = among.size() < choices.size();
    int next =
        at < 0
            ? (by > 0
                ? (narrowed && meant().isPresent() && among.size() > 1 ? 1 : 0)
                : among.size() - 1)
            : Math.floorMod(at + by, among.size());
    return withText(among.get(next).id());
  }

  private Field with(LineEdit other) {
    return new Field(id, label, other, hint, choices, trouble, nature);
  }

  private Field with(Nature other) {
    return new Field(id, label, line, hint, choices, trouble, other);
  }

  /** What it is and an example of it, as far as there is something to say. */
  public List<String> explained() {
    String example = hintTold();
    String said = help().isBlank() && example.isEmpty() ? "There is no more to it." : help();
    return Stream.of(said, example).filter(text -> !text.isBlank()).toList();
  }
}
