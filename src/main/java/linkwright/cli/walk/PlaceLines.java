package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.coach.AtBench;
import linkwright.coach.Bench;
import linkwright.coach.JobWords;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.PlanSummary;
import linkwright.coach.Screen;
import linkwright.fit.Proposal;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TestPieces;
import linkwright.standing.TrialLength;
import linkwright.view.StillLine;

/** The places of a job other than the bench, in lines of text. */
final class PlaceLines {
  private PlaceLines() {}

  /** Where the job stands. */
  static List<String> where(Model model) {
    OpenJob job = model.job().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add("Job: " + job.state().course().name() + (closed(job) ? ", closed." : "."));
    lines.addAll(planLines(model));
    Optional<AtBench> at = Bench.target(model);
    at.ifPresent(
        step ->
            lines.add(
                "At step "
                    + step.number()
                    + " of "
                    + step.routine().steps().size()
                    + ": "
                    + JobWords.fill(step.step().title(), model)
                    + "."));
    if (at.isEmpty()) {
      lines.add("The routine of this job is not among the files at hand.");
    }
    String still = StillLine.of(model);
    if (!still.isBlank()) {
      lines.add(still + ".");
    }
    lines.add("An empty line leads to the bench; help tells what else you can type.");
    return lines;
  }

  private static boolean closed(OpenJob job) {
    return job.state().course().closed();
  }

  static List<String> planLines(Model model) {
    return model
        .job()
        .flatMap(job -> job.standing().counted().plan())
        .map(plan -> List.of(chain(plan, model.settings().units())))
        .or(() -> model.job().filter(job -> !job.makesChain()).map(PlaceLines::pieces))
        .orElseGet(() -> List.of("There is no plan yet; plan sets it."));
  }

  /** What is no chain, kind by kind. */
  private static List<String> pieces(OpenJob job) {
    return job.standing().left().entrySet().stream()
        .map(
            each ->
                "Wanted: "
                    + each.getValue().wanted()
                    + " "
                    + each.getKey()
                    + ", "
                    + each.getValue().good()
                    + " good.")
        .toList();
  }

  private static String chain(Plan plan, UnitStyle units) {
    return "The chain: "
        + plan.links()
        + " links, "
        + plan.rings()
        + " rings, "
        + units.length(plan.lengthMm())
        + " long, wished "
        + units.length(plan.wish().finishedMm())
        + ", "
        + units.mass(plan.massChainG())
        + ".";
  }

  /** What the plan comes to, line by line. */
  static List<String> summary(Model model) {
    OpenJob job = model.job().orElseThrow();
    return FormTalk.summary(PlanSummary.of(job.standing().counted(), model));
  }

  /** Test pieces and the next blank. */
  static List<String> tests(Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    List<String> lines = new ArrayList<>(List.of("Test pieces."));
    Optional<TestPieces> taught = TestPieces.of(job.standing(), job.state());
    lines.add(
        taught
            .map(tests -> proposal(tests, units))
            .orElse("This link has no pattern, so no blank can be proposed."));
    int number = 1;
    for (Map.Entry<EntryId, Fact.TestPieceTried> each : job.state().trials().pieces().entrySet()) {
      lines.add(number + " " + piece(each.getValue(), units) + sample(job, each.getKey()));
      number++;
    }
    lines.add("An empty line logs one; sample makes one the sample link; trial or bench goes on.");
    return lines;
  }

  private static String sample(OpenJob job, EntryId id) {
    boolean is =
        job.state().trials().sample().map(choice -> choice.piece().equals(id)).orElse(false);
    return is ? " This is the sample link." : "";
  }

  private static String proposal(TestPieces tests, UnitStyle units) {
    String wish =
        "Wished link: "
            + units.length(tests.wish().lengthMm())
            + " long, "
            + units.length(tests.wish().widthMm())
            + " wide. ";
    Read<Proposal> next = tests.next();
    return next.problem()
        .map(why -> wish + why)
        .orElseGet(() -> wish + next(next.orThrow(), units));
  }

  private static String next(Proposal next, UnitStyle units) {
    String formers =
        next.formersMm().entrySet().stream()
            .map(each -> each.getKey() + " " + units.length(each.getValue()))
            .collect(Collectors.joining(", "));
    return next.shortfall(units)
        .orElse(
            "Next blank: "
                + units.length(next.blankMm())
                + ", formers "
                + formers
                + "; expected "
                + units.length(next.expected().lengthMm())
                + " give or take "
                + units.length(next.expected().lengthSpreadMm())
                + " long, "
                + units.length(next.expected().widthMm())
                + " give or take "
                + units.length(next.expected().widthSpreadMm())
                + " wide.");
  }

  private static String piece(Fact.TestPieceTried piece, UnitStyle units) {
    String verdict =
        piece.verdicts().isEmpty()
            ? "no verdict"
            : "next one " + String.join(" and ", piece.verdicts());
    return "blank "
        + units.length(piece.blankMm())
        + ": "
        + measured(piece.lengthMm(), units)
        + " long, "
        + measured(piece.widthMm(), units)
        + " wide; "
        + verdict
        + "."
        + (piece.note().isBlank() ? "" : " " + piece.note());
  }

  private static String measured(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : "not measured";
  }

  /** Trial lengths and what each would make of the chain. */
  static List<String> trial(Model model, Screen.Trial screen) {
    UnitStyle units = model.settings().units();
    List<String> lines = new ArrayList<>(List.of("Trial lengths."));
    lines.addAll(planLines(model));
    int number = 1;
    for (TrialLength row : screen.rows()) {
      Fact.TrialMeasured hung = row.trial();
      String made = row.plan().map(plan -> chain(plan, units)).orElse(row.problem());
      lines.add(
          number
              + " "
              + hung.links()
              + " links, "
              + hung.rings()
              + " rings, hung "
              + units.length(hung.hungMm())
              + ". "
              + made
              + (row.followed() ? " The chain follows it." : ""));
      number++;
    }
    lines.add("An empty line logs one; follow makes the chain follow one; bench goes on.");
    return lines;
  }
}
