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
 * @param through what was counted
 * @param cut whether it was cut, and so waits here as it was
 */
record JustCounted(Fact.PiecesThrough through, boolean cut) {
  static Optional<JustCounted> of(Model model, AtBench at) {
    if (at.begins()) {
      return cut(model, at);
    }
    return at.together()
        ? Optional.empty()
        : Undo.lastThrough(model)
            .filter(last -> last.step().equals(at.step().id()) && last.stage().equals(at.stage()))
            .filter(last -> last.pieces().keySet().equals(Set.of(at.piece())))
            .map(last -> new JustCounted(last, false))
            .filter(last -> last.through().sizes().size() <= 1)
            .filter(last -> at.available() == 0 || !last.size().equals(at.size()));
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
    List<Fact> facts = new ArrayList<>(Undo.lastAtBench(model));
    int left = count(at) - back;
    if (left > 0) {
      facts.add(
          new Fact.PiecesThrough(
              Map.of(at.piece(), left),
              through.stage(),
              through.redo(),
              through.step(),
              size().isEmpty() ? Map.of() : Map.of(size(), left)));
    }
    return facts;
  }
}
