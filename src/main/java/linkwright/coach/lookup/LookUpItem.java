package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.link.Pattern;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Clasp;
import linkwright.reference.Metal;
import linkwright.reference.Picture;
import linkwright.reference.Range;
import linkwright.reference.Solder;
import linkwright.reference.TradeTerm;
import linkwright.routine.TradeWords;

/**
 * One thing of the trade that can be looked up.
 *
 * @param kind what sort of thing
 * @param id what it is known by here
 * @param name its name in the user's trade words
 * @param words what else it is found by
 * @param says all that is known of it
 */
public record LookUpItem(String kind, String id, String name, List<String> words, List<Part> says) {
  public LookUpItem {
    words = List.copyOf(words);
    says = List.copyOf(says);
  }

  /** All of them: metals, solders, clasps, patterns, drawings, then the words of the trade. */
  public static List<LookUpItem> all(Model model) {
    TradeWords words = JobWords.tradeWords(model);
    UnitStyle units = model.settings().units();
    List<LookUpItem> all = new ArrayList<>();
    model.handbook().reference().metals().forEach(each -> all.add(of(each, words, units)));
    model.handbook().reference().solders().forEach(each -> all.add(of(each, units)));
    model.handbook().reference().clasps().forEach(each -> all.add(of(each, words, units)));
    model.handbook().patterns().forEach(each -> all.add(of(each, words, units)));
    model.handbook().reference().pictures().forEach(each -> all.add(of(each, words)));
    model.handbook().reference().glossary().forEach(each -> all.add(of(each, words)));
    return all;
  }

  private static LookUpItem of(Metal metal, TradeWords words, UnitStyle units) {
    List<String> names = new ArrayList<>(metal.alsoCalled());
    List<Row> rows = new ArrayList<>();
    if (!metal.alsoCalled().isEmpty()) {
      rows.add(Row.of("also called", String.join(", ", metal.alsoCalled())));
    }
    metal
        .finenessPermille()
        .ifPresent(
            permille -> {
              names.add(Integer.toString(permille));
              rows.add(Row.of("fineness", permille + " in a thousand"));
            });
    rows.add(
        Row.of("density", Decimals.upTo(metal.densityGCm3().value(), 2) + " g/cm³")
            .from(metal.densityGCm3().source()));
    rows.add(Row.of("melts", range(metal.meltC(), units)).from(metal.meltC().source()));
    rows.add(Row.of("anneals", range(metal.annealC(), units)).from(metal.annealC().source()));
    rows.add(Row.of("glow", words.show(metal.glow())));
    rows.add(Row.of("quench", words.show(metal.quench())));
    List<Part> says = new ArrayList<>(List.of(new Rows(rows)));
    metal.warnings().forEach(each -> says.add(Prose.stop(words.show(each))));
    return new LookUpItem("metal", metal.id(), metal.name(), names, says);
  }

  private static String range(Range range, UnitStyle units) {
    return range.from() == range.to()
        ? units.temperature(range.from())
        : units.temperature(range.from()) + " to " + units.temperature(range.to());
  }

  private static LookUpItem of(Solder solder, UnitStyle units) {
    List<String> names = new ArrayList<>(solder.alsoCalled());
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("grade", solder.grade()));
    rows.add(Row.of("begins to melt", units.temperature(solder.solidusC())));
    rows.add(Row.of("flows", units.temperature(solder.liquidusC())).from(solder.source()));
    rows.add(Row.of("alloy", solder.alloy()));
    solder
        .finenessPermille()
        .ifPresent(
            permille -> {
              names.add(Integer.toString(permille));
              rows.add(Row.of("fineness", permille + " in a thousand"));
            });
    List<Part> says = new ArrayList<>(List.of(new Rows(rows)));
    says.add(Prose.says(solder.note()));
    return new LookUpItem("solder", solder.id(), solder.name(), names, says);
  }

  private static LookUpItem of(Clasp clasp, TradeWords words, UnitStyle units) {
    List<Row> rows =
        List.of(
            Row.of("adds", units.length(clasp.insideLengthMm())).from(clasp.source()),
            Row.of("weighs", units.mass(clasp.massG())));
    String name = words.show(clasp.name());
    return new LookUpItem("clasp", clasp.id(), name, List.of(), List.of(new Rows(rows)));
  }

  private static LookUpItem of(Pattern pattern, TradeWords words, UnitStyle units) {
    List<Row> rows = new ArrayList<>();
    pattern
        .formersMm()
        .forEach((name, mm) -> rows.add(Row.of(words.show("former " + name), units.length(mm))));
    rows.add(Row.of(words.show("joints"), Integer.toString(pattern.joints().size())));
    String says = words.show(pattern.says());
    return new LookUpItem(
        "pattern",
        pattern.id(),
        pattern.id(),
        List.of(says),
        List.of(Prose.says(says), new Rows(rows)));
  }

  private static LookUpItem of(Picture picture, TradeWords words) {
    List<String> states = picture.panels().stream().map(panel -> words.show(panel.name())).toList();
    return new LookUpItem(
        "drawing",
        picture.id(),
        words.show(picture.title()),
        states,
        PictureContent.page(picture, words));
  }

  private static LookUpItem of(TradeTerm term, TradeWords words) {
    boolean american = words == TradeWords.AMERICAN && !term.american().isBlank();
    String name = american ? term.american() : term.word();
    List<String> names = new ArrayList<>(term.seenAs());
    names.add(term.word());
    names.add(term.american());
    return new LookUpItem(
        "word", term.word(), name, names, List.of(Prose.says(words.show(term.says()))));
  }
}
