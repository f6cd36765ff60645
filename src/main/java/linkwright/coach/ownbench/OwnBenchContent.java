package linkwright.coach.ownbench;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnSolder;
import linkwright.bench.Pickle;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.PriceWords;
import linkwright.coach.kernel.Clock;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.typed.TypedTwice;

/**
 * Her bench as she described it, and what was typed twice and is not kept yet.
 *
 * @param units how amounts are shown
 * @param today the day, for the age of the pickle
 */
public record OwnBenchContent(UnitStyle units, LocalDate today) {
  /** What is told of her bench's file, which is told where it lies. */
  private static final Pattern OF_HER_BENCH = Pattern.compile("(^|[/\\\\])bench\\.yaml\\b");

  /** All of it. */
  public List<Part> of(Handbook handbook) {
    List<Part> parts = new ArrayList<>();
    OwnBench bench = handbook.own();
    Map<String, String> twice = TypedTwice.of(handbook);
    if (bench.equals(OwnBench.NONE)
        && handbook.told().stream().anyMatch(each -> OF_HER_BENCH.matcher(each).find())) {
      return List.of(Prose.says("What is known of your bench cannot be read."));
    }
    if (bench.equals(OwnBench.NONE)) {
      parts.add(
          Prose.says(
              "Nothing is known of your bench yet: what you enter here is taken in every plan"
                  + " and sum, and shown as yours."));
    }
    if (!twice.isEmpty()) {
      parts.add(
          Prose.says(
              "Typed for two jobs and not kept yet: "
                  + TypedTwice.said(twice)
                  + ". {do:keep-typed} keeps them here."));
    }
    List<Row> rows = new ArrayList<>();
    say(rows, "bench", bench.name());
    say(rows, "who works here", String.join(", ", bench.persons()));
    say(rows, "formers", sizes(bench.formersMm()));
    say(rows, "tools", String.join(", ", bench.tools()));
    say(
        rows,
        "plate",
        bench.plateMm().stream().map(units::length).collect(Collectors.joining(", ")));
    bench.kerfMm().ifPresent(mm -> say(rows, "kerf", units.length(mm)));
    flame(rows, bench);
    pickle(rows, bench.pickle());
    bench.solders().forEach(solder -> say(rows, "solder", solder(solder)));
    prices(rows, bench);
    shares(rows, "usual loss", bench.losses());
    shares(rows, "usual redo", bench.redos());
    bench.fireWatchSeconds().ifPresent(s -> say(rows, "fire watch", Clock.spoken((double) s)));
    bench.waitSeconds().forEach((wait, s) -> say(rows, "wait " + wait, Clock.spoken((double) s)));
    parts.add(new Rows(rows));
    bench
        .pickle()
        .mixed()
        .ifPresent(
            any ->
                parts.add(Prose.says("Pickle that has turned blue is spent, whatever the day.")));
    return parts;
  }

  private static void say(List<Row> rows, String label, String value) {
    if (!value.isBlank()) {
      rows.add(Row.of(label, value));
    }
  }

  private String sizes(Map<String, Double> mm) {
    return mm.entrySet().stream()
        .map(each -> each.getKey() + " " + units.length(each.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static void flame(List<Row> rows, OwnBench bench) {
    String fuel = bench.flame().fuel() + (bench.flame().oxygen() ? " with oxygen" : "");
    say(rows, "torch", (bench.flame().torch() + " " + fuel).strip());
  }

  private void pickle(List<Row> rows, Pickle pickle) {
    say(rows, "pickle", pickle.kind());
    pickle.usualSeconds().ifPresent(s -> say(rows, "pickle takes", Clock.spoken((double) s)));
    pickle
        .mixed()
        .ifPresent(
            day -> {
              long days = ChronoUnit.DAYS.between(day, today);
              say(
                  rows,
                  "mixed",
                  day
                      + ", "
                      + (days == 0 ? "today" : days + (days == 1 ? " day ago" : " days ago")));
            });
  }

  private String solder(OwnSolder solder) {
    List<String> words = new ArrayList<>(List.of(solder.name()));
    if (!solder.grade().isEmpty()) {
      words.add(solder.grade());
    }
    if (!solder.alloy().isEmpty()) {
      words.add("for " + solder.alloy());
    }
    solder.finenessPermille().ifPresent(p -> words.add(p + " fine"));
    solder.solidusC().ifPresent(c -> words.add("melts from " + units.temperature(c)));
    solder.liquidusC().ifPresent(c -> words.add("flows at " + units.temperature(c)));
    solder
        .stripWidthMm()
        .ifPresent(
            mm ->
                words.add(
                    "strip "
                        + units.length(mm)
                        + (solder.stripThicknessMm().isPresent()
                            ? " x " + units.length(solder.stripThicknessMm().getAsDouble())
                            : "")));
    return String.join(", ", words);
  }

  private static void prices(List<Row> rows, OwnBench bench) {
    String money = bench.prices().currency();
    bench
        .prices()
        .metalPerG()
        .forEach(
            (metal, each) -> say(rows, metal, PriceWords.plain(each) + " " + money + " a gram"));
    bench
        .prices()
        .others()
        .forEach(
            (name, value) ->
                say(
                    rows,
                    PriceWords.label(name),
                    PriceWords.isShare(name)
                        ? Decimals.percent(value, 4)
                        : PriceWords.plain(value) + " " + money));
  }

  private static void shares(List<Row> rows, String label, Map<String, Double> shares) {
    shares.forEach(
        (stage, share) ->
            say(
                rows,
                stage.equals("all") ? label : label + ", " + stage,
                Decimals.percent(share, 4)));
  }
}
