package linkwright.view;

import linkwright.coach.Model;
import linkwright.coach.Screen;

/** Draws the screen that the model shows: a pure function of the model and the signs there are. */
public final class Screens {
  /** The smallest room in which every screen still says what it must. */
  public static final int LEAST_WIDTH = 40;

  /** The fewest rows that will do. */
  public static final int LEAST_HEIGHT = 12;

  private Screens() {}

  /** The whole picture for the model's width and height. */
  public static Grid draw(Model model, Glyphs glyphs) {
    Canvas canvas = new Canvas(model.width(), model.height(), glyphs);
    if (model.width() < LEAST_WIDTH || model.height() < LEAST_HEIGHT) {
      tooSmall(canvas);
      return canvas.toGrid();
    }
    Canvas body = Frame.draw(canvas, model);
    body(body, model);
    Frame.foot(canvas, model);
    return canvas.toGrid();
  }

  /** What is shown while routines, cautions and jobs are read. */
  public static Grid reading(int columns, int rows, Glyphs glyphs) {
    Canvas canvas = new Canvas(columns, rows, glyphs);
    canvas.text(1, 0, columns - 1, "Linkwright", Tone.STRONG);
    canvas.text(1, 2, columns - 1, "Reading routines, cautions and jobs.", Tone.FAINT);
    return canvas.toGrid();
  }

  /** The same, once it takes long: how far it has come, and the way out. */
  public static Grid reading(int columns, int rows, Glyphs glyphs, int done, int all) {
    Canvas canvas = new Canvas(columns, rows, glyphs);
    canvas.text(1, 0, columns - 1, "Linkwright", Tone.STRONG);
    String count = "Reading the jobs, those changed last first: " + done + " of " + all + ".";
    int row = 2 + canvas.wrapped(1, 2, columns - 2, rows - 3, count, Tone.PLAIN);
    canvas.wrapped(
        1, row + 1, columns - 2, rows - row - 1, "esc goes on without the rest", Tone.FAINT);
    return canvas.toGrid();
  }

  private static void body(Canvas body, Model model) {
    Screen screen = model.screen();
    if (screen instanceof Screen.Tray tray) {
      TrayView.draw(body, model, tray);
    } else if (screen instanceof Screen.Round) {
      RoundView.draw(body, model);
    } else if (screen instanceof Screen.Bench bench) {
      BenchView.draw(body, model, bench);
    } else if (screen instanceof Screen.Plan plan) {
      PlanView.draw(body, model, plan);
    } else if (screen instanceof Screen.Tests tests) {
      TestsView.draw(body, model, tests);
    } else if (screen instanceof Screen.Book book) {
      BookView.draw(body, model, book);
    } else if (screen instanceof Screen.Wire wire) {
      WireView.draw(body, model, wire);
    } else if (screen instanceof Screen.TimerList timers) {
      TimersView.draw(body, model, timers);
    } else if (screen instanceof Screen.Cautions cautions) {
      CautionsView.draw(body, model, cautions);
    } else if (screen instanceof Screen.Trial trial) {
      TrialView.draw(body, model, trial);
    } else if (screen instanceof Screen.WeighIn weighIn) {
      WeighView.draw(body, model, weighIn);
    } else if (screen instanceof Screen.Reckoner reckoner) {
      ReckonView.draw(body, model, reckoner);
    } else if (screen instanceof Screen.Help help) {
      HelpView.draw(body, model, help);
    }
  }

  private static void tooSmall(Canvas canvas) {
    String need =
        "Needs "
            + LEAST_WIDTH
            + " x "
            + LEAST_HEIGHT
            + ", has "
            + canvas.width()
            + " x "
            + canvas.height()
            + ".";
    canvas.wrapped(
        0,
        0,
        canvas.width(),
        canvas.height(),
        "The window is too small. " + need + " Nothing is lost: make it larger.",
        Tone.WARNING);
  }
}
