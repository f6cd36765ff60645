package linkwright.coach.bench;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.Strikes;

/**
 * Nobody is at the bench: what was entered last, what waits, what was open, whether a flame is lit.
 * After a long pause it is told before the first step.
 */
final class BenchAway {
  /** After so long nobody has all of it in her head. */
  private static final Duration LONG = Duration.ofHours(4);

  /** What says nothing of the work itself. */
  private static final Set<Class<? extends Fact>> BESIDE =
      Set.of(
          Fact.SittingStarted.class,
          Fact.SteppedAway.class,
          BenchFact.SittingEnded.class,
          BenchFact.HotWorkSaid.class,
          Fact.CautionSeen.class,
          Fact.StepOpened.class,
          Fact.Struck.class);

  private BenchAway() {}

  /** Whether it is told first where the work goes on: on another day, or after hours. */
  static boolean toldFirst(Model model) {
    OpenJob job = model.job().orElseThrow();
    Optional<Instant> last =
        job.entries().stream()
            .filter(entry -> entry.device().equals(job.device()))
            .map(Entry::at)
            .reduce((first, second) -> second);
    boolean worked =
        job.entries().stream().anyMatch(entry -> entry.fact() instanceof Fact.SittingStarted);
    ZoneId zone = model.settings().zone();
    return worked
        && last.filter(
                at ->
                    Duration.between(at, model.now()).compareTo(LONG) >= 0
                        || at.atZone(zone)
                            .toLocalDate()
                            .isBefore(model.now().atZone(zone).toLocalDate()))
            .isPresent();
  }

  static List<Part> parts(Model model, AtBench at) {
    List<Part> parts = new ArrayList<>();
    boolean closed = BenchSitting.closed(model);
    if (closed) {
      parts.add(new Prose(Prose.Kind.HEAD, "Closed"));
      parts.add(new Prose(Prose.Kind.MAIN, BenchSitting.CLOSED));
    } else {
      parts.add(new Prose(Prose.Kind.HEAD, "Away from the bench"));
      parts.add(new Prose(Prose.Kind.MAIN, "{do:back-at-bench}: back at the bench"));
      parts.add(Prose.says("The hours stand still; timers go on."));
    }
    BenchContent.next(model).ifPresent(parts::add);
    last(model)
        .ifPresent(
            entry ->
                parts.add(
                    Prose.says(
                        "Last entered "
                            + HotWorkWords.at(model, entry.at())
                            + (entry.person().isEmpty() ? "" : " by “" + entry.person() + "”")
                            + ": "
                            + EntryWords.quoted(entry.fact(), model)
                            + ".")));
    String step =
        model.learning().hides(at.step().id())
            ? "; which, is said before it is shown."
            : ", “" + JobWords.fill(at.step().title(), model) + "”.";
    parts.add(Prose.says((closed ? "Open last: step " : "Open: step ") + at.number() + step));
    String pieces = WaitingWords.line(WaitingWords.waiting(model));
    parts.add(Prose.says(pieces.isEmpty() ? "No piece waits." : "Waiting: " + pieces + "."));
    timers(model).ifPresent(parts::add);
    if (model.hotWork().open()) {
      parts.add(Prose.says(HotWorkWords.asks(model)));
    } else if (model.watch().isEmpty()) {
      parts.add(Prose.says("No flame is lit by what the books say."));
    }
    return parts;
  }

  private static Optional<Entry> last(Model model) {
    List<Entry> entries = model.job().orElseThrow().entries();
    Strikes strikes = Strikes.in(entries);
    return entries.stream()
        .filter(entry -> !strikes.has(entry) && !BESIDE.contains(entry.fact().getClass()))
        .reduce((first, second) -> second);
  }

  /** All that runs or is due, of whatever job. */
  private static Optional<Part> timers(Model model) {
    String waits =
        model.waits().stream()
            .map(wait -> wait.named() + " " + left(model, wait))
            .collect(Collectors.joining(", "));
    return waits.isEmpty() ? Optional.empty() : Optional.of(Prose.says("Timers: " + waits + "."));
  }

  private static String left(Model model, JobWait wait) {
    return wait.run().rings(model.steady())
        ? "due"
        : Clock.running(wait.run().left(model.steady()).toSeconds());
  }
}
