package linkwright.standing.reach;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.job.JobState;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.quantity.Decimals;
import linkwright.quantity.Gauge;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;

/** The same wish in other lengths and wires, each planned once and from nothing. */
final class Variants {
  /** Longer chain than that nobody makes by hand. */
  private static final int MOST_LINKS = 4096;

  /** Wire that is soldered into chain by hand, mm; common practice, no source. */
  private static final double THINNEST_MM = 0.3;

  private static final double THICKEST_MM = 3.0;

  private final Map<String, String> texts;
  private final JobState state;
  private final Handbook handbook;
  private final OnHand there;
  private final Standing wished;
  private final Map<Integer, Standing> byLinks = new HashMap<>();
  private final Map<Integer, Standing> byLinksFromWire = new HashMap<>();
  private final Map<Double, Standing> byWire = new HashMap<>();

  Variants(Map<String, String> typed, JobState state, Handbook handbook, OnHand there) {
    Map<String, String> bare = new LinkedHashMap<>(typed);
    bare.remove(WishKeys.STOCK);
    bare.remove(WishKeys.RING_STOCK);
    this.texts = bare;
    this.state = state;
    this.handbook = handbook;
    this.there = there;
    this.wished = planned(bare, true);
  }

  Standing wished() {
    return wished;
  }

  /** A chain of that many links, of whatever wire there is. */
  Standing with(int links) {
    return byLinks.computeIfAbsent(links, n -> planned(lengthOf(n), true));
  }

  /** The most links that these limits allow, in whole repeats: what a chain takes grows with it. */
  int mostLinks(List<Bound> limits) {
    int each = oneMore();
    int most = MOST_LINKS / each;
    int does = 0;
    int fails = 1;
    while (fails < most && allow(fails * each, limits)) {
      does = fails;
      fails = Math.min(most, fails * 2);
    }
    if (fails == most && allow(fails * each, limits)) {
      return most * each;
    }
    while (fails - does > 1) {
      int middle = (does + fails) / 2;
      if (allow(middle * each, limits)) {
        does = middle;
      } else {
        fails = middle;
      }
    }
    return does * each;
  }

  /** Links by which a chain grows: one, or a whole repeat. */
  int oneMore() {
    return wishedPlan().linksPerRepeat();
  }

  /** Whether so many are more than anybody makes. */
  boolean unbounded(int links) {
    return links > MOST_LINKS - oneMore();
  }

  private boolean allow(int links, List<Bound> limits) {
    return limits.stream()
        .allMatch(
            limit -> limit.allows(limit == Bound.WIRE ? cutFromWire(links) : with(links), there));
  }

  private Standing cutFromWire(int links) {
    return byLinksFromWire.computeIfAbsent(
        links,
        n -> {
          Map<String, String> wish = lengthOf(n);
          wish.put(WishKeys.STOCK, there.wire());
          return planned(wish, true);
        });
  }

  /** Whether the wished length can be had in wire of that size. */
  boolean allowWire(double mm, List<Bound> limits) {
    Standing standing = byWire.computeIfAbsent(mm, this::inWire);
    boolean passes = standing.counted().plan().filter(Plan::wiresPass).isPresent();
    return passes
        && limits.stream()
            .allMatch(
                limit -> limit == Bound.WIRE ? drawnDownDoes(mm) : limit.allows(standing, there));
  }

  private Standing inWire(double mm) {
    return isWished(mm) ? wished : planned(otherWire(mm), false);
  }

  /** Wire is drawn thinner, never thicker; what pointing its end costs is not counted. */
  private boolean drawnDownDoes(double mm) {
    double wire = wishedPlan().wish().wireMm();
    if (mm > wire + 1e-9) {
      return false;
    }
    List<Double> lengths = lengthsThere();
    double longer = (wire / mm) * (wire / mm);
    Map<String, String> wish = isWished(mm) ? new LinkedHashMap<>(texts) : otherWire(mm);
    wish.put(
        WishKeys.STOCK,
        lengths.stream().map(each -> exact(each * longer)).collect(Collectors.joining(", ")));
    return Bound.WIRE.allows(planned(wish, isWished(mm)), there);
  }

  private List<Double> lengthsThere() {
    Map<String, String> wish = new LinkedHashMap<>(texts);
    wish.put(WishKeys.STOCK, there.wire());
    return WishReading.of(wish, handbook.reference(), handbook.patterns())
        .wish()
        .map(read -> read.stockMm())
        .orElse(List.of());
  }

  private boolean isWished(double mm) {
    return Math.abs(mm - wishedPlan().wish().wireMm()) < 1e-6;
  }

  /** What one more than the longest would take, of the limits that have one number. */
  Map<Bound, Double> taken(int links, List<Bound> limits) {
    Map<Bound, Double> taken = new EnumMap<>(Bound.class);
    for (Bound limit : limits) {
      limit.takenBy(with(links)).ifPresent(amount -> taken.put(limit, amount));
    }
    return taken;
  }

  /** Tenths of a millimetre, or gauge numbers; the wished size always. */
  List<Double> sizes(UnitStyle units) {
    List<Double> sizes = new ArrayList<>();
    if (units == UnitStyle.INCH) {
      for (int number = 8; number <= 28; number++) {
        sizes.add(Gauge.awgMm(number));
      }
    } else {
      for (int tenth = 3; tenth <= 30; tenth++) {
        sizes.add(tenth / 10.0);
      }
    }
    sizes.removeIf(mm -> mm < THINNEST_MM - 1e-9 || mm > THICKEST_MM + 1e-9 || isWished(mm));
    sizes.add(wishedPlan().wish().wireMm());
    return sizes;
  }

  private Plan wishedPlan() {
    return wished.counted().plan().orElseThrow();
  }

  private Map<String, String> lengthOf(int links) {
    Plan plan = wishedPlan();
    double pitch = (plan.oneMoreMm() - plan.lengthMm()) / oneMore();
    Map<String, String> wish = new LinkedHashMap<>(texts);
    wish.put(WishKeys.FINISHED, exact(plan.lengthMm() + (links - plan.links()) * pitch));
    return wish;
  }

  /** The link's look stays, its blank is bent anew. */
  private Map<String, String> otherWire(double mm) {
    Map<String, String> wish = new LinkedHashMap<>(texts);
    if (!texts.getOrDefault(WishKeys.LINK_LENGTH, "").isBlank()) {
      wish.remove(WishKeys.LINK_BLANK);
      wish.remove(WishKeys.LINK_INSIDE);
    }
    wish.put(WishKeys.WIRE, exact(mm));
    return wish;
  }

  /** From nothing; what was tried in the job bears on its own wire alone. */
  private Standing planned(Map<String, String> wish, boolean ownWire) {
    JobState fresh = Standing.newJob(wish, handbook, state.course().routine());
    JobState begun =
        new JobState(
            fresh.course(),
            ownWire ? state.trials() : fresh.trials(),
            fresh.piles(),
            fresh.wire(),
            fresh.timers(),
            fresh.times(),
            state.accounts().figures().isEmpty() ? state.accounts() : fresh.accounts(),
            fresh.flames(),
            fresh.sittings(),
            fresh.cautions(),
            fresh.card());
    return Standing.ofTyped(wish, begun, handbook);
  }

  private static String exact(double mm) {
    return Decimals.upTo(mm, 4) + " mm";
  }
}
