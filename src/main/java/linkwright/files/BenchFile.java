package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
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
import linkwright.routine.Routine;

/**
 * The maker's own bench, from {@code bench.yaml} in her folder. What is wrong in it is told with
 * its place and left out; the rest holds.
 *
 * @param bench what could be read
 * @param problems all that is wrong, located
 * @param named what has to be looked up elsewhere, as she named it; empty once it is
 */
public record BenchFile(OwnBench bench, List<Problem> problems, List<BenchName> named) {
  private static final String NAME = "bench.yaml";
  private static final List<String> SHARES =
      List.of(
          PriceList.SCRAP_CREDIT,
          PriceList.FILINGS_CREDIT,
          PriceList.OVERHEAD,
          PriceList.MARGIN,
          PriceList.TAX);

  /** No one value says it, so that it is written into the file. */
  private static final String SOLDERS =
      "a list of groups of keys, such as [{solder: my hard, grade: hard, alloy: sterling}], written"
          + " into "
          + NAME
          + " itself";

  static final String LOSSES = "losses";
  static final String REDOS = "redos";
  static final String WAITS = "waits";
  private static final String CURRENCY = "prices.currency";
  private static final String METAL_PRICE = "prices." + PriceList.METAL_PER_G + ".";

  /** Copies the lists. */
  public BenchFile {
    problems = List.copyOf(problems);
    named = List.copyOf(named);
  }

  /** A file without a bench in it. */
  BenchFile(List<Problem> problems) {
    this(OwnBench.NONE, problems, List.of());
  }

  /**
   * The same with its metals looked up as a plan's are, stages and waits in the routines: what is
   * said of one that is not known is told and left out, and so is a second price of one metal.
   */
  public BenchFile known(Reference reference, Collection<Routine> routines) {
    if (named.isEmpty()) {
      return this;
    }
    ProblemList told = new ProblemList(named.get(0).file());
    Map<String, String> metals = new LinkedHashMap<>();
    Function<String, Optional<String>> ids = metalIds(reference);
    StagesAndWaits known = StagesAndWaits.of(routines);
    Set<BenchName> strange = new HashSet<>();
    for (BenchName each : named) {
      Optional<String> wrong =
          each.group().equals(PriceList.METAL_PER_G)
              ? wrongMetal(each.name(), ids.apply(each.name()), metals, reference)
              : known.wrong(each);
      wrong.ifPresent(
          sentence -> {
            strange.add(each);
            told.add(
                each.line(),
                each.column(),
                told.full() ? "" : "\"" + each.group() + "\": " + sentence,
                "");
          });
    }
    Map<String, Double> perG = new LinkedHashMap<>();
    OwnPrices prices = bench.prices();
    metals.forEach(
        (id, name) ->
            Optional.ofNullable(prices.metalPerG().get(name)).ifPresent(g -> perG.put(id, g)));
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(told.all());
    OwnBench without =
        bench
            .with(new OwnPrices(prices.currency(), perG, prices.others()))
            .with(
                without(bench.losses(), LOSSES, strange),
                without(bench.redos(), REDOS, strange),
                without(bench.waitSeconds(), WAITS, strange));
    return new BenchFile(without, all, List.of());
  }

  private static Optional<String> wrongMetal(
      String name, Optional<String> id, Map<String, String> before, Reference reference) {
    Optional<String> first = id.flatMap(known -> Optional.ofNullable(before.get(known)));
    if (id.isPresent() && first.isEmpty()) {
      before.put(id.get(), name);
      return Optional.empty();
    }
    return first
        .map(other -> "“" + name + "” and “" + other + "” are one metal.")
        .or(() -> reference.metal(name).problem());
  }

  private static <T> Map<String, T> without(
      Map<String, T> all, String group, Set<BenchName> strange) {
    Map<String, T> kept = new LinkedHashMap<>(all);
    strange.stream()
        .filter(each -> each.group().equals(group))
        .forEach(one -> kept.remove(one.name()));
    return kept;
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
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
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
   * @param routines where stages and waits are
   */
  public static Read<BenchFile> change(
      Home home, Map<String, String> changes, Reference reference, Collection<Routine> routines) {
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
      BenchFile after = of(file(path, text)).known(reference, routines);
      List<Problem> wrong = new ArrayList<>(after.problems());
      List<Problem> old = before.known(reference, routines).problems();
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
    return named.stream()
        .filter(each -> each.group().equals(PriceList.METAL_PER_G))
        .map(BenchName::name)
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
      Home home, Map<String, String> changes, Reference reference, Collection<Routine> routines) {
    String priced = BenchEdit.set("", CURRENCY, "EUR");
    return wrongIn(priced, changes, reference, routines)
        .or(
            () ->
                load(home).bench().prices().equals(OwnPrices.NONE)
                    ? wrongIn("format: 1\n", changes, reference, routines)
                    : Optional.empty());
  }

  private static Optional<String> wrongIn(
      String before,
      Map<String, String> changes,
      Reference reference,
      Collection<Routine> routines) {
    String text = before;
    for (Map.Entry<String, String> each : changes.entrySet()) {
      text = BenchEdit.set(text, each.getKey(), each.getValue());
    }
    return of(file(Path.of(NAME), text)).known(reference, routines).problems().stream()
        .map(problem -> problem.wrong() + " " + problem.expected())
        .findFirst();
  }

  private static DataFile file(Path path, String text) {
    return new DataFile(path.toString(), text.getBytes(StandardCharsets.UTF_8));
  }

  static BenchFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    List<BenchName> named = new ArrayList<>();
    OwnBench bench =
        YamlFields.ofFile(file.bytes(), "the bench", problems)
            .map(fields -> of(fields, named))
            .orElse(OwnBench.NONE);
    return new BenchFile(bench, problems.all(), named);
  }

  private static OwnBench of(YamlFields from, List<BenchName> named) {
    OwnBench bench =
        new OwnBench(
            from.textOrEmpty("bench"),
            from.texts("persons"),
            from.optional("units", UserSettings.words(UnitStyle.values())),
            all(from, "formers", new ArrayList<>(), BenchFile::sizeMm),
            from.list("plate", BenchFile::sizeMm),
            some(from.optional("kerf", BenchFile::sizeMm)),
            from.group("flame", "the flame").map(BenchFile::flame).orElse(Flame.NOT_SAID),
            from.group("pickle", "the pickle").map(BenchFile::pickle).orElse(Pickle.NOT_SAID),
            from.groups("solders", "a solder", SOLDERS).stream().map(BenchFile::solder).toList(),
            from.group("prices", "the price list")
                .map(prices -> prices(prices, named))
                .orElse(OwnPrices.NONE),
            all(from, LOSSES, named, BenchFile::share),
            all(from, REDOS, named, BenchFile::share),
            seconds(from.optional("fire-watch", Span::read)),
            all(from, WAITS, named, text -> Span.read(text).map(Span::seconds)),
            from.texts("tools"));
    from.sound();
    return bench;
  }

  private static <T> Map<String, T> all(
      YamlFields from, String key, List<BenchName> named, Function<String, Read<T>> reader) {
    Optional<YamlFields> group = from.group(key, "the " + key);
    group.ifPresent(names -> named.addAll(BenchName.in(names, key)));
    return group.map(each -> each.all(reader)).orElse(Map.of());
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

  private static OwnPrices prices(YamlFields from, List<BenchName> named) {
    from.require("currency", "Write currency: EUR; without it a price is a bare number.");
    String currency = from.textOrEmpty("currency");
    Optional<YamlFields> perG = from.group(PriceList.METAL_PER_G, "the prices of metals");
    Map<String, Double> metals = perG.map(group -> group.all(Values::notNegative)).orElse(Map.of());
    perG.ifPresent(group -> named.addAll(BenchName.in(group, PriceList.METAL_PER_G)));
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
