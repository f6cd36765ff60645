package linkwright.standing.reach;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import linkwright.job.JobState;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.wire.WireSection;

/**
 * The longest chain of a wish that can be had from what there is, and the heaviest wire for the
 * length that was wished, by each limit and by all together. Each chain is planned anew, so that
 * what is promised is what its plan gives; a chain is begun from nothing, with what the job's test
 * pieces taught.
 *
 * @param each a limit's own chains, in the order of {@link OnHand#limits}
 * @param together what all of them leave
 * @param binding which limits hold the longest chain back
 * @param onceMore what one link more, or one repeat, would take of each binding limit; not of wire
 *     that has no one number
 * @param there what there is, as it was said
 * @param unknown why some of what there is holds nothing back: no price, no routine
 * @param trouble why nothing can be said; empty if it can
 */
public record WithinReach(
    List<Within> each,
    Within together,
    List<Bound> binding,
    Map<Bound, Double> onceMore,
    OnHand there,
    List<String> unknown,
    String trouble) {
  /** Copies the lists. */
  public WithinReach {
    each = List.copyOf(each);
    binding = List.copyOf(binding);
    unknown = List.copyOf(unknown);
    // It is told in the limits' own order, at every start alike.
    onceMore = Collections.unmodifiableMap(new TreeMap<>(onceMore));
  }

  /**
   * What is within a limit, or within all.
   *
   * @param limits which
   * @param longest the longest chain; empty where not even one link is
   * @param heaviest the heaviest wire for the wished length, of the wished shape; empty where none
   *     is
   * @param unbounded whether the longest was ended by what anybody makes and not by a limit
   * @param taken what the longest takes of the one limit, in its unit
   */
  public record Within(
      List<Bound> limits,
      Optional<Plan> longest,
      Optional<WireSection> heaviest,
      boolean unbounded,
      OptionalDouble taken) {
    /** Copies the list. */
    public Within {
      limits = List.copyOf(limits);
    }

    /** That wire as it is called, both sizes where it has two; empty where none is. */
    public Optional<String> heaviestSaid(UnitStyle units) {
      return heaviest.map(wire -> wire.said(units));
    }

    int links() {
      return longest.map(Plan::links).orElse(0);
    }
  }

  /**
   * What can be had.
   *
   * @param texts the wish as typed
   * @param state its job
   * @param there what there is
   * @param units the sizes in which wire is sold: tenths of a millimetre, or gauge numbers
   */
  public static WithinReach of(
      Map<String, String> texts, JobState state, Handbook handbook, OnHand there, UnitStyle units) {
    Variants variants = new Variants(texts, state, handbook, there);
    Standing wished = variants.wished();
    if (wished.counted().plan().isEmpty()) {
      return none(
          wished.counted().sentence().isEmpty()
              ? wished.counted().troubles().values().stream()
                  .findFirst()
                  .orElse("There is no plan yet: set one first.")
              : wished.counted().sentence());
    }
    List<Bound> known =
        there.limits().stream()
            .filter(bound -> bound == Bound.WIRE || bound.takenBy(wished).isPresent())
            .toList();
    List<String> unknown =
        there.limits().stream()
            .filter(bound -> !known.contains(bound))
            .map(Bound::unknown)
            .toList();
    if (known.isEmpty()) {
      return none(
          unknown.isEmpty()
              ? "Say what there is: wire, metal, money or hours."
              : String.join(" ", unknown));
    }
    List<Within> each = known.stream().map(one -> within(variants, List.of(one), units)).toList();
    Within together = each.size() == 1 ? each.get(0) : within(variants, known, units);
    List<Bound> binding =
        together.unbounded()
            ? List.of()
            : each.stream()
                .filter(one -> !one.unbounded() && one.links() == together.links())
                .flatMap(one -> one.limits().stream())
                .toList();
    return new WithinReach(
        each,
        together,
        binding,
        variants.taken(together.links() + variants.oneMore(), binding),
        there,
        unknown,
        "");
  }

  private static WithinReach none(String why) {
    Within nothing =
        new Within(List.of(), Optional.empty(), Optional.empty(), false, OptionalDouble.empty());
    return new WithinReach(List.of(), nothing, List.of(), Map.of(), OnHand.NOTHING, List.of(), why);
  }

  private static Within within(Variants variants, List<Bound> limits, UnitStyle units) {
    int most = variants.mostLinks(limits);
    Optional<Standing> longest = most == 0 ? Optional.empty() : Optional.of(variants.with(most));
    return new Within(
        limits,
        longest.flatMap(standing -> standing.counted().plan()),
        variants.sizes(units).stream()
            .sorted(Comparator.reverseOrder())
            .filter(mm -> variants.allowWire(mm, limits))
            .findFirst()
            .map(mm -> variants.wire().asThickAs(mm)),
        variants.unbounded(most),
        longest.map(limits.get(0)::takenBy).orElse(OptionalDouble.empty()));
  }
}
