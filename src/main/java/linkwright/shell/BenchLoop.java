package linkwright.shell;

import java.time.InstantSource;
import java.util.Optional;
import linkwright.coach.Message;
import linkwright.coach.Model;
import linkwright.terminal.Display;
import linkwright.terminal.Input;
import linkwright.view.Grid;
import linkwright.view.Screens;

/**
 * The loop: input → message → update and effects → repaint, only when something changed. Inputs
 * that wait already are taken before the repaint, for what they lead to is what the user will see.
 */
public final class BenchLoop {
  /** The clock moves timers once a second; without one running nothing needs to wake. */
  private static final long SECOND = 1000;

  private static final long IDLE = 30_000;

  /** A flood of keys is shown going by so often. */
  private static final long UNSHOWN_NANOS = 100_000_000;

  private BenchLoop() {}

  /** Runs until the user leaves or the display ends. The caller closes the display. */
  public static void run(Model begin, Display display, Performer performer, InstantSource clock) {
    Model model = begin;
    Grid shown = show(display, model);
    Optional<Input> next = Optional.empty();
    while (!performer.left()) {
      Optional<Input> input = next.isPresent() ? next : display.poll(untilNextSecond(model, clock));
      long drawBy = System.nanoTime() + UNSHOWN_NANOS;
      boolean lost = false;
      do {
        model = take(model, input, shown, performer, clock);
        lost |= input.filter(Input.Resized.class::isInstance).isPresent();
        next = input.isPresent() && !performer.left() ? display.poll(0) : Optional.empty();
        input = next;
      } while (next.isPresent() && !isAtAPicture(next.get()) && System.nanoTime() < drawBy);
      Grid drawn = Screens.draw(model, display.glyphs());
      if (lost || !drawn.equals(shown)) {
        display.show(drawn);
        shown = drawn;
      }
    }
    performer.shut();
  }

  /** A click means what stands where it went: nothing may be waiting to be drawn. */
  private static boolean isAtAPicture(Input input) {
    return input instanceof Input.Clicked;
  }

  private static Model take(
      Model model, Optional<Input> input, Grid shown, Performer performer, InstantSource clock) {
    Model now = performer.take(model, new Message.Ticked(clock.instant()));
    return input
        .flatMap(told -> message(told, shown))
        .map(message -> performer.take(now, message))
        .orElse(now);
  }

  private static Grid show(Display display, Model model) {
    Grid grid = Screens.draw(model, display.glyphs());
    display.show(grid);
    return grid;
  }

  private static long untilNextSecond(Model model, InstantSource clock) {
    boolean timers =
        model.job().map(job -> !job.state().timers().running().isEmpty()).orElse(false);
    return timers ? SECOND - clock.millis() % SECOND : IDLE;
  }

  /** The message for an input; a click beside every marked place is none. */
  private static Optional<Message> message(Input input, Grid shown) {
    if (input instanceof Input.Clicked clicked) {
      return shown.spotAt(clicked.x(), clicked.y()).map(Message.PointedAt::new);
    }
    return Optional.of(message(input));
  }

  private static Message message(Input input) {
    if (input instanceof Input.Pressed pressed) {
      return new Message.KeyPressed(pressed.key());
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
