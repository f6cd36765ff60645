package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.undo.Undo;
import linkwright.job.Fact;

/**
 * The last of a size is counted and none like it is left here: what fails now is one of those that
 * were counted just now, not one of the size that is counted next.
 *
 * @param through what was counted, one by one in a row or together
 * @param cut whether it was cut, and so waits here as it was
 */
record JustCounted(Fact.PiecesThrough through, boolean cut) {
  static Optional<JustCounted> of(Model model, AtBench at) {
    if (at.begins()) {
      return cut(model, at);
    }
    return at.together()
        ? Optional.empty()
        : row(Undo.throughInARow(model), at)
            .filter(last -> last.step().equals(at.step().id()) && last.stage().equals(at.stage()))
            .filter(last -> last.pieces().keySet().equals(Set.of(at.piece())))
            .map(last -> new JustCounted(last, false))
            .filter(last -> last.through().sizes().size() <= 1)
            .filter(last -> at.available() == 0 || !last.size().equals(at.size()));
  }

  private static Optional<Fact.PiecesThrough> row(List<Fact.PiecesThrough> row, AtBench at) {
    int all = row.stream().mapToInt(one -> one.pieces().getOrDefault(at.piece(), 0)).sum();
    return row.stream()
        .findFirst()
        .map(last -> last.pieces().keySet().equals(Set.of(at.piece())) ? so(last, at, all) : last);
  }

  /** So many of those that were counted. */
  private static Fact.PiecesThrough so(Fact.PiecesThrough last, AtBench at, int many) {
    Map<String, Integer> sizes =
        last.sizes().size() == 1
            ? Map.of(last.sizes().keySet().iterator().next(), many)
            : last.sizes();
    return new Fact.PiecesThrough(
        Map.of(at.piece(), many), last.stage(), last.redo(), last.step(), sizes);
  }

  private static Optional<JustCounted> cut(Model model, AtBench at) {
    return Undo.lastCut(model)
        .filter(last -> last.piece().equals(at.piece()) && !last.size().equals(at.size()))
        .flatMap(last -> cut(at, last, last.count() - Undo.scrappedSince(model)));
  }

  /** So many are left of those that were cut: the others were scrapped since. */
  private static Optional<JustCounted> cut(AtBench at, Fact.WireCut last, int left) {
    return left <= 0
        ? Optional.empty()
        : Optional.of(
            new JustCounted(
                new Fact.PiecesThrough(
                    Map.of(at.piece(), left),
                    at.stage(),
                    false,
                    at.step().id(),
                    Map.of(last.size(), left)),
                true));
  }

  String size() {
    return through.sizes().keySet().stream().findFirst().orElse("");
  }

  int count(AtBench at) {
    return through.pieces().get(at.piece());
  }

  /** Takes so many of them back to where they were; the others are counted as they were. */
  List<Fact> takenBack(Model model, AtBench at, int back) {
    if (cut) {
      return List.of();
    }
    int acts = 0;
    int taken = 0;
    for (Fact.PiecesThrough one : Undo.throughInARow(model)) {
      if (taken < back) {
        acts++;
        taken += one.pieces().getOrDefault(at.piece(), 0);
      }
    }
    List<Fact> facts = new ArrayList<>(Undo.lastAtBench(model, acts));
    if (taken > back) {
      facts.add(so(through, at, taken - back));
    }
    return facts;
  }
}
