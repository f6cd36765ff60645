package linkwright.coach.timers;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.job.TimerRun;

/** The timers: the one that ends first as the figure, then all of them, a line each. */
final class TimersContent {
  private static final String TITLE = "timers";

  private TimersContent() {}

  static Content of(Model model, TimersHeld held) {
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    List<JobWait> timers = TimerWords.inOrder(model);
    if (timers.isEmpty()) {
      return Content.of(
          TITLE,
          Prose.says(
              "No timer runs. {do:set-timer} sets one; a step that has a wait offers its own at the"
                  + " bench. Timers go on while the program is shut."));
    }
    List<Table.Line> lines = new ArrayList<>();
    timers.forEach(timer -> lines.add(line(model, timer)));
    List<Table.Column> columns =
        List.of(
            Table.Column.numbers(""),
            Table.Column.words(""),
            Table.Column.words(""),
            Table.Column.words(""));
    return Content.of(TITLE, figure(model, timers.get(0)), new Table(columns, lines, held.at()));
  }

  private static Figure figure(Model model, JobWait wait) {
    TimerRun timer = wait.run();
    boolean due = timer.rings(model.steady());
    return new Figure(
        Clock.running(timer.left(model.steady()).toSeconds()),
        wait.named() + (due ? ": due." + answers(wait) : ""),
        due ? Emphasis.TROUBLE : Emphasis.NOW);
  }

  private static String answers(JobWait wait) {
    if (wait.held()) {
      return " Another window has that job open: it is quieted there.";
    }
    return wait.elsewhere() ? " {do:to-due} goes there." : " {do:answer} quiets it.";
  }

  private static Table.Line line(Model model, JobWait wait) {
    TimerRun timer = wait.run();
    boolean due = timer.rings(model.steady());
    String ends = (due ? "since " : "ends ") + TimerWords.ends(timer, model);
    return Table.Line.of(
            Clock.running(timer.left(model.steady()).toSeconds()),
            TimerWords.left(timer, model.steady()),
            wait.named(),
            ends)
        .with(due ? Emphasis.TROUBLE : Emphasis.PLAIN);
  }
}
