package linkwright.routine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a routine says besides its stages holds together. */
final class DetailChecks {
  /** Grades of solder, the hottest first. */
  static final List<String> GRADES = List.of("hard", "medium", "easy", "extra easy");

  private static final int FEWEST_ANSWERS = 2;

  private DetailChecks() {}

  static List<Finding> aFormerNameLeadsToOneStep(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Set<StepId> taken = new HashSet<>();
    routine.steps().forEach(step -> taken.add(step.id()));
    for (Step step : routine.steps()) {
      for (StepId former : step.detail().formerIds()) {
        if (!taken.add(former)) {
          findings.add(
              Finding.at(
                  step,
                  "was",
                  "Step %s says that it was called \"%s\", which another step is or was."
                      .formatted(step.id(), former),
                  "Each name leads to one step."));
        }
      }
    }
    return findings;
  }

  static List<Finding> aLoopLeadsBack(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    List<StepId> before = new ArrayList<>();
    for (Step step : routine.steps()) {
      before.add(step.id());
      step.detail()
          .loop()
          .filter(loop -> !before.contains(loop.backTo()))
          .ifPresent(
              loop ->
                  findings.add(
                      Finding.at(
                          step,
                          "loop",
                          "Step %s goes back to \"%s\", which is no step before it."
                              .formatted(step.id(), loop.backTo()),
                          Known.nearest(loop.backTo().word(), StepId.words(before)))));
    }
    return findings;
  }

  static List<Finding> whatAStepNeedsIsMadeBefore(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Map<PieceKind, List<Stage>> made = new LinkedHashMap<>();
    for (Step step : routine.steps()) {
      step.detail()
          .needs()
          .forEach(
              (kind, stage) -> {
                List<Stage> before = made.getOrDefault(kind, List.of());
                if (step.stage().containsKey(kind) || !before.contains(stage)) {
                  findings.add(
                      Finding.at(
                          step,
                          "needs",
                          "Step %s needs the %s \"%s\", which no step before it makes of another kind of piece."
                              .formatted(step.id(), kind, stage),
                          "Name a kind that it does not move itself, and a stage that an earlier"
                              + " step reaches."));
                }
              });
      step.stage()
          .forEach(
              (kind, stage) -> made.computeIfAbsent(kind, any -> new ArrayList<>()).add(stage));
    }
    return findings;
  }

  static List<Finding> everyGradeIsKnown(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      step.detail()
          .solder()
          .forEach(
              (joint, grade) -> {
                if (!GRADES.contains(grade)) {
                  findings.add(
                      Finding.at(
                          step,
                          "solder",
                          "Step %s solders %s with \"%s\", which is no grade."
                              .formatted(step.id(), joint, grade),
                          Known.nearest(grade, GRADES)));
                }
              });
    }
    return findings;
  }

  static List<Finding> everyKindOfPieceIsMade(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    routine
        .detail()
        .kinds()
        .forEach(
            (kind, piece) -> {
              if (!routine.pieces().containsKey(kind)) {
                findings.add(
                    Finding.ofFile(
                        "kinds",
                        "There is no kind of piece \"%s\".".formatted(kind),
                        Known.nearest(kind.id(), PieceKind.words(routine.pieces().keySet()))));
              }
              if (piece.perRepeat() > 1 && !counts(routine, kind, piece)) {
                findings.add(
                    Finding.ofFile(
                        "kinds",
                        "A repeat is counted in links alone, not in \"%s\".".formatted(kind),
                        "Leave its per-repeat out: a ring comes after every link, and other kinds"
                            + " are not counted."));
              }
              if (!piece.pattern().isEmpty() && !known.patterns().contains(piece.pattern())) {
                findings.add(
                    Finding.ofFile(
                        "kinds",
                        "There is no link pattern \"%s\".".formatted(piece.pattern()),
                        Known.nearest(piece.pattern(), known.patterns())));
              }
            });
    return findings;
  }

  /** Links are counted to a repeat, and a ring to each; an older file says so of rings too. */
  private static boolean counts(Routine routine, PieceKind kind, PieceDetail piece) {
    PieceDetail links = routine.detail().kinds().get(PieceKind.LINK);
    boolean ringToEach = links != null && links.perRepeat() == piece.perRepeat();
    return kind.equals(PieceKind.LINK) || (kind.equals(PieceKind.RING) && ringToEach);
  }

  static List<Finding> everyQuestionHasAChoice(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (StudyQuestion question : routine.detail().questions()) {
      if (!hasAChoice(question)) {
        findings.add(Finding.ofFile("questions", noChoice(question), MORE_ANSWERS));
      }
    }
    for (Step step : routine.steps()) {
      for (StudyQuestion question : step.detail().questions()) {
        if (!hasAChoice(question)) {
          findings.add(Finding.at(step, "questions", noChoice(question), MORE_ANSWERS));
        }
      }
    }
    return findings;
  }

  private static final String MORE_ANSWERS =
      "Give two answers or more, each once, the right one first.";

  private static boolean hasAChoice(StudyQuestion question) {
    return new HashSet<>(question.answers()).size() == question.answers().size()
        && question.answers().size() >= FEWEST_ANSWERS;
  }

  private static String noChoice(StudyQuestion question) {
    return "The question \"%s\" leaves no choice.".formatted(question.asks());
  }
}
