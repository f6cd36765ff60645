package linkwright.coach.piles;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.standing.WaitingPiece;

/** Every pile: how many pieces of what, how far they have come, where they lie and go on. */
final class PilesContent {
  private static final String TITLE = "piles";

  private PilesContent() {}

  static Content of(Model model, PilesHeld held) {
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    List<WaitingPiece> piles = WaitingWords.of(model);
    if (piles.isEmpty()) {
      return Content.of(
          TITLE,
          Prose.says(
              "No piece is made yet: the first are cut or begun at the bench, {do:to-bench}."));
    }
    List<Table.Line> lines = new ArrayList<>();
    piles.forEach(pile -> lines.add(line(pile)));
    List<Table.Column> columns =
        List.of(
            Table.Column.numbers(""),
            Table.Column.words("pieces"),
            Table.Column.words("stand at"),
            Table.Column.words("go on at"),
            Table.Column.words("lie in"));
    List<Part> parts = new ArrayList<>(List.of(new Table(columns, lines, held.at())));
    parts.add(Prose.says(chosen(model, piles.get(Math.min(held.at(), piles.size() - 1)))));
    int toOpen = model.job().map(job -> job.state().piles().toOpen()).orElse(0);
    if (toOpen > 0) {
      parts.add(
          Prose.stop(
              (toOpen == 1 ? "1 link hangs" : toOpen + " links hang")
                  + " on rings of the trial length that are to be opened: other rings are wished"
                  + " since."));
    }
    return new Content(TITLE, parts);
  }

  private static Table.Line line(WaitingPiece pile) {
    String piece = pile.what();
    String stands = pile.spot().redo() ? "redo: " + pile.spot().stage() : pile.spot().stage().id();
    String goesOn = pile.waits() ? "step " + pile.number() : "done";
    String over = pile.waits() && !pile.wanted() ? ", over" : "";
    return Table.Line.of("" + pile.count(), piece, stands, goesOn + over, pile.lies())
        .with(pile.spot().redo() ? Emphasis.NOW : Emphasis.PLAIN);
  }

  /** The chosen pile in a sentence. */
  private static String chosen(Model model, WaitingPiece pile) {
    String where =
        pile.step()
            .map(
                step ->
                    " at step "
                        + pile.number()
                        + (model.learning().hides(step.id())
                            ? ""
                            : ", “" + JobWords.fill(step.title(), model) + "”")
                        + ". {do:take-up} leads there.")
            .orElse(": nothing more is done to them.");
    return pile.counted() + (pile.waits() ? " go on" : "") + where;
  }
}
