package linkwright.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import linkwright.link.Pattern;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What one sum gives, typed into the next, gives the same chain: seeded wishes are planned, and
 * each sum of the reckoner is asked for its part of the plan.
 */
class SumsJoinedTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 150);
  }

  @ParameterizedTest(name = "wish of seed {0}")
  @MethodSource("seeds")
  void each_sum_gives_its_part_of_the_same_chain(long seed) {
    Map<String, String> wish = wish(seed);
    Optional<Plan> planned = plan(wish);
    if (planned.isEmpty()) {
      return;
    }
    Plan plan = planned.get();
    String where = "seed " + seed + ": " + wish;

    typedBack(where, wish, plan);
    blank(where, wish, plan);
    link(where, wish, plan);
    ring(where, wish, plan);
    chain(where, wish, plan);
    spare(where, wish, plan);
    pull(where, wish, plan);
    solder(where, wish, plan);
    masses(where, wish, plan);
    cut(where, wish, plan);
    former(where, wish, plan);
  }

  /** Every third is typed in inches. */
  private static Map<String, String> wish(long seed) {
    return seed % 3 == 0 ? SeededWish.inInches(seed) : SeededWish.of(seed);
  }

  /** Blank, formers and link's inside typed as they are told, in either units. */
  @ParameterizedTest(name = "wish of seed {0}")
  @MethodSource("seeds")
  void what_is_told_of_a_chain_typed_again_gives_it(long seed) {
    UnitStyle units = seed % 3 == 0 ? UnitStyle.INCH : UnitStyle.METRIC;
    Map<String, String> wish = wish(seed);
    plan(wish)
        .ifPresent(
            plan -> {
              Map<String, String> typed = new LinkedHashMap<>(wish);
              typed.remove(WishKeys.LINK_LENGTH);
              typed.remove(WishKeys.LINK_WIDTH);
              typed.put(WishKeys.LINK_BLANK, units.length(plan.linkBlankMm()));
              typed.put(
                  WishKeys.LINK_FORMERS,
                  plan.link().formersMm().entrySet().stream()
                      .map(each -> each.getKey() + "=" + units.length(each.getValue()))
                      .collect(Collectors.joining("; ")));
              String where = "seed " + seed + ": " + wish + " as told " + typed;
              Plan again = plan(typed).orElseThrow(() -> new AssertionError(where));
              assertThat(again.links()).as(where).isEqualTo(plan.links());
              // What is told is rounded to 0.01 mm or 0.001 in.
              assertThat(again.lengthMm())
                  .as(where)
                  .isCloseTo(plan.lengthMm(), within(0.1 * plan.links()));
            });
  }

  @Test
  void most_of_the_wishes_can_be_had() {
    List<Map<String, String>> wishes =
        seeds().mapToObj(SumsJoinedTest::wish).filter(wish -> plan(wish).isPresent()).toList();
    assertThat(wishes).hasSizeGreaterThan(100);
    List<Plan> plans = wishes.stream().map(wish -> plan(wish).orElseThrow()).toList();
    assertThat(wishes.stream().filter(wish -> pattern(wish).isRing())).isNotEmpty();
    assertThat(plans.stream().filter(plan -> plan.pull().what().equals("ring"))).isNotEmpty();
    assertThat(plans.stream().filter(plan -> plan.blanksToCut() <= 400)).isNotEmpty();
  }

  /** The blank and the formers that were found, typed in, give the same chain. */
  private static void typedBack(String where, Map<String, String> wish, Plan plan) {
    Map<String, String> typed = new LinkedHashMap<>(wish);
    typed.remove(WishKeys.LINK_LENGTH);
    typed.remove(WishKeys.LINK_WIDTH);
    typed.put(WishKeys.LINK_BLANK, exact(plan.linkBlankMm()));
    typed.put(WishKeys.LINK_FORMERS, formers(plan));
    Plan again = plan(typed).orElseThrow(() -> new AssertionError(where + " typed back: " + typed));

    assertThat(again.links()).as(where).isEqualTo(plan.links());
    assertThat(again.rings()).as(where).isEqualTo(plan.rings());
    near(where + " length", again.lengthMm(), plan.lengthMm());
    near(where + " link", again.linkInsideMm(), plan.linkInsideMm());
    near(where + " wire", again.wireTotalMm(), plan.wireTotalMm());
    near(where + " mass", again.massChainG(), plan.massChainG());
  }

  private static void blank(String where, Map<String, String> wish, Plan plan) {
    if (!wish.containsKey(WishKeys.LINK_WIDTH)) {
      return;
    }
    Reckoning found =
        reckon(
            "blank",
            linked(
                wish,
                "length",
                wish.get(WishKeys.LINK_LENGTH),
                "width",
                wish.get(WishKeys.LINK_WIDTH),
                "owned",
                wish.getOrDefault(WishKeys.LINK_FORMERS, "")));
    near(where + " blank", Sums.number(found, "blank_mm"), plan.linkBlankMm());
    near(where + " its length", Sums.number(found, "length_mm"), length(plan));
    near(where + " its width", Sums.number(found, "width_mm"), plan.link().widthMm().orElseThrow());
  }

  private static void link(String where, Map<String, String> wish, Plan plan) {
    Reckoning link =
        reckon("link", linked(wish, "blank", exact(plan.linkBlankMm()), "former", formers(plan)));
    near(where + " link's inside", Sums.number(link, "inside_length_mm"), plan.linkInsideMm());
    near(where + " link's length", Sums.number(link, "length_mm"), length(plan));
    near(
        where + " link's width",
        Sums.number(link, "width_mm"),
        plan.link().widthMm().orElseThrow());
  }

  private static void ring(String where, Map<String, String> wish, Plan plan) {
    if (plan.rings() == 0) {
      return;
    }
    Reckoning ring =
        reckon(
            "ring",
            Sums.typed(
                "wire",
                ringWire(wish),
                "inside",
                wish.get(WishKeys.RING_INSIDE),
                "oval-inside",
                wish.getOrDefault(WishKeys.RING_OVAL, ""),
                "kerf",
                wish.getOrDefault(WishKeys.KERF, "")));
    near(where + " ring's blank", Sums.number(ring, "blank_mm"), plan.ringBlankMm());
    near(where + " ring adds", Sums.number(ring, "inside_length_mm"), plan.ringInsideLengthMm());
    near(where + " ring's turn", Sums.number(ring, "turn_mm"), plan.ringTurnMm());
  }

  private static void chain(String where, Map<String, String> wish, Plan plan) {
    boolean rings = plan.rings() > 0;
    Reckoning chain =
        reckon(
            "chain",
            Sums.typed(
                "length",
                wish.get(WishKeys.FINISHED),
                "clasp",
                wish.getOrDefault(WishKeys.CLASP_LENGTH, ""),
                "link-inside",
                exact(plan.linkInsideMm()),
                "ring-inside",
                rings ? exact(plan.ringInsideLengthMm()) : "",
                "joining",
                rings ? "" : "each-other",
                "wire",
                wish.get(WishKeys.WIRE)));
    assertThat(Sums.number(chain, "links")).as(where).isEqualTo(plan.links());
    assertThat(Sums.number(chain, "rings")).as(where).isEqualTo(plan.rings());
    near(where + " chain", Sums.number(chain, "length_mm"), plan.lengthMm());
    near(where + " one more", Sums.number(chain, "one_more_mm"), plan.oneMoreMm());
    if (rings && !wish.containsKey(WishKeys.RING_OVAL)) {
      Object exactRing = chain.values().get("exact_ring_inside_mm");
      boolean told = exactRing instanceof Double;
      assertThat(told).as(where).isEqualTo(plan.exactRingInsideMm().isPresent());
      if (told) {
        near(where + " exact ring", (double) exactRing, plan.exactRingInsideMm().orElseThrow());
      }
    }
  }

  private static void spare(String where, Map<String, String> wish, Plan plan) {
    String loss = wish.getOrDefault(WishKeys.USUAL_LOSS, "");
    Reckoning links = reckon("spare", Sums.typed("more", "" + plan.links(), "usual-loss", loss));
    assertThat(Sums.number(links, "cut")).as(where).isEqualTo(plan.blanksToCut());
    if (plan.rings() > 0) {
      Reckoning rings = reckon("spare", Sums.typed("more", "" + plan.rings(), "usual-loss", loss));
      assertThat(Sums.number(rings, "cut")).as(where).isEqualTo(plan.ringsToCut());
    }
  }

  private static void pull(String where, Map<String, String> wish, Plan plan) {
    if (!plan.pull().what().equals("ring")) {
      return;
    }
    Reckoning pull =
        reckon(
            "pull",
            Sums.typed(
                "metal",
                wish.get(WishKeys.METAL),
                "temper",
                wish.get(WishKeys.TEMPER),
                "wire",
                ringWire(wish),
                "inside",
                wish.get(WishKeys.RING_INSIDE),
                "oval-inside",
                wish.getOrDefault(WishKeys.RING_OVAL, "")));
    near(where + " butted", Sums.number(pull, "butted_n"), plan.pull().buttedN());
    near(where + " soldered", Sums.number(pull, "soldered_n"), plan.pull().solderedN());
  }

  /** Solder of the links' joints and of the rings' own, placed and filling. */
  private static void solder(String where, Map<String, String> wish, Plan plan) {
    Pattern pattern = pattern(wish);
    double fills = 0;
    double placed = 0;
    for (String joint : pattern.joints().stream().map(Object::toString).toList()) {
      boolean butt = joint.equalsIgnoreCase("TIP_TO_TIP") || joint.equalsIgnoreCase("tip to tip");
      Reckoning one = solder(wish.get(WishKeys.WIRE), butt ? "butt" : "side", plan);
      fills += plan.links() * Sums.number(one, "mass_g");
      placed += plan.links() * Sums.number(one, "placed_g");
    }
    if (pattern.joints().isEmpty()) {
      Reckoning one = solder(wish.get(WishKeys.WIRE), "butt", plan);
      fills += plan.links() * Sums.number(one, "mass_g");
      placed += plan.links() * Sums.number(one, "placed_g");
    }
    if (plan.rings() > 0) {
      Reckoning one = solder(ringWire(wish), "butt", plan);
      fills += plan.rings() * Sums.number(one, "mass_g");
      placed += plan.rings() * Sums.number(one, "placed_g");
    }
    near(where + " solder fills", fills, plan.massSolderG());
    near(where + " solder placed", placed, plan.solderPlacedG());
  }

  private static Reckoning solder(String wire, String joint, Plan plan) {
    return reckon(
        "solder",
        Sums.typed(
            "wire",
            wire,
            "gap",
            "0.05 mm",
            "strip",
            "1 mm x 0.3 mm",
            "joint",
            joint,
            "density",
            plain(plan.wish().solderGCm3())));
  }

  private static void masses(String where, Map<String, String> wish, Plan plan) {
    double links = mass(wish, wish.get(WishKeys.WIRE), plan.links() * plan.linkBlankMm());
    double rings =
        plan.rings() == 0 ? 0 : mass(wish, ringWire(wish), plan.rings() * plan.ringBlankMm());
    near(where + " links' mass", links, plan.massLinksG());
    near(where + " rings' mass", rings, plan.massRingsG());
    near(
        where + " chain's mass",
        links + rings + plan.solderPlacedG() + plan.wish().claspG(),
        plan.massChainG());
  }

  private static double mass(Map<String, String> wish, String wire, double lengthMm) {
    return Sums.number(
        reckon(
            "wire",
            Sums.typed("metal", wish.get(WishKeys.METAL), "wire", wire, "length", exact(lengthMm))),
        "mass_g");
  }

  /** As much wire as the plan says does, and a tenth of a millimetre less does not. */
  private static void cut(String where, Map<String, String> wish, Plan plan) {
    if ((plan.rings() > 0 && !plan.wish().ringsOfSameWire()) || plan.blanksToCut() > 400) {
      return;
    }
    // The cutting goes by whole micrometres, rounded up for each piece.
    String enough = exact(plan.wireTotalMm() + 0.1);
    assertThat(Sums.number(cut(wish, plan, enough), "short")).as(where).isZero();
    String less = exact(plan.wireTotalMm() - plan.wish().kerfMm() - 0.1);
    assertThat(Sums.number(cut(wish, plan, less), "short")).as(where).isPositive();
  }

  private static Reckoning cut(Map<String, String> wish, Plan plan, String stock) {
    return reckon(
        "cut",
        Sums.typed(
            "stock",
            stock,
            "blank",
            exact(plan.linkBlankMm()),
            "want",
            "" + plan.blanksToCut(),
            "ring",
            plan.rings() > 0 ? exact(plan.ringTurnMm()) : "",
            "want-rings",
            plan.rings() > 0 ? "" + plan.ringsToCut() : "",
            "kerf",
            wish.getOrDefault(WishKeys.KERF, "")));
  }

  /** A round link over a former has inside what the former leaves. */
  private static void former(String where, Map<String, String> wish, Plan plan) {
    if (!pattern(wish).isRing()) {
      return;
    }
    Reckoning former =
        reckon(
            "former",
            Sums.typed(
                "metal",
                wish.get(WishKeys.METAL),
                "temper",
                wish.get(WishKeys.TEMPER),
                "wire",
                wish.get(WishKeys.WIRE),
                "former",
                exact(plan.link().formersMm().values().iterator().next())));
    near(where + " former leaves", Sums.number(former, "inside_mm"), plan.linkInsideMm());
  }

  private static Map<String, String> linked(Map<String, String> wish, String... more) {
    Map<String, String> typed =
        Sums.typed(
            "pattern",
            wish.get(WishKeys.LINK_PATTERN),
            "metal",
            wish.get(WishKeys.METAL),
            "temper",
            wish.get(WishKeys.TEMPER),
            "wire",
            wish.get(WishKeys.WIRE));
    typed.putAll(Sums.typed(more));
    return typed;
  }

  private static Reckoning reckon(String sum, Map<String, String> typed) {
    Reckoning done = Reckoner.reckon(sum, typed, Sums.given());
    assertThat(done.problems()).as(sum + " " + typed).isEmpty();
    return done;
  }

  private static Optional<Plan> plan(Map<String, String> wish) {
    WishReading reading = Wishes.read(wish);
    return reading.wish().flatMap(read -> Planning.plan(read).found());
  }

  private static Pattern pattern(Map<String, String> wish) {
    return Sums.SHIPPED.patterns().get(wish.get(WishKeys.LINK_PATTERN));
  }

  private static String ringWire(Map<String, String> wish) {
    return wish.getOrDefault(WishKeys.RING_WIRE, wish.get(WishKeys.WIRE));
  }

  private static String formers(Plan plan) {
    return plan.link().formersMm().entrySet().stream()
        .map(each -> each.getKey() + "=" + exact(each.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static double length(Plan plan) {
    return plan.link().lengthMm().orElseThrow();
  }

  private static void near(String where, double one, double other) {
    assertThat(one).as(where).isCloseTo(other, within(1e-6 * Math.max(1, Math.abs(other))));
  }

  private static String exact(double mm) {
    return plain(mm) + " mm";
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).toPlainString();
  }
}
