package linkwright.view;

import java.util.Optional;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.job.TimerRun;

/** The timer that ends first, in big figures. */
final class BigTimer {
  private BigTimer() {}

  /** Draws it at the top of the area; returns the rows it took, 0 if no timer runs. */
  static int draw(Canvas area, Model model) {
    Optional<TimerRun> next = model.job().flatMap(job -> job.state().timers().next());
    if (next.isEmpty() || area.height() < 2) {
      return 0;
    }
    TimerRun timer = next.get();
    boolean rings = timer.rings(model.now());
    Tone tone = rings ? Tone.ALARM : Tone.ACCENT;
    String figures = Clock.running(timer.left(model.now()).toSeconds());
    int rows = BigFigures.draw(area.area(0, 0, area.width(), area.height() - 1), figures, tone);
    String words = timer.name() + (rings ? ": due. Full stop answers it." : "");
    area.text(0, rows, area.width(), words, rings ? Tone.STRONG : Tone.FAINT);
    return rows + 1;
  }
}
