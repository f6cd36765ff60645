package linkwright.lesson;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import linkwright.job.LessonFact;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;

/**
 * What a teacher wants to know of a student: what she knows, what she made, what comes next.
 *
 * @param steps the steps of the routines she met, those alone of which something is known
 * @param topics what she was asked about, by topic
 * @param cautions the cautions she was asked about
 * @param made what she made, by routine and step
 * @param weeks redo by week, the first before the others
 * @param practice what to practise next
 * @param due how many items are due, and from which day on; empty if none waits
 * @param metal what she took and brought back, by job
 * @param studied pieces she studied
 */
public record StudentReport(
    List<StepKnown> steps,
    List<TopicKnown> topics,
    List<CautionKnown> cautions,
    List<StepMade> made,
    List<Week> weeks,
    List<PracticeProposal> practice,
    Optional<Due> due,
    List<LessonFact.MetalCounted> metal,
    List<Learner.Study> studied) {
  public StudentReport {
    steps = List.copyOf(steps);
    topics = List.copyOf(topics);
    cautions = List.copyOf(cautions);
    made = List.copyOf(made);
    weeks = List.copyOf(weeks);
    practice = List.copyOf(practice);
    metal = List.copyOf(metal);
    studied = List.copyOf(studied);
  }

  /** A step: of its items so many known, met and there; who signed it, empty if nobody did. */
  public record StepKnown(
      String routine, StepId step, String title, int known, int met, int all, String signed) {}

  /** A topic: of its items so many known, met, and wrong when asked last. */
  public record TopicKnown(Topic topic, int known, int met, int wrong) {}

  /** A caution: of its items so many known and met, and whether one was wrong when asked last. */
  public record CautionKnown(String caution, int known, int met, boolean missedLast) {}

  /** Pieces of a step: through, back by reason, scrapped; the routine's usual share of redo. */
  public record StepMade(
      String routine,
      StepId step,
      int through,
      Map<String, Integer> redo,
      int scrapped,
      double usualRedo) {
    /** All that went back. */
    public int back() {
      return redo.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Its share of redo, 0 to 1; 0 where nothing was made. */
    public double rate() {
      return share(back(), through);
    }
  }

  /** Redo in a week that begins on that Monday: so many back, so many through. */
  public record Week(LocalDate monday, int back, int through) {
    /** Its share of redo, 0 to 1. */
    public double rate() {
      return share(back, through);
    }
  }

  /**
   * Practice that is proposed: so many pieces of a step on that day, and so on at equal gaps until
   * the rate is the usual one.
   *
   * @param reason what goes back most
   * @param back so often, of so many
   * @param helps what helps against it, from the routine; may be empty
   */
  public record PracticeProposal(
      String routine,
      StepId step,
      int pieces,
      int days,
      String reason,
      int back,
      int of,
      double usual,
      String helps) {}

  /** Items that wait to be asked again. */
  public record Due(int today, LocalDate next) {}

  private static double share(int back, int through) {
    return back + through == 0 ? 0 : (double) back / (back + through);
  }

  /** Fewest and most pieces of an exercise; five is where teachers begin to count one competent. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  /**
   * The report.
   *
   * @param learner the student
   * @param banks routine → what can be asked of it
   * @param today the day
   */
  public static StudentReport of(Learner learner, Map<Routine, List<Item>> banks, LocalDate today) {
    List<StepKnown> steps = new ArrayList<>();
    banks.forEach((routine, bank) -> steps.addAll(steps(learner, routine, bank)));
    List<StepMade> made = made(learner, banks);
    return new StudentReport(
        steps,
        topics(learner, banks),
        cautions(learner, banks),
        made,
        weeks(learner),
        proposals(made, banks, learner.learnt().gapDays()),
        due(learner, today),
        List.copyOf(new TreeMap<>(learner.metal()).values()),
        learner.studied());
  }

  private static List<StepKnown> steps(Learner learner, Routine routine, List<Item> bank) {
    List<StepKnown> rows = new ArrayList<>();
    for (Step step : routine.steps()) {
      List<Item> here = bank.stream().filter(item -> item.step().equals(step.id())).toList();
      int known = (int) here.stream().filter(item -> learner.learnt().known(item.id())).count();
      int met =
          (int)
              here.stream().filter(item -> !learner.learnt().answers(item.id()).isEmpty()).count();
      String signed = "";
      for (Learner.Marked mark : learner.signed()) {
        boolean its = mark.fact().step().equals(routine.id() + "/" + step.id());
        signed = its ? mark.fact().teacher() + " " + mark.day() : signed;
      }
      if (met > 0 || !signed.isEmpty()) {
        rows.add(
            new StepKnown(routine.id(), step.id(), step.title(), known, met, here.size(), signed));
      }
    }
    return rows;
  }

  private static List<TopicKnown> topics(Learner learner, Map<Routine, List<Item>> banks) {
    List<TopicKnown> rows = new ArrayList<>();
    for (Topic topic : Topic.values()) {
      List<String> met =
          banks.values().stream()
              .flatMap(List::stream)
              .filter(item -> item.topic() == topic)
              .map(Item::id)
              .distinct()
              .filter(item -> !learner.learnt().answers(item).isEmpty())
              .toList();
      if (!met.isEmpty()) {
        long known = met.stream().filter(learner.learnt()::known).count();
        long wrong = met.stream().filter(item -> wrongLast(learner, item)).count();
        rows.add(new TopicKnown(topic, (int) known, met.size(), (int) wrong));
      }
    }
    return rows;
  }

  private static boolean wrongLast(Learner learner, String item) {
    List<Recall.Answer> answers = learner.learnt().answers(item);
    return !answers.get(answers.size() - 1).right();
  }

  private static List<CautionKnown> cautions(Learner learner, Map<Routine, List<Item>> banks) {
    Map<String, List<String>> items = new TreeMap<>();
    banks.values().stream()
        .flatMap(List::stream)
        .filter(item -> !item.caution().isEmpty())
        .filter(item -> !learner.learnt().answers(item.id()).isEmpty())
        .forEach(
            item -> {
              List<String> its = items.computeIfAbsent(item.caution(), any -> new ArrayList<>());
              if (!its.contains(item.id())) {
                its.add(item.id());
              }
            });
    List<CautionKnown> rows = new ArrayList<>();
    items.forEach(
        (caution, its) -> {
          long known = its.stream().filter(learner.learnt()::known).count();
          boolean missed = its.stream().anyMatch(item -> wrongLast(learner, item));
          rows.add(new CautionKnown(caution, (int) known, its.size(), missed));
        });
    return rows;
  }

  private static List<StepMade> made(Learner learner, Map<Routine, List<Item>> banks) {
    Map<String, StepMade> sums = new LinkedHashMap<>();
    for (Learner.Made made : learner.made()) {
      LessonFact.PiecesMade fact = made.fact();
      double usual =
          banks.keySet().stream()
              .filter(routine -> routine.id().equals(fact.routine()))
              .mapToDouble(Routine::usualRedo)
              .findFirst()
              .orElse(0);
      sums.merge(
          fact.routine() + "/" + fact.step(),
          new StepMade(
              fact.routine(), fact.step(), fact.through(), fact.redo(), fact.scrapped(), usual),
          StudentReport::both);
    }
    return List.copyOf(sums.values());
  }

  private static StepMade both(StepMade one, StepMade other) {
    Map<String, Integer> redo = new LinkedHashMap<>(one.redo());
    other.redo().forEach((reason, count) -> redo.merge(reason, count, Integer::sum));
    return new StepMade(
        one.routine(),
        one.step(),
        one.through() + other.through(),
        redo,
        one.scrapped() + other.scrapped(),
        one.usualRedo());
  }

  private static List<Week> weeks(Learner learner) {
    Map<LocalDate, int[]> weeks = new TreeMap<>();
    for (Learner.Made made : learner.made()) {
      LocalDate monday = made.day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
      int[] sums = weeks.computeIfAbsent(monday, any -> new int[2]);
      sums[0] += made.fact().redo().values().stream().mapToInt(Integer::intValue).sum();
      sums[1] += made.fact().through();
    }
    List<Week> rows = new ArrayList<>();
    weeks.forEach((monday, sums) -> rows.add(new Week(monday, sums[0], sums[1])));
    return rows;
  }

  /**
   * One for each step that goes back more often than is usual: as many pieces as would hold one
   * failure at the usual rate, so that a better rate can be told.
   */
  private static List<PracticeProposal> proposals(
      List<StepMade> made, Map<Routine, List<Item>> banks, int gapDays) {
    List<PracticeProposal> rows = new ArrayList<>();
    for (StepMade step : made) {
      if (step.back() == 0 || step.rate() <= step.usualRedo()) {
        continue;
      }
      String most =
          step.redo().entrySet().stream()
              .max(Map.Entry.comparingByValue())
              .map(Map.Entry::getKey)
              .orElse("");
      int pieces =
          step.usualRedo() > 0
              ? (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(1 / step.usualRedo())))
              : FEWEST;
      rows.add(
          new PracticeProposal(
              step.routine(),
              step.step(),
              pieces,
              gapDays,
              most,
              step.redo().getOrDefault(most, 0),
              step.back() + step.through(),
              step.usualRedo(),
              helps(banks, step, most)));
    }
    return rows;
  }

  /** What the routine says against that fault, at the step itself before all others. */
  private static String helps(Map<Routine, List<Item>> banks, StepMade made, String reason) {
    List<Step> steps =
        banks.keySet().stream()
            .filter(routine -> routine.id().equals(made.routine()))
            .flatMap(routine -> routine.steps().stream())
            .toList();
    Optional<String> here =
        remedy(steps.stream().filter(s -> s.id().equals(made.step())).toList(), reason);
    return here.or(() -> remedy(steps, reason)).orElse("");
  }

  private static Optional<String> remedy(List<Step> steps, String reason) {
    return steps.stream()
        .flatMap(step -> step.wrong().stream())
        .filter(remedy -> remedy.reason().equals(reason))
        .map(Remedy::remedy)
        .findFirst();
  }

  private static Optional<Due> due(Learner learner, LocalDate today) {
    int now = 0;
    Optional<LocalDate> next = Optional.empty();
    for (String item : learner.learnt().items().keySet()) {
      Optional<LocalDate> day = learner.learnt().due(item);
      now += day.filter(on -> !on.isAfter(today)).isPresent() ? 1 : 0;
      if (day.isPresent() && next.map(day.get()::isBefore).orElse(true)) {
        next = day;
      }
    }
    int waits = now;
    return next.map(day -> new Due(waits, day));
  }
}
