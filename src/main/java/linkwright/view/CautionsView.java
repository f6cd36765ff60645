package linkwright.view;

import java.util.List;
import linkwright.coach.cautions.CautionWords;
import linkwright.coach.cautions.CautionsHeld;
import linkwright.coach.kernel.JobWords;
import linkwright.coach.kernel.Model;

/** The cautions: a line each with what it has to do with the job, or the chosen one whole. */
final class CautionsView {
  private CautionsView() {}

  static void draw(Canvas body, Model model, CautionsHeld screen) {
    List<CautionWords.Line> lines = CautionWords.of(model);
    if (lines.isEmpty()) {
      body.wrapped(0, 1, body.width(), 3, "No caution is among the files at hand.", Tone.WARNING);
      return;
    }
    int at = Math.min(screen.at(), lines.size() - 1);
    if (screen.open()) {
      CautionWords.Line line = lines.get(at);
      String before = (at + 1) + " of " + lines.size() + "  " + line.stands();
      CardView.draw(body, model, line.card(), before, screen.page());
      return;
    }
    list(body, model, lines, at);
  }

  private static void list(Canvas body, Model model, List<CautionWords.Line> lines, int at) {
    int foot = 3;
    int rows = Math.max(1, body.height() - foot);
    int first = Math.max(0, Math.min(at - rows / 2, lines.size() - rows));
    int words = Math.min(body.width() / 2, 40);
    for (int i = first; i < lines.size() && i - first < rows; i++) {
      CautionWords.Line line = lines.get(i);
      int y = i - first;
      boolean here = i == at;
      body.text(0, y, 2, here ? body.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
      body.text(
          2,
          y,
          body.width() - words - 3,
          line.card().title(),
          here ? Tone.STRONG : line.now() ? Tone.ACCENT : Tone.PLAIN);
      String stands = (line.now() && line.seen() ? "now, " : "") + line.stands();
      body.text(body.width() - words, y, words, stands, line.now() ? Tone.PLAIN : Tone.FAINT);
    }
    if (lines.size() > rows) {
      body.text(0, rows, body.width(), (at + 1) + " of " + lines.size(), Tone.FAINT);
    }
    body.wrapped(
        0,
        rows + 1,
        body.width(),
        foot - 1,
        JobWords.fill(lines.get(at).card().shortLine(), model),
        Tone.WARNING);
  }
}
