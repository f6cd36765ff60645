package linkwright.view;

import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Spot;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.tray.TrayHeld;

/** The jobs at hand: where each stands and what waits. */
final class TrayView {
  private TrayView() {}

  static void draw(Canvas body, Model model, TrayHeld tray) {
    if (tray.form().isPresent()) {
      FormView.draw(body, tray.form().get());
      return;
    }
    if (model.tray().isEmpty()) {
      body.wrapped(
          0, 1, body.width(), 3, "No job is in the tray yet. Press n to begin one.", Tone.PLAIN);
      return;
    }
    // A free row between jobs where there is room.
    int perJob = body.height() >= 4 * model.tray().size() ? 4 : 3;
    int room = Math.max(1, body.height() / perJob);
    int first = Math.max(0, Math.min(tray.at() - room / 2, model.tray().size() - room));
    for (int i = first; i < Math.min(model.tray().size(), first + room); i++) {
      int row = (i - first) * perJob;
      job(body, row, model.tray().get(i), i == tray.at());
      body.spot(0, row, body.width(), perJob, new Spot.ToRow(i));
    }
    if (model.tray().size() > room) {
      body.right(body.height() - 1, (tray.at() + 1) + " of " + model.tray().size(), Tone.FAINT);
    }
  }

  private static void job(Canvas body, int row, TrayJob job, boolean at) {
    String mark = at ? body.glyphs().pick("▸ ", "> ") : "  ";
    int after = body.text(0, row, mark, Tone.ACCENT);
    body.text(after, row, body.width() - after, job.name(), at ? Tone.STRONG : Tone.PLAIN);
    body.text(4, row + 1, body.width() - 4, job.stands(), Tone.FAINT);
    if (!job.waits().isEmpty()) {
      String line = "waits: " + String.join(", ", job.waits());
      body.text(4, row + 2, body.width() - 4, line, Tone.WARNING);
    }
  }
}
