package linkwright.cli.walk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Notice;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.shell.Performer;

/**
 * The coach as a walk works it: acts are chosen, fields are typed, and what it says is gathered.
 */
final class WalkCoach {
  /** Where it is told that other jobs lack the same wire: their books are read only then. */
  private static final Set<Act> OF_WIRE = Set.of(Act.TO_WIRE, Act.TO_PLAN, Act.TO_CARD);

  private final Performer performer;
  private final BinaryTake takes;
  private final List<String> told = new ArrayList<>();
  private Model model;

  WalkCoach(Performer performer, Model model) {
    this(performer, performer::take, model);
  }

  /** The same, each message taken by that, which may look at what comes of it. */
  WalkCoach(Performer performer, BinaryTake takes, Model model) {
    this.performer = performer;
    this.takes = takes;
    this.model = model;
  }

  /** What makes the next model of a message. */
  interface BinaryTake {
    Model take(Model model, Message message);
  }

  Model model() {
    return model;
  }

  PlaceId place() {
    return model.held().place();
  }

  boolean left() {
    return performer.left();
  }

  /** What is to be said of flame and watch at the end, however it came. */
  String parting() {
    return HotWorkWords.parting(model);
  }

  /** Whether something could not be written: nothing else counts before that is answered. */
  boolean failing() {
    return model.writing() instanceof Writing.Failed;
  }

  void shut() {
    performer.shut();
  }

  /** Puts the first job into an empty tray and opens it. */
  void openFirst(List<Fact> facts) {
    model = performer.begin(model, facts, Optional.empty());
    choose(Act.CHOOSE);
  }

  /** Opens a job by its book's name. */
  void open(String slug) {
    model = performer.open(model, slug);
    hear();
  }

  /** Opens a job to look at only. */
  void look(String slug) {
    model = performer.look(model, slug);
  }

  /** Comes to a place at once. */
  void lead(Message.Led place) {
    take(place);
    hear();
  }

  void choose(Act act) {
    if (OF_WIRE.contains(act) && model.tray().isEmpty()) {
      model = performer.besideOthers(model);
    }
    take(new Message.ActChosen(act));
    hear();
  }

  void press(Key key) {
    take(new Message.KeyPressed(key));
    hear();
  }

  /** Puts the caret into a field of the form that is open. */
  void field(int index) {
    take(new Message.FieldChosen(index));
  }

  void paste(String text) {
    take(new Message.Pasted(text));
    hear();
  }

  /** Lets the clock go on. */
  void tick(Instant now, Instant steady) {
    Notice before = model.notice();
    take(new Message.Ticked(now, steady, Optional.empty()));
    if (!model.notice().equals(before)) {
      hear();
    }
  }

  private void take(Message message) {
    model = takes.take(model, message);
  }

  private void hear() {
    if (!model.notice().text().isBlank()) {
      told.add(WalkPage.passed(model).told());
    }
  }

  /** Goes to a place of the job by the way round; a form that is open is left, its text kept. */
  void go(Act place) {
    if (model.held().form().isPresent()) {
      press(Key.of(Key.Kind.ESCAPE));
    }
    if (place() != PlaceId.ROUND) {
      choose(Act.ROUND);
    }
    // A book that the class led to is left for the class first.
    if (place() == PlaceId.CLASS_ROOM && place != Act.ROUND) {
      choose(Act.ROUND);
    }
    if (place != Act.ROUND) {
      choose(place);
    }
  }

  /** What the coach has said since this was asked last. */
  List<String> takeTold() {
    List<String> all = List.copyOf(told);
    told.clear();
    return all;
  }
}
