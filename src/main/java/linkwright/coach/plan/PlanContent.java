package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.LaidOut;
import linkwright.coach.kernel.drawn.LinkShape;
import linkwright.coach.kernel.drawn.SharedWire;
import linkwright.routine.Routine;
import linkwright.routine.SolderMap;
import linkwright.standing.CountedPlan;
import linkwright.standing.Standing;

/** What a plan comes to, or what it still lacks. */
public final class PlanContent {
  private PlanContent() {}

  /**
   * What the plan comes to; while it does not hold together, what is wrong and what it came to
   * last, told as such.
   */
  static List<Part> comesTo(PlanHeld held, Model model) {
    Standing standing = held.preview();
    Optional<Standing> last = held.last();
    if (standing.counted().holds() || last.isEmpty()) {
      return comesTo(standing, model, key -> !held.open().text(key).isEmpty());
    }
    List<Part> parts = new ArrayList<>();
    // What is wrong with a field stands beside it; what is missing has no field of its own to say.
    CountedPlan counted = standing.counted().saidIn(model.settings().units());
    counted.troubles().entrySet().stream()
        .filter(each -> held.open().text(each.getKey()).isEmpty())
        .forEach(each -> parts.add(Prose.stop(each.getValue())));
    parts.add(Prose.stop(counted.sentence()));
    parts.add(new Prose(Prose.Kind.MAIN, "As it was before, not as it is typed now:"));
    parts.addAll(comesTo(last.get(), model));
    return parts;
  }

  /** The link as it is planned, where there is room below the fields. */
  static List<Part> drawn(PlanHeld held, Model model) {
    return held.preview()
        .counted()
        .plan()
        .flatMap(plan -> plan.link().formed())
        .map(link -> LinkShape.of(link, "the link as planned", Emphasis.NOW))
        .map(
            shape ->
                List.<Part>of(
                    new Drawing(List.of(shape), List.of(), model.settings().units())
                        .whereThereIsRoom()))
        .orElse(List.of());
  }

  /** What the plan comes to, in this job's and this user's words. */
  public static List<Part> comesTo(Standing standing, Model model) {
    return comesTo(standing, model, key -> false);
  }

  private static List<Part> comesTo(
      Standing standing, Model model, Predicate<String> toldBesideItsField) {
    CountedPlan counted = standing.counted().saidIn(model.settings().units());
    Optional<Routine> routine = routine(model);
    List<Part> parts = new ArrayList<>();
    if (counted.plan().isPresent()) {
      parts.addAll(SharedWire.of(model, standing));
      parts.addAll(chain(model).of(standing));
      parts.addAll(SharedWire.inDrawer(model, standing));
    }
    counted
        .part()
        .ifPresent(
            part ->
                parts.addAll(
                    PartContent.of(
                        part,
                        standing,
                        routine,
                        model.settings().units(),
                        JobWords.tradeWords(model))));
    if (!counted.holds() && !counted.sentence().isEmpty()) {
      parts.add(Prose.stop(counted.sentence()));
    }
    Prose how = Prose.aside(routine.map(known -> JobWords.fill(known.plan(), model)).orElse(""));
    parts.add(how);
    routine
        .filter(known -> counted.holds())
        .map(SolderMap::of)
        .ifPresent(map -> solder(map, model, parts));
    routine
        .filter(known -> counted.holds() && !standing.made().closed())
        .map(known -> LaidOut.of(model).lackedBy(known))
        .filter(lacks -> !lacks.isEmpty())
        .ifPresent(lacks -> parts.add(Prose.stop(lacks)));
    if (!counted.holds() && counted.sentence().isEmpty()) {
      parts.add(Prose.says("Results come as you type. Still missing or wrong:"));
      counted.troubles().entrySet().stream()
          .filter(each -> !toldBesideItsField.test(each.getKey()))
          .forEach(each -> parts.add(Prose.says(each.getValue())));
    }
    return parts;
  }

  private static ChainContent chain(Model model) {
    return new ChainContent(
        model.settings().units(), JobWords.tradeWords(model), model.handbook().reference());
  }

  /** Which joint takes which grade; told where a later one is harder. */
  private static void solder(SolderMap map, Model model, List<Part> parts) {
    map.harderLater().forEach(each -> parts.add(Prose.stop(JobWords.fill(each, model))));
    parts.add(Prose.aside(JobWords.fill(map.says(), model)));
  }

  private static Optional<Routine> routine(Model model) {
    return model.job().flatMap(job -> model.handbook().routine(job.state().course().routine()));
  }
}
