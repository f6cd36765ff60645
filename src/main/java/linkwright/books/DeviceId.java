package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.disk.Disk;
import linkwright.files.Home;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.quantity.Read;

/**
 * By what name this machine signs entries in this home: chosen once, at random behind a name that a
 * person knows, and kept outside the home. So a home that was copied or is synced to another
 * machine, or lies at another path, does not make two devices one.
 */
public final class DeviceId {
  private static final String LETTERS = "abcdefghjkmnpqrstvwxyz23456789";
  private static final String DIGITS = "23456789";
  private static final int RANDOM_LETTERS = 8;
  private static final SecureRandom CHANCE = new SecureRandom();

  private final Path file;
  private final String machine;

  /**
   * The names kept in a folder.
   *
   * @param stateFolder the folder for what programs keep on this machine; need not exist yet
   * @param machine what tells this machine from others, such as what {@link #machine} gives
   */
  public DeviceId(Path stateFolder, String machine) {
    this.file = stateFolder.resolve("devices.yaml");
    this.machine = machine;
  }

  /**
   * Where this system keeps what belongs to a program on this machine and no other.
   *
   * @param environment the variables of the environment
   * @param userHome the user's home directory
   */
  public static Path stateFolder(Map<String, String> environment, Path userHome) {
    Optional<Path> named =
        Optional.ofNullable(environment.get("XDG_STATE_HOME"))
            .or(() -> Optional.ofNullable(environment.get("LOCALAPPDATA")))
            .filter(folder -> !folder.isBlank())
            .map(Path::of)
            .filter(Path::isAbsolute);
    return named.orElseGet(() -> userHome.resolve(".local").resolve("state")).resolve("linkwright");
  }

  /** What tells this machine from others: a digest of the system's own number, or its name. */
  public static String machine(String hostName) {
    try {
      byte[] id = Files.readAllBytes(Path.of("/etc/machine-id"));
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(id);
      return HexFormat.of().formatHex(digest, 0, 8);
    } catch (IOException | NoSuchAlgorithmException notThisSystem) {
      return hostName;
    }
  }

  /**
   * The name of this machine in a home's books: the one that was chosen before, else a new one.
   *
   * @param home the user's folder
   * @param name what a person calls this machine, letters, digits and hyphens
   */
  public String of(Home home, String name) {
    String place = whole(home.folder());
    List<Known> known = read();
    for (Known each : known) {
      if (each.home().equals(place) && each.machine().equals(machine)) {
        return each.id();
      }
    }
    String chosen = name + "-" + random();
    List<Known> more = new ArrayList<>(known);
    more.add(new Known(place, machine, chosen));
    write(more);
    return chosen;
  }

  /** Why the name cannot be kept; each start is taken for another machine then. */
  public Optional<String> trouble() {
    boolean kept = Files.isRegularFile(file) && Files.isReadable(file) && Files.isWritable(file);
    return kept
        ? Optional.empty()
        : (Files.exists(file)
                ? Optional.of("it is no file that may be read and written.")
                : Disk.whyNoFolder(file.getParent()))
            .map(
                why ->
                    "This machine's name in the books cannot be kept in "
                        + file
                        + ", so each start signs as another machine: "
                        + why);
  }

  private record Known(String home, String machine, String id) {}

  private List<Known> read() {
    if (!Files.isRegularFile(file)) {
      return List.of();
    }
    List<Known> known = new ArrayList<>();
    ProblemList problems = new ProblemList(file.toString());
    Home.read(file, new ArrayList<>())
        .flatMap(data -> YamlFields.ofFile(data.bytes(), "the devices", problems))
        .ifPresent(
            fields -> {
              for (YamlFields each : fields.groups("devices", "a device")) {
                String id = each.value("id", DeviceId::id, "");
                Known one = new Known(each.text("home"), each.text("machine"), id);
                if (each.sound()) {
                  known.add(one);
                }
              }
            });
    return known;
  }

  private static Read<String> id(String text) {
    return text.matches("[a-z0-9-]{1,60}") ? Read.good(text) : Read.bad("That is no device.");
  }

  /** What cannot be kept is chosen anew next time: one device more, and nothing is mixed up. */
  private void write(List<Known> known) {
    StringBuilder text = new StringBuilder("format: 1\ndevices:\n");
    for (Known each : known) {
      text.append("  - {home: ");
      YamlScalar.quoted(text, each.home());
      text.append(", machine: ");
      YamlScalar.quoted(text, each.machine());
      text.append(", id: ").append(each.id()).append("}\n");
    }
    try {
      Disk.folders(file.getParent());
      Disk.replace(file, text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException cannotKeep) {
      return;
    }
  }

  private static String random() {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < RANDOM_LETTERS; i++) {
      letters.append(LETTERS.charAt(CHANCE.nextInt(LETTERS.length())));
    }
    // A digit at least: so it is not taken for a word when the name is shown without it.
    return letters.substring(1) + DIGITS.charAt(CHANCE.nextInt(DIGITS.length()));
  }

  /** The path without links as far as it is there, so that one home has one name. */
  private static String whole(Path folder) {
    Path there = folder.toAbsolutePath().normalize();
    Path rest = Path.of("");
    while (there.getParent() != null && !Files.exists(there)) {
      rest = there.getFileName().resolve(rest);
      there = there.getParent();
    }
    try {
      return there.toRealPath().resolve(rest).normalize().toString();
    } catch (IOException unreadable) {
      return there.resolve(rest).normalize().toString();
    }
  }
}
