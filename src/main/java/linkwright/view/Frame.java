package linkwright.view;

import java.util.List;
import java.util.Optional;
import linkwright.coach.Clock;
import linkwright.coach.KeyWords;
import linkwright.coach.Layout;
import linkwright.coach.Model;
import linkwright.coach.Spot;
import linkwright.job.TimerRun;
import linkwright.text.Text;

/**
 * What every screen has: a line that says which job and where in it, the chain across the top while
 * a job is open, and at the foot one line of what is to be told and one of the keys that matter.
 */
final class Frame {
  private Frame() {}

  /** Draws the frame and returns the room that is left for the screen itself. */
  static Canvas draw(Canvas canvas, Model model) {
    head(canvas, model);
    foot(canvas, model);
    return canvas.area(1, Layout.head(model), Layout.width(model), Layout.height(model));
  }

  private static void head(Canvas canvas, Model model) {
    String timer = timer(model, canvas.glyphs());
    boolean rings = ringing(model);
    int room = canvas.width() - 2 - (timer.isEmpty() ? 0 : Text.width(timer) + 2);
    String job = model.job().map(open -> open.state().course().name()).orElse("Linkwright");
    String place = Titles.of(model);
    int placeRoom = Math.min(Text.width(place) + 3, Math.max(0, room - 8));
    int after = canvas.text(1, 0, Math.max(4, room - placeRoom), job, Tone.STRONG);
    canvas.text(
        after,
        0,
        Math.max(0, room + 1 - after),
        " " + canvas.glyphs().pick("·", "-") + " " + place,
        Tone.PLAIN);
    if (!timer.isEmpty()) {
      canvas.right(
          canvas.width() - 1, 0, Text.width(timer), timer, rings ? Tone.ALARM : Tone.ACCENT);
    }
    model.job().ifPresent(open -> Chain.draw(canvas.area(1, 1, canvas.width() - 2, 1), open));
  }

  private static String timer(Model model, Glyphs glyphs) {
    Optional<TimerRun> next = model.job().flatMap(job -> job.state().timers().next());
    return next.map(
            timer -> {
              long left = timer.left(model.now()).toSeconds();
              String name = Text.cut(timer.name(), model.width() < 72 ? 14 : 20, glyphs.cutMark());
              return timer.rings(model.now())
                  ? " " + name + " is due "
                  : name + " " + Clock.running(left);
            })
        .orElse("");
  }

  private static boolean ringing(Model model) {
    return model
        .job()
        .map(job -> !job.state().timers().ringing(model.now()).isEmpty())
        .orElse(false);
  }

  private static void foot(Canvas canvas, Model model) {
    int width = canvas.width() - 2;
    int row = canvas.height() - 2;
    if (!model.notice().text().isEmpty()) {
      Tone tone = model.notice().trouble() ? Tone.WARNING : Tone.STRONG;
      String mark = model.notice().trouble() ? "! " : "";
      List<String> lines = Text.wrap(mark + model.notice().text(), width);
      // A long sentence takes the row above too; it lasts one key only.
      int first = Math.max(0, lines.size() - 2) > 0 ? row - 2 : row - lines.size() + 1;
      for (int i = 0; i < Math.min(3, lines.size()); i++) {
        canvas.fill(0, first + i, canvas.width(), 1, " ", Tone.PLAIN);
        canvas.text(1, first + i, width, lines.get(i), tone);
      }
    } else {
      model.job().ifPresent(job -> canvas.text(1, row, width, StillLine.of(model), Tone.PLAIN));
    }
    keys(canvas, model, width);
  }

  private static void keys(Canvas canvas, Model model, int width) {
    int y = canvas.height() - 1;
    int x = 1;
    for (KeyWords.Word word : KeyWords.words(model, width)) {
      int from = x;
      x = canvas.text(from, y, Math.max(0, width + 1 - from), word.text(), Tone.FAINT);
      int wide = x - from;
      word.act().ifPresent(act -> canvas.spot(from, y, wide, 1, new Spot.ToAct(act)));
      x += KeyWords.GAP;
    }
  }
}
