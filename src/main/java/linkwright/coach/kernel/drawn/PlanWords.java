package linkwright.coach.kernel.drawn;

import java.util.HashMap;
import java.util.Map;
import linkwright.plan.ChainWish;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.quantity.Degrees;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.routine.PieceKind;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/** A plan's sizes by the placeholders of routine texts. */
public final class PlanWords {
  private PlanWords() {}

  /** The job's own sizes; none while it has no plan. */
  public static Map<String, String> of(Standing standing, UnitStyle units) {
    return standing
        .counted()
        .plan()
        .map(plan -> stillToCut(of(plan, units), standing))
        .or(() -> standing.counted().part().map(part -> of(part, units)))
        .orElse(Map.of());
  }

  /** How many are to be cut is counted anew with every entry. */
  private static Map<String, String> stillToCut(Map<String, String> words, Standing standing) {
    toCut(words, "blanks", standing.left().get(PieceKind.LINK));
    toCut(words, "rings to cut", standing.left().get(PieceKind.RING));
    return words;
  }

  private static void toCut(Map<String, String> words, String name, StillToDo left) {
    if (left != null) {
      int more = left.toCutOrAsMany();
      words.put(name, more == 0 ? "none" : Integer.toString(more));
    }
  }

  public static Map<String, String> of(Plan plan, UnitStyle units) {
    ChainWish wish = plan.wish();
    Map<String, String> words = new HashMap<>();
    words.put("wire", wish.wireSaid(units));
    words.put("blank", units.length(plan.linkBlankMm()));
    words.put("links", Integer.toString(plan.links()));
    words.put("rings", Integer.toString(plan.rings()));
    words.put("rings to cut", Integer.toString(plan.allRingsToCut()));
    words.put("blanks", Integer.toString(plan.blanksToCut()));
    words.put("solder piece", units.length(plan.solderPieceMm()));
    metal(words, wish.metal(), units);
    wish.ring()
        .ifPresent(
            ring -> {
              words.put("ring inside", units.length(ring.insideMm()));
              words.put("ring wire", wish.ringWireSaid(units));
              words.put("ring blank", units.length(plan.ringBlankMm()));
              ring.ovalInsideMm().ifPresent(oval -> words.put("oval inside", units.length(oval)));
            });
    plan.formed()
        .ifPresent(
            formed -> {
              words.put(
                  "link length", units.length(plan.link().lengthMm().orElse(formed.lengthMm())));
              words.put("link width", units.length(plan.link().widthMm().orElse(formed.widthMm())));
              Map<String, Double> formers = new HashMap<>(formed.pattern().formersMm());
              formers.putAll(plan.link().formersMm());
              formers.forEach((name, mm) -> words.put("former " + name, units.length(mm)));
            });
    return words;
  }

  private static void metal(Map<String, String> words, Metal metal, UnitStyle units) {
    double from = metal.annealC().from();
    double to = metal.annealC().to();
    String celsius = Degrees.heat(from, to, UnitStyle.METRIC);
    words.put(
        "anneals",
        units == UnitStyle.INCH ? Degrees.heat(from, to, units) + " (" + celsius + ")" : celsius);
    words.put("glow", metal.glow());
    words.put("quench", metal.quench());
  }

  /** The sizes of what is no chain; what its plan leaves open has no word. */
  public static Map<String, String> of(PartPlan plan, UnitStyle units) {
    Map<String, String> words = new HashMap<>();
    plan.metal().ifPresent(metal -> metal(words, metal, units));
    plan.wireMm().ifPresent(wire -> words.put("wire", units.wire(wire)));
    plan.wireMm().ifPresent(wire -> words.put("ring wire", units.wire(wire)));
    plan.blankMm().ifPresent(blank -> words.put("blank", units.length(blank)));
    plan.ringInsideMm().ifPresent(inside -> words.put("ring inside", units.length(inside)));
    plan.solderPieceMm().ifPresent(piece -> words.put("solder piece", units.length(piece)));
    plan.formersMm().forEach((name, mm) -> words.put("former " + name, units.length(mm)));
    words.put("rings", Integer.toString(plan.pieces()));
    words.put("rings to cut", Integer.toString(plan.pieces()));
    words.put("links", Integer.toString(plan.pieces()));
    return words;
  }
}
