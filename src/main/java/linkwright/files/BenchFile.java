package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.OwnSolder;
import linkwright.bench.Pickle;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.job.PriceList;
import linkwright.quantity.Length;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.quantity.Span;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import org.yaml.snakeyaml.error.Mark;

/**
 * The maker's own bench, from {@code bench.yaml} in her folder. What is wrong in it is told with
 * its place and left out; the rest holds.
 *
 * @param bench what could be read
 * @param problems all that is wrong, located
 * @param priced the metals that have a price, as she named them; empty once they are looked up
 */
public record BenchFile(OwnBench bench, List<Problem> problems, List<PricedMetal> priced) {
  private static final String NAME = "bench.yaml";
  private static final List<String> SHARES =
      List.of(
          PriceList.SCRAP_CREDIT,
          PriceList.FILINGS_CREDIT,
          PriceList.OVERHEAD,
          PriceList.MARGIN,
          PriceList.TAX);

  private static final String CURRENCY = "prices.currency";
  private static final String METAL_PRICE = "prices." + PriceList.METAL_PER_G + ".";

  /**
   * A metal as she named it beside its price.
   *
   * @param file where
   * @param name what stands there
   * @param line its line, from 1
   * @param column its column, from 1
   */
  public record PricedMetal(String file, String name, int line, int column) {}

  /** Copies the lists. */
  public BenchFile {
    problems = List.copyOf(problems);
    priced = List.copyOf(priced);
  }

  /** A file without a bench in it. */
  BenchFile(List<Problem> problems) {
    this(OwnBench.NONE, problems, List.of());
  }

  /**
   * The same with its metals looked up as a plan's are: a price of what is no metal is told and
   * left out, and so is a second price of one.
   */
  public BenchFile known(Reference reference) {
    if (priced.isEmpty()) {
      return this;
    }
    ProblemList told = new ProblemList(priced.get(0).file());
    Map<String, Double> perG = new LinkedHashMap<>();
    Map<String, String> names = new HashMap<>();
    Function<String, Optional<String>> ids = metalIds(reference);
    OwnPrices prices = bench.prices();
    for (PricedMetal metal : priced) {
      String name = metal.name();
      Optional<String> id = ids.apply(name);
      Optional<String> first = id.flatMap(known -> Optional.ofNullable(names.get(known)));
      if (id.isPresent() && first.isEmpty()) {
        names.put(id.get(), name);
        Optional.ofNullable(prices.metalPerG().get(name)).ifPresent(g -> perG.put(id.get(), g));
      } else if (told.full()) {
        told.add(metal.line(), metal.column(), "", "");
      } else {
        told.add(
            metal.line(),
            metal.column(),
            "\""
                + PriceList.METAL_PER_G
                + "\": "
                + first
                    .map(other -> "“" + name + "” and “" + other + "” are one metal.")
                    .orElseGet(() -> reference.metal(name).problem().orElse("")),
            "");
      }
    }
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(told.all());
    OwnPrices looked = new OwnPrices(prices.currency(), perG, prices.others());
    return new BenchFile(bench.with(looked), all, List.of());
  }

  /** Looks up metals alone: a price of solder has a key of its own. */
  private static Function<String, Optional<String>> metalIds(Reference reference) {
    Set<String> metals = new HashSet<>(reference.metals().stream().map(Metal::id).toList());
    Function<String, Optional<String>> ids = reference.alloyIds();
    return name -> ids.apply(name).filter(metals::contains);
  }

  /** Reads the file in the user's folder; without one the bench is nobody's. */
  public static BenchFile load(Home home) {
    Path path = home.bench();
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path)) {
      return new BenchFile(trouble);
    }
    return Home.read(path, trouble).map(BenchFile::of).orElseGet(() -> new BenchFile(trouble));
  }

  /**
   * Changes values in the file in the user's folder, key by key, and leaves all else in it as it
   * is. Nothing is written that would be wrong.
   *
   * @param changes key with its groups before it, {@code prices.hour} → value; empty takes it out
   * @param reference where the metals of prices are looked up
   */
  public static Read<BenchFile> change(
      Home home, Map<String, String> changes, Reference reference) {
    Path path = home.bench();
    try {
      Read<String> there = Home.textToEdit(path);
      if (there instanceof Read.Bad<String> bad) {
        return Read.bad(bad.sentence());
      }
      String text = there.orThrow();
      BenchFile before = of(file(path, text));
      for (Map.Entry<String, String> each : changes.entrySet()) {
        text = BenchEdit.set(text, before.asNamed(each.getKey(), reference), each.getValue());
      }
      BenchFile after = of(file(path, text)).known(reference);
      List<Problem> wrong = new ArrayList<>(after.problems());
      List<Problem> old = before.known(reference).problems();
      wrong.removeIf(
          problem -> old.stream().anyMatch(each -> each.wrong().equals(problem.wrong())));
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

  /** A metal's price is changed under the name that it has in the file. */
  private String asNamed(String key, Reference reference) {
    if (!key.startsWith(METAL_PRICE)) {
      return key;
    }
    Function<String, Optional<String>> ids = metalIds(reference);
    Optional<String> id = ids.apply(key.substring(METAL_PRICE.length()));
    return priced.stream()
        .map(PricedMetal::name)
        .filter(name -> id.isPresent() && ids.apply(name).equals(id))
        .findFirst()
        .map(name -> METAL_PRICE + name)
        .orElse(key);
  }

  /**
   * What is wrong with changes that were typed, whatever else stands in the file; only the currency
   * of a price may stand there already.
   */
  public static Optional<String> wrong(
      Home home, Map<String, String> changes, Reference reference) {
    String priced = BenchEdit.set("", CURRENCY, "EUR");
    return wrongIn(priced, changes, reference)
        .or(
            () ->
                load(home).bench().prices().equals(OwnPrices.NONE)
                    ? wrongIn("format: 1\n", changes, reference)
                    : Optional.empty());
  }

  private static Optional<String> wrongIn(
      String before, Map<String, String> changes, Reference reference) {
    String text = before;
    for (Map.Entry<String, String> each : changes.entrySet()) {
      text = BenchEdit.set(text, each.getKey(), each.getValue());
    }
    return of(file(Path.of(NAME), text)).known(reference).problems().stream()
        .map(problem -> problem.wrong() + " " + problem.expected())
        .findFirst();
  }

  private static DataFile file(Path path, String text) {
    return new DataFile(path.toString(), text.getBytes(StandardCharsets.UTF_8));
  }

  static BenchFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    List<PricedMetal> priced = new ArrayList<>();
    OwnBench bench =
        YamlFields.ofFile(file.bytes(), "the bench", problems)
            .map(fields -> of(fields, priced))
            .orElse(OwnBench.NONE);
    return new BenchFile(bench, problems.all(), priced);
  }

  private static OwnBench of(YamlFields from, List<PricedMetal> priced) {
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
            from.group("prices", "the price list")
                .map(prices -> prices(prices, priced))
                .orElse(OwnPrices.NONE),
            all(from, "losses", "the losses", BenchFile::share),
            all(from, "redos", "the redos", BenchFile::share),
            seconds(from.optional("fire-watch", Span::read)),
            all(from, "waits", "the waits", text -> Span.read(text).map(Span::seconds)),
            from.texts("tools"));
    from.sound();
    return bench;
  }

  private static <T> Map<String, T> all(
      YamlFields from, String key, String what, Function<String, Read<T>> reader) {
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

  private static OwnPrices prices(YamlFields from, List<PricedMetal> priced) {
    from.require("currency", "Write currency: EUR; without it a price is a bare number.");
    String currency = from.textOrEmpty("currency");
    Optional<YamlFields> perG = from.group(PriceList.METAL_PER_G, "the prices of metals");
    Map<String, Double> metals = perG.map(group -> group.all(Values::notNegative)).orElse(Map.of());
    perG.ifPresent(
        group ->
            group
                .names()
                .forEach(
                    name -> {
                      Mark at = group.place(name).getStartMark();
                      priced.add(
                          new PricedMetal(
                              from.problems().file(), name, at.getLine() + 1, at.getColumn() + 1));
                    }));
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
