package linkwright.view;

import java.util.List;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.coach.TimerWords;
import linkwright.job.TimerRun;

/** The timers: the one that ends first in big figures, below it all of them, a line each. */
final class TimersView {
  private TimersView() {}

  static void draw(Canvas body, Model model, Screen.TimerList screen) {
    if (screen.form().isPresent()) {
      FormView.draw(body, screen.form().get());
      return;
    }
    List<TimerRun> timers = TimerWords.inOrder(model);
    if (timers.isEmpty()) {
      body.wrapped(
          0,
          1,
          body.width(),
          4,
          "No timer runs. Set one with the key below; a step that has a wait offers its own at the bench."
              + " Timers go on while the program is shut.",
          Tone.PLAIN);
      return;
    }
    int lines = Math.min(timers.size(), Math.max(3, body.height() / 2));
    int high = Math.max(2, body.height() - lines - 2);
    int drawn = BigTimer.draw(body.area(0, 0, body.width(), high), model);
    int top = Math.min(body.height() - 1, drawn + 1);
    list(body.area(0, top, body.width(), body.height() - top), model, timers, screen.at());
  }

  private static void list(Canvas area, Model model, List<TimerRun> timers, int at) {
    int rows = area.height();
    int first = Math.max(0, Math.min(at - rows / 2, timers.size() - rows));
    for (int i = first; i < timers.size() && i - first < rows; i++) {
      line(area, i - first, model, timers.get(i), i == at);
    }
    if (timers.size() > rows) {
      area.right(rows - 1, " " + (at + 1) + " of " + timers.size(), Tone.FAINT);
    }
  }

  private static void line(Canvas area, int y, Model model, TimerRun timer, boolean at) {
    boolean due = timer.rings(model.steady());
    String figures = Clock.running(timer.left(model.steady()).toSeconds());
    String ends = (due ? "since " : "ends ") + TimerWords.ends(timer, model);
    int figuresEnd = 10;
    int endsAt = area.width() - 12;
    area.text(0, y, 2, at ? area.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
    area.right(figuresEnd, y, 8, figures, due ? Tone.STRONG : Tone.PLAIN);
    int wordsAt = figuresEnd + 2;
    int nameAt = wordsAt + 18;
    String words = TimerWords.left(timer, model.steady());
    area.text(wordsAt, y, 17, due ? " " + words + " " : words, due ? Tone.ALARM : Tone.FAINT);
    area.text(
        nameAt, y, Math.max(4, endsAt - nameAt - 1), timer.name(), at ? Tone.STRONG : Tone.PLAIN);
    area.text(endsAt, y, ends, Tone.FAINT);
  }
}
