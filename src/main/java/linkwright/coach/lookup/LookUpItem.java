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
import linkwright.quantity.UnitStyle;
import linkwright.reference.Picture;
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

  /**
   * All of them: the words of the open step, metals, solders, clasps, the law on marks, limits,
   * patterns, drawings, then the other words of the trade.
   */
  public static List<LookUpItem> all(Model model) {
    TradeWords words = JobWords.tradeWords(model);
    UnitStyle units = model.settings().units();
    List<LookUpItem> glossary = GlossaryContent.of(model);
    int here = GlossaryContent.ofStep(model).size();
    List<LookUpItem> all = new ArrayList<>(glossary.subList(0, here));
    ReferenceContent.of(model.handbook().reference(), units)
        .forEach(each -> all.add(each.in(words)));
    model.handbook().patterns().forEach(each -> all.add(of(each, words, units)));
    model.handbook().reference().pictures().forEach(each -> all.add(of(each, words)));
    all.addAll(glossary.subList(here, glossary.size()));
    return all;
  }

  private LookUpItem in(TradeWords trade) {
    return new LookUpItem(kind, id, trade.show(name), words, says);
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
}
