package linkwright.coach.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.lesson.ClassRoom;

/** The class: a student is chosen, and her book opened; nothing is written from here. */
public final class ClassPlace implements Place {
  @Override
  public boolean isDry() {
    return true;
  }

  /** At the student whose book was looked at last. */
  @Override
  public Turn enter(Model model) {
    String folder = model.learning().room().map(ClassRoom::folder).orElse("");
    List<String> ids = seats(model).stream().map(seat -> seat.learner().id()).toList();
    int at = model.learning().student().map(her -> ids.indexOf(her.id())).orElse(0);
    return Turn.with(model.with(new ClassHeld(Math.max(0, at), 0)), new Effect.ReadClass(folder));
  }

  /** The class of a folder; an empty one is the user's own. */
  @Override
  public Turn enterAt(Model model, String folder) {
    return Turn.with(model.with(new ClassHeld(0, 0)), new Effect.ReadClass(folder));
  }

  private static Effect readAnewBy(Model model) {
    return new Effect.ReadClass(model.learning().room().map(ClassRoom::folder).orElse(""));
  }

  /** Once a minute the books are read anew by themselves: others write them meanwhile. */
  @Override
  public Turn passing(Model model) {
    return model.learning().room().filter(room -> room.isOld(model.now())).isPresent()
        ? Turn.with(model, readAnewBy(model))
        : Turn.to(model);
  }

  private static List<ClassRoom.Seat> seats(Model model) {
    return model.learning().room().map(ClassRoom::students).orElse(List.of());
  }

  @Override
  public Content content(Model model) {
    ClassHeld held = (ClassHeld) model.held();
    return model
        .learning()
        .room()
        .map(
            room ->
                new Content(
                    "the class",
                    new ClassContent(
                            room,
                            model.learning().roster(),
                            model.handbook(),
                            JobWords.tradeWords(model),
                            model.now(),
                            model.settings().zone())
                        .parts(held.at())))
        .orElseGet(() -> Content.of("the class", Prose.says("No class was read yet.")));
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.CHOOSE,
        Act.UP,
        Act.DOWN,
        Act.READ_CLASS,
        Act.TO_LESSON,
        Act.TO_TRAY,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    if (!seats(model).isEmpty()) {
      acts.addAll(List.of(Act.CHOOSE, Act.UP, Act.DOWN));
    }
    acts.add(Act.READ_CLASS);
    acts.add(Act.TO_LESSON);
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    ClassHeld held = (ClassHeld) model.held();
    int last = Math.max(0, seats(model).size() - 1);
    return switch (act) {
      case UP -> at(model, Math.max(0, held.at() - 1));
      case DOWN -> at(model, Math.min(last, held.at() + 1));
      case CHOOSE -> open(model, held.at());
      case READ_CLASS -> Turn.with(model, readAnewBy(model));
      case MORE, LESS ->
          Turn.to(model.with(new ClassHeld(held.at(), Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn at(Model model, int at) {
    return Turn.to(model.with(new ClassHeld(at, 0)));
  }

  /** Her book, where it lies in the user's own folder; one of another machine is looked at here. */
  private static Turn open(Model model, int at) {
    Optional<String> id = seats(model).stream().skip(at).findFirst().map(s -> s.learner().id());
    return id.map(
            her ->
                Turn.goTo(
                    model.with(model.learning().with(seats(model).get(at).learner())),
                    PlaceId.STUDENT))
        .orElseGet(() -> Turn.to(model));
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }

  @Override
  public Turn row(Model model, int row) {
    int last = Math.max(0, seats(model).size() - 1);
    ClassHeld held = (ClassHeld) model.held();
    return row == held.at() ? open(model, row) : at(model, Math.max(0, Math.min(last, row)));
  }
}
