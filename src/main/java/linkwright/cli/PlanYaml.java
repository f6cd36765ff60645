package linkwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.cutting.Cut;
import linkwright.plan.ChainWish;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.reference.Reference;

/** A plan as keys and values, for scripts: mm, g, N and counts; nothing where there is none. */
final class PlanYaml {
  private PlanYaml() {}

  static Map<String, Object> of(Plan plan, Reference reference) {
    Map<String, Object> values = new LinkedHashMap<>();
    wished(values, plan.wish());
    counted(values, plan);
    wire(values, plan);
    mass(values, plan);
    values.put("joints", plan.joints());
    values.put("solder_pieces", plan.joints());
    values.put("solder_piece_mm", plan.solder().pieceMm());
    values.put("weakest", plan.pull().what());
    values.put("butted_n", plan.pull().buttedN());
    values.put("soldered_n", plan.pull().solderedN());
    values.put("remarks", plan.remarks());
    values.put("fineness", FinenessWord.of(plan.wish().metal(), plan.massChainG(), reference));
    return values;
  }

  private static void wished(Map<String, Object> values, ChainWish wish) {
    values.put("job", wish.job());
    values.put("metal", wish.metal().id());
    values.put("wire_mm", wish.wireMm());
    values.put("temper", wish.temper().word());
    values.put("finished_length_mm", wish.finishedMm());
    values.put("clasp_length_mm", wish.claspMm());
    values.put("clasp_mass_g", wish.claspG());
  }

  private static void counted(Map<String, Object> values, Plan plan) {
    values.put("links", plan.links());
    values.put("rings", plan.rings());
    values.put("length_mm", plan.lengthMm());
    values.put("one_fewer_mm", optional(plan.oneFewerMm()));
    values.put("one_more_mm", plan.oneMoreMm());
    values.put("exact_ring_inside_mm", optional(plan.exactRingInsideMm()));
    values.put("link_blank_mm", plan.linkBlankMm());
    values.put("link_inside_mm", plan.linkInsideMm());
    values.put("link_length_mm", plan.formed().map(link -> link.lengthMm()).or(() -> length(plan)));
    values.put("link_width_mm", plan.formed().map(link -> link.widthMm()).or(() -> width(plan)));
    values.put("ring_blank_mm", plan.ringBlankMm());
    values.put("ring_turn_mm", plan.ringTurnMm());
    values.put("ring_inside_length_mm", plan.ringInsideLengthMm());
    values.put("blanks_to_cut", plan.blanksToCut());
  }

  private static Optional<Double> length(Plan plan) {
    return optional(plan.wish().link().lengthMm());
  }

  private static Optional<Double> width(Plan plan) {
    return optional(plan.wish().link().widthMm());
  }

  private static void wire(Map<String, Object> values, Plan plan) {
    values.put("wire_links_mm", plan.wireLinksMm());
    values.put("wire_rings_mm", plan.wireRingsMm());
    values.put("wire_spare_mm", plan.wireSpareMm());
    values.put("wire_total_mm", plan.wireTotalMm());
    values.put("wire_short_mm", plan.wireShortMm());
    List<Object> cuts = new ArrayList<>();
    for (Cut cut : plan.cuts().cuts()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("stock_mm", cut.stockMm());
      one.put("ring_stock", cut.fromRingStock());
      one.put("blanks", cut.blanks().stream().mapToInt(Integer::intValue).sum());
      one.put("rings", cut.rings());
      one.put("left_mm", cut.restMm());
      cuts.add(one);
    }
    values.put("cuts", cuts);
  }

  private static void mass(Map<String, Object> values, Plan plan) {
    values.put("mass_links_g", plan.massLinksG());
    values.put("mass_rings_g", plan.massRingsG());
    values.put("mass_solder_g", plan.massSolderG());
    values.put("mass_chain_g", plan.massChainG());
  }

  private static Optional<Double> optional(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
