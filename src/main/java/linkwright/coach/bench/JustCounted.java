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
 */
record JustCounted(Fact.PiecesThrough through) {
  static Optional<JustCounted> of(Model model, AtBench at) {
    return at.begins() || at.together()
        ? Optional.empty()
        : Undo.lastCounted(model)
            .filter(last -> last.step().equals(at.step().id()) && last.stage().equals(at.stage()))
            .filter(last -> last.pieces().keySet().equals(Set.of(at.piece())))
            .map(JustCounted::new)
            .filter(last -> last.through().sizes().size() <= 1)
            .filter(last -> at.available() == 0 || !last.size().equals(at.size()));
  }

  String size() {
    return through.sizes().keySet().stream().findFirst().orElse("");
  }

  int count(AtBench at) {
    return through.pieces().get(at.piece());
  }

  /** Takes so many of them back to where they were; the others are counted as they were. */
  List<Fact> takenBack(Model model, AtBench at, int back) {
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
