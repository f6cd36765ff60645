package linkwright.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.job.Strikes;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.routine.StepId;

/**
 * What a student made in a job, brought over from the job's book into hers: only her own entries,
 * and each once. What is struck later in the job stays in hers as it was brought.
 */
public final class BroughtOver {
  private final String student;
  private final Map<StepId, int[]> counts = new LinkedHashMap<>();
  private final Map<StepId, Map<String, Integer>> redo = new HashMap<>();

  private BroughtOver(String student) {
    this.student = student;
  }

  /**
   * What is new of a job.
   *
   * @param learner the student as her book tells of her so far
   * @param slug the job's book
   * @param entries its entries
   * @param routine its routine
   */
  public static List<LessonFact> of(
      Learner learner, String slug, List<Entry> entries, Routine routine) {
    Strikes strikes = Strikes.in(entries);
    BroughtOver over = new BroughtOver(learner.id());
    Optional<EntryId> last = upTo(learner, slug);
    int from = 0;
    for (int i = 0; i < entries.size(); i++) {
      from = last.filter(entries.get(i).id()::equals).isPresent() ? i + 1 : from;
    }
    List<Entry> fresh = entries.subList(from, entries.size());
    fresh.stream()
        .filter(entry -> !strikes.has(entry))
        .forEach(entry -> over.entry(entry, routine));
    List<LessonFact> facts = new ArrayList<>();
    over.counts.forEach(
        (step, count) ->
            facts.add(
                new LessonFact.PiecesMade(
                    slug,
                    routine.id(),
                    step,
                    count[0],
                    over.redo.getOrDefault(step, Map.of()),
                    count[1],
                    fresh.get(fresh.size() - 1).id())));
    over.metal(learner, slug, entries, strikes).ifPresent(facts::add);
    return facts;
  }

  private static Optional<EntryId> upTo(Learner learner, String slug) {
    Optional<EntryId> last = Optional.empty();
    for (Learner.Made made : learner.made()) {
      last = made.fact().job().equals(slug) ? Optional.of(made.fact().upTo()) : last;
    }
    return last;
  }

  private void entry(Entry entry, Routine routine) {
    if (!entry.person().equals(student)) {
      return;
    }
    Fact fact = entry.fact();
    if (fact instanceof Fact.PiecesThrough through) {
      count(step(through.step(), through.stage(), routine))[0] +=
          through.pieces().values().stream().findFirst().orElse(0);
    } else if (fact instanceof Fact.PiecesSentBack back) {
      StepId step = step(StepId.NONE, back.from(), routine);
      count(step);
      redo.computeIfAbsent(step, any -> new LinkedHashMap<>())
          .merge(back.reason(), back.count(), Integer::sum);
    } else if (fact instanceof Fact.PiecesScrapped scrapped) {
      count(step(StepId.NONE, scrapped.stage(), routine))[1] += scrapped.count();
    }
  }

  private int[] count(StepId step) {
    return counts.computeIfAbsent(step, any -> new int[2]);
  }

  private static StepId step(StepId named, Stage stage, Routine routine) {
    return named.isEmpty()
        ? routine.steps().stream()
            .filter(step -> step.stage().containsValue(stage))
            .findFirst()
            .map(step -> step.id())
            .orElse(new StepId(stage.id()))
        : named;
  }

  /** What she was given and what came back of it, once it is another sum than the one she has. */
  private Optional<LessonFact> metal(
      Learner learner, String slug, List<Entry> entries, Strikes strikes) {
    double out = 0;
    double back = 0;
    for (Entry entry : entries) {
      if (entry.person().equals(student) && !strikes.has(entry)) {
        if (entry.fact() instanceof Fact.MetalWeighedOut weighed) {
          out += weighed.massG();
        } else if (entry.fact() instanceof Fact.WeighedIn in) {
          back = back(in);
        }
      }
    }
    LessonFact.MetalCounted counted = new LessonFact.MetalCounted(slug, out, back);
    boolean known = counted.equals(learner.metal().get(slug));
    return (out == 0 && back == 0) || known ? Optional.empty() : Optional.of(counted);
  }

  private static double back(Fact.WeighedIn in) {
    double sum = 0;
    for (OptionalDouble some :
        List.of(
            in.chainG(),
            in.wireReturnedG(),
            in.cleanScrapG(),
            in.solderedScrapG(),
            in.filingsG(),
            in.sweepsG())) {
      sum += some.orElse(0);
    }
    return sum;
  }
}
