package linkwright.coach.kernel.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.link.BendSteps;
import linkwright.link.Formed;
import linkwright.plan.SettledLink;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;
import linkwright.standing.TestPieces;

/** A link bend by bend, drawn, with the same in words for whoever sees no drawing. */
public final class BendContent {
  private BendContent() {}

  /** The bends where a step forms links or a test piece; nothing where it does not. */
  static List<Part> at(Step step, Model model) {
    boolean trial =
        step.part() == linkwright.routine.RoutinePart.TRIAL && step.doText().contains("{former");
    if (!trial && !step.stage().containsValue(Stage.FORMED)) {
      return List.of();
    }
    Optional<OpenJob> open = model.job().filter(job -> isOf(step, job, model));
    if (open.isEmpty()) {
      return List.of();
    }
    OpenJob job = open.get();
    Optional<TestPieces> taught =
        trial ? TestPieces.of(job.standing(), job.state(), "") : Optional.empty();
    return taught
        .map(pieces -> ofNext(pieces, model))
        .orElseGet(
            () ->
                job.standing()
                    .counted()
                    .plan()
                    .map(plan -> plan.link())
                    .map(link -> ofPlanned(link, model))
                    .orElse(List.of()));
  }

  /** Whether it is a step of the job's routine: another one, rehearsed, bends other links. */
  private static boolean isOf(Step step, OpenJob job, Model model) {
    return model
        .handbook()
        .routine(job.state().course().routine())
        .flatMap(routine -> routine.step(step.id()))
        .filter(step::equals)
        .isPresent();
  }

  /**
   * Where to mark the straight blank for them, a sentence; empty where there is nothing to mark.
   */
  public static String marks(Step step, Model model) {
    return at(step, model).stream()
        .flatMap(part -> part instanceof Drawing drawing ? drawing.words().stream() : Stream.of())
        .findFirst()
        .orElse("");
  }

  /** The bends below a step's texts, for whoever has the room; told in words without one. */
  public static List<Part> below(Step step, Model model) {
    return at(step, model).stream()
        .map(
            part ->
                part instanceof Drawing drawing
                    ? new Drawing(drawing.shapes(), drawing.words(), true)
                    : part)
        .toList();
  }

  /** The bends by themselves, with what each is below them. */
  public static List<Part> page(List<Part> bends) {
    List<Part> page = new ArrayList<>(List.of(new Prose(Prose.Kind.HEAD, "Bend by bend")));
    for (Part part : bends) {
      if (part instanceof Drawing drawing) {
        page.add(
            new Drawing(
                drawing.shapes(),
                List.of("Drawn: the wire after each bend"),
                false,
                drawing.bars()));
        drawing.words().forEach(sentence -> page.add(Prose.says(sentence)));
      }
    }
    return page;
  }

  /** The bends below other things, with what each is where there is room for it. */
  public static List<Part> beneath(List<Part> bends) {
    return page(bends).stream()
        .skip(1)
        .map(part -> part instanceof Prose prose ? new Prose(Prose.Kind.SPARE, prose.text()) : part)
        .toList();
  }

  private static List<Part> ofPlanned(SettledLink link, Model model) {
    return link.formed().map(formed -> of(formed, link.formersMm(), model)).orElse(List.of());
  }

  /** The bends of the test piece that is proposed next. */
  public static List<Part> ofNext(TestPieces taught, Model model) {
    Map<String, Double> formers =
        taught.next().found().map(next -> next.formersMm()).orElse(Map.of());
    return taught.proposed().map(link -> of(link, formers, model)).orElse(List.of());
  }

  private static List<Part> of(Formed link, Map<String, Double> formersMm, Model model) {
    BendSteps bends = BendSteps.of(link, formersMm);
    if (bends.steps().isEmpty()) {
      return List.of();
    }
    TradeWords words = JobWords.tradeWords(model);
    return List.of(LinkShape.of(bends, link.wireMm(), model.settings().units(), words));
  }
}
