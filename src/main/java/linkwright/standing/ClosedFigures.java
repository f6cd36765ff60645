package linkwright.standing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Accounts;
import linkwright.job.JobState;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.plan.Pull;
import linkwright.plan.SettledLink;
import linkwright.routine.Routine;
import linkwright.standing.stock.PiecesOver;
import linkwright.standing.stock.WireAtBench;

/**
 * The figures of a job as they stay once it is closed, by the names that the plan has for scripts:
 * a later change of prices, of the handbook or of what is usual does not move them.
 */
public final class ClosedFigures {
  private static final String LINKS = "links";

  private ClosedFigures() {}

  /** What a job comes to now, to be kept with its closing. */
  public static Map<String, Double> of(JobState state, Standing standing, Handbook handbook) {
    Map<String, Double> figures = new LinkedHashMap<>();
    Optional<Routine> routine = handbook.routine(state.course().routine());
    Optional<Plan> plan = standing.counted().plan();
    plan.ifPresent(known -> put(figures, known));
    plan.map(known -> WireAtBench.of(known, state).massG())
        .filter(grams -> grams > 0)
        .ifPresent(grams -> figures.put(Accounts.WIRE_AT_BENCH_G, grams));
    plan.map(known -> WireAtBench.cutOfPlanG(known, state))
        .filter(grams -> grams > 0)
        .ifPresent(grams -> figures.put(Accounts.WIRE_CUT_G, grams));
    plan.map(known -> PiecesOver.massG(known, state))
        .filter(grams -> grams > 0)
        .ifPresent(grams -> figures.put(Accounts.PIECES_OVER_G, grams));
    JobState priced = JobPrices.filled(state, handbook);
    plan.map(known -> Closing.of(priced, known, routine))
        .orElseGet(() -> Closing.of(priced, routine))
        .into(figures);
    return figures;
  }

  private static void put(Map<String, Double> figures, Plan plan) {
    SettledLink link = plan.link();
    figures.put(LINKS, (double) plan.links());
    figures.put("rings", (double) plan.rings());
    figures.put("length_mm", plan.lengthMm());
    figures.put("length_plus_minus_mm", plan.plusMinusMm());
    put(figures, "after_trial_plus_minus_mm", plan.plusMinusTrialMm());
    put(figures, "one_fewer_mm", plan.oneFewerMm());
    figures.put("one_more_mm", plan.oneMoreMm());
    put(figures, "exact_ring_inside_mm", plan.exactRingInsideMm());
    put(figures, "tight_ring_inside_mm", plan.tightRingInsideMm());
    figures.put("link_blank_mm", link.blankMm());
    put(figures, "link_length_mm", link.lengthMm());
    put(figures, "link_width_mm", link.widthMm());
    figures.put("link_inside_mm", link.insideMm());
    figures.put("link_inside_common_mm", link.commonSpreadMm());
    figures.put("link_inside_each_mm", link.pieceSpreadMm());
    figures.put("ring_blank_mm", plan.ringBlankMm());
    figures.put("ring_turn_mm", plan.ringTurnMm());
    figures.put("ring_inside_length_mm", plan.ringInsideLengthMm());
    figures.put("blanks_to_cut", (double) plan.blanksToCut());
    figures.put("rings_to_cut", (double) plan.ringsToCut());
    figures.put("wire_links_mm", plan.wireLinksMm());
    figures.put("wire_rings_mm", plan.wireRingsMm());
    figures.put("wire_spare_mm", plan.wireSpareMm());
    figures.put("wire_spare_rings_mm", plan.wireSpareRingsMm());
    figures.put("mass_links_g", plan.massLinksG());
    figures.put("mass_rings_g", plan.massRingsG());
    figures.put("mass_solder_g", plan.massSolderG());
    figures.put("solder_placed_g", plan.solderPlacedG());
    figures.put("mass_chain_g", plan.massChainG());
    figures.put("joints", (double) plan.joints());
    figures.put("butted_n", plan.pull().buttedN());
    figures.put("soldered_n", plan.pull().solderedN());
  }

  private static void put(Map<String, Double> figures, String name, OptionalDouble value) {
    value.ifPresent(known -> figures.put(name, known));
  }

  /** The plan with the figures that stay, in the place of those counted now. */
  static Plan frozen(Plan now, Map<String, Double> figures) {
    if (!figures.containsKey(LINKS)) {
      return now;
    }
    Kept kept = new Kept(figures);
    return new Plan(
        now.wish(),
        kept.count(LINKS, now.links()),
        kept.count("rings", now.rings()),
        kept.of("length_mm", now.lengthMm()),
        kept.of("length_plus_minus_mm", now.plusMinusMm()),
        kept.perhaps("after_trial_plus_minus_mm"),
        kept.perhaps("one_fewer_mm"),
        kept.of("one_more_mm", now.oneMoreMm()),
        kept.perhaps("exact_ring_inside_mm"),
        kept.perhaps("tight_ring_inside_mm"),
        frozen(now.sizes(), kept),
        now.endRings(),
        kept.of("ring_blank_mm", now.ringBlankMm()),
        kept.of("ring_turn_mm", now.ringTurnMm()),
        kept.of("ring_inside_length_mm", now.ringInsideLengthMm()),
        kept.count("blanks_to_cut", now.blanksToCut()),
        kept.count("rings_to_cut", now.ringsToCut()),
        kept.of("wire_links_mm", now.wireLinksMm()),
        kept.of("wire_rings_mm", now.wireRingsMm()),
        kept.of("wire_spare_mm", now.wireSpareMm()),
        kept.of("wire_spare_rings_mm", now.wireSpareRingsMm()),
        kept.of("mass_links_g", now.massLinksG()),
        kept.of("mass_rings_g", now.massRingsG()),
        kept.of("mass_solder_g", now.massSolderG()),
        kept.of("solder_placed_g", now.solderPlacedG()),
        kept.of("mass_chain_g", now.massChainG()),
        kept.count("joints", now.joints()),
        now.solder(),
        new Pull(
            now.pull().what(),
            kept.of("butted_n", now.pull().buttedN()),
            kept.of("soldered_n", now.pull().solderedN())),
        now.remarks());
  }

  /** Of several sizes the planned link is the first. */
  private static List<LinksOfSize> frozen(List<LinksOfSize> now, Kept kept) {
    List<LinksOfSize> sizes = new ArrayList<>(now);
    LinksOfSize first = now.get(0);
    boolean alone = now.size() == 1;
    sizes.set(
        0,
        new LinksOfSize(
            first.name(),
            first.perRepeat(),
            alone ? kept.count(LINKS, first.links()) : first.links(),
            alone ? kept.count("blanks_to_cut", first.toCut()) : first.toCut(),
            frozen(first.link(), kept),
            alone ? kept.of("mass_links_g", first.massG()) : first.massG()));
    return sizes;
  }

  private static SettledLink frozen(SettledLink now, Kept kept) {
    return new SettledLink(
        kept.of("link_blank_mm", now.blankMm()),
        now.blankFrom(),
        now.formersMm(),
        kept.perhaps("link_length_mm"),
        kept.perhaps("link_width_mm"),
        now.sizeFrom(),
        kept.of("link_inside_mm", now.insideMm()),
        now.insideFrom(),
        kept.of("link_inside_common_mm", now.commonSpreadMm()),
        kept.of("link_inside_each_mm", now.pieceSpreadMm()),
        now.formed(),
        now.proposal(),
        now.followed());
  }

  /** Figures by their names; one that is not there yet is as it is counted now. */
  private record Kept(Map<String, Double> figures) {
    double of(String name, double now) {
      return figures.getOrDefault(name, now);
    }

    int count(String name, int now) {
      return (int) Math.round(of(name, now));
    }

    OptionalDouble perhaps(String name) {
      Double value = figures.get(name);
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
  }
}
