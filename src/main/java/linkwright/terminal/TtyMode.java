package linkwright.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The terminal's line settings: saved, set so that each key comes at once, and given back. Each
 * step is one run of {@code sh} with {@code stty}, which every Unix has.
 */
final class TtyMode {
  /**
   * Keys come one by one and unseen; Ctrl-C, Ctrl-Z and Ctrl-\ are keys, for a signal from them
   * would leave the terminal as it is; Ctrl-S doesn't freeze the screen.
   */
  private static final String RAW = "stty -icanon -echo -isig -ixon -iexten -icrnl min 1 time 0";

  private static final int PATIENCE_SECONDS = 3;

  private final String saved;
  private final Optional<Display.GridSize> sizeAtStart;

  private TtyMode(String saved, Optional<Display.GridSize> sizeAtStart) {
    this.saved = saved;
    this.sizeAtStart = sizeAtStart;
  }

  /**
   * Saves the settings, sets the terminal raw and reads its size.
   *
   * @throws IOException if standard input is no terminal
   */
  static TtyMode enter() throws IOException {
    String told = run("s=$(stty -g) && echo \"$s\" && stty size && " + RAW);
    String[] lines = told.split("\n", -1);
    if (lines.length < 2 || lines[0].isBlank()) {
      throw new IOException("The terminal's settings can't be read: " + told.strip());
    }
    return new TtyMode(lines[0].strip(), sizeIn(lines[1]));
  }

  /** The size when {@link #enter} was called, where the terminal knows it. */
  Optional<Display.GridSize> sizeAtStart() {
    return sizeAtStart;
  }

  /** The size now, where the terminal knows it. */
  Optional<Display.GridSize> size() {
    return sizeNow();
  }

  /** The size of the terminal at standard input, where there is one and it knows. */
  static Optional<Display.GridSize> sizeNow() {
    try {
      return sizeIn(run("stty size"));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Sets the terminal raw once more, after the program was stopped and goes on. */
  void reenter() throws IOException {
    run(RAW);
  }

  /** Gives the settings back as they were. */
  void restore() throws IOException {
    run("stty " + saved);
  }

  private static Optional<Display.GridSize> sizeIn(String told) {
    String[] numbers = told.strip().split(" ", -1);
    if (numbers.length != 2 || !numbers[0].matches("\\d{1,5}") || !numbers[1].matches("\\d{1,5}")) {
      return Optional.empty();
    }
    int rows = Integer.parseInt(numbers[0]);
    int columns = Integer.parseInt(numbers[1]);
    return rows == 0 || columns == 0
        ? Optional.empty()
        : Optional.of(new Display.GridSize(columns, rows));
  }

  private static String run(String script) throws IOException {
    Process sh =
        new ProcessBuilder("/bin/sh", "-c", script)
            .redirectInput(ProcessBuilder.Redirect.INHERIT)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      // A lost terminal may hold stty for ever; the program must end all the same.
      if (!sh.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        sh.destroyForcibly();
        throw new IOException("The terminal doesn't answer");
      }
      String told = new String(sh.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      if (sh.exitValue() != 0) {
        throw new IOException("Standard input is not a terminal");
      }
      return told;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted while asking the terminal", e);
    }
  }
}
