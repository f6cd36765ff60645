package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.BookLine;
import linkwright.books.EntryLines;
import linkwright.coach.Bencher;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Page;
import linkwright.coach.content.Rows;
import linkwright.coach.form.ForecastWords;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.keys.Act;
import linkwright.coach.plan.PlanContent;
import linkwright.coach.tray.TrayWords;
import linkwright.exchange.PlanYaml;
import linkwright.exchange.forms.YamlOut;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.Standing;
import linkwright.standing.nearest.ChainChoices;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Over books as chance has them, after every one of their entries: the tray, the way round, the
 * plan, the wire's place, the line of still to do, the plan as YAML, the list of jobs and the walk
 * by lines give the same figure for the same label.
 */
class OneTruthTest {
  private static final UnitStyle UNITS = UnitStyle.METRIC;

  @TempDir private Path folder;

  /** 20 books in a build, 60 where CI is set, as many as the property asks for. */
  static LongStream seeds() {
    String wanted = System.getProperty("linkwright.books", "");
    long books =
        wanted.isEmpty() ? ("true".equals(System.getenv("CI")) ? 60 : 20) : Long.parseLong(wanted);
    return LongStream.rangeClosed(1, books);
  }

  @Test
  void the_books_have_every_sort_of_chain() {
    Map<String, Integer> sorts = new LinkedHashMap<>();
    for (long seed = 1; seed <= 20; seed++) {
      Bencher bench = Bencher.with(RandomBook.of(seed).toArray(Fact[]::new));
      bench.job().standing().counted().plan().ifPresent(plan -> count(sorts, plan));
    }
    assertThat(sorts).containsOnlyKeys("of one size", "sized", "ringed", "hooked", "end rings");
    assertThat(sorts.values()).allSatisfy(times -> assertThat(times).isGreaterThan(1));
  }

  private static void count(Map<String, Integer> sorts, Plan plan) {
    sorts.merge(plan.sized() ? "sized" : "of one size", 1, Integer::sum);
    sorts.merge(plan.rings() > 0 ? "ringed" : "hooked", 1, Integer::sum);
    if (plan.endRings().isPresent()) {
      sorts.merge("end rings", 1, Integer::sum);
    }
  }

  @ParameterizedTest(name = "book of seed {0}")
  @MethodSource("seeds")
  void the_same_label_has_the_same_figure_everywhere(long seed) throws IOException {
    List<Fact> facts = RandomBook.of(seed);
    Bencher stepped = Bencher.with(facts.subList(0, 2).toArray(Fact[]::new));
    for (int entries = 2; entries <= facts.size(); entries++) {
      String where = "seed " + seed + " after entry " + entries + ", " + facts.get(entries - 1);
      if (entries > 2) {
        Entry next = new Entry(entries, stepped.now(), "bench", facts.get(entries - 1));
        stepped.take(new Message.Kept(List.of(next)));
      }
      check(where, facts.subList(0, entries), stepped.job().standing());
    }
    commands("seed " + seed, facts);
  }

  private static void check(String where, List<Fact> facts, Standing stepped) {
    Bencher bench = Bencher.with(facts.toArray(Fact[]::new));
    Standing standing = bench.job().standing();
    assertThat(stepped.left()).as(where).isEqualTo(standing.left());
    assertThat(stepped.missing()).as(where).isEqualTo(standing.missing());
    Optional<Plan> plan = standing.counted().plan();
    if (plan.isEmpty()) {
      return;
    }
    Map<String, Object> yaml = yaml(bench.model());
    assertThat(yaml(bench.model(), stepped)).as(where).isEqualTo(yaml);
    Model atRound = Coach.update(bench.model(), new Message.ActChosen(Act.ROUND)).model();
    String round = round(atRound);
    Map<String, String> summary = summary(bench.model());
    String length = length(yaml);
    double shortMm = (double) yaml.get("wire_short_mm");

    assertThat(summary.getOrDefault("links", "")).as(where).contains(yaml.get("links").toString());
    assertThat(summary.getOrDefault("length", "")).as(where).contains(length);
    assertThat(round).as(where).contains(yaml.get("links") + " links, " + length);
    if (standing.wireKnown()) {
      String[] lacks =
          shortMm <= 0
              ? new String[] {"nothing"}
              : summary.getOrDefault("wire to buy", "").contains(" of ") // each wire by itself
                  ? Stream.of("wire_short_links_mm", "wire_short_rings_mm")
                      .map(key -> (double) yaml.get(key))
                      .filter(mm -> mm > 0)
                      .map(UNITS::length)
                      .toArray(String[]::new)
                  : new String[] {UNITS.length(shortMm)};
      assertThat(summary.getOrDefault("wire to buy", "")).as(where).contains(lacks);
    }
    everyPlace(where, bench, atRound, standing);
    TrayJob tray = tray(bench);
    still(where, bench, tray, standing);
    wire(where, bench, tray, round, standing);
  }

  /** Their figures are asked for by themselves, or are of pieces and not of the chain. */
  private static final Set<PlaceId> ELSEWHERE =
      EnumSet.of(PlaceId.TRAY, PlaceId.TEST_PIECES, PlaceId.TRIAL_LENGTH, PlaceId.HELP);

  private static final Pattern LENGTH =
      Pattern.compile("(?:Length|Counted|links,)(?:,? planned)?:? ([\\d.]+ ± [\\d.]+ m?m)\\b");
  private static final Pattern CHAIN =
      Pattern.compile("Chain(?: weighs|, planned):? ([\\d.]+ g)\\b");
  private static final Pattern BLANK = Pattern.compile("Link blank: ([\\d.]+ m?m)\\b");
  private static final Pattern WISHED = Pattern.compile("Wished: ([\\d.]+ m?m)\\b");
  private static final Pattern LINKS = Pattern.compile("Links: (\\d+)\\b");
  private static final Pattern TO_DO = Pattern.compile("Still to do: (\\d+) link");
  private static final Pattern SHORT = Pattern.compile("Short: ([\\d.]+ m?m) more");
  private static final Pattern HOURS = Pattern.compile("Hours: about ([\\d.]+ ± [\\d.]+)");
  private static final Pattern TO_COME = Pattern.compile("To come: about ([\\d.]+ ± [\\d.]+) h");

  /** What any place says with these words; test pieces have sizes with a doubt of their own. */
  private static void everyPlace(String where, Bencher bench, Model atRound, Standing standing) {
    Plan plan = standing.counted().plan().orElseThrow();
    Map<Pattern, String> figures = new LinkedHashMap<>();
    figures.put(LENGTH, UNITS.about(plan.lengthMm(), plan.plusMinusMm()));
    figures.put(CHAIN, UNITS.mass(plan.massChainG()));
    figures.put(BLANK, UNITS.length(plan.linkBlankMm()));
    figures.put(WISHED, UNITS.length(plan.wish().finishedMm()));
    figures.put(LINKS, Integer.toString(plan.links()));
    figures.put(TO_DO, Integer.toString(standing.left().get(PieceKind.LINK).more()));
    figures.put(SHORT, UNITS.length(standing.wire().orElseThrow().shortMm()));
    standing
        .jobHours()
        .ifPresent(
            hours -> {
              String all = ForecastWords.hours(hours.hours(), hours.plusMinus());
              figures.put(HOURS, all);
              figures.put(TO_COME, ForecastWords.hours(hours.hoursToGo(), hours.plusMinus()));
            });
    // What is nearest plans the chain six times over: once in a while is enough.
    boolean nearest = bench.entries().size() % 10 == 2;
    for (PlaceId place : PlaceId.values()) {
      if (!ELSEWHERE.contains(place) && (nearest || place != PlaceId.NEAREST)) {
        Model at = Coach.update(atRound, new Message.ActChosen(place.act())).model();
        if (at.held().place() != place) {
          continue; // No way leads there: it is still the round, which is read as itself.
        }
        Page there = Pages.of(at);
        String said =
            String.join("\n", new PlainLines(Act::words).of(there.body())) + "\n" + there.still();
        figures.forEach(
            (pattern, figure) -> {
              Matcher found = pattern.matcher(said);
              while (found.find()) {
                assertThat(found.group(1))
                    .as(where + ", " + place + ": " + pattern)
                    .isEqualTo(figure);
              }
            });
      }
    }
  }

  /** The tray, the way round and the wire's place on what lacks. */
  private static void wire(
      String where, Bencher bench, TrayJob tray, String ways, Standing standing) {
    String screen = screen(bench.press("esc", "w").model());
    for (PieceKind kind : List.of(PieceKind.LINK, PieceKind.RING)) {
      int lacks = standing.missing().getOrDefault(kind, 0);
      OptionalInt told = number(String.join("; ", tray.waits()), "wire for (\\d+) more " + kind);
      OptionalInt round = number(ways, "wire for (\\d+) more " + kind);
      assertThat(told.orElse(0)).as(where + ": tray").isEqualTo(lacks);
      assertThat(round.orElse(0)).as(where + ": way round").isEqualTo(lacks);
      if (standing.wireKnown()) {
        OptionalInt place = number(screen, "more (?:wire is )?needed, for [^.]*?(\\d+) " + kind);
        assertThat(place.orElse(0)).as(where + ": wire's place\n" + screen).isEqualTo(lacks);
      }
    }
    double shortMm = standing.wire().orElseThrow().shortMm();
    if (standing.wireKnown() && shortMm > 0 && standing.wire().get().rings().isEmpty()) {
      assertThat(screen)
          .as(where)
          .contains("Short: " + UNITS.length(shortMm) + " more wire is needed");
    }
  }

  private static void still(String where, Bencher bench, TrayJob tray, Standing standing) {
    String screen = screen(bench.model());
    OptionalInt good = number(tray.stands(), "(\\d+) of \\d+ links? good");
    OptionalInt wanted = number(tray.stands(), "\\d+ of (\\d+) links? good");
    int more = standing.left().get(PieceKind.LINK).more();
    assertThat(wanted.orElseThrow() - good.orElseThrow()).as(where).isEqualTo(more);
    // The first words go where the line has no room for them.
    assertThat(number(screen, "(?:Still to do: |[?.] )(\\d+) links?(?:,|;|\\.| )").orElse(0))
        .as(where + "\n" + screen)
        .isEqualTo(more);
    assertThat(number(screen, "(?:Still to do: |[?.] )\\d+ links?, (\\d+) to cut").orElse(0))
        .as(where)
        .isEqualTo(more == 0 ? 0 : standing.left().get(PieceKind.LINK).toCut().orElse(0));
  }

  private void commands(String where, List<Fact> facts) throws IOException {
    Commandline line = new Commandline(folder);
    List<BookLine> lines = new ArrayList<>();
    Instant at = Bencher.MORNING;
    for (int i = 0; i < facts.size(); i++) {
      lines.add(EntryLines.line(new Entry(i + 1, at.plusSeconds(i), "bench", facts.get(i))));
    }
    Path jobs = line.home().resolve("jobs");
    Files.createDirectories(jobs);
    String slug;
    try (BookFile book = BookFile.create(jobs, "A chain", "bench", at).orThrow()) {
      book.append(lines).orThrow();
      slug = String.valueOf(book.path().getFileName()).replace(".yaml", "");
    }
    Bencher bench = Bencher.with(facts.toArray(Fact[]::new));
    if (bench.job().standing().counted().plan().isEmpty()) {
      return;
    }
    Map<String, Object> yaml = yaml(bench.model());
    assertThat(line.run("plan", slug, "--as", "yaml")).as(line.err()).isZero();
    for (String key : List.of("links", "rings", "length_mm", "wire_short_mm", "mass_chain_g")) {
      String told = YamlOut.of(Map.of(key, yaml.get(key))).strip();
      assertThat(line.out().lines().map(String::strip)).as(where).contains(told);
    }
    line.run("jobs");
    TrayJob tray = tray(bench);
    assertThat(line.out()).as(where).contains(tray.stands());
    tray.waits().forEach(wait -> assertThat(line.out()).as(where).contains("waits: " + wait));
    line.typing(List.of("quit"), "walk", "--plain", slug);
    assertThat(line.out())
        .as(where)
        .contains("Plan: " + yaml.get("links") + " links, " + length(yaml));
  }

  private static String length(Map<String, Object> yaml) {
    return UNITS.about((double) yaml.get("length_mm"), (double) yaml.get("length_plus_minus_mm"));
  }

  private static Map<String, Object> yaml(Model model) {
    return yaml(model, model.job().orElseThrow().standing());
  }

  private static Map<String, Object> yaml(Model model, Standing standing) {
    return PlanYaml.of(
        model.job().orElseThrow().state().course().name(),
        standing,
        ChainChoices.of(Map.of(), model.job().orElseThrow().state(), model.handbook()),
        model.handbook().reference());
  }

  /** Label → amount, of what the plan comes to; of a label that comes twice the first. */
  private static Map<String, String> summary(Model model) {
    Map<String, String> amounts = new LinkedHashMap<>();
    PlanContent.comesTo(model.job().orElseThrow().standing(), model).stream()
        .filter(Rows.class::isInstance)
        .flatMap(part -> ((Rows) part).rows().stream())
        .forEach(row -> amounts.putIfAbsent(row.label(), row.amount()));
    return amounts;
  }

  private static String round(Model there) {
    return Pages.of(there).body().parts().stream()
        .filter(Acts.class::isInstance)
        .flatMap(part -> ((Acts) part).choices().stream())
        .map(Acts.Choice::stands)
        .collect(Collectors.joining("\n"));
  }

  private static TrayJob tray(Bencher bench) {
    return TrayWords.standing("job", bench.entries(), bench.model().handbook())
        .at(bench.now(), ClockMoves.NONE);
  }

  private static String screen(Model model) {
    return Shown.draw(model, Glyphs.FULL).text().replaceAll("\\s+", " ");
  }

  private static OptionalInt number(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    return found.find() ? OptionalInt.of(Integer.parseInt(found.group(1))) : OptionalInt.empty();
  }
}
