package linkwright.walks;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import linkwright.coach.keys.Key;

/**
 * A program run in a pseudo-terminal of its own, walked through by keys. Around the program stands
 * a small shell script that notes the terminal's settings before and after, as a user's shell would
 * meet them.
 *
 * <p>Waiting is for something to be shown, never for a time.
 */
public final class WalkedProgram implements AutoCloseable {
  private static final String SCRIPT =
      // The size arrives a moment after the start.
      "until [ \"$(stty size)\" != '0 0' ]; do :; done; "
          + "stty -a > \"$WALK/before\"; "
          + "sh -c 'echo $$ > \"$WALK/pid.new\"; mv \"$WALK/pid.new\" \"$WALK/pid\"; exec \"$@\"' walk \"$@\"; "
          + "echo $? > \"$WALK/code\"; stty -a > \"$WALK/after\"";

  /** Longer than a program waits after ESC before it takes it for the Escape key. */
  private static final long ESCAPE_NANOS = TimeUnit.MILLISECONDS.toNanos(80);

  /** The pieces of one picture come closer together than this. */
  private static final long STILL_MILLIS = 40;

  private final Path notes;
  private final PtyProcess process;
  private final OutputStream keys;
  private final TerminalPicture picture;
  private final ByteArrayOutputStream written = new ByteArrayOutputStream();
  private final Object lock = new Object();
  private boolean atEnd;

  private WalkedProgram(Path notes, PtyProcess process, int columns, int rows) {
    this.notes = notes;
    this.process = process;
    this.keys = process.getOutputStream();
    this.picture = new TerminalPicture(columns, rows);
    Thread reader = new Thread(this::read, "reads what the walked program shows");
    reader.setDaemon(true);
    reader.start();
  }

  /**
   * Starts a program.
   *
   * @param environment variables besides PATH, HOME, TERM=xterm-256color and LANG=C.UTF-8, which
   *     they replace; one with an empty value is left out
   */
  public static WalkedProgram start(
      int columns, int rows, Map<String, String> environment, String... command)
      throws IOException {
    Files.createDirectories(Path.of("target", "walks"));
    Path notes = Files.createTempDirectory(Path.of("target", "walks"), "walk").toAbsolutePath();
    Map<String, String> variables = new HashMap<>();
    variables.put("PATH", System.getenv().getOrDefault("PATH", "/usr/bin:/bin"));
    variables.put("HOME", notes.toString());
    variables.put("TERM", "xterm-256color");
    variables.put("LANG", "C.UTF-8");
    variables.put("WALK", notes.toString());
    variables.putAll(environment);
    variables.values().removeIf(String::isEmpty);
    List<String> all = new ArrayList<>(List.of("/bin/sh", "-c", SCRIPT, "walk"));
    all.addAll(List.of(command));
    PtyProcess process =
        new PtyProcessBuilder(all.toArray(String[]::new))
            .setEnvironment(variables)
            .setInitialColumns(columns)
            .setInitialRows(rows)
            .start();
    return new WalkedProgram(notes, process, columns, rows);
  }

  /** The command that runs a class of this build, with the classes that the tests see. */
  public static String[] java(Class<?> main, String... arguments) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                // All that it ever needs; a leak is to be seen.
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
    command.addAll(List.of(arguments));
    return command.toArray(String[]::new);
  }

  private void read() {
    byte[] bytes = new byte[8192];
    try (InputStream in = process.getInputStream()) {
      int read = in.read(bytes);
      while (read >= 0) {
        synchronized (lock) {
          picture.take(bytes, read);
          written.write(bytes, 0, read);
          lock.notifyAll();
        }
        read = in.read(bytes);
      }
    } catch (IOException e) {
      // The terminal was closed.
    }
    synchronized (lock) {
      atEnd = true;
      lock.notifyAll();
    }
  }

  /** Types text, all at once. */
  public WalkedProgram type(String text) throws IOException {
    keys.write(text.getBytes(StandardCharsets.UTF_8));
    keys.flush();
    return this;
  }

  /** Presses a key, as xterm sends it. */
  public WalkedProgram press(Key key) throws IOException {
    type(sequence(key));
    if (key.is(Key.Kind.ESCAPE)) {
      // A key right after ESC would be one with Alt held; no hand is that quick.
      LockSupport.parkNanos(ESCAPE_NANOS);
    }
    return this;
  }

  private static String sequence(Key key) {
    return switch (key.kind()) {
      case CHARACTER ->
          key.ctrl() ? String.valueOf((char) (key.text().charAt(0) - 'a' + 1)) : key.text();
      case ENTER -> "\r";
      case ESCAPE -> "\u001b";
      case BACKSPACE -> "\u007f";
      case DELETE -> "\u001b[3~";
      case TAB -> "\t";
      case BACK_TAB -> "\u001b[Z";
      case UP -> "\u001b[A";
      case DOWN -> "\u001b[B";
      case LEFT -> "\u001b[D";
      case RIGHT -> "\u001b[C";
      case PAGE_UP -> "\u001b[5~";
      case PAGE_DOWN -> "\u001b[6~";
      case HOME -> "\u001b[H";
      case END -> "\u001b[F";
      case WORD_LEFT -> "\u001b[1;5D";
      case WORD_RIGHT -> "\u001b[1;5C";
    };
  }

  /** Clicks on a place, column and row from 0. */
  public WalkedProgram click(int x, int y) throws IOException {
    return type(
        "\u001b[<0;" + (x + 1) + ";" + (y + 1) + "M\u001b[<0;" + (x + 1) + ";" + (y + 1) + "m");
  }

  /** Waits until the text is shown; fails, with the screen, when it isn't in time. */
  public WalkedProgram waitFor(String text, int seconds) {
    return waitUntil("\"" + text + "\" is shown", screen -> screen.contains(text), seconds);
  }

  /**
   * Waits until the text was written at all, shown still or not: a program that writes lines sends
   * more than a screen at once, and its first lines are past by the time that anybody looks.
   */
  public WalkedProgram waitForWritten(String text, int seconds) {
    return waitUntil(
        "\"" + text + "\" was written",
        screen -> written.toString(StandardCharsets.UTF_8).contains(text),
        seconds);
  }

  /** Waits until the text is no longer shown. */
  public WalkedProgram waitWhile(String text, int seconds) {
    return waitUntil("\"" + text + "\" is gone", screen -> !screen.contains(text), seconds);
  }

  /** Waits until the screen is as wanted; fails, with the screen, when it isn't in time. */
  public WalkedProgram waitUntil(String wanted, Predicate<String> screen, int seconds) {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    synchronized (lock) {
      while (!screen.test(picture.text())) {
        long left = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
        if (left <= 0 || atEnd) {
          throw new AssertionError(
              "Not so within "
                  + seconds
                  + " s: "
                  + wanted
                  + (atEnd ? " (program ended)" : "")
                  + "\n"
                  + picture.text());
        }
        try {
          lock.wait(left);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          throw new AssertionError("Interrupted while waiting: " + wanted, e);
        }
      }
    }
    return this;
  }

  /** Waits until nothing more comes: a picture may arrive in pieces. */
  public WalkedProgram waitUntilStill() {
    synchronized (lock) {
      int before = -1;
      while (before != written.size() && !atEnd) {
        before = written.size();
        try {
          lock.wait(STILL_MILLIS);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          throw new AssertionError("Interrupted while waiting for a whole picture", e);
        }
      }
    }
    return this;
  }

  /** What is shown now, spaces at the ends of rows left off. */
  public String screen() {
    synchronized (lock) {
      return picture.text();
    }
  }

  /** How often the bell rang. */
  public int bells() {
    synchronized (lock) {
      return picture.bells();
    }
  }

  /** The styles that were asked for, as parameters of the sequence ESC [ … m. */
  public Set<String> styles() {
    synchronized (lock) {
      return picture.styles();
    }
  }

  /** Private modes that are on. */
  public Set<Integer> modes() {
    synchronized (lock) {
      return picture.modes();
    }
  }

  /** What was written that a simple terminal would not know. */
  public List<String> unknownSequences() {
    synchronized (lock) {
      return picture.unknown();
    }
  }

  /** Every byte that was written so far. */
  public byte[] output() {
    synchronized (lock) {
      return written.toByteArray();
    }
  }

  /** Changes the terminal's size. */
  public WalkedProgram resize(int columns, int rows) {
    synchronized (lock) {
      picture.resize(columns, rows);
      process.setWinSize(new WinSize(columns, rows));
    }
    return this;
  }

  /** Makes the terminal claim a size, whatever it really is. */
  public WalkedProgram claimSize(int columns, int rows) {
    process.setWinSize(new WinSize(columns, rows));
    return this;
  }

  /** Sends a signal, by its name without SIG, to the program. */
  public WalkedProgram signal(String name) throws IOException {
    Process kill =
        new ProcessBuilder("kill", "-" + name, String.valueOf(program().pid())).inheritIO().start();
    try {
      // Left to itself it might come late, when the number is another program's.
      kill.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return this;
  }

  /** Kills the program so that it can do nothing about it. */
  public void kill9() throws IOException {
    program().destroyForcibly();
  }

  /** Takes the terminal away, as when its window is closed or the line drops. */
  public void takeTerminalAway() throws IOException {
    keys.close();
    process.getInputStream().close();
  }

  /** The program itself, without the script around it. */
  public ProcessHandle program() throws IOException {
    Path pid = notes.resolve("pid");
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
    while (!Files.exists(pid)) {
      if (System.nanoTime() > deadline) {
        throw new AssertionError("The program was not started\n" + screen());
      }
      LockSupport.parkNanos(1_000_000);
    }
    long number = Long.parseLong(Files.readString(pid).strip());
    return ProcessHandle.of(number)
        .orElseThrow(() -> new AssertionError("The program has ended\n" + screen()));
  }

  /** Waits until the program has ended by itself; 128 and the signal's number if by a signal. */
  public int exitCode(int seconds) throws IOException {
    try {
      if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
        throw new AssertionError("Still running after " + seconds + " s\n" + screen());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted while waiting for the end", e);
    }
    waitUntilRead(seconds);
    return Integer.parseInt(Files.readString(notes.resolve("code")).strip());
  }

  private void waitUntilRead(int seconds) {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    synchronized (lock) {
      while (!atEnd && System.nanoTime() < deadline) {
        try {
          lock.wait(100);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return;
        }
      }
    }
  }

  /** The terminal's settings before the program, as {@code stty -a} tells them. */
  public String settingsBefore() throws IOException {
    return Files.readString(notes.resolve("before"));
  }

  /** The terminal's settings after the program. */
  public String settingsAfter() throws IOException {
    return Files.readString(notes.resolve("after"));
  }

  /** The folder that is the program's home. */
  public Path home() {
    return notes;
  }

  @Override
  public void close() {
    // Whoever has ended may have left his number to another: that one is not to be killed for it.
    if (process.isAlive()) {
      process.destroyForcibly();
    }
    try {
      keys.close();
    } catch (IOException e) {
      // It was closed already.
    }
  }
}
