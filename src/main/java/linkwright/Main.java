package linkwright;

import java.nio.file.Path;
import java.util.Optional;
import linkwright.coach.Settings;
import linkwright.files.Home;
import linkwright.shell.Start;
import linkwright.terminal.Display;
import linkwright.terminal.Displays;
import linkwright.terminal.Environment;
import linkwright.terminal.Wishes;

/** Starts Linkwright. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    Home home =
        Home.find(Optional.empty(), System.getenv(), Path.of(System.getProperty("user.home")));
    Optional<Display> display = Displays.choose(Environment.here(), Wishes.NONE);
    display.ifPresent(shown -> Start.run(home, Settings.USUAL, "bench", shown, Optional.empty()));
  }
}
