package linkwright.coach.student;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.job.LessonFact;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.PracticeProposal;
import linkwright.lesson.QuestionBank;
import linkwright.lesson.StudentReport;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.standing.Handbook;

/** What a student knows, made and is to practise next, in words and tables. */
public final class StudentContent {
  private static final int TENTHS = 10;

  private static final String NONE = "-";

  private StudentContent() {}

  /** Her report, of all routines that she met. */
  public static StudentReport report(Learner learner, Handbook handbook, LocalDate today) {
    Function<Routine, List<Item>> bank =
        routine -> QuestionBank.of(routine, handbook.cautions(), handbook.reference());
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
  public static List<Part> of(
      StudentReport report, Learner learner, Handbook handbook, UnitStyle units, TradeWords words) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Prose(Prose.Kind.MAIN, next(report, learner, handbook)));
    report.practice().forEach(each -> parts.add(Prose.says(proposal(each))));
    Stream.of(
            made(report, words),
            weeks(report),
            steps(report, words),
            topics(report),
            cautions(report, handbook, words),
            metal(report, units))
        .filter(table -> !table.lines().isEmpty())
        .forEach(parts::add);
    for (Learner.Study study : report.studied()) {
      LessonFact.PieceStudied fact = study.fact();
      parts.add(
          Prose.says(
              study.day()
                  + ", "
                  + fact.piece()
                  + ": "
                  + Stream.of(
                          said("expected ", fact.expected()),
                          said("got ", fact.got()),
                          said("will change ", fact.change()))
                      .flatMap(Optional::stream)
                      .collect(Collectors.joining("; "))
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
                  + Stream.of(handbook.stepTitle(fact.step()), fact.piece())
                      .filter(text -> !text.isEmpty())
                      .collect(Collectors.joining(", "))
                  + (fact.note().isEmpty() ? "" : ": " + fact.note())));
    }
    return parts;
  }

  /** A part of a study; empty where nothing was written. */
  private static Optional<String> said(String before, String text) {
    return text.isBlank() ? Optional.empty() : Optional.of(before + text);
  }

  private static String next(StudentReport report, Learner learner, Handbook handbook) {
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
                        + handbook.stepTitle(each.fact().exercise())
                        + " on "
                        + each.day().plusDays(each.fact().days())
                        + ".")
            .orElse("");
    return report
            .due()
            .map(
                due ->
                    due.today() > 0
                        ? (due.today() == 1 ? "1 question is" : due.today() + " questions are")
                            + " due today."
                        : "The next questions are due on " + due.next() + ".")
            .orElse("No question waits.")
        + practice;
  }

  private static String proposal(PracticeProposal each) {
    return each.reason()
        + " "
        + each.back()
        + " of "
        + each.of()
        + " at "
        + each.at().title()
        + (each.helps().isEmpty() ? ". " : ": " + each.helps() + " ")
        + "Practise "
        + each.pieces()
        + " pieces in "
        + each.days()
        + " days, and again at that gap, until no more than "
        + percent(each.at().usualRedo())
        + " go back.";
  }

  private static Table made(StudentReport report, TradeWords words) {
    return Table.of(
        List.of(
            Table.Column.words("made at"),
            Table.Column.numbers("through"),
            Table.Column.words("redo"),
            Table.Column.numbers("scrap"),
            Table.Column.numbers("rate"),
            Table.Column.numbers("usual")),
        report.made(),
        made ->
            Table.Line.of(
                    words.show(made.title()),
                    "" + made.through(),
                    made.redo().entrySet().stream()
                        .map(each -> each.getKey() + " " + each.getValue())
                        .reduce((one, other) -> one + ", " + other)
                        .orElse(NONE),
                    "" + made.scrapped(),
                    percent(made.rate()),
                    percent(made.usualRedo()))
                .with(made.rate() > made.usualRedo() ? Emphasis.TROUBLE : Emphasis.PLAIN));
  }

  /** A line a week: the rate, and a sign for each tenth of it. */
  private static Table weeks(StudentReport report) {
    return Table.of(
        List.of(
            Table.Column.words("week of"),
            Table.Column.numbers("redo"),
            Table.Column.words("each # a tenth")),
        report.weeks(),
        week ->
            Table.Line.of(
                week.monday().toString(),
                percent(week.rate()),
                "#".repeat((int) Math.round(week.rate() * TENTHS))));
  }

  private static Table steps(StudentReport report, TradeWords words) {
    return Table.of(
        List.of(
            Table.Column.words("step"),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.numbers("in all"),
            Table.Column.numbers("missed"),
            Table.Column.words("signed")),
        report.steps(),
        step ->
            Table.Line.of(
                words.show(step.title()) + " (" + step.routine().replace('-', ' ') + ")",
                "" + step.score().known(),
                "" + step.score().met(),
                "" + step.score().all(),
                "" + step.score().missed(),
                step.signed().isEmpty() ? NONE : step.signed()));
  }

  private static Table topics(StudentReport report) {
    return Table.of(
        List.of(
            Table.Column.words("asked about"),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.numbers("missed"),
            Table.Column.numbers("right since")),
        report.topics(),
        each ->
            Table.Line.of(
                each.topic().words(),
                "" + each.score().known(),
                "" + each.score().met(),
                "" + each.score().missed(),
                "" + each.score().since()));
  }

  private static Table cautions(StudentReport report, Handbook handbook, TradeWords words) {
    return Table.of(
        List.of(
            Table.Column.words("caution"),
            Table.Column.numbers("known"),
            Table.Column.numbers("asked"),
            Table.Column.numbers("missed"),
            Table.Column.numbers("right since")),
        report.cautions(),
        caution ->
            Table.Line.of(
                    handbook
                        .caution(caution.caution())
                        .map(card -> words.show(card.title()))
                        .orElse(caution.caution()),
                    "" + caution.score().known(),
                    "" + caution.score().met(),
                    "" + caution.score().missed(),
                    "" + caution.score().since())
                .with(caution.score().wrong() > 0 ? Emphasis.TROUBLE : Emphasis.PLAIN));
  }

  private static Table metal(StudentReport report, UnitStyle units) {
    return Table.of(
        List.of(
            Table.Column.words("metal tab"),
            Table.Column.numbers("out"),
            Table.Column.numbers("back"),
            Table.Column.numbers("to pay")),
        report.metal(),
        counted ->
            Table.Line.of(
                counted.job(),
                units.mass(counted.outG()),
                units.mass(counted.backG()),
                units.mass(counted.toPayG())));
  }

  /** What she was asked, with the seed that shuffled it: for her teacher alone. */
  public static Table asked(Learner learner) {
    return Table.of(
        List.of(
            Table.Column.words("asked"),
            Table.Column.words("on"),
            Table.Column.words("seed"),
            Table.Column.words("answered")),
        learner.askings(),
        put ->
            Table.Line.of(
                put.item(),
                put.day().toString(),
                Long.toString(put.seed()),
                put.given().map(given -> given.right() ? "right" : "wrong").orElse("open")));
  }

  private static String percent(double share) {
    return Decimals.percent(share, 0);
  }
}
