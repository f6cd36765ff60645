package linkwright.cli.console;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import linkwright.coach.KeyClashes;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.keys.KeyNames;
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
  /** Copies the list. */
  public Choices {
    problems = List.copyOf(problems);
  }

  /** Reads settings and keys; what is wrong is told and left as usual. */
  public static Choices load(Home home) {
    UserSettings.Loaded loaded = UserSettings.load(home);
    List<String> acts = Arrays.stream(Act.values()).map(Act::id).toList();
    KeysFile keys = KeysFile.load(home, acts, name -> KeyNames.read(name).isPresent());
    List<Problem> problems = new ArrayList<>(loaded.problems());
    problems.addAll(keys.problems());
    KeyClashes.of(keys.keys())
        .forEach(clash -> problems.add(new Problem("keys.yaml", 0, 0, clash, "")));
    UserSettings user = loaded.settings();
    return new Choices(SettingsKeeping.of(user, new KeyMap(keys.keys())), user, problems);
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
