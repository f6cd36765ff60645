package linkwright.view;

import java.util.List;
import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.JobWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.reckoner.ReckonerHeld;
import linkwright.link.Formed;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Reckoning;
import linkwright.reckon.Sum;
import linkwright.routine.TradeWords;

/** The reckoner: the sums to choose from, or one sum's form with what it comes to beside it. */
final class ReckonView {
  private static final int FOOT = 2;
  private static final int LEAST_DRAWING = 4;

  private ReckonView() {}

  static void draw(Canvas body, Model model, ReckonerHeld screen) {
    if (screen.form().isEmpty()) {
      sums(body, JobWords.tradeWords(model), screen.at());
      return;
    }
    Form form = screen.form().get();
    boolean beside = body.width() >= 72;
    int wide = beside ? Math.max(40, body.width() / 2) : body.width();
    // Two more than the fields: the title, the line that keeps it; two for a hint that is long.
    int needed = form.fields().size() + 4;
    int high = beside ? body.height() : Math.max(5, Math.min(needed, body.height() * 3 / 5));
    FormView.draw(body.area(0, 0, wide, high), form);
    Canvas results =
        beside
            ? body.area(wide + 2, 0, body.width() - wide - 2, body.height())
            : body.area(0, high, body.width(), body.height() - high);
    screen.result().ifPresent(result -> results(results, result, form));
  }

  private static void sums(Canvas body, TradeWords words, int at) {
    List<Sum> sums = Reckoner.sums();
    int rows = Math.max(1, body.height() - FOOT - 1);
    int first = Math.max(0, Math.min(at - rows / 2, sums.size() - rows));
    for (int i = first; i < sums.size() && i - first < rows; i++) {
      boolean here = i == at;
      String mark = here ? body.glyphs().pick("▸ ", "> ") : "  ";
      body.text(0, i - first, 2, mark, Tone.ACCENT);
      body.text(2, i - first, 10, sums.get(i).id(), here ? Tone.STRONG : Tone.PLAIN);
      body.text(
          12,
          i - first,
          body.width() - 12,
          words.show(sums.get(i).title()),
          here ? Tone.STRONG : Tone.FAINT);
    }
    if (sums.size() > rows) {
      body.right(rows - 1, " " + (at + 1) + " of " + sums.size(), Tone.FAINT);
    }
    body.wrapped(
        0, body.height() - FOOT, body.width(), FOOT, words.show(sums.get(at).says()), Tone.PLAIN);
  }

  private static void results(Canvas area, Reckoning result, Form form) {
    int row = 0;
    for (String sentence : result.lines()) {
      row += line(area, row, sentence, row == 0 ? Tone.STRONG : Tone.PLAIN);
    }
    for (String warning : result.warnings()) {
      row += line(area, row, "! " + warning, Tone.WARNING);
    }
    for (Map.Entry<String, String> problem : result.problems().entrySet()) {
      row += problem(area, row, problem.getKey(), problem.getValue(), form);
    }
    int left = area.height() - row - 1;
    if (result.drawing().isPresent() && left >= LEAST_DRAWING) {
      picture(area.area(0, row + 1, area.width(), left), result.drawing().get());
    }
  }

  private static void picture(Canvas area, Formed link) {
    double scale = Dots.scale(link.lengthMm(), link.widthMm(), area.width(), area.height());
    LinkDrawing.draw(area, link, scale, Tone.ACCENT);
  }

  /** What is wrong is a warning; what is only still to be given is not. */
  private static int problem(Canvas words, int row, String key, String sentence, Form form) {
    boolean toGive = !key.isEmpty() && form.text(key).isEmpty();
    return toGive
        ? line(words, row, sentence, Tone.FAINT)
        : line(words, row, "! " + sentence, Tone.WARNING);
  }

  private static int line(Canvas words, int row, String sentence, Tone tone) {
    int room = words.height() - row;
    if (room <= 0) {
      words.right(words.height() - 1, words.glyphs().cutMark(), Tone.FAINT);
      return 0;
    }
    return words.wrapped(0, row, words.width(), room, sentence, tone);
  }
}
