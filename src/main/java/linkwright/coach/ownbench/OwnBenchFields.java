package linkwright.coach.ownbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PriceWords;
import linkwright.job.PriceList;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;

/** Her bench as a form; each field is known by its key in the file. */
final class OwnBenchFields {
  /** Sizes of formers are typed together, each with her own word for it. */
  static final String FORMERS = "formers";

  private static final String METAL_PRICE = "prices." + PriceList.METAL_PER_G;

  private OwnBenchFields() {}

  static Form form(OwnBench bench, UnitStyle units) {
    List<Field> fields = new ArrayList<>();
    fields.add(
        field("persons", "who works here", String.join(", ", bench.persons()), "Anna, Ben")
            .helped("Whose names are offered where the book asks who works."));
    fields.add(
        field(
                FORMERS,
                "formers",
                sizes(bench.formersMm(), units),
                "small step=2.4 mm, mandrel=5 mm")
            .takes(Measure.LENGTH, units)
            .helped("What you bend over, by your own names. Plans propose none but these."));
    fields.add(
        field("tools", "tools", String.join(", ", bench.tools()), "torch, saw, loupe, mallet")
            .helped("The tools you have. What a routine asks for and is not here is told."));
    fields.add(
        field(
                "plate",
                "plate holes",
                bench.plateMm().stream().map(units::length).collect(Collectors.joining(", ")),
                "2.0 mm, 1.9 mm, 1.8 mm")
            .takes(Measure.LENGTH, units)
            .helped("The holes of your drawplate. Drawing down goes through them."));
    fields.add(
        field(
                "kerf",
                "kerf",
                bench.kerfMm().isPresent() ? units.length(bench.kerfMm().getAsDouble()) : "",
                "what your saw takes, 0.3 mm")
            .takes(Measure.LENGTH, units)
            .helped("What a cut takes of the wire. It is in every plan, and in coils of rings."));
    fields.add(
        field("flame.fuel", "fuel", bench.flame().fuel(), "propane, butane")
            .helped("The gas of your torch. Cautions on other gases are left out."));
    fields.add(
        field("pickle.kind", "pickle", bench.pickle().kind(), "citric")
            .helped("What your pickle is made of."));
    fields.add(
        field(
                "pickle.wait",
                "pickle takes",
                bench.pickle().usualSeconds().isPresent()
                    ? bench.pickle().usualSeconds().getAsLong() / 60 + " min"
                    : "",
                "12 min")
            .takes(Measure.TIME, units)
            .helped("How long your pickle takes. Its timers are set to that."));
    fields.add(
        field(
                "pickle.mixed",
                "mixed on",
                bench.pickle().mixed().map(Object::toString).orElse(""),
                "2026-11-20")
            .helped("The day when it was mixed."));
    fields.add(
        field("prices.currency", "money in", bench.prices().currency(), "EUR")
            .helped("It stands behind every price."));
    fields.add(
        field(
                METAL_PRICE,
                "metal for 1 g",
                bench.prices().metalPerG().entrySet().stream()
                    .map(each -> each.getKey() + "=" + PriceWords.plain(each.getValue()))
                    .collect(Collectors.joining(", ")),
                "sterling=1.1, gold-14k-yellow=48")
            .helped("What you pay for a gram of each metal. Chain and scrap are priced by it."));
    for (String name : PriceList.NAMES) {
      if (!name.equals(PriceList.METAL_PER_G)) {
        fields.add(
            field(
                    "prices." + name,
                    PriceWords.label(name),
                    price(bench, name),
                    PriceWords.hint(name))
                .takes(PriceWords.isShare(name) ? Measure.SHARE : Measure.NUMBER, units)
                .helped(PriceWords.help(name)));
      }
    }
    fields.add(
        field(
                "losses.all",
                "usual loss",
                bench.losses().containsKey("all")
                    ? Decimals.percent(bench.losses().get("all"), 4)
                    : "",
                "pieces scrapped, 5 %")
            .takes(Measure.SHARE, units)
            .helped(
                "The share of pieces that you lose. Spares are reckoned from it, until your"
                    + " books have taught more."));
    fields.add(
        field(
                "fire-watch",
                "fire watch",
                bench.fireWatchSeconds().isPresent()
                    ? bench.fireWatchSeconds().getAsLong() / 60 + " min"
                    : "",
                "60 min, or as your rules say")
            .takes(Measure.TIME, units)
            .helped("How long you watch after the last heat."));
    return Form.of(Form.Purpose.OWN_BENCH, "Your bench", "keep it", fields);
  }

  private static String price(OwnBench bench, String name) {
    Double value = bench.prices().others().get(name);
    return value == null
        ? ""
        : PriceWords.isShare(name) ? Decimals.percent(value, 4) : PriceWords.plain(value);
  }

  private static String sizes(Map<String, Double> mm, UnitStyle units) {
    return mm.entrySet().stream()
        .map(each -> each.getKey() + "=" + units.length(each.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static Field field(String key, String label, String text, String hint) {
    return Field.of(key, label, text, hint);
  }

  /** Key in the file → what is to stand there, of what was changed; empty: it goes. */
  static Map<String, String> changes(Form before, Form now) {
    Map<String, String> changes = new LinkedHashMap<>();
    now.texts()
        .forEach(
            (key, text) -> {
              if (text.strip().equals(before.text(key))) {
                return;
              }
              if (key.equals(FORMERS) || key.equals(METAL_PRICE)) {
                pairs(before.text(key)).keySet().forEach(name -> changes.put(key + "." + name, ""));
                pairs(text).forEach((name, value) -> changes.put(key + "." + name, value));
              } else {
                changes.put(key, text.strip());
              }
            });
    return changes;
  }

  private static Map<String, String> pairs(String text) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String each : text.split(",", -1)) {
      String[] pair = each.split("=", 2);
      if (pair.length == 2 && !pair[0].isBlank()) {
        pairs.put(pair[0].strip().replace('.', ' '), pair[1].strip());
      }
    }
    return pairs;
  }

  /** What is no pair of a name and a size. */
  static Map<String, String> troubles(Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (String key : List.of(FORMERS, METAL_PRICE)) {
      for (String each : form.text(key).split(",", -1)) {
        if (!each.isBlank() && !each.contains("=")) {
          troubles.put(key, "“" + each.strip() + "” has no size: write its name, =, and the size.");
        }
      }
    }
    return troubles;
  }
}
