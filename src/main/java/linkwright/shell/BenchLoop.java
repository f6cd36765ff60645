package linkwright.shell;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Spot;
import linkwright.terminal.Display;
import linkwright.terminal.Input;
import linkwright.view.Grid;
import linkwright.view.Screens;

/** The loop: input → message → update and effects → repaint, only when something changed. */
public final class BenchLoop {
  /** The clock moves timers once a second; without one running nothing needs to wake. */
  private static final long SECOND = 1000;

  private static final long IDLE = 30_000;

  private BenchLoop() {}

  /** Runs until the user leaves or the display ends. The caller closes the display. */
  public static void run(Model begin, Display display, Performer performer, InstantSource clock) {
    SteadyClock steady = SteadyClock.from(begin.steady());
    Model model = begin;
    Grid shown = show(display, model);
    while (!performer.left()) {
      Optional<Input> input = display.poll(untilNextSecond(model, clock));
      model = performer.take(model, new Message.Ticked(clock.instant(), steady.instant()));
      Grid last = shown;
      Optional<Message> message =
          input.flatMap(told -> message(told, last, steady.at(display.cameAtNanos())));
      if (message.isPresent()) {
        model = performer.take(model, message.get());
      }
      boolean lost = input.filter(Input.Resized.class::isInstance).isPresent();
      Grid next = draw(model, display);
      if (lost || !next.equals(shown)) {
        display.show(next);
        shown = next;
      }
    }
    performer.shut();
  }

  private static Grid show(Display display, Model model) {
    Grid grid = draw(model, display);
    display.show(grid);
    return grid;
  }

  private static Grid draw(Model model, Display display) {
    return Screens.draw(
        Pages.of(model), model.width(), model.height(), display.glyphs(), model.settings().keys());
  }

  private static long untilNextSecond(Model model, InstantSource clock) {
    return !model.timers().running().isEmpty() ? SECOND - clock.millis() % SECOND : IDLE;
  }

  /** The message for an input; a click beside every marked place is none. */
  private static Optional<Message> message(Input input, Grid shown, Instant at) {
    if (input instanceof Input.Clicked clicked) {
      return shown.spotAt(clicked.x(), clicked.y()).map(Spot::message);
    }
    return Optional.of(message(input, at));
  }

  private static Message message(Input input, Instant at) {
    if (input instanceof Input.Pressed pressed) {
      return new Message.KeyPressed(pressed.key(), Optional.of(at));
    }
    if (input instanceof Input.Pasted pasted) {
      return new Message.Pasted(pasted.text());
    }
    if (input instanceof Input.Resized resized) {
      return new Message.Resized(resized.columns(), resized.rows());
    }
    return new Message.Ended();
  }
}
