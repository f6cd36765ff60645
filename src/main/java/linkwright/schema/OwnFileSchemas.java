package linkwright.schema;

import static linkwright.schema.KeyGroup.flag;
import static linkwright.schema.KeyGroup.list;
import static linkwright.schema.KeyGroup.named;
import static linkwright.schema.KeyGroup.notNegative;
import static linkwright.schema.KeyGroup.oneOrMore;
import static linkwright.schema.KeyGroup.text;
import static linkwright.schema.KeyGroup.whole;
import static linkwright.schema.KeyGroup.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.keys.Act;
import linkwright.coach.settings.SettingsFields;
import linkwright.exchange.PlanFileText;
import linkwright.files.BenchKeys;
import linkwright.job.PriceList;
import linkwright.lesson.Roster;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;

/** What may stand in the files that a maker writes herself: plan, settings, keys, bench. */
final class OwnFileSchemas {
  private OwnFileSchemas() {}

  static Map<String, Object> plan() {
    KeyGroup file =
        new KeyGroup()
            .some("format", KeyGroup.format())
            .some(PlanFileText.ROUTINE, text(PlanHelp.ROUTINE));
    Map<String, KeyGroup> groups = new LinkedHashMap<>();
    for (String key : PlanFileText.KEYS) {
      int dot = key.indexOf('.');
      KeyGroup at =
          dot < 0 ? file : groups.computeIfAbsent(key.substring(0, dot), any -> new KeyGroup());
      at.some(key.substring(dot + 1), planned(key));
    }
    groups.forEach(
        (name, group) ->
            file.some(
                name,
                name.equals("clasp")
                    ? KeyGroup.of("anyOf", List.of(group.group(), text("A clasp by its name.")))
                    : group.group()));
    return file.file("plan", "A plan file: the chain that is wished, or pieces that are none");
  }

  private static Map<String, Object> planned(String key) {
    PlanHelp.FieldHelp entry = PlanHelp.of(key);
    String says =
        entry.help() + " " + Field.hintTold(Measure.inUnits(entry.hint(), UnitStyle.METRIC));
    if (key.equals(WishKeys.LINK_FORMERS)) {
      Map<String, Object> formers = named(text());
      formers.put("description", says);
      return formers;
    }
    return key.equals(WishKeys.STOCK) || key.equals(WishKeys.RING_STOCK)
        ? oneOrMore(text(says))
        : text(says);
  }

  static Map<String, Object> settings() {
    KeyGroup file = new KeyGroup().needed("format", KeyGroup.format());
    for (SettingsFields.Setting each : SettingsFields.ALL) {
      List<String> words = each.choices().stream().filter(word -> !word.isEmpty()).toList();
      Map<String, Object> value =
          words.contains("true") ? flag() : words.isEmpty() ? text() : word(words);
      value.put("description", each.help());
      file.some(each.key(), value);
    }
    return file.file("settings", "settings.yaml: how the program shows and says things");
  }

  static Map<String, Object> keys() {
    KeyGroup acts = new KeyGroup();
    for (Act act : Act.values()) {
      Map<String, Object> keys = oneOrMore(text());
      keys.put("description", act.help() + ".");
      acts.some(act.id(), keys);
    }
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .some("keys", acts.group())
        .file("keys", "keys.yaml: which keys do what");
  }

  static Map<String, Object> bench() {
    Map<String, Object> size = text("A size: 2.5 mm.");
    Map<String, Object> share = text("A share: 5 %.");
    Map<String, Object> time = text("A time: 8 min.");
    KeyGroup prices = new KeyGroup().needed("currency", text("EUR"));
    for (String name : PriceList.NAMES) {
      prices.some(name, name.equals(PriceList.METAL_PER_G) ? named(notNegative()) : notNegative());
    }
    KeyGroup strip = new KeyGroup().some("width", size).some("thickness", size);
    KeyGroup solder =
        new KeyGroup()
            .needed("solder", text())
            .some("grade", text())
            .some("alloy", text())
            .some("fineness-permille", whole())
            .some("solidus-c", notNegative())
            .some("liquidus-c", notNegative())
            .some("strip", strip.group());
    Map<String, Object> units =
        word(List.of(UnitStyle.values()).stream().map(each -> lower(each.name())).toList());
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .some("bench", said("bench", text()))
        .some("persons", said("persons", list(text())))
        .some("units", said("units", units))
        .some("formers", said("formers", named(size)))
        .some("plate", said("plate", list(size)))
        .some("kerf", said("kerf", text()))
        .some(
            "flame",
            new KeyGroup()
                .some("torch", said("flame.torch", text()))
                .some("fuel", said("flame.fuel", text()))
                .some("oxygen", said("flame.oxygen", flag()))
                .group())
        .some(
            "pickle",
            new KeyGroup()
                .some("kind", said("pickle.kind", text()))
                .some("wait", said("pickle.wait", text()))
                .some("mixed", said("pickle.mixed", text()))
                .group())
        .some("solders", said("solders", list(solder.group())))
        .some("prices", prices.group())
        .some("losses", said("losses", named(share)))
        .some("redos", said("redos", named(share)))
        .some("fire-watch", said("fire-watch", text()))
        .some("waits", said("waits", named(time)))
        .some("tools", said("tools", list(text())))
        .file("bench", "bench.yaml: what is the maker's own whatever the job");
  }

  static Map<String, Object> students() {
    Map<String, Object> days = whole();
    days.put("maximum", Roster.LONGEST_GAP_DAYS);
    days.put("description", "Days between one asking and the next.");
    Map<String, Object> names = named(text("Her name, as her teacher writes it."));
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .some("gap-days", days)
        .some("students", names)
        .file("students", "students.yaml: names by id, which stand here alone");
  }

  private static Map<String, Object> said(String key, Map<String, Object> value) {
    BenchKeys.ALL.stream()
        .filter(each -> each.key().equals(key))
        .forEach(each -> value.put("description", each.says()));
    return value;
  }

  private static String lower(String name) {
    return name.toLowerCase(java.util.Locale.ROOT);
  }
}
