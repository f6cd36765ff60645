package linkwright.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import linkwright.coach.keys.Key;
import linkwright.terminal.TerminalEvents.Event;
import linkwright.view.Glyphs;
import linkwright.view.Grid;

/**
 * A display on the terminal that the program was started from.
 *
 * <p>Whatever ends the program, the terminal is given back: on {@link #close}, and by a shutdown
 * hook on a signal or an exit that forgot. The hook first tells {@link Input.Ended}, so that the
 * program's own thread has a moment to finish what it does.
 */
public final class TerminalDisplay implements Display {
  private static final int MILLIS_TO_FINISH = 500;

  /**
   * A terminal at hand answers within a millisecond or two, one far away in the time of a blink.
   */
  private static final int MILLIS_TO_ANSWER = 120;

  private final TerminalEvents events;
  private final AtomicBoolean closed = new AtomicBoolean();
  private final ReentrantLock writing = new ReentrantLock();
  private final CountDownLatch finished = new CountDownLatch(1);
  private final Thread hook = new Thread(this::endFromOutside, "gives the terminal back");
  private final TtyMode mode;
  private final AnsiTerminal terminal;
  private final Function<TerminalAnswers, Theme> themes;
  private final boolean linux;
  private final Queue<Input> ahead = new ArrayDeque<>();
  private TerminalAnswers answers = TerminalAnswers.NONE;
  private Optional<Painter> painter = Optional.empty();
  private final KeyDecoder decoder;
  private final Glyphs glyphs;
  private final boolean mouse;
  private final MeasuredSize size;
  private long lastByteNanos;
  private boolean lost;

  private TerminalDisplay(
      TerminalEvents events,
      TtyMode mode,
      Environment environment,
      Function<TerminalAnswers, Theme> themes,
      boolean mouse) {
    this.themes = themes;
    this.linux = environment.value("TERM").equals("linux");
    this.events = events;
    this.mode = mode;
    this.mouse = mouse;
    this.glyphs = environment.glyphs();
    this.size = new MeasuredSize(mode, environment);
    Charset out = glyphs == Glyphs.FULL ? StandardCharsets.UTF_8 : StandardCharsets.US_ASCII;
    this.terminal =
        new AnsiTerminal(new BufferedTty(new FileOutputStream(FileDescriptor.out)), out);
    this.decoder =
        new KeyDecoder(environment.isUtf8() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
  }

  /**
   * Takes the terminal over.
   *
   * @throws IOException if there is none, or it can't be written to; it is then left as it was
   */
  static TerminalDisplay open(
      Environment environment, Function<TerminalAnswers, Theme> themes, boolean mouse)
      throws IOException {
    TerminalEvents events = new TerminalEvents();
    // Before the size is read, so that no change of it goes unheard.
    Signals.on("WINCH", () -> events.tell(new Event.SizeMayHaveChanged()));
    TerminalDisplay display =
        new TerminalDisplay(events, TtyMode.enter(), environment, themes, mouse);
    try {
      display.start();
      return display;
    } catch (IOException | RuntimeException e) {
      display.close();
      throw e;
    }
  }

  private void start() throws IOException {
    Runtime.getRuntime().addShutdownHook(hook);
    Signals.on("CONT", () -> events.tell(new Event.GoesOnAfterStop()));
    Signals.endTheProgram();
    terminal.enterPrivateMode();
    terminal.tellPastesAndClicks(mouse);
    terminal.flush();
    events.readKeys();
    ask();
    painter =
        Optional.of(
            new Painter(
                terminal,
                themes.apply(answers),
                glyphs,
                Painter.Blocks.LETTERS,
                answers.follows()));
    if (answers.speaks()) {
      terminal.write(AnsiTerminal.KEEP_TITLE);
    }
  }

  /**
   * Asks the terminal what it can do, for a moment. First what every terminal understands; only one
   * that answers is asked more, so that no question ever stands on a screen as text. The console of
   * Linux answers, but knows no control strings.
   */
  private void ask() throws IOException {
    if (linux || !answered(TerminalAnswers.ASK_AT_ALL) || !answers.speaks()) {
      return;
    }
    answered(TerminalAnswers.ASK_MORE + TerminalAnswers.ASK_AT_ALL);
  }

  /** Asks, and takes answers until the one that every terminal gives; false if it never came. */
  private boolean answered(String question) throws IOException {
    terminal.write(question);
    terminal.flush();
    long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(MILLIS_TO_ANSWER);
    while (deadline - System.nanoTime() > 0) {
      Optional<Event> event = events.await(deadline - System.nanoTime());
      event.flatMap(this::handle).ifPresent(ahead::add);
      Optional<String> answer = decoder.answer();
      while (answer.isPresent()) {
        answers = answers.and(answer.get());
        if (TerminalAnswers.isAnyAnswer(answer.get())) {
          return true;
        }
        answer = decoder.answer();
      }
      if (lost) {
        return false;
      }
    }
    return false;
  }

  /** When its last byte came: the program may have been busy since. */
  @Override
  public long cameAtNanos() {
    return lastByteNanos;
  }

  @Override
  public GridSize size() {
    return size.now();
  }

  @Override
  public Optional<String> told() {
    return size.told();
  }

  @Override
  public Glyphs glyphs() {
    return glyphs;
  }

  @Override
  public Optional<Input> poll(long millis) {
    long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    while (true) {
      Optional<Input> ready = Optional.ofNullable(ahead.poll()).or(decoder::next);
      if (ready.filter(TerminalDisplay::asksForTheWholePicture).isPresent()) {
        painter.ifPresent(Painter::forget);
        return Optional.of(resized());
      }
      if (ready.isPresent()) {
        return ready;
      }
      if (lost || closed.get()) {
        return Optional.of(new Input.Ended());
      }
      long left = deadline - System.nanoTime();
      Optional<Event> event =
          events.await(decoder.isPending() ? Math.min(left, patienceLeft()) : left);
      if (event.isPresent()) {
        Optional<Input> told = handle(event.get());
        if (told.isPresent()) {
          return told;
        }
      } else if (decoder.isPending() && patienceLeft() <= 0) {
        decoder.expire();
      } else if (deadline - System.nanoTime() <= 0) {
        return Optional.empty();
      }
    }
  }

  private long patienceLeft() {
    return lastByteNanos + patienceNanos() - System.nanoTime();
  }

  private long patienceNanos() {
    return TimeUnit.MILLISECONDS.toNanos(decoder.patienceMillis());
  }

  private Optional<Input> handle(Event event) {
    if (event instanceof Event.Bytes typed) {
      // Judged by when they came, for the program may have been busy since.
      while (decoder.isPending() && typed.atNanos() - lastByteNanos > patienceNanos()) {
        decoder.expire();
      }
      while (typed.bytes().hasRemaining()) {
        decoder.take(typed.bytes().get() & 0xFF);
      }
      lastByteNanos = typed.atNanos();
      return Optional.empty();
    }
    if (event instanceof Event.SizeMayHaveChanged) {
      return size.hasChanged() ? Optional.of(resized()) : Optional.empty();
    }
    if (event instanceof Event.GoesOnAfterStop) {
      takeOverAgain();
      return Optional.of(resized());
    }
    lost = true;
    return Optional.of(new Input.Ended());
  }

  /** Others may write over the screen: the system, a program behind, Java at the signal QUIT. */
  private static boolean asksForTheWholePicture(Input input) {
    return input instanceof Input.Pressed pressed && pressed.key().equals(Key.ctrl("l"));
  }

  private Input resized() {
    return new Input.Resized(size.now().columns(), size.now().rows());
  }

  /** After a stop the shell had the terminal: its settings and what it shows are no longer ours. */
  private void takeOverAgain() {
    painter.ifPresent(Painter::forget);
    attempt(
        () -> {
          mode.reenter();
          terminal.exitPrivateMode();
          terminal.enterPrivateMode();
          terminal.tellPastesAndClicks(mouse);
        });
    size.hasChanged();
  }

  @Override
  public void show(Grid grid) {
    attempt(
        () -> {
          if (answers.synchronizes()) {
            terminal.write(AnsiTerminal.HOLD);
          }
          if (painter.isPresent()) {
            painter.get().paint(grid, size.now());
          }
          if (answers.synchronizes()) {
            terminal.write(AnsiTerminal.LET_GO);
            terminal.flush();
          }
        });
  }

  @Override
  public void title(String words) {
    send(answers.title(words));
  }

  @Override
  public void notice(String sentence) {
    send(answers.notice(sentence));
  }

  @Override
  public boolean copy(String text) {
    Optional<String> sequence = answers.copy(text);
    send(sequence);
    return sequence.isPresent();
  }

  private void send(Optional<String> sequence) {
    if (sequence.isPresent()) {
      attempt(
          () -> {
            terminal.write(sequence.get());
            terminal.flush();
          });
    }
  }

  @Override
  public void bell() {
    attempt(
        () -> {
          terminal.bell();
          terminal.flush();
        });
  }

  private interface Writing {
    void run() throws IOException;
  }

  /** Writes unless closed; a terminal that can't be written to is lost. */
  private void attempt(Writing what) {
    writing.lock();
    try {
      if (!closed.get()) {
        what.run();
      }
    } catch (IOException e) {
      events.tell(new Event.Lost());
    } finally {
      writing.unlock();
    }
  }

  private void endFromOutside() {
    events.tell(new Event.Lost());
    try {
      finished.await(MILLIS_TO_FINISH, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    close();
  }

  @Override
  public void close() {
    // A write that a dead line holds for ever must not keep the program from ending.
    boolean canWrite = lockSoon();
    try {
      if (closed.getAndSet(true)) {
        return;
      }
      giveBack(canWrite);
    } finally {
      if (canWrite) {
        writing.unlock();
      }
    }
    finished.countDown();
    if (Thread.currentThread() != hook) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        // The machine is going down and the hook is running: it finds everything done.
      }
    }
  }

  private boolean lockSoon() {
    try {
      return writing.tryLock(MILLIS_TO_FINISH, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return writing.tryLock();
    }
  }

  private void giveBack(boolean canWrite) {
    if (canWrite) {
      try {
        if (answers.speaks()) {
          terminal.write(AnsiTerminal.TITLE_BACK);
        }
        terminal.untellPastesAndClicks(mouse);
        terminal.exitPrivateMode();
        terminal.flush();
      } catch (IOException | IllegalStateException e) {
        // A terminal that is lost, or was never taken over, needs no other picture.
      }
    }
    try {
      mode.restore();
    } catch (IOException e) {
      // As above.
    }
  }
}
