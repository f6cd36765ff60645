package linkwright.walks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linkwright.Main;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;

/**
 * A folder of one's own and the real program started on it, as often as wished. Every wait is for
 * something shown; the limits are long, for a busy machine.
 */
final class Workbench {
  /** Seconds; only a failing walk waits so long. */
  static final int LONG = 180;

  private static final List<String> TOO_SOON =
      List.of(
          "That press came too soon", "Pressed again too soon", "that press came before anybody");
  private static final long UNREAD_MS = 750;

  private static final Key PEDAL = Key.of(Key.Kind.PAGE_DOWN);

  private final Path home;

  Workbench() throws IOException {
    Files.createDirectories(Path.of("target", "walks"));
    home = Files.createTempDirectory(Path.of("target", "walks"), "home").toAbsolutePath();
  }

  /** The same, with a copy of the demo's routine in which every wait is over in a second. */
  static Workbench withShortWaits() throws IOException {
    Workbench workbench = new Workbench();
    String routine = Files.readString(Path.of("routines", "scroll-and-ring.yaml"));
    Path own = Files.createDirectories(workbench.home.resolve("routines"));
    Files.writeString(
        own.resolve("scroll-and-ring.yaml"), routine.replaceAll("for: [0-9]+ min", "for: 1 s"));
    return workbench;
  }

  /** Her own watch is a second long, so that a walk comes to its end. */
  static Workbench withAShortWatch() throws IOException {
    Workbench workbench = withShortWaits();
    Files.writeString(workbench.home.resolve("bench.yaml"), "format: 1\nfire-watch: 1 s\n");
    return workbench;
  }

  Path home() {
    return home;
  }

  /** Starts the program, 80 x 24. */
  WalkedProgram start(String... arguments) throws IOException {
    return start(Map.of(), arguments);
  }

  WalkedProgram start(Map<String, String> environment, String... arguments) throws IOException {
    Map<String, String> all = new HashMap<>(Map.of("LINKWRIGHT_HOME", home.toString()));
    all.putAll(environment);
    return WalkedProgram.start(80, 24, all, WalkedProgram.java(Main.class, arguments));
  }

  /** Starts it and opens the one job in the tray. */
  WalkedProgram openTheJob() throws IOException {
    WalkedProgram walk = start().waitFor("the tray", LONG);
    return press(walk, "enter").waitFor("places of the job", LONG);
  }

  /** Presses keys by their names. */
  static WalkedProgram press(WalkedProgram walk, String... names) throws IOException {
    for (String name : names) {
      walk.press(KeyNames.read(name).orElseThrow());
    }
    return walk;
  }

  /** Goes to a place of the job by its key on the way round. */
  static WalkedProgram go(WalkedProgram walk, String key, String title) throws IOException {
    press(walk, "esc").waitFor("places of the job", LONG);
    return press(walk, key).waitFor("· " + title, LONG);
  }

  /** Treads the pedal, and nothing else, until the text is shown. */
  static WalkedProgram tread(WalkedProgram walk, String until) throws IOException {
    return onward(walk, until, false);
  }

  /** Goes on until the text is shown: all that wait come through at once. */
  static WalkedProgram hurry(WalkedProgram walk, String until) throws IOException {
    return onward(walk, until, true);
  }

  private static WalkedProgram onward(WalkedProgram walk, String until, boolean all)
      throws IOException {
    for (int presses = 0; presses < 600; presses++) {
      String shown = walk.screen();
      if (shown.contains(until)) {
        return walk;
      }
      if (shown.contains("no other work waits")) {
        walk.waitWhile("till when it runs", LONG);
        continue;
      }
      if (tooSoon(shown)) {
        unread();
      }
      walk.press(all && shown.contains("space one done") ? Key.of("a") : PEDAL);
      walk.waitUntil(
          "the key did something",
          now ->
              now.contains(until)
                  || tooSoon(now)
                  || now.contains("no other work waits")
                  || !work(now).equals(work(shown)),
          LONG);
      walk.waitUntilStill();
    }
    throw new AssertionError("600 presses did not lead to: " + until + "\n" + walk.screen());
  }

  private static boolean tooSoon(String screen) {
    // The sentence may go on in another row.
    String told = screen.replaceAll("\\s+", " ");
    return TOO_SOON.stream().anyMatch(told::contains);
  }

  /** A press that would end something counts only when there was time to read it. */
  static void unread() {
    try {
      Thread.sleep(UNREAD_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What only a key changes: all but the first row with its timer, and the row that tells. */
  private static List<String> work(String screen) {
    List<String> rows = new ArrayList<>(List.of(screen.split("\n", -1)));
    if (rows.size() > 3) {
      rows.remove(rows.size() - 3);
    }
    rows.remove(0);
    return rows;
  }

  /** Runs a command of the program over pipes and answers with its exit code and what it said. */
  Said command(String input, String... arguments) throws IOException {
    Path out = Files.createTempFile(home, "said", ".txt");
    Path in = Files.writeString(Files.createTempFile(home, "typed", ".txt"), input);
    ProcessBuilder builder = new ProcessBuilder(WalkedProgram.java(Main.class, arguments));
    builder.environment().put("LINKWRIGHT_HOME", home.toString());
    builder.environment().put("LANG", "C.UTF-8");
    builder.redirectErrorStream(true).redirectInput(in.toFile()).redirectOutput(out.toFile());
    Process process = builder.start();
    try {
      int code = process.waitFor();
      return new Said(code, Files.readString(out), List.of(arguments));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted: " + Arrays.toString(arguments), e);
    }
  }

  /** What a command said. */
  record Said(int code, String text, List<String> arguments) {}
}
