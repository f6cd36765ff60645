package linkwright.view;

import java.util.Optional;
import linkwright.coach.Act;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.job.TimerRun;
import linkwright.text.Text;

/** The timer that ends first, in big figures. */
final class BigTimer {
  private BigTimer() {}

  /** Draws it at the top of the area; returns the rows it took, 0 if no timer runs. */
  static int draw(Canvas area, Model model) {
    Optional<TimerRun> next = model.timers().next();
    if (next.isEmpty() || area.height() < 2) {
      return 0;
    }
    TimerRun timer = next.get();
    boolean rings = timer.rings(model.steady());
    String figures = Clock.running(timer.left(model.steady()).toSeconds());
    int rows = BigFigures.high(figures, area.width(), area.height() - 1, area.glyphs());
    BigFigures.draw(area.area(0, 0, area.width(), rows), figures, Tone.ACCENT);
    String words = timer.name();
    if (rings) {
      String key =
          model.settings().keys().keysOf(Act.ANSWER).stream()
              .findFirst()
              .map(name -> name.equals(".") ? "The full stop" : name)
              .orElse("The timers' own screen");
      String told = ": due. " + key + " answers it.";
      words =
          Text.cut(words, Math.max(4, area.width() - Text.width(told)), area.glyphs().cutMark())
              + told;
    }
    area.text(0, rows, area.width(), words, rings ? Tone.STRONG : Tone.FAINT);
    return rows + 1;
  }
}
