package linkwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linkwright.routine.StepId;

/**
 * What one book tells of flames: what was said of hot work, when each step was worked at last, and
 * the fire watches that were ended for a reason. No strike reaches it: metal that was counted by
 * mistake was heated all the same.
 *
 * @param said the words, in the book's order
 * @param worked step → the last count or wait there, but for what was only taken out of a wait
 * @param takenOut step → the last count after a wait that was begun there
 * @param ended the entries whose watch was ended
 */
public record FlameLog(
    List<Said> said, Map<StepId, Heat> worked, Map<StepId, Heat> takenOut, Set<EntryId> ended) {
  static final FlameLog NONE = new FlameLog(List.of(), Map.of(), Map.of(), Set.of());

  /**
   * One word, in the book alone.
   *
   * @param id the entry
   * @param at when; never before the word before it
   * @param state what was said
   * @param person who said it
   * @param answers the words that are over with it; absent in an older book
   * @param of the book that holds these; empty for the same
   */
  public record Said(
      EntryId id,
      Instant at,
      HotWorkState state,
      String person,
      Optional<List<EntryId>> answers,
      String of) {
    public Said {
      answers = answers.map(List::copyOf);
    }
  }

  FlameLog after(Entry entry, Course before) {
    Fact fact = entry.fact();
    if (fact instanceof BenchFact.HotWorkSaid word) {
      List<Said> more = new ArrayList<>(said);
      more.add(
          new Said(
              entry.id(),
              notBefore(entry.at()),
              word.state(),
              entry.person(),
              word.answers(),
              word.of()));
      return new FlameLog(List.copyOf(more), worked, takenOut, ended);
    }
    if (fact instanceof BenchFact.WatchEnded end) {
      Set<EntryId> more = new HashSet<>(ended);
      more.add(end.from());
      return new FlameLog(said, worked, takenOut, Set.copyOf(more));
    }
    return workedAt(fact, before.step()).map(step -> worked(step, entry, before)).orElse(this);
  }

  private FlameLog worked(StepId step, Entry entry, Course before) {
    Heat heat = new Heat(entry.id(), notBefore(entry.at()), entry.at(), heats() + 1, said.size());
    return isTakenOut(step, entry.fact(), heat, before)
        ? new FlameLog(said, worked, plus(takenOut, step, heat), ended)
        : new FlameLog(said, plus(worked, step, heat), takenOut, ended);
  }

  /** What is counted after its wait was heated before that; one act may count twice. */
  private boolean isTakenOut(StepId step, Fact fact, Heat heat, Course before) {
    boolean counts = fact instanceof Fact.PiecesThrough || fact instanceof Fact.StepDone;
    boolean waited = !before.waits().at(step).isEmpty();
    boolean sameAct =
        takenOut.containsKey(step) && takenOut.get(step).written().equals(heat.written());
    return counts && (waited || sameAct);
  }

  private int heats() {
    return Stream.concat(worked.values().stream(), takenOut.values().stream())
        .mapToInt(Heat::nth)
        .max()
        .orElse(0);
  }

  private static Map<StepId, Heat> plus(Map<StepId, Heat> heats, StepId step, Heat heat) {
    Map<StepId, Heat> more = new HashMap<>(heats);
    more.put(step, heat);
    return Map.copyOf(more);
  }

  private Instant notBefore(Instant at) {
    Instant last = said.isEmpty() ? at : said.get(said.size() - 1).at();
    return last.isAfter(at) ? last : at;
  }

  /** The step at which something was counted, done or left to wait; empty for any other entry. */
  private static Optional<StepId> workedAt(Fact fact, StepId openStep) {
    StepId step = StepId.NONE;
    if (fact instanceof Fact.PiecesThrough through) {
      step = through.step().isEmpty() ? openStep : through.step();
    } else if (fact instanceof Fact.StepDone done) {
      step = done.step();
    } else if (fact instanceof Fact.TimerStarted timer) {
      step = timer.step();
    } else if (fact instanceof Fact.PiecesSentBack
        || fact instanceof Fact.PiecesScrapped
        || fact instanceof Fact.WireCut) {
      step = openStep;
    }
    return Optional.of(step).filter(id -> !id.isEmpty());
  }

  /**
   * The last heat: a count or a wait at a step that burns gas.
   *
   * @param burnsGas whether a step does
   * @param oneByOne whether its pieces are counted singly: there each count is a heat, whatever
   *     waits
   */
  public Optional<Heat> lastHeat(Predicate<StepId> burnsGas, Predicate<StepId> oneByOne) {
    return Stream.concat(
            worked.entrySet().stream(),
            takenOut.entrySet().stream().filter(each -> oneByOne.test(each.getKey())))
        .filter(each -> burnsGas.test(each.getKey()))
        .map(Map.Entry::getValue)
        .max(Comparator.comparing(Heat::nth));
  }

  /** The words as others read them, under the names of book and job. */
  public List<FlameWord> words(String book, String job) {
    return said.stream()
        .map(
            word ->
                new FlameWord(
                    book,
                    job,
                    word.id(),
                    word.at(),
                    word.state(),
                    word.person(),
                    word.answers(),
                    word.of().isEmpty() ? book : word.of()))
        .toList();
  }
}
