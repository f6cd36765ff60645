package linkwright.lesson;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.job.LessonFact;
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

  /**
   * Of some items so many known, met and there, and wrong when they were asked last.
   *
   * @param missed how many were ever answered wrong
   * @param since how many that were missed have been right since
   */
  public record Score(int known, int met, int all, int wrong, int missed, int since) {}

  /** A step, and all who signed it, with their days; empty if nobody did. */
  public record StepKnown(String routine, StepId step, String title, Score score, String signed) {}

  /** A topic. */
  public record TopicKnown(Topic topic, Score score) {}

  /** A caution. */
  public record CautionKnown(String caution, Score score) {}

  /** Redo in a week that begins on that Monday: so many back, so many through. */
  public record Week(LocalDate monday, int back, int through) {
    /** Its share of redo, 0 to 1. */
    public double rate() {
      return StepMade.share(back, through);
    }
  }

  /** Items that wait to be asked again. */
  public record Due(int today, LocalDate next) {}

  /**
   * The report.
   *
   * @param learner the student
   * @param banks routine → what can be asked of it
   * @param today the day
   */
  public static StudentReport of(Learner learner, Map<Routine, List<Item>> banks, LocalDate today) {
    List<Item> all = banks.values().stream().flatMap(List::stream).toList();
    List<StepKnown> steps = new ArrayList<>();
    banks.forEach((routine, bank) -> steps.addAll(steps(learner, routine, bank)));
    List<StepMade> made = StepMade.of(learner, banks.keySet());
    return new StudentReport(
        steps,
        Arrays.stream(Topic.values())
            .map(topic -> new TopicKnown(topic, score(learner, all, i -> i.topic() == topic)))
            .filter(row -> row.score().met() > 0)
            .toList(),
        all.stream()
            .map(Item::caution)
            .filter(card -> !card.isEmpty())
            .distinct()
            .sorted()
            .map(card -> new CautionKnown(card, score(learner, all, i -> i.caution().equals(card))))
            .filter(row -> row.score().met() > 0)
            .toList(),
        made,
        weeks(learner),
        PracticeProposal.of(made, banks.keySet(), learner.learnt().gapDays()),
        due(learner, all, today),
        List.copyOf(new TreeMap<>(learner.metal()).values()),
        learner.studied());
  }

  /** How those of some items stand; one that several routines have counts once. */
  private static Score score(Learner learner, List<Item> items, Predicate<Item> which) {
    Recall learnt = learner.learnt();
    List<String> all = items.stream().filter(which).map(Item::id).distinct().toList();
    List<String> met = all.stream().filter(item -> !learnt.answers(item).isEmpty()).toList();
    return new Score(
        (int) met.stream().filter(learnt::known).count(),
        met.size(),
        all.size(),
        (int) met.stream().filter(item -> wrongLast(learnt.answers(item))).count(),
        (int) met.stream().filter(learnt::missed).count(),
        (int)
            met.stream()
                .filter(item -> learnt.missed(item) && !wrongLast(learnt.answers(item)))
                .count());
  }

  private static boolean wrongLast(List<Recall.Answer> answers) {
    return !answers.get(answers.size() - 1).right();
  }

  private static List<StepKnown> steps(Learner learner, Routine routine, List<Item> bank) {
    List<StepKnown> rows = new ArrayList<>();
    for (Step step : routine.steps()) {
      Score score = score(learner, bank, item -> item.step().equals(step.id()));
      String signed =
          learner.signed().stream()
              .filter(mark -> mark.fact().step().equals(routine.id() + "/" + step.id()))
              .map(mark -> mark.fact().teacher() + " " + mark.day())
              .collect(Collectors.joining(", "));
      if (score.met() > 0 || !signed.isEmpty()) {
        rows.add(new StepKnown(routine.id(), step.id(), step.title(), score, signed));
      }
    }
    return rows;
  }

  private static List<Week> weeks(Learner learner) {
    Map<LocalDate, Week> weeks = new TreeMap<>();
    for (Learner.Made made : learner.made()) {
      LocalDate monday = made.day().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
      int back = made.fact().redo().values().stream().mapToInt(Integer::intValue).sum();
      weeks.merge(
          monday,
          new Week(monday, back, made.fact().through()),
          (one, more) ->
              new Week(monday, one.back() + more.back(), one.through() + more.through()));
    }
    return List.copyOf(weeks.values());
  }

  /** What no routine asks any more never waits. */
  private static Optional<Due> due(Learner learner, List<Item> asked, LocalDate today) {
    List<LocalDate> days =
        asked.stream()
            .map(Item::id)
            .distinct()
            .flatMap(item -> learner.learnt().due(item).stream())
            .sorted()
            .toList();
    int now = (int) days.stream().filter(day -> !day.isAfter(today)).count();
    return days.stream().findFirst().map(next -> new Due(now, next));
  }
}
