package linkwright.shell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.LessonFact;
import linkwright.job.Strikes;
import linkwright.lesson.BroughtOver;
import linkwright.lesson.Learner;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.When;

/**
 * The step that a student was at last, by her own book and by the jobs that lie beside it. A step
 * counts once she has said that it comes; without that where it is not asked: while a flame is lit,
 * at one that was said before, and at one that only some jobs have.
 */
final class LastStep {
  private static final String AT_BENCH = "bench/";

  private final Learner nobody;
  private final List<Job> jobs;
  private final Map<EntryId, LessonFact.QuestionAsked> asked = new HashMap<>();
  private final Map<String, Instant> said = new HashMap<>();
  private final List<Seen> seen = new ArrayList<>();

  private LastStep(Learner nobody, List<Job> jobs) {
    this.nobody = nobody;
    this.jobs = jobs;
  }

  /**
   * A job of the bench that she works at.
   *
   * @param slug the name of its book
   * @param routine what it is made by
   */
  record Job(String slug, List<Entry> entries, Routine routine) {}

  /** She was at that step, as routine and step, at that time. */
  record Seen(String step, Instant at) {}

  /**
   * Where she was last; empty if nothing says.
   *
   * @param nobody a student with her id and without entries
   * @param hers the entries of her book
   * @param jobs those beside it
   */
  static Optional<Seen> of(Learner nobody, List<Entry> hers, List<Job> jobs) {
    LastStep last = new LastStep(nobody, jobs);
    hers.forEach(last::entered);
    jobs.forEach(last::worked);
    // Of two at a time the later line.
    return last.seen.stream().reduce((one, next) -> next.at().isBefore(one.at()) ? one : next);
  }

  private void entered(Entry entry) {
    if (entry.fact() instanceof LessonFact.PiecesMade made) {
      // It stands in her book since that was opened; the job itself has the time of it.
      if (jobs.stream().noneMatch(job -> job.slug().equals(made.job()))) {
        seen.add(new Seen(made.routine() + "/" + made.step(), entry.at()));
      }
    } else if (entry.fact() instanceof LessonFact.QuestionAsked question
        && question.lesson().startsWith(AT_BENCH)) {
      asked.put(entry.id(), question);
      if (!isNext(question)) {
        seen(question, entry.at());
      }
    } else if (entry.fact() instanceof LessonFact.QuestionAnswered answered
        && answered.right()
        && asked.containsKey(answered.question())
        && isNext(asked.get(answered.question()))) {
      LessonFact.QuestionAsked question = asked.get(answered.question());
      String[] names = question.item().split("/", -1);
      said.putIfAbsent(next(question.lesson(), names[0], names[2]), entry.at());
      seen(question, entry.at());
    }
  }

  private static boolean isNext(LessonFact.QuestionAsked question) {
    return question.item().contains("/next/");
  }

  /** That a step comes, as it is said at a job. */
  private static String next(String lesson, String routine, String step) {
    return lesson + " " + routine + " " + step;
  }

  /** An item names its routine first and its step third; one of a card names no step. */
  private void seen(LessonFact.QuestionAsked question, Instant at) {
    String[] names = question.item().split("/", -1);
    if (names.length > 2 && !names[0].equals("card")) {
      seen.add(new Seen(names[0] + "/" + names[2], at));
    }
  }

  private void worked(Job job) {
    Strikes strikes = Strikes.in(job.entries());
    for (Entry entry : job.entries()) {
      if (entry.person().equals(nobody.id()) && !strikes.has(entry)) {
        for (StepId step : at(job, entry)) {
          seen.add(new Seen(job.routine().id() + "/" + step, entry.at()));
        }
      }
    }
  }

  /** The steps that an entry of hers says she was at. */
  private Set<StepId> at(Job job, Entry entry) {
    Set<StepId> steps = new HashSet<>();
    if (entry.fact() instanceof Fact.StepOpened opened) {
      if (isShown(job, opened.step(), entry.at())) {
        steps.add(opened.step());
      }
      return steps;
    }
    for (LessonFact fact : BroughtOver.of(nobody, job.slug(), List.of(entry), job.routine())) {
      if (fact instanceof LessonFact.PiecesMade made) {
        steps.add(made.step());
      }
    }
    return steps;
  }

  /** Whether a step was shown to her as it was opened, and nothing asked before. */
  private boolean isShown(Job job, StepId step, Instant at) {
    String question = next(AT_BENCH + job.slug(), job.routine().id(), step.toString());
    boolean known = Optional.ofNullable(said.get(question)).filter(t -> !t.isAfter(at)).isPresent();
    Optional<Step> opened = job.routine().step(step);
    return known
        || isLit(at)
        || opened.filter(each -> !each.detail().when().equals(When.ALWAYS)).isPresent();
  }

  /** Whether the last word on hot work before that time, in any job of the bench, left it open. */
  private boolean isLit(Instant at) {
    return jobs.stream()
        .flatMap(job -> job.entries().stream())
        .filter(entry -> entry.fact() instanceof BenchFact.HotWorkSaid && !entry.at().isAfter(at))
        .reduce((one, next) -> next.at().isBefore(one.at()) ? one : next)
        .map(entry -> ((BenchFact.HotWorkSaid) entry.fact()).state())
        .filter(state -> state == HotWorkState.LIT || state == HotWorkState.HOT)
        .isPresent();
  }
}
