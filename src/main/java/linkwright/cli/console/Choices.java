package linkwright.cli.console;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import linkwright.coach.KeyClashes;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.keys.KeyNames;
import linkwright.files.DataFile;
import linkwright.files.Home;
import linkwright.files.KeysFile;
import linkwright.files.UserSettings;
import linkwright.quantity.Problem;
import linkwright.shell.SettingsKeeping;

/**
 * The user's choices, read from her folder.
 *
 * @param settings what the coach needs of them
 * @param user the rest
 * @param problems what is wrong with their files, located
 */
public record Choices(Settings settings, UserSettings user, List<Problem> problems) {
  private static final List<String> ACTS = Arrays.stream(Act.values()).map(Act::id).toList();

  /** Copies the list. */
  public Choices {
    problems = List.copyOf(problems);
  }

  /** Reads settings and keys; what is wrong is told and left as usual. */
  public static Choices load(Home home) {
    UserSettings.Loaded loaded = UserSettings.load(home);
    KeysFile keys = KeysFile.load(home, ACTS, Choices::isKey);
    List<Problem> problems = new ArrayList<>(loaded.problems());
    problems.addAll(problems("keys.yaml", keys));
    UserSettings user = loaded.settings();
    return new Choices(SettingsKeeping.of(user, new KeyMap(keys.keys())), user, problems);
  }

  /** What is wrong in a file of keys, wherever it lies. */
  public static List<Problem> keysProblems(DataFile file) {
    return problems(file.name(), KeysFile.of(file, ACTS, Choices::isKey));
  }

  private static List<Problem> problems(String name, KeysFile keys) {
    List<Problem> problems = new ArrayList<>(keys.problems());
    KeyClashes.of(keys.keys()).forEach(clash -> problems.add(new Problem(name, 0, 0, clash, "")));
    return problems;
  }

  private static boolean isKey(String name) {
    return KeyNames.read(name).isPresent();
  }

  /** The name by which this machine signs the books of a home. */
  public String device(Surroundings here, Home home) {
    return Device.id(user, here, home);
  }

  /** The same choices with the usual keys, for where no key is shown. */
  public Settings withUsualKeys() {
    return settings.with(KeyMap.USUAL);
  }
}
