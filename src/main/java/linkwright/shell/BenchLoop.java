package linkwright.shell;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Spot;
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

  /**
   * Another window may say a flame lit or out, and whoever only looks may write as soon as that has
   * gone.
   */
  private static final long IDLE = 3000;

  /** A flood of keys is shown going by so often. */
  private static final long UNSHOWN_NANOS = 100_000_000;

  private static final String PASTE_DROPPED =
      "A paste had no end and is dropped; what you press counts again.";

  private BenchLoop() {}

  /** Runs until the user leaves or the display ends. The caller closes the display. */
  public static void run(Model begin, Display display, Performer performer, InstantSource clock) {
    String kinds = begin.settings().chosen().getOrDefault("say-kinds", "");
    try (Voice voice = voice(begin);
        Sounds sounds = Sounds.of(kinds)) {
      run(begin, display, performer, clock, new Outward(display, voice, sounds));
    }
    performer.shut();
  }

  /** A voice as the user chose it; silent if she chose none. */
  private static Voice voice(Model model) {
    Map<String, String> chosen = model.settings().chosen();
    return Voice.of(chosen.getOrDefault("say", ""), chosen.getOrDefault("say-kinds", ""));
  }

  private static void run(
      Model begin, Display display, Performer performer, InstantSource clock, Outward outward) {
    SteadyClock steady = SteadyClock.from(begin.steady());
    Model model = begin;
    Grid shown = draw(Pages.of(model), model, display);
    // What was typed at a blank screen was typed at nothing. The moment is taken before the page is
    // handed over: whoever answers what she sees is never too early, however slow the terminal.
    Instant first = steady.instant();
    display.show(shown);
    Instant shownAt = steady.instant();
    outward.tell(Pages.of(model));
    Optional<Input> next = Optional.empty();
    while (!performer.left()) {
      long wait = performer.isBehind() ? 0 : untilNextSecond(model, clock);
      Optional<Input> input = next.isPresent() ? next : display.poll(wait);
      boolean idle = input.isEmpty();
      long drawBy = System.nanoTime() + UNSHOWN_NANOS;
      boolean lost = false;
      Optional<Instant> since = Optional.of(shownAt);
      do {
        Message.Ticked now = new Message.Ticked(clock.instant(), steady.instant(), since);
        Instant came = steady.at(display.cameAtNanos());
        Optional<Input> heard = input.filter(any -> !(isTyped(any) && came.isBefore(first)));
        model = take(model, heard, shown, performer, now, came);
        since = Optional.empty();
        lost |= input.filter(Input.Resized.class::isInstance).isPresent();
        next = input.isPresent() && !performer.left() ? display.poll(0) : Optional.empty();
        input = next;
      } while (next.isPresent() && !isAtAPicture(next.get()) && System.nanoTime() < drawBy);
      model = idle ? performer.goOn(model) : model;
      Page page = Pages.of(model);
      Grid drawn = draw(page, model, display);
      if (lost || !drawn.equals(shown)) {
        display.show(drawn);
        shown = drawn;
        shownAt = steady.instant();
        outward.tell(page);
      }
    }
  }

  private static boolean isTyped(Input input) {
    return input instanceof Input.Pressed
        || input instanceof Input.Pasted
        || input instanceof Input.Clicked;
  }

  /** A click means what stands where it went: nothing may be waiting to be drawn. */
  private static boolean isAtAPicture(Input input) {
    return input instanceof Input.Clicked;
  }

  private static Model take(
      Model model,
      Optional<Input> input,
      Grid shown,
      Performer performer,
      Message.Ticked ticked,
      Instant came) {
    Model now = performer.take(model, ticked);
    return input
        .flatMap(told -> message(told, shown, came))
        .map(message -> performer.take(now, message))
        .orElse(now);
  }

  private static Grid draw(Page page, Model model, Display display) {
    return Screens.draw(
        page,
        model.width(),
        model.height(),
        display.glyphs(),
        model.settings().keys(),
        model.settings().life());
  }

  private static long untilNextSecond(Model model, InstantSource clock) {
    if (!model.waits().isEmpty() || model.held().moves()) {
      return SECOND - clock.millis() % SECOND;
    }
    return IDLE;
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
    if (input instanceof Input.PasteDropped) {
      return new Message.Troubled(PASTE_DROPPED);
    }
    if (input instanceof Input.Resized resized) {
      return new Message.Resized(resized.columns(), resized.rows());
    }
    return new Message.Ended();
  }
}
