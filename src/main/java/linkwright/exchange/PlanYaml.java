package linkwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.ChainMade;
import linkwright.plan.ChainWish;
import linkwright.plan.EndRings;
import linkwright.plan.FigureSource;
import linkwright.plan.FinenessWord;
import linkwright.plan.LinksOfSize;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.SolderHeat;
import linkwright.plan.WireToOrder;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.routine.Routine;
import linkwright.standing.JobHours;
import linkwright.standing.Quote;
import linkwright.standing.Standing;
import linkwright.standing.WireStand;
import linkwright.standing.nearest.ChainChoice;
import linkwright.standing.typed.RoutineFits;

/**
 * A plan as keys and values, for scripts: mm, g, N and counts. Of what there is none a size or a
 * length is null; a ring, hours, a price and a chance are absent.
 */
public final class PlanYaml {
  private PlanYaml() {}

  /**
   * All of it.
   *
   * @param job the name of its job, or of the wish where there is none yet
   * @param nearest the other chains that can be had
   */
  public static Map<String, Object> of(
      String job, Standing standing, List<ChainChoice> nearest, Reference reference) {
    Plan plan = standing.counted().plan().orElseThrow();
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("job", job);
    if (standing.made().closed()) {
      values.put("closed", true);
    }
    standing.walked().ifPresent(routine -> values.put("routine", routine.id()));
    wished(values, plan.wish());
    counted(values, standing.made(), plan);
    wire(values, standing, plan);
    mass(values, standing, plan);
    values.put("joints", plan.joints());
    values.put("solder_pieces", plan.joints());
    values.put("solder_piece_mm", plan.solderPieceMm());
    values.put(
        "solder_by_size",
        plan.solderPieces().stream()
            .map(
                each -> {
                  Map<String, Object> one = new LinkedHashMap<>();
                  one.put("pieces", each.joints());
                  one.put("piece_mm", each.pieceMm());
                  return one;
                })
            .toList());
    if (plan.pullIsKnown()) {
      values.put("weakest", plan.pull().what());
      values.put("butted_n", plan.pull().buttedN());
      values.put("soldered_n", plan.pull().solderedN());
    }
    hours(values, standing);
    values.put("nearest", nearest.stream().map(PlanYaml::choice).toList());
    boolean closed = standing.made().closed();
    values.put("wire_to_order_g", closed ? 0.0 : WireToOrder.of(plan).massG());
    Map<String, Object> taken = new LinkedHashMap<>();
    standing
        .taken()
        .forEach(
            (key, value) ->
                taken.put(
                    key, value.value() + ", " + value.from().name().toLowerCase(Locale.ROOT)));
    values.put("reckoned_with", taken);
    List<String> remarks = new ArrayList<>(standing.counted().remarks(UnitStyle.METRIC));
    remarks.addAll(RoutineFits.told(standing));
    remarks.addAll(SolderHeat.of(plan.wish().metal(), reference, UnitStyle.METRIC));
    values.put("remarks", remarks);
    values.put(
        "fineness",
        FinenessWord.of(
            plan.wish().metal(),
            standing.made().massG(plan.massChainG()),
            reference,
            UnitStyle.METRIC,
            standing.walked().map(Routine::takesSolder).orElse(true)));
    return values;
  }

  /**
   * The plan of what is no chain: how many pieces, and what their texts are filled with; what was
   * left open is absent.
   */
  public static Map<String, Object> ofPieces(String job, Standing standing) {
    PartPlan part = standing.counted().part().orElseThrow();
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("job", job);
    standing.walked().ifPresent(routine -> values.put("routine", routine.id()));
    values.put("pieces", part.pieces());
    where(values, "metal", part.metal().map(Metal::id));
    where(values, "wire_mm", optional(part.wireMm()));
    where(values, "blank_mm", optional(part.blankMm()));
    where(values, "ring_inside_mm", optional(part.ringInsideMm()));
    where(values, "ring_blank_mm", optional(part.ringBlankMm()));
    where(values, "wire_without_spares_mm", optional(part.wireWithoutSparesMm()));
    where(values, "solder_piece_mm", optional(part.solderPieceMm()));
    values.put("usual_loss", part.usualLoss());
    Map<String, Object> toCut = new LinkedHashMap<>();
    standing.left().forEach((kind, left) -> toCut.put(kind.id(), left.toCutOrAsMany()));
    values.put("to_cut", toCut);
    return values;
  }

  private static void hours(Map<String, Object> values, Standing standing) {
    where(values, "hours", standing.jobHours().map(JobHours::hours));
    where(values, "hours_plus_minus", standing.jobHours().map(JobHours::plusMinus));
    where(values, "hours_to_go", standing.jobHours().map(JobHours::hoursToGo));
    where(values, "hours_again", standing.quote().map(Quote::hoursAgain));
    where(values, "price", standing.quote().flatMap(Quote::price));
    Optional<Quote> priced = standing.quote().filter(Quote::priced);
    where(values, "price_again", priced.map(quote -> quote.again().total()));
    where(values, "price_plus_minus", priced.map(Quote::pricePlusMinus));
    where(values, "redos", optional(standing.redos()));
    where(values, "chance", optional(standing.chance()));
  }

  /** A key that is there only where there is something to say. */
  private static void where(Map<String, Object> values, String key, Optional<?> value) {
    value.ifPresent(known -> values.put(key, known));
  }

  private static Map<String, Object> choice(ChainChoice choice) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("way", choice.way().id());
    one.put("says", choice.says(UnitStyle.METRIC));
    one.put("links", choice.links());
    one.put("length_mm", choice.lengthMm());
    return one;
  }

  private static void wished(Map<String, Object> values, ChainWish wish) {
    values.put("metal", wish.metal().id());
    values.put("wire_mm", wish.wireMm());
    values.put("temper", wish.temper().word());
    values.put("finished_length_mm", wish.finishedMm());
    values.put("clasp_length_mm", wish.claspMm());
    values.put("clasp_mass_g", wish.claspG());
  }

  private static void counted(Map<String, Object> values, ChainMade made, Plan plan) {
    values.put("links", plan.links());
    values.put("rings", plan.rings());
    values.put("length_mm", made.measuredMm().orElse(plan.lengthMm()));
    if (made.measured()) {
      values.put("length_from", FigureSource.MEASURED.word());
    } else {
      values.put("length_plus_minus_mm", plan.plusMinusMm());
    }
    if (!made.closed()) {
      values.put("one_fewer_mm", optional(plan.oneFewerMm()));
      values.put("one_more_mm", plan.oneMoreMm());
      where(values, "exact_ring_inside_mm", optional(plan.exactRingInsideMm()));
    }
    values.put("link_blank_mm", plan.linkBlankMm());
    values.put("link_inside_mm", plan.linkInsideMm());
    values.put("link_length_mm", optional(plan.link().lengthMm()));
    values.put("link_width_mm", optional(plan.link().widthMm()));
    values.put("ring_blank_mm", plan.ringBlankMm());
    values.put("ring_turn_mm", plan.ringTurnMm());
    values.put("ring_inside_length_mm", plan.ringInsideLengthMm());
    values.put("blanks_to_cut", plan.blanksToCut());
    plan.extender()
        .ifPresent(
            extender -> {
              values.put("extender_links", extender.links());
              values.put("extender_mm", extender.lengthMm());
              values.put("closes_from_mm", extender.closesFromMm());
            });
    values.put("end_rings", plan.endRings().isPresent() ? EndRings.COUNT : 0);
    values.put(
        "sizes",
        plan.sized() ? plan.sizes().stream().map(size -> size(plan, size)).toList() : List.of());
  }

  private static Map<String, Object> size(Plan plan, LinksOfSize size) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("name", size.name());
    one.put("links", size.links());
    one.put("blank_mm", size.link().blankMm());
    one.put("inside_mm", size.link().insideMm());
    one.put("blanks_to_cut", size.toCut());
    one.put("wire_mm", size.wireMm(plan.wish()));
    one.put("mass_g", size.massG());
    return one;
  }

  private static void wire(Map<String, Object> values, Standing standing, Plan plan) {
    WireStand wire = standing.wire().orElseThrow();
    values.put("wire_links_mm", plan.wireLinksMm());
    values.put("wire_rings_mm", plan.wireRingsMm());
    values.put("wire_spare_mm", plan.wireSpareMm());
    values.put("wire_spare_rings_mm", plan.wireSpareRingsMm());
    values.put("wire_total_mm", plan.wireTotalMm());
    values.put("wire_short_mm", wire.shortMm());
    values.put("wire_short_links_mm", wire.shortLinksMm());
    values.put("wire_short_rings_mm", wire.shortRingsMm());
    List<Object> cuts = new ArrayList<>();
    ChainWish wish = plan.wish();
    asTyped(wish.stockMm(), wire.links()).forEach(bar -> cuts.add(cut(bar, false)));
    wire.rings()
        .ifPresent(
            bars ->
                asTyped(wish.ringStockMm().orElse(List.of()), bars)
                    .forEach(bar -> cuts.add(cut(bar, true))));
    values.put("cuts", cuts);
  }

  /** The lengths in the order in which they were typed, then those that came later. */
  private static List<WireStand.Bar> asTyped(List<Double> typedMm, List<WireStand.Bar> bars) {
    List<WireStand.Bar> left = new ArrayList<>(bars);
    List<WireStand.Bar> ordered = new ArrayList<>();
    for (double mm : typedMm) {
      Optional<WireStand.Bar> bar = left.stream().filter(one -> one.mm() == mm).findFirst();
      bar.ifPresent(ordered::add);
      bar.ifPresent(left::remove);
    }
    ordered.addAll(left);
    return ordered;
  }

  private static Map<String, Object> cut(WireStand.Bar bar, boolean ringStock) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("stock_mm", bar.leftMm());
    one.put("ring_stock", ringStock);
    one.put("blanks", bar.next().links());
    one.put("rings", bar.next().rings() - bar.ends());
    one.put("end_rings", bar.ends());
    one.put("left_mm", bar.overMm());
    return one;
  }

  private static void mass(Map<String, Object> values, Standing standing, Plan plan) {
    values.put("mass_links_g", plan.massLinksG());
    values.put("mass_rings_g", plan.massRingsG());
    values.put("mass_solder_g", plan.massSolderG());
    values.put("solder_placed_g", plan.solderPlacedG());
    values.put("mass_chain_g", standing.made().massG(plan.massChainG()));
    if (standing.made().weighed()) {
      values.put("mass_chain_from", FigureSource.MEASURED.word());
    }
  }

  private static Optional<Double> optional(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
