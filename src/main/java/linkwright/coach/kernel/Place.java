package linkwright.coach.kernel;

import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.form.Form;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/**
 * What can be done at one place, what it answers, and what it says. A place knows no other: it
 * answers {@link Turn#goTo} with an id.
 */
public interface Place {
  /** Comes to the place. */
  Turn enter(Model model);

  /** Comes to one thing of this place: a step, a caution, a sum, a job, by its id. */
  default Turn enterAt(Model model, String id) {
    return enter(model);
  }

  /**
   * Every act that may be open here, whether it is at the moment or not, without those of
   * everywhere. Within a place no letter has two senses.
   */
  List<Act> allActs();

  /** What is open here, in the order in which a key is given to the first that has it. */
  List<Act> acts(Model model);

  /** What one of these does. */
  Turn act(Model model, Act act);

  /** What the place has to say now. */
  Content content(Model model);

  /** What an act would do now, in a few words. */
  default String says(Model model, Act act) {
    return act.words();
  }

  /** Whether a key that is none of its acts comes here before what every place has. */
  default boolean takesEveryKey() {
    return false;
  }

  /** What the keys do where the place takes every one. */
  default List<String> keyWords() {
    return List.of();
  }

  /** Whether a number is being typed here that belongs to the next act: such a press is meant. */
  default boolean countIsTyped(Model model) {
    return false;
  }

  /** A key was held for a second. */
  default Turn keyHeld(Model model) {
    return Turn.to(model.told("The key is held: it counts once. Let go."));
  }

  /** Whether nothing that is done here may enter anything in a job's book. */
  default boolean isDry() {
    return false;
  }

  /** Whether undo reaches what was entered here; not while something in front of it is asked. */
  default boolean undoes(Model model) {
    return true;
  }

  /** A key that is none of the acts. */
  default Turn typed(Model model, Key key) {
    return Turn.to(model);
  }

  /** A form of this place was edited. */
  default Turn edited(Model model, Form form, boolean textChanged) {
    return Turn.to(model);
  }

  /** A form of this place is to be kept. */
  default Turn confirmed(Model model, Form form) {
    return Turn.to(model);
  }

  /** Esc was pressed in a form. */
  default Turn formLeft(Model model) {
    return Turn.to(model);
  }

  /** Entries that were asked for here are on the disk. */
  default Turn settled(Model model) {
    return Turn.to(model);
  }

  /** What became of a file that was to be written for this place. */
  default Turn writtenOut(Model model, Message.WrittenOut written) {
    return Turn.to(model);
  }

  /** A file of rows that this place asked for. */
  default Turn rowsRead(Model model, Message.RowsRead rows) {
    return Turn.to(model);
  }

  /** A row of this place's list was clicked. */
  default Turn row(Model model, int row) {
    return Turn.to(model);
  }

  /** Time passes while one is here. */
  default Turn passing(Model model) {
    return Turn.to(model);
  }

  /** The book was read anew while one was here. */
  default Turn readAnew(Model model) {
    return Turn.goTo(model, PlaceId.ROUND);
  }
}
