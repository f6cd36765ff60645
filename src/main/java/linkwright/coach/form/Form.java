package linkwright.coach.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import linkwright.coach.keys.Key;

/**
 * A form that is being filled in; below its fields stand the line that unfolds the rest, where some
 * are folded away, and the line that keeps it.
 *
 * @param purpose what is kept when it is confirmed
 * @param title what it is for, in a few words
 * @param fields the fields, in order
 * @param at which field has the caret; {@code fields.size()} is the line that keeps the form, one
 *     more the line that unfolds the rest
 * @param keepWords the words on that line
 * @param unfolded whether all fields are shown
 * @param explained whether the field with the caret is explained
 * @param about what its words are of, so that they wait apart from those of another: a lot, a
 *     student; empty for nothing
 */
public record Form(
    Purpose purpose,
    String title,
    List<Field> fields,
    int at,
    String keepWords,
    boolean unfolded,
    boolean explained,
    String about) {
  /** What a confirmed form does; the screen that opened it knows. */
  public enum Purpose {
    PLAN("the plan"),
    NEW_JOB("a new job", true),
    MAKE_AGAIN("the job made again"),
    OWN_BENCH("your bench", true),
    VARIANTS,
    WHAT_THERE_IS,
    CARD("the job card"),
    WRITE_OUT("a file to be written", true),
    TAKE_ROWS("rows to be read", true),
    LOT_CAME("a lot that came", true),
    LOT_COUNTED("a stocktaking", true),
    DRAW_LOT("a lot drawn down", true),
    TAKE_SOLDER("solder taken"),
    RETURN_WIRE("what goes back into the drawer"),
    TEST_PIECE("a test piece"),
    TRIAL_LENGTH("a trial length"),
    ADD_WIRE("wire that came"),
    CUT_WIRE("wire that was cut"),
    DISCARD_WIRE("wire that is lost"),
    DRAW_DOWN,
    PILE("where a piece lies"),
    NOTE("a note"),
    STRIKE("why a line is struck"),
    SEARCH,
    JOINTS("joints"),
    TIMER("a timer"),
    END_WAIT("why a wait ended"),
    PERSON("who works"),
    NEW_STUDENT("a new student", true),
    SIGN_STEP("a teacher's mark", true),
    STUDY_PIECE("a piece looked at", true),
    SET_PRACTICE("practice set", true),
    WEIGH_IN("the weighing in"),
    WEIGH_OUT("the weighing out"),
    PRICES("prices"),
    HOURS("hours put right"),
    CLOSE("the closing"),
    RECKON,
    SETTINGS("your choices", true);

    private final String waits;
    private final boolean jobless;

    /** A form in which nothing waits: what is typed there is kept or gone. */
    Purpose() {
      this("");
    }

    Purpose(String waits) {
      this(waits, false);
    }

    Purpose(String waits, boolean jobless) {
      this.waits = waits;
      this.jobless = jobless;
    }

    /** Whether what waits in it is no job's. */
    public boolean isJobless() {
      return jobless;
    }

    /** What is typed in it and not entered, as one would say it; empty if nothing waits there. */
    public String waits() {
      return waits;
    }
  }

  public Form {
    fields = List.copyOf(fields);
  }

  /** A form with the caret in its first field. */
  public static Form of(Purpose purpose, String title, String keepWords, List<Field> fields) {
    return new Form(purpose, title, fields, 0, keepWords, false, false, "");
  }

  /** The same form, of that thing: what is typed in it waits apart from what is typed of others. */
  public Form about(String thing) {
    return new Form(purpose, title, fields, at, keepWords, unfolded, explained, thing);
  }

  /** What a key made of a form. */
  public sealed interface KeyOutcome {
    /** It changed, or its caret moved. */
    record Edited(Form form, boolean textChanged) implements KeyOutcome {}

    /** It is to be kept. */
    record Confirmed(Form form) implements KeyOutcome {}

    /** The key means nothing to a form. */
    record PassedOn() implements KeyOutcome {}
  }

  /** What the key makes of this form. */
  public KeyOutcome key(Key key) {
    if (key.equals(Key.ctrl("k")) || (key.is(Key.Kind.ENTER) && at == fields.size())) {
      return new KeyOutcome.Confirmed(completed());
    }
    if (key.is("?") && asksHelp()) {
      return new KeyOutcome.Edited(explained(!explained), false);
    }
    if (explained && key.is(Key.Kind.ESCAPE)) {
      return new KeyOutcome.Edited(explained(false), false);
    }
    if (at == foldLine() && (key.is(Key.Kind.ENTER) || key.is(Key.Kind.RIGHT) || key.is(" "))) {
      return new KeyOutcome.Edited(unfold(), false);
    }
    return switch (key.kind()) {
      case ENTER, TAB, DOWN -> moved(1);
      case BACK_TAB, UP -> moved(-1);
      case ESCAPE, PAGE_UP, PAGE_DOWN -> new KeyOutcome.PassedOn();
      default -> typed(key);
    };
  }

  /** Whether a question mark asks for help: in words that have begun it is a question mark. */
  public boolean asksHelp() {
    return at >= fields.size()
        || !fields.get(at).words()
        || fields.get(at).caret() == 0
        || fields.get(at).line().marked();
  }

  private KeyOutcome typed(Key key) {
    boolean edits = !key.ctrl() || "uwae".contains(key.text());
    if (at >= fields.size() || !edits) {
      return new KeyOutcome.PassedOn();
    }
    Field before = fields.get(at);
    Field after = before.key(key);
    return new KeyOutcome.Edited(with(at, after), !after.text().equals(before.text()));
  }

  private KeyOutcome moved(int by) {
    List<Integer> lines = lines();
    int here = lines.indexOf(at);
    Form next = withAt(lines.get(Math.floorMod(here + by, lines.size())));
    return new KeyOutcome.Edited(next, !next.texts().equals(texts()) || !sameAsTyped(next));
  }

  private boolean sameAsTyped(Form other) {
    return fields.stream()
        .map(Field::text)
        .toList()
        .equals(other.fields.stream().map(Field::text).toList());
  }

  /**
   * The lines that are shown, in order: fields, the line that unfolds the rest, the keeping one.
   */
  public List<Integer> lines() {
    List<Integer> lines = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      if (shown(i)) {
        lines.add(i);
      }
    }
    if (lines.size() < fields.size()) {
      lines.add(foldLine());
    }
    lines.add(fields.size());
    return lines;
  }

  private boolean shown(int index) {
    Field field = fields.get(index);
    return unfolded || !field.nature().aside() || field.trouble().isPresent() || index == at;
  }

  /** The line that unfolds the rest. */
  public int foldLine() {
    return fields.size() + 1;
  }

  /** The words on the line that unfolds the rest. */
  public String foldWords() {
    int hidden = fields.size() - (lines().size() - 2);
    return hidden + " more, as usual";
  }

  /** The same form with all its fields shown, the caret in the first that was not. */
  public Form unfold() {
    int first = 0;
    while (first < fields.size() && shown(first)) {
      first++;
    }
    return new Form(purpose, title, fields, first, keepWords, true, false, about);
  }

  /** The same form with the caret in another line; what is left stands there as it is meant. */
  public Form withAt(int line) {
    int next = Math.max(0, Math.min(fields.size() + 1, line));
    List<Field> left = new ArrayList<>(fields);
    if (at < fields.size() && next != at) {
      left.set(at, fields.get(at).left());
    }
    boolean still = explained && next == at;
    return new Form(purpose, title, left, next, keepWords, unfolded, still, about);
  }

  /** The same form with the caret in the field of that name, if there is one. */
  public Form startingAt(String id) {
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).id().equals(id)) {
        return withAt(i);
      }
    }
    return this;
  }

  /** The same form with what is meant standing in every field. */
  public Form completed() {
    return mapFields(Field::completed);
  }

  /** The same form asking after each choice that may be several; empty if there is none. */
  public Optional<Form> asking() {
    return fields.stream().anyMatch(field -> field.whichOne().isPresent())
        ? Optional.of(mapFields(Field::asked).atFirstTrouble())
        : Optional.empty();
  }

  private Form explained(boolean other) {
    return new Form(purpose, title, fields, at, keepWords, unfolded, other, about);
  }

  private Form with(int index, Field field) {
    List<Field> changed = new ArrayList<>(fields);
    changed.set(index, field);
    return new Form(purpose, title, changed, at, keepWords, unfolded, false, about);
  }

  /** Each field changed by the same rule. */
  public Form mapFields(UnaryOperator<Field> change) {
    List<Field> changed = fields.stream().map(change).toList();
    return new Form(purpose, title, changed, at, keepWords, unfolded, explained, about);
  }

  /**
   * The same form with the troubles told beside their fields, and no others. What may be several is
   * asked about as it is left: while it is typed its choices are told.
   */
  public Form withTroubles(Map<String, String> troubles) {
    String typed = at < fields.size() ? fields.get(at).id() : "";
    return mapFields(
        field ->
            field.with(
                field
                    .whichOne()
                    .map(
                        which ->
                            Optional.of(which)
                                .filter(any -> !field.id().equals(typed) || field.asks(which)))
                    .orElseGet(() -> Optional.ofNullable(troubles.get(field.id())))));
  }

  /** The same form with what was typed and not entered, by field: it is gone on with. */
  public Form resumed(Map<String, String> texts) {
    return withTexts(texts)
        .mapFields(field -> texts.containsKey(field.id()) ? field.goneOnWith() : field);
  }

  /** The same form with what was typed before, by field: none of that stays folded away. */
  public Form withTexts(Map<String, String> texts) {
    return mapFields(
        field -> {
          String text = texts.getOrDefault(field.id(), field.text());
          Field resumed = texts.containsKey(field.id()) ? field.resumed(text) : field;
          return text.isBlank() ? resumed : resumed.unfolded();
        });
  }

  /** The same form with the caret in the first field that has trouble, if one has. */
  public Form atFirstTrouble() {
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).trouble().isPresent()) {
        return withAt(i);
      }
    }
    return this;
  }

  /**
   * What is meant by what is typed in a field, without spaces around it; empty if there is none.
   */
  public String text(String id) {
    return fields.stream()
        .filter(field -> field.id().equals(id))
        .map(field -> field.value().strip())
        .findFirst()
        .orElse("");
  }

  /** What is meant by what is typed in all fields, by field. */
  public Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach(field -> texts.put(field.id(), field.value()));
    return texts;
  }
}
