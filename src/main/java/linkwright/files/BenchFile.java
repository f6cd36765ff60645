package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.OwnSolder;
import linkwright.bench.Pickle;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.Values;
import linkwright.job.PriceList;
import linkwright.quantity.Length;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.quantity.Span;
import linkwright.quantity.UnitStyle;

/**
 * The maker's own bench, from {@code bench.yaml} in her folder. What is wrong in it is told with
 * its place and left out; the rest holds.
 *
 * @param bench what could be read
 * @param problems all that is wrong, located
 */
public record BenchFile(OwnBench bench, List<Problem> problems) {
  private static final String NAME = "bench.yaml";
  private static final List<String> SHARES =
      List.of(
          PriceList.SCRAP_CREDIT,
          PriceList.FILINGS_CREDIT,
          PriceList.OVERHEAD,
          PriceList.MARGIN,
          PriceList.TAX);

  /** Copies the list. */
  public BenchFile {
    problems = List.copyOf(problems);
  }

  /** Reads the file in the user's folder; without one the bench is nobody's. */
  public static BenchFile load(Home home) {
    Path path = home.folder().resolve(NAME);
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path)) {
      return new BenchFile(OwnBench.NONE, trouble);
    }
    return Home.read(path, trouble)
        .map(BenchFile::of)
        .orElseGet(() -> new BenchFile(OwnBench.NONE, trouble));
  }

  /**
   * Changes values in the file in the user's folder, key by key, and leaves all else in it as it
   * is. Nothing is written that would be wrong.
   *
   * @param changes key with its groups before it, {@code prices.hour} → value; empty takes it out
   */
  public static Read<BenchFile> change(Home home, Map<String, String> changes) {
    Path path = home.folder().resolve(NAME);
    try {
      Read<String> there = Home.textToEdit(path);
      if (there instanceof Read.Bad<String> bad) {
        return Read.bad(bad.sentence());
      }
      String text = there.orThrow();
      BenchFile before = of(file(path, text));
      for (Map.Entry<String, String> each : changes.entrySet()) {
        text = BenchEdit.set(text, each.getKey(), each.getValue());
      }
      BenchFile after = of(file(path, text));
      List<Problem> wrong = new ArrayList<>(after.problems());
      wrong.removeIf(
          problem ->
              before.problems().stream().anyMatch(old -> old.wrong().equals(problem.wrong())));
      if (!wrong.isEmpty()) {
        return Read.bad(wrong.get(0).wrong() + " " + wrong.get(0).expected());
      }
      Disk.folders(home.folder());
      Disk.replace(path, text.getBytes(StandardCharsets.UTF_8));
      return Read.good(after);
    } catch (IOException failed) {
      return Read.bad(DiskTrouble.writing(path, failed));
    }
  }

  /** What is wrong with changes that were typed, whatever stands in the file. */
  public static Optional<String> wrong(Map<String, String> changes) {
    String text = "format: 1\n";
    for (Map.Entry<String, String> each : changes.entrySet()) {
      text = BenchEdit.set(text, each.getKey(), each.getValue());
    }
    return of(file(Path.of(NAME), text)).problems().stream()
        .map(problem -> problem.wrong() + " " + problem.expected())
        .findFirst();
  }

  private static DataFile file(Path path, String text) {
    return new DataFile(path.toString(), text.getBytes(StandardCharsets.UTF_8));
  }

  static BenchFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    OwnBench bench =
        YamlFields.ofFile(file.bytes(), "the bench", problems).map(BenchFile::of).orElse(OwnBench.NONE);
    return new BenchFile(bench, problems.all());
  }

  private static OwnBench of(YamlFields from) {
    OwnBench bench =
        new OwnBench(
            from.textOrEmpty("bench"),
            from.texts("persons"),
            from.optional("units", UserSettings.words(UnitStyle.values())),
            all(from, "formers", "the formers", BenchFile::sizeMm),
            from.list("plate", BenchFile::sizeMm),
            some(from.optional("kerf", BenchFile::sizeMm)),
            from.group("flame", "the flame").map(BenchFile::flame).orElse(Flame.NOT_SAID),
            from.group("pickle", "the pickle").map(BenchFile::pickle).orElse(Pickle.NOT_SAID),
            from.groups("solders", "a solder").stream().map(BenchFile::solder).toList(),
            from.group("prices", "the prices").map(BenchFile::prices).orElse(OwnPrices.NONE),
            all(from, "losses", "the losses", BenchFile::share),
            all(from, "redos", "the redos", BenchFile::share),
            seconds(from.optional("fire-watch", Span::read)),
            all(from, "waits", "the waits", text -> Span.read(text).map(Span::seconds)),
            from.texts("tools"));
    from.sound();
    return bench;
  }

  private static <T> Map<String, T> all(
      YamlFields from, String key, String what, java.util.function.Function<String, Read<T>> reader) {
    return from.group(key, what).map(group -> group.all(reader)).orElse(Map.of());
  }

  private static Flame flame(YamlFields from) {
    Flame flame =
        new Flame(from.textOrEmpty("torch"), from.textOrEmpty("fuel"), from.flag("oxygen"));
    from.sound();
    return flame;
  }

  private static Pickle pickle(YamlFields from) {
    Pickle pickle =
        new Pickle(
            from.textOrEmpty("kind"),
            seconds(from.optional("wait", Span::read)),
            from.optional("mixed", BenchFile::day));
    from.sound();
    return pickle;
  }

  private static OwnSolder solder(YamlFields from) {
    Optional<YamlFields> strip = from.group("strip", "the strip");
    Optional<Integer> fineness = from.optional("fineness-permille", Values::whole);
    OwnSolder solder =
        new OwnSolder(
            from.text("solder"),
            from.textOrEmpty("grade"),
            from.textOrEmpty("alloy"),
            fineness.map(OptionalInt::of).orElse(OptionalInt.empty()),
            some(from.optional("solidus-c", Values::aboveNothing)),
            some(from.optional("liquidus-c", Values::aboveNothing)),
            some(strip.flatMap(group -> group.optional("width", BenchFile::sizeMm))),
            some(strip.flatMap(group -> group.optional("thickness", BenchFile::sizeMm))));
    strip.ifPresent(YamlFields::sound);
    from.sound();
    return solder;
  }

  private static OwnPrices prices(YamlFields from) {
    from.require("currency", "Write currency: EUR; without it a price is a bare number.");
    String currency = from.textOrEmpty("currency");
    Map<String, Double> metals =
        all(from, PriceList.METAL_PER_G, "the prices of metals", Values::notNegative);
    Map<String, Double> others = new LinkedHashMap<>();
    for (String name : PriceList.NAMES) {
      if (!name.equals(PriceList.METAL_PER_G)) {
        from.optional(name, SHARES.contains(name) ? BenchFile::anyShare : Values::notNegative)
            .ifPresent(figure -> others.put(name, figure));
      }
    }
    from.sound();
    return currency.isEmpty() ? OwnPrices.NONE : new OwnPrices(currency, metals, others);
  }

  private static Read<Double> sizeMm(String text) {
    return Length.readSize(text).map(Length::mm);
  }

  private static Read<Double> share(String text) {
    return Share.read(text).map(Share::value);
  }

  private static Read<Double> anyShare(String text) {
    return Share.readAny(text).map(Share::value);
  }

  private static Read<LocalDate> day(String text) {
    try {
      return Read.good(LocalDate.parse(text));
    } catch (DateTimeException noDay) {
      return Read.bad("\"" + text + "\" is no day. Write 2026-11-20: year, month, day.");
    }
  }

  private static OptionalDouble some(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static OptionalLong seconds(Optional<Span> span) {
    return span.map(read -> OptionalLong.of(read.seconds())).orElse(OptionalLong.empty());
  }
}
