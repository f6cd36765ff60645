package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.job.plan.WishKeys;
import linkwright.link.Pattern;
import linkwright.reference.Metal;

/** The plan as a form: a field for each key of the wish, in the order in which one decides. */
final class PlanFields {
  private PlanFields() {}

  static Form form(Model model, Map<String, String> texts) {
    List<String> metals = model.shelf().reference().metals().stream().map(Metal::id).toList();
    List<String> patterns =
        new ArrayList<>(model.shelf().patterns().stream().map(Pattern::id).toList());
    List<Field> fields =
        List.of(
            choice(WishKeys.METAL, "metal", "left and right go through them", metals),
            field(WishKeys.WIRE, "wire", "0.9 mm, 0.035 in, 19 AWG or 20 SWG"),
            choice(
                WishKeys.TEMPER,
                "temper",
                "soft (annealed) or hard (drawn)",
                List.of("soft", "hard")),
            choice(
                WishKeys.LINK_PATTERN, "link pattern", "left and right go through them", patterns),
            field(WishKeys.LINK_LENGTH, "link length", "the look you want, 14 mm"),
            field(WishKeys.LINK_WIDTH, "link width", "5 mm"),
            field(WishKeys.LINK_BLANK, "blank", "38 mm; empty: found from the length"),
            field(
                WishKeys.LINK_FORMERS, "formers", "name=size, name=size; empty: the pattern's own"),
            field(
                WishKeys.LINK_INSIDE, "link inside", "only if measured: what it adds to the chain"),
            field(WishKeys.RING_INSIDE, "ring inside", "3 mm; empty: links join each other"),
            field(WishKeys.RING_WIRE, "ring wire", "empty: the links' wire"),
            field(WishKeys.RING_OVAL, "oval inside", "width once squeezed, 2.4 mm; empty: round"),
            field(
                WishKeys.FINISHED, "finished length", "clasp and its rings in it, 45 cm or 18 in"),
            field(WishKeys.CLASP_LENGTH, "clasp length", "inside end to inside end, pulled, 14 mm"),
            field(WishKeys.CLASP_MASS, "clasp mass", "1.2 g"),
            field(WishKeys.STOCK, "wire on hand", "2 m, 412 mm or by weight 12 g"),
            field(WishKeys.RING_STOCK, "wire for rings", "on hand, only if it is another wire"),
            field(WishKeys.KERF, "kerf", "0 mm with cutters, 0.3 mm with a saw blade"),
            field(WishKeys.COIL_TAIL, "coil tail", "what you hold of a coil, 10 mm"),
            field(WishKeys.USUAL_LOSS, "usual loss", "links lost for good, 5 %"),
            field(WishKeys.CONFIDENCE, "chance", "of having cut enough, 90 %"));
    return Form.of(Form.Purpose.PLAN, "The plan", "keep this plan", fields).withTexts(texts);
  }

  private static Field field(String key, String label, String hint) {
    return Field.of(key, label, "", hint);
  }

  private static Field choice(String key, String label, String hint, List<String> choices) {
    return Field.choice(key, label, "", hint, choices);
  }
}
