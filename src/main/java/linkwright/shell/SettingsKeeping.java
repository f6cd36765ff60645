package linkwright.shell;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.disk.SpeechCommand;
import linkwright.files.Home;
import linkwright.files.UserSettings;
import linkwright.quantity.Read;
import linkwright.routine.TradeWords;

/** The user's choices between her file and the coach. */
public final class SettingsKeeping {
  private SettingsKeeping() {}

  /** What the coach needs of the choices in the file. */
  public static Settings of(UserSettings user, KeyMap keys) {
    return new Settings(user.units(), user.words() == TradeWords.BRITISH, keys)
        .standing(user.texts());
  }

  /** Puts them into the file and answers what holds from now on. */
  static Message keep(Home home, Map<String, String> texts, Settings before) {
    Read<UserSettings> read = UserSettings.ofTexts(texts);
    Optional<String> trouble =
        read.problem()
            .or(() -> unsaid(texts, before))
            .or(() -> read.found().flatMap(user -> user.save(home)));
    Settings now =
        trouble.isPresent()
            ? before
            : of(read.orThrow(), before.keys())
                .in(before.zone())
                .across(before.across())
                .on(before.screen());
    return new Message.SettingsKept(now, trouble);
  }

  /** A command that is not here is told as it is set; one that stood there before stays. */
  private static Optional<String> unsaid(Map<String, String> texts, Settings before) {
    String say = texts.getOrDefault("say", "");
    return say.equals(before.chosen().getOrDefault("say", ""))
        ? Optional.empty()
        : SpeechCommand.trouble(say);
  }
}
