package linkwright.shell;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import linkwright.coach.keys.Key;
import linkwright.terminal.Display;
import linkwright.terminal.Input;
import linkwright.view.Glyphs;
import linkwright.view.Grid;
import linkwright.view.Screens;

/**
 * A display that also shows how far a long reading has come, and lets the user break it off. Keys
 * pressed meanwhile are not lost: they come after it, in their order.
 */
final class ReadingDisplay implements Display, ReadingProgress {
  /** Shorter waits are over before anybody has read that there is one. */
  private static final long UNTOLD_MS = 500;

  /** How often the count is told anew, and keys are looked at. */
  private static final long BETWEEN_MS = 100;

  /** What came while she waited, and when. */
  private record Came(Input input, long atNanos) {}

  private final Display display;
  private final InstantSource clock;
  private final Queue<Came> ahead = new ArrayDeque<>();
  private long cameAtNanos;
  private Instant told = Instant.MIN;
  private boolean over;
  private boolean shown;

  ReadingDisplay(Display display, InstantSource clock) {
    this.display = display;
    this.clock = clock;
  }

  @Override
  public boolean goOn(int done, int all) {
    Instant now = clock.instant();
    if (done == 0) {
      over = false;
      shown = false;
      told = now.plusMillis(UNTOLD_MS - BETWEEN_MS);
    }
    if (!over && now.isAfter(told.plusMillis(BETWEEN_MS))) {
      told = now;
      Display.GridSize size = display.size();
      if (!shown) {
        shown = true;
        // Tells whoever draws next that what stood there before is gone.
        ahead.add(new Came(new Input.Resized(size.columns(), size.rows()), display.cameAtNanos()));
      }
      look();
      display.show(Screens.reading(size.columns(), size.rows(), display.glyphs(), done, all));
    }
    return !over;
  }

  @Override
  public boolean later() {
    return true;
  }

  private void look() {
    Optional<Input> input = display.poll(0);
    while (input.isPresent()) {
      boolean enough =
          input.get() instanceof Input.Pressed pressed && pressed.key().is(Key.Kind.ESCAPE);
      if (!enough) {
        ahead.add(new Came(input.get(), display.cameAtNanos()));
      }
      over = enough || input.get() instanceof Input.Ended;
      input = over ? Optional.empty() : display.poll(0);
    }
  }

  @Override
  public Optional<Input> poll(long millis) {
    if (ahead.isEmpty()) {
      Optional<Input> input = display.poll(millis);
      cameAtNanos = display.cameAtNanos();
      return input;
    }
    Came came = ahead.remove();
    cameAtNanos = came.atNanos();
    return Optional.of(came.input());
  }

  @Override
  public long cameAtNanos() {
    return cameAtNanos;
  }

  @Override
  public GridSize size() {
    return display.size();
  }

  @Override
  public Glyphs glyphs() {
    return display.glyphs();
  }

  @Override
  public String screen() {
    return display.screen();
  }

  @Override
  public void show(Grid grid) {
    display.show(grid);
  }

  @Override
  public void title(String words) {
    display.title(words);
  }

  @Override
  public void notice(String sentence) {
    display.notice(sentence);
  }

  @Override
  public boolean copy(String text) {
    return display.copy(text);
  }

  @Override
  public void bell() {
    display.bell();
  }

  @Override
  public void close() {
    display.close();
  }
}
