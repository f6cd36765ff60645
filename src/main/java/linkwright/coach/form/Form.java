package linkwright.coach.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import linkwright.coach.keys.Key;

/**
 * A form that is being filled in; below its fields stands the line that keeps it.
 *
 * @param purpose what is kept when it is confirmed
 * @param title what it is for, in a few words
 * @param fields the fields, in order
 * @param at which field has the caret; {@code fields.size()} is the line that keeps the form
 * @param keepWords the words on that line
 */
public record Form(Purpose purpose, String title, List<Field> fields, int at, String keepWords) {
  /** What a confirmed form does; the screen that opened it knows. */
  public enum Purpose {
    PLAN,
    NEW_JOB,
    MAKE_AGAIN,
    OWN_BENCH,
    VARIANTS,
    TEST_PIECE,
    TRIAL_LENGTH,
    ADD_WIRE,
    CUT_WIRE,
    DISCARD_WIRE,
    DRAW_DOWN,
    PILE,
    NOTE,
    STRIKE,
    SEARCH,
    TIMER,
    END_WAIT,
    PERSON,
    WEIGH_IN,
    WEIGH_OUT,
    PRICES,
    CLOSE,
    RECKON
  }

  public Form {
    fields = List.copyOf(fields);
  }

  /** A form with the caret in its first field. */
  public static Form of(Purpose purpose, String title, String keepWords, List<Field> fields) {
    return new Form(purpose, title, fields, 0, keepWords);
  }

  /** What a key made of a form. */
  public sealed interface Outcome {
    /** It changed, or its caret moved. */
    record Edited(Form form, boolean textChanged) implements Outcome {}

    /** It is to be kept. */
    record Confirmed(Form form) implements Outcome {}

    /** The key means nothing to a form. */
    record PassedOn() implements Outcome {}
  }

  /** What the key makes of this form. */
  public Outcome key(Key key) {
    if (key.equals(Key.ctrl("k")) || (key.is(Key.Kind.ENTER) && at >= fields.size())) {
      return new Outcome.Confirmed(this);
    }
    return switch (key.kind()) {
      case ENTER, TAB, DOWN -> new Outcome.Edited(moved(1), false);
      case BACK_TAB, UP -> new Outcome.Edited(moved(-1), false);
      case ESCAPE, PAGE_UP, PAGE_DOWN -> new Outcome.PassedOn();
      default -> typed(key);
    };
  }

  private Outcome typed(Key key) {
    if (key.ctrl() || at >= fields.size()) {
      return new Outcome.PassedOn();
    }
    Field before = fields.get(at);
    Field after = before.key(key);
    return new Outcome.Edited(with(at, after), !after.text().equals(before.text()));
  }

  private Form moved(int by) {
    return withAt(Math.floorMod(at + by, fields.size() + 1));
  }

  /** The same form with the caret in another field. */
  public Form withAt(int field) {
    return new Form(purpose, title, fields, Math.max(0, Math.min(fields.size(), field)), keepWords);
  }

  private Form with(int index, Field field) {
    List<Field> changed = new ArrayList<>(fields);
    changed.set(index, field);
    return new Form(purpose, title, changed, at, keepWords);
  }

  /** Each field changed by the same rule. */
  public Form mapFields(UnaryOperator<Field> change) {
    return new Form(purpose, title, fields.stream().map(change).toList(), at, keepWords);
  }

  /** The same form with the troubles told beside their fields, and no others. */
  public Form withTroubles(Map<String, String> troubles) {
    return mapFields(field -> field.with(Optional.ofNullable(troubles.get(field.id()))));
  }

  /** The same form with what was typed before, by field. */
  public Form withTexts(Map<String, String> texts) {
    return mapFields(
        field -> texts.containsKey(field.id()) ? field.withText(texts.get(field.id())) : field);
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

  /** What is typed in a field, without spaces around it; empty if there is no such field. */
  public String text(String id) {
    return fields.stream()
        .filter(field -> field.id().equals(id))
        .map(field -> field.text().strip())
        .findFirst()
        .orElse("");
  }

  /** What is typed in all fields, by field. */
  public Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach(field -> texts.put(field.id(), field.text()));
    return texts;
  }

  /** Whether a field has trouble. */
  public boolean hasTrouble() {
    return fields.stream().anyMatch(field -> field.trouble().isPresent());
  }
}
