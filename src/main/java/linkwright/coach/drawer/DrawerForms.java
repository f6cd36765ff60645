package linkwright.coach.drawer;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Model;
import linkwright.drawer.Lot;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Solder;

/** What is asked of a lot: what came, what the scale says of it, what became of it. */
final class DrawerForms {
  private DrawerForms() {}

  static Form came(Model model) {
    UnitStyle units = model.settings().units();
    List<String> metals =
        new ArrayList<>(model.handbook().reference().metals().stream().map(Metal::id).toList());
    metals.addAll(model.handbook().reference().solders().stream().map(Solder::id).toList());
    return Form.of(
        Form.Purpose.LOT_CAME,
        "What came into the drawer",
        "enter it",
        List.of(
            called("your name for it, silver 0.9 March"),
            Field.choice(
                    "metal", "metal", "sterling", "left and right: metals, then solders", metals)
                .helped("What it is of. Of a solder the job card names the lot that went in."),
            Field.of(
                    "wire",
                    "thickness",
                    "",
                    "{wire:0.9}; empty: strip, sheet, scrap",
                    Measure.WIRE,
                    units)
                .helped("The wire's thickness. A plan of that wire can take from this lot."),
            length("{mm:3000}; or its mass below", units),
            mass("{g:20}", units),
            Field.choice("temper", "temper", "soft", "soft or hard", List.of("soft", "hard"))
                .helped("As it came. Hard wire is annealed before it is bent."),
            Field.of("batch", "batch", "", "the maker's number, if you keep it")
                .helped(
                    "It leads back to the maker's sheet, should wire crack or solder not run.")));
  }

  private static Field called(String hint) {
    return Field.of("lot", "lot", "", hint)
        .helped("The name under which it lies in the drawer and is taken from.");
  }

  private static Field length(String hint, UnitStyle units) {
    return Field.of("length", "length", "", hint, Measure.LENGTH, units)
        .helped("How much wire it is. What is left of the lot is counted from it.");
  }

  private static Field mass(String hint, UnitStyle units) {
    return Field.of("mass", "mass", "", hint, Measure.MASS, units)
        .helped("What the scale says of it. What is left of the lot is counted from it.");
  }

  static Form counted(Lot lot, UnitStyle units) {
    return Form.of(
            Form.Purpose.LOT_COUNTED,
            "Stocktaking: what the scale says of " + lot.id(),
            "set it right",
            List.of(
                called("the lot").withText(lot.id()),
                mass("as it lies there, {g:12.4}", units),
                length("or measured, {mm:1800}", units)))
        .about(lot.id())
        .startingAt("mass");
  }

  static Form drawn(Lot lot, UnitStyle units) {
    return Form.of(
            Form.Purpose.DRAW_LOT,
            "Drawn down: what became of " + lot.id(),
            "enter it",
            List.of(
                called("the lot it was drawn from").withText(lot.id()),
                Field.of("into", "into lot", "", "your name for it, silver 0.8 April")
                    .helped("The lot that the thinner wire becomes."),
                Field.of(
                        "wire",
                        "thickness",
                        "",
                        "its thickness now, {wire:0.8}",
                        Measure.WIRE,
                        units)
                    .helped("As measured. As many grams leave the one lot as come here."),
                length("what came of it, {mm:3800}", units),
                mass("or by the scale, {g:20}", units)))
        .about(lot.id());
  }
}
