package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.disk.SpeechCommand;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;

/**
 * The user's choices, from {@code settings.yaml} in her folder.
 *
 * @param units how amounts are shown
 * @param words whose trade words are shown
 * @param theme one of {@link #THEMES}; empty where the terminal's own background decides
 * @param device this machine's name in the books; empty where she gave none
 * @param fontSize the window's letters, points
 * @param flash whether a ringing timer may flash
 * @param mouse whether clicks are taken
 * @param say the command that says sentences aloud; empty for silence
 * @param sayKinds what is said: cautions, waits, counts, steps; empty for all
 * @param screenBars how long the measured bar is on each screen; empty where none was measured
 */
public record UserSettings(
    UnitStyle units,
    TradeWords words,
    Optional<String> theme,
    Optional<String> device,
    int fontSize,
    boolean flash,
    boolean mouse,
    Optional<String> say,
    Optional<String> sayKinds,
    Optional<String> screenBars) {
  /** The themes there are, the usual one first. */
  public static final List<String> THEMES = List.of("dark", "light", "high-contrast", "plain");

  /** The choices of someone who made none. */
  public static final UserSettings USUAL =
      new UserSettings(
          UnitStyle.METRIC,
          TradeWords.BRITISH,
          Optional.empty(),
          Optional.empty(),
          18,
          true,
          true,
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static final String NAME = "settings.yaml";

  static final List<String> KEYS =
      List.of(
          "units",
          "words",
          "theme",
          "device",
          "font-size",
          "screen-bars",
          "flash",
          "mouse",
          "say",
          "say-kinds");

  private static final List<String> KINDS =
      List.of("cautions", "waits", "counts", "steps", "still-to-do", "clicks", "tones");

  /** The smallest letters of the window, points. */
  public static final int SMALLEST_FONT = 8;

  /** The largest, points. */
  public static final int LARGEST_FONT = 72;

  /** The choices and what is wrong with their file; what is wrong takes its usual value. */
  public record Loaded(UserSettings settings, List<Problem> problems) {
    /** Copies the list. */
    public Loaded {
      problems = List.copyOf(problems);
    }
  }

  /** Reads the file in the user's folder; without one the choices are the usual ones. */
  public static Loaded load(Home home) {
    Path path = home.folder().resolve(NAME);
    List<Problem> trouble = new ArrayList<>();
    UnitStyle units = units(home);
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return new Loaded(usual(units), trouble);
    }
    return Home.read(path, trouble)
        .map(file -> onThisMachine(file, units))
        .orElseGet(() -> new Loaded(usual(units), trouble));
  }

  /** The units of whoever chose none here: those of her bench. */
  private static UnitStyle units(Home home) {
    return BenchFile.load(home).bench().units().orElse(USUAL.units);
  }

  private static UserSettings usual(UnitStyle units) {
    return new UserSettings(
        units,
        USUAL.words,
        USUAL.theme,
        USUAL.device,
        USUAL.fontSize,
        USUAL.flash,
        USUAL.mouse,
        USUAL.say,
        USUAL.sayKinds,
        USUAL.screenBars);
  }

  /** The same, and what is set that this machine has not. */
  static Loaded onThisMachine(DataFile file) {
    return onThisMachine(file, USUAL.units);
  }

  private static Loaded onThisMachine(DataFile file, UnitStyle units) {
    Loaded loaded = of(file, units);
    List<Problem> problems = new ArrayList<>(loaded.problems());
    loaded
        .settings()
        .say()
        .flatMap(SpeechCommand::trouble)
        .ifPresent(why -> problems.add(new Problem(file.name(), lineOf("say:", file), 1, why, "")));
    return new Loaded(loaded.settings(), problems);
  }

  /** Counted from 1; 0 where no line begins so. */
  private static int lineOf(String key, DataFile file) {
    List<String> lines = new String(file.bytes(), StandardCharsets.UTF_8).lines().toList();
    int at = 0;
    while (at < lines.size() && !lines.get(at).startsWith(key)) {
      at++;
    }
    return at < lines.size() ? at + 1 : 0;
  }

  static Loaded of(DataFile file) {
    return of(file, USUAL.units);
  }

  private static Loaded of(DataFile file, UnitStyle units) {
    ProblemList problems = new ProblemList(file.name());
    UserSettings settings =
        YamlFields.ofFile(file.bytes(), "the settings", problems)
            .map(fields -> of(fields, units))
            .orElseGet(() -> usual(units));
    return new Loaded(settings, problems.all());
  }

  private static UserSettings of(YamlFields from, UnitStyle units) {
    UserSettings settings =
        new UserSettings(
            from.optional("units", words(UnitStyle.values())).orElse(units),
            from.optional("words", words(TradeWords.values())).orElse(USUAL.words),
            from.optional(
                "theme",
                Values.word(word -> THEMES.stream().filter(word::equals).findFirst(), THEMES)),
            from.optional("device", Read::good),
            from.optional("font-size", UserSettings::fontSize).orElse(USUAL.fontSize),
            from.optional("flash", Values::flag).orElse(USUAL.flash),
            from.optional("mouse", Values::flag).orElse(USUAL.mouse),
            from.optional("say", Read::good),
            from.optional("say-kinds", UserSettings::kinds),
            from.optional("screen-bars", UserSettings::bars));
    from.sound();
    return settings;
  }

  /**
   * Puts the choices into the user's folder, line by line: what else she wrote into the file stays.
   *
   * @return a sentence if the disk refuses, or if the file has to be mended first
   */
  public Optional<String> save(Home home) {
    Path path = home.folder().resolve(NAME);
    return Home.textToEdit(path)
        .flatMap(text -> changed(path, text, units(home)))
        .flatMap(text -> written(home, path, text))
        .problem();
  }

  private Read<String> changed(Path path, String text, UnitStyle usual) {
    Map<String, String> before =
        text.isBlank() ? Map.of() : read(path, text, usual).settings().texts();
    Map<String, String> now = texts();
    String edited = text;
    for (String key : KEYS) {
      String value = now.getOrDefault(key, "");
      if (!value.equals(before.getOrDefault(key, ""))) {
        edited = BenchEdit.set(edited, key, value);
      }
    }
    Loaded after = read(path, edited, usual);
    return after.settings().equals(this)
        ? Read.good(edited)
        : Read.bad(
            after.problems().stream().map(Problem::sentence).findFirst().orElse(path + ":")
                + " Mend it first: nothing is changed in it.");
  }

  private static Loaded read(Path path, String text, UnitStyle usual) {
    return of(new DataFile(path.toString(), text.getBytes(StandardCharsets.UTF_8)), usual);
  }

  private static Read<String> written(Home home, Path path, String text) {
    try {
      Disk.folders(home.folder());
      Disk.replace(path, text.getBytes(StandardCharsets.UTF_8));
      return Read.good(text);
    } catch (IOException trouble) {
      return Read.bad(DiskTrouble.writing(path, trouble));
    }
  }

  /** The choices as they stand in the file, by their keys; what is left open is left out. */
  public Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("units", word(units));
    texts.put("words", word(words));
    theme.ifPresent(name -> texts.put("theme", name));
    device.ifPresent(name -> texts.put("device", name));
    texts.put("font-size", Integer.toString(fontSize));
    screenBars.ifPresent(bars -> texts.put("screen-bars", bars));
    texts.put("flash", Boolean.toString(flash));
    texts.put("mouse", Boolean.toString(mouse));
    say.ifPresent(command -> texts.put("say", command));
    sayKinds.ifPresent(kinds -> texts.put("say-kinds", kinds));
    return texts;
  }

  /** Reads choices that were typed one by one; a sentence if one of them is none. */
  public static Read<UserSettings> ofTexts(Map<String, String> texts) {
    StringBuilder file = new StringBuilder("format: 1\n");
    texts.forEach(
        (key, value) -> {
          file.append(key).append(": ");
          YamlScalar.quoted(file, value);
          file.append('\n');
        });
    Loaded loaded = of(new DataFile(NAME, file.toString().getBytes(StandardCharsets.UTF_8)));
    return loaded.problems().isEmpty()
        ? Read.good(loaded.settings())
        : Read.bad(loaded.problems().get(0).sentence());
  }

  private static Read<String> kinds(String text) {
    for (String kind : text.strip().split("[,\\s]+", -1)) {
      if (!kind.isEmpty() && !KINDS.contains(kind)) {
        return Read.bad("“" + kind + "” is none of these: " + String.join(", ", KINDS) + ".");
      }
    }
    return Read.good(text);
  }

  private static Read<String> bars(String text) {
    for (String bar : text.split(";", -1)) {
      if (!bar.isBlank() && !bar.contains(" at ")) {
        return Read.bad(
            "“"
                + bar.strip()
                + "” is no bar on a screen: 82.3 mm at 18 points on 1400 x 900 is one.");
      }
    }
    return Read.good(text);
  }

  private static Read<Integer> fontSize(String text) {
    return Values.whole(text)
        .flatMap(
            points ->
                points >= SMALLEST_FONT && points <= LARGEST_FONT
                    ? Read.good(points)
                    : Read.bad("A font of " + points + " points can't be read; 8 to 72 can."));
  }

  static <E extends Enum<E>> java.util.function.Function<String, Read<E>> words(E[] values) {
    return Values.word(
        text -> Stream.of(values).filter(value -> word(value).equals(text)).findFirst(),
        Stream.of(values).map(UserSettings::word).toList());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
