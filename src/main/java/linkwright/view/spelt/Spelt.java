package linkwright.view.spelt;

import java.util.function.UnaryOperator;
import linkwright.coach.content.Page;
import linkwright.coach.content.Retold;
import linkwright.coach.form.Form;

/**
 * A page in the signs of a place that has few: spelt before it is laid out, so that what takes more
 * columns there has them. What was typed stays as it is, and so does a row's give or take: it is
 * spelt where it is put between value and unit.
 */
public final class Spelt {
  private Spelt() {}

  /** The page with each text that is said in it spelt so. */
  public static Page of(Page page, UnaryOperator<String> spelt) {
    return new Page(
        page.job(),
        new Retold(spelt, spelt, form -> form(form, spelt)).of(page.body()),
        page.turned(),
        page.turns(),
        page.waits(),
        page.hotWork(),
        page.chain(),
        spelt.apply(page.still()),
        spelt.apply(page.told()),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }

  private static Form form(Form form, UnaryOperator<String> spelt) {
    return form.mapFields(
        field ->
            field
                .hinted(spelt.apply(field.hint()))
                .helped(spelt.apply(field.help()))
                .with(field.trouble().map(spelt)));
  }
}
