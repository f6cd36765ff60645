package linkwright.walker;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Model;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;

/** What must hold of the piles: they are what the entries add up to. */
final class CountChecks {
  private CountChecks() {}

  /** What was just entered moved no piece that was not there. */
  static List<String> moved(Model model, List<Entry> before, List<Entry> more) {
    Map<PieceKind, List<Stage>> stages = stages(model);
    int known = PieceLedger.of(before, stages).faults().size();
    List<Entry> all = new ArrayList<>(before);
    all.addAll(more);
    boolean strikes = more.stream().anyMatch(entry -> entry.fact() instanceof Fact.Struck);
    List<String> faults = PieceLedger.of(all, stages).faults();
    return strikes || faults.size() <= known
        ? List.of()
        : List.of("moved more than there were: " + faults.get(faults.size() - 1));
  }

  private static Map<PieceKind, List<Stage>> stages(Model model) {
    return model
        .job()
        .flatMap(job -> Bencher.SHELF.routine(job.state().course().routine()))
        .map(Routine::pieces)
        .orElse(Map.of());
  }

  /**
   * Every pile holds what the entries add up to, and no place says that nothing waits if it does.
   */
  static List<String> of(Model model) {
    if (model.job().isEmpty()) {
      return List.of();
    }
    List<String> wrong = new ArrayList<>();
    Map<PieceKind, List<Stage>> stages = stages(model);
    PieceLedger ledger = PieceLedger.of(model.job().get().entries(), stages);
    stages.forEach(
        (kind, order) -> {
          Pile pile = model.job().get().state().piles().of(kind);
          for (Stage stage : order) {
            equal(wrong, kind + " " + stage, ledger.standing(kind, stage), standing(pile, stage));
            equal(wrong, kind + " redo " + stage, ledger.redo(kind, stage), pile.redoAt(stage));
          }
          equal(wrong, kind + " scrapped", ledger.scrapped(kind), pile.scrapped());
        });
    if (ledger.waiting() > 0 && saysNothingWaits(model)) {
      wrong.add("it says that nothing waits, and " + ledger.waiting() + " do");
    }
    return wrong;
  }

  private static int standing(Pile pile, Stage stage) {
    return pile.standing().getOrDefault(stage, 0);
  }

  private static boolean saysNothingWaits(Model model) {
    return Beside.flat(Pages.of(model).body().parts())
        .filter(Rows.class::isInstance)
        .flatMap(part -> ((Rows) part).rows().stream())
        .anyMatch(row -> row.value().equals("nothing waits"));
  }

  private static void equal(List<String> wrong, String what, int expected, int found) {
    if (expected != found) {
      wrong.add(what + ": " + expected + " by the entries, " + found + " by the program");
    }
  }
}
