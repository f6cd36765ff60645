package linkwright.coach.student;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.job.LessonFact;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.QuestionBank;
import linkwright.lesson.StudentReport;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;

/** What a student knows, made and is to practise next, in words and tables. */
public final class StudentContent {
  private static final int TENTHS = 10;

  private static final String NONE = "-";

  private StudentContent() {}

  /** Her report, of all routines that she met. */
  public static StudentReport report(Learner learner, Handbook handbook, LocalDate today) {
    Function<Routine, List<Item>> bank =
        routine -> QuestionBank.of(routine, handbook.cautions(), handbook.reference().glossary());
    return report(learner, handbook, bank, today);
  }

  /** The same, with what can be asked of a routine where it is at hand. */
  static StudentReport report(
      Learner learner, Handbook handbook, Function<Routine, List<Item>> bank, LocalDate today) {
    Map<Routine, List<Item>> banks = new LinkedHashMap<>();
    met(learner, handbook).forEach(routine -> banks.put(routine, bank.apply(routine)));
    return StudentReport.of(learner, banks, today);
  }

  /** The routines that she was asked about, made something of, or had signed. */
  static List<Routine> met(Learner learner, Handbook handbook) {
    return handbook.routines().stream().filter(routine -> met(learner, routine.id())).toList();
  }

  private static boolean met(Learner learner, String routine) {
    String of = routine + "/";
    return learner.learnt().items().keySet().stream().anyMatch(item -> item.startsWith(of))
        || learner.made().stream().anyMatch(made -> made.fact().routine().equals(routine))
        || learner.signed().stream().anyMatch(mark -> mark.fact().step().startsWith(of));
  }

  /** All of it, what is to be done next before the rest. */
  public static List<Part> of(StudentReport report, Learner learner, UnitStyle units) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Prose(Prose.Kind.MAIN, next(report, learner)));
    report.practice().forEach(each -> parts.add(Prose.says(proposal(each))));
    if (!report.made().isEmpty()) {
      parts.add(made(report));
      parts.add(weeks(report));
    }
    if (!report.steps().isEmpty()) {
      parts.add(steps(report));
    }
    if (!report.topics().isEmpty()) {
      parts.add(topics(report));
    }
    if (!report.cautions().isEmpty()) {
      parts.add(cautions(report));
    }
    if (!report.metal().isEmpty()) {
      parts.add(metal(report, units));
    }
    for (Learner.Study study : report.studied()) {
      LessonFact.PieceStudied fact = study.fact();
      parts.add(
          Prose.says(
              study.day()
                  + ", "
                  + fact.piece()
                  + ": expected "
                  + fact.expected()
                  + "; got "
                  + fact.got()
                  + "; will change "
                  + fact.change()
                  + "."));
    }
    for (Learner.Marked mark : learner.signed()) {
      LessonFact.Signed fact = mark.fact();
      parts.add(
          Prose.aside(
              mark.day()
                  + ", signed by "
                  + fact.teacher()
                  + ": "
                  + fact.step()
                  + (fact.piece().isEmpty() ? "" : ", " + fact.piece())
                  + (fact.note().isEmpty() ? "" : ": " + fact.note())));
    }
    return parts;
  }

  private static String next(StudentReport report, Learner learner) {
    Optional<Learner.Practice> set =
        learner.practice().isEmpty()
            ? Optional.empty()
            : Optional.of(learner.practice().get(learner.practice().size() - 1));
    String practice =
        set.map(
                each ->
                    " Practice set: "
                        + each.fact().pieces()
                        + " pieces of "
                        + each.fact().exercise()
                        + " on "
                        + each.day().plusDays(each.fact().days())
                        + ".")
            .orElse("");
    return report
            .due()
            .map(
                due ->
                    due.today() > 0
                        ? due.today() + " questions are due today."
                        : "The next questions are due on " + due.next() + ".")
            .orElse("No question waits.")
        + practice;
  }

  private static String proposal(StudentReport.PracticeProposal each) {
    return each.reason()
        + " "
        + each.back()
        + " of "
        + each.of()
        + " at "
        + each.routine()
        + "/"
        + each.step()
        + (each.helps().isEmpty() ? ". " : ": " + each.helps() + " ")
        + "Practise "
        + each.pieces()
        + " pieces in "
        + each.days()
        + " days, and again at that gap, until no more than "
        + percent(each.usual())
        + " go back.";
  }

  private static Table made(StudentReport report) {
    List<Table.Line> lines = new ArrayList<>();
    for (StudentReport.StepMade made : report.made()) {
      String reasons =
          made.redo().entrySet().stream()
              .map(each -> each.getKey() + " " + each.getValue())
              .collect(Collectors.joining(", "));
      lines.add(
          Table.Line.of(
                  made.routine() + "/" + made.step(),
                  "" + made.through(),
                  reasons.isEmpty() ? NONE : reasons,
                  "" + made.scrapped(),
                  percent(made.rate()),
                  percent(made.usualRedo()))
              .with(made.rate() > made.usualRedo() ? Emphasis.TROUBLE : Emphasis.PLAIN));
    }
    return new Table(
        List.of(
            Table.Column.words("made at"),
            Table.Column.numbers("through"),
            Table.Column.words("redo"),
            Table.Column.numbers("scrap"),
            Table.Column.numbers("rate"),
            Table.Column.numbers("usual")),
        lines,
        -1);
  }

  /** A line a week: the rate, and a sign for each tenth of it. */
  private static Table weeks(StudentReport report) {
    List<Table.Line> lines = new ArrayList<>();
    for (StudentReport.Week week : report.weeks()) {
      lines.add(
          Table.Line.of(
              week.monday().toString(),
              percent(week.rate()),
              "#".repeat((int) Math.round(week.rate() * TENTHS))));
    }
    return new Table(
        List.of(
            Table.Column.words("week of"), Table.Column.numbers("redo"), Table.Column.words("")),
        lines,
        -1);
  }

  private static Table steps(StudentReport report) {
    List<Table.Line> lines = new ArrayList<>();
    for (StudentReport.StepKnown step : report.steps()) {
      lines.add(
          Table.Line.of(
              step.routine() + "/" + step.step(),
              step.title(),
              "" + step.known(),
              "" + step.met(),
              "" + step.all(),
              step.signed().isEmpty() ? NONE : step.signed()));
    }
    return new Table(
        List.of(
            Table.Column.words("step"),
            Table.Column.words(""),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.numbers("of"),
            Table.Column.words("signed")),
        lines,
        -1);
  }

  private static Table topics(StudentReport report) {
    List<Table.Line> lines = new ArrayList<>();
    for (StudentReport.TopicKnown each : report.topics()) {
      lines.add(
          Table.Line.of(
              each.topic().words(), "" + each.known(), "" + each.met(), "" + each.wrong()));
    }
    return new Table(
        List.of(
            Table.Column.words("asked about"),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.numbers("wrong last")),
        lines,
        -1);
  }

  private static Table cautions(StudentReport report) {
    List<Table.Line> lines = new ArrayList<>();
    for (StudentReport.CautionKnown caution : report.cautions()) {
      lines.add(
          Table.Line.of(
                  caution.caution(),
                  "" + caution.known(),
                  "" + caution.met(),
                  caution.missedLast() ? "missed last" : NONE)
              .with(caution.missedLast() ? Emphasis.TROUBLE : Emphasis.PLAIN));
    }
    return new Table(
        List.of(
            Table.Column.words("caution"),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.words("")),
        lines,
        -1);
  }

  private static Table metal(StudentReport report, UnitStyle units) {
    List<Table.Line> lines = new ArrayList<>();
    for (LessonFact.MetalCounted counted : report.metal()) {
      lines.add(
          Table.Line.of(
              counted.job(),
              units.mass(counted.outG()),
              units.mass(counted.backG()),
              units.mass(counted.outG() - counted.backG())));
    }
    return new Table(
        List.of(
            Table.Column.words("metal tab"),
            Table.Column.numbers("out"),
            Table.Column.numbers("back"),
            Table.Column.numbers("to pay")),
        lines,
        -1);
  }

  /** What she was asked, with the seed that shuffled it: for her teacher alone. */
  public static Table asked(Learner learner) {
    List<Table.Line> lines = new ArrayList<>();
    for (Learner.QuestionPut put : learner.askings()) {
      lines.add(
          Table.Line.of(
              put.item(),
              put.day().toString(),
              Long.toString(put.seed()),
              put.given().map(given -> given.right() ? "right" : "wrong").orElse("open")));
    }
    return new Table(
        List.of(
            Table.Column.words("asked"),
            Table.Column.words("on"),
            Table.Column.words("seed"),
            Table.Column.words("answered")),
        lines,
        -1);
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }
}
