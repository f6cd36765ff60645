package linkwright.cli.console;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import linkwright.books.DeviceId;
import linkwright.files.Home;
import linkwright.files.UserSettings;
import linkwright.shell.ClockNotes;
import linkwright.shell.SteadyClock;
import linkwright.text.Slug;

/** The name of this machine in the books. */
public final class Device {
  private static final int LONGEST = 24;

  /** How a machine signs that nobody named: one by one they are told as the first, the second. */
  private static final String UNNAMED = "machine";

  private Device() {}

  /** The name by which it signs the books of a home: chosen once and kept outside of it. */
  public static String id(UserSettings user, Surroundings here, Home home) {
    return kept(here).of(home, name(user));
  }

  /** Where such names are kept. */
  public static DeviceId kept(Surroundings here) {
    Map<String, String> variables = here.environment().variables();
    return new DeviceId(
        DeviceId.stateFolder(variables, here.userHome()), DeviceId.machine(host(variables)));
  }

  /** How this machine's clock goes; nothing is noted where another clock stands for it. */
  public static ClockNotes clock(Surroundings here) {
    Map<String, String> variables = here.environment().variables();
    return here.steady() instanceof SteadyClock
        ? ClockNotes.in(DeviceId.stateFolder(variables, here.userHome()))
        : ClockNotes.NONE;
  }

  /** The name that the user gave it, made safe for a book; a host's own is no word of hers. */
  private static String name(UserSettings user) {
    String slug = Slug.of(user.device().orElse(UNNAMED), taken -> false);
    return slug.substring(0, Math.min(slug.length(), LONGEST)).replaceAll("-+$", "");
  }

  private static String host(Map<String, String> variables) {
    return Optional.ofNullable(variables.get("HOSTNAME"))
        .or(() -> Optional.ofNullable(variables.get("COMPUTERNAME")))
        .or(() -> firstLine(Path.of("/etc/hostname")))
        .filter(name -> !name.isBlank())
        .orElseGet(Device::asked);
  }

  private static Optional<String> firstLine(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1).lines().findFirst();
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  /** Last, because a network that does not answer makes this slow. */
  private static String asked() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException nameless) {
      return "bench";
    }
  }
}
