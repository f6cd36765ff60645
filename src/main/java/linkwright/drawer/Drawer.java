package linkwright.drawer;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.job.Strikes;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/**
 * What lies in the drawer: arrivals, less what jobs took, with what they gave back; set right by
 * what the scale said last.
 *
 * @param lots the lots in the order in which they came
 * @param takings what jobs took and gave back
 * @param works what the scale said of jobs' metal
 * @param gramsPerMm lot → what a millimetre of it weighs, g; none for what is counted in g
 * @param book the drawer's own entries
 */
public record Drawer(
    List<Lot> lots,
    List<Taking> takings,
    List<JobMetal> works,
    Map<String, Double> gramsPerMm,
    List<Entry> book) {
  /** An empty drawer. */
  public static final Drawer EMPTY =
      new Drawer(List.of(), List.of(), List.of(), Map.of(), List.of());

  /** Copies the lists. */
  public Drawer {
    lots = List.copyOf(lots);
    takings = List.copyOf(takings);
    works = List.copyOf(works);
    gramsPerMm = Map.copyOf(gramsPerMm);
    book = List.copyOf(book);
  }

  /** Whether it was taken out of a lot of that metal. */
  boolean isOf(Taking taking, String metal) {
    return lots.stream()
        .anyMatch(lot -> lot.id().equals(taking.lot()) && lot.metal().equals(metal));
  }

  /** Whether it was taken out of a lot of solder. */
  boolean isSolder(Taking taking) {
    return lots.stream()
        .anyMatch(lot -> lot.id().equals(taking.lot()) && lot.what().equals("solder"));
  }

  /** The lot that some would be drawn from, as it would lie there then. */
  public Lot after(LotFact.LotTurned turned, Reference reference) {
    Lot from = lots.stream().filter(lot -> lot.id().equals(turned.lot())).findFirst().orElseThrow();
    double grams =
        turned
            .massG()
            .orElseGet(
                () ->
                    turned.lengthMm().orElse(0)
                        * gramsPerMm(from.metal(), turned.wireMm().orElse(0), reference).orElse(0));
    double left = from.lengthMm().orElse(0) - grams / gramsPerMm.getOrDefault(from.id(), 1.0);
    return new Lot(
        from.id(),
        from.what(),
        from.metal(),
        from.wireMm(),
        from.temper(),
        from.batch(),
        OptionalDouble.of(left),
        OptionalDouble.of(from.massG().orElse(0) - grams),
        from.cameG(),
        from.unaccountedG());
  }

  /** What a millimetre of round wire weighs, g; empty where the metal is not known. */
  public static OptionalDouble gramsPerMm(
      String metalOrSolder, double wireMm, Reference reference) {
    return Counting.density(metalOrSolder, reference)
        .map(density -> OptionalDouble.of(Counting.each(density, wireMm)))
        .orElse(OptionalDouble.empty());
  }

  /** What was taken, g; 0 where nothing says how heavy it is. */
  double gramsOf(Taking taking) {
    return taking
        .massG()
        .orElseGet(() -> taking.lengthMm().orElse(0) * gramsPerMm.getOrDefault(taking.lot(), 0.0));
  }

  /**
   * What lies there.
   *
   * @param book the drawer's own entries
   * @param takings what all jobs took and gave back
   * @param works what the scale said of jobs' metal
   * @param reference where densities are looked up
   */
  public static Drawer of(
      List<Entry> book, List<Taking> takings, List<JobMetal> works, Reference reference) {
    Strikes strikes = Strikes.in(book);
    List<Happening> happenings = new ArrayList<>();
    for (Entry entry : book) {
      if (!strikes.has(entry)) {
        happenings.add(new Happening(entry.at(), counting -> counting.book(entry.fact())));
      }
    }
    takings.forEach(
        taking -> happenings.add(new Happening(taking.at(), counting -> counting.taken(taking))));
    // At one moment the drawer's own comes first: what is taken has arrived.
    happenings.sort(Comparator.comparing(Happening::at));
    Counting counting = new Counting(reference);
    happenings.forEach(each -> each.what().accept(counting));
    return new Drawer(counting.lots(), takings, works, counting.gramsPerMm(), book);
  }

  /**
   * The same with what a job's book says now in the place of what it said when the drawer was read.
   */
  public Drawer with(String job, List<Entry> entries, Reference reference) {
    List<Taking> said = new ArrayList<>(takings);
    said.removeIf(taking -> taking.job().equals(job));
    said.addAll(Taking.in(job, entries));
    List<JobMetal> weighed = new ArrayList<>(works);
    weighed.removeIf(work -> work.job().equals(job));
    JobMetal.in(job, entries).ifPresent(weighed::add);
    boolean same =
        new HashSet<>(said).equals(new HashSet<>(takings))
            && said.size() == takings.size()
            && new HashSet<>(weighed).equals(new HashSet<>(works));
    return same ? this : of(book, said, weighed, reference);
  }

  private record Happening(Instant at, java.util.function.Consumer<Counting> what) {}

  /** A lot while it is counted; wire in mm, all else in g. */
  private static final class Pile {
    private final LotFact.LotArrived came;
    private double amount;
    private double cameG;
    private OptionalDouble unaccountedG = OptionalDouble.empty();

    Pile(LotFact.LotArrived came) {
      this.came = came;
    }
  }

  private static final class Counting {
    private final Reference reference;
    private final Map<String, Pile> piles = new LinkedHashMap<>();

    Counting(Reference reference) {
      this.reference = reference;
    }

    void book(Fact fact) {
      if (fact instanceof LotFact.LotArrived came) {
        Pile pile = piles.computeIfAbsent(came.lot(), any -> new Pile(came));
        double more = amount(pile.came, came.lengthMm(), came.massG());
        pile.amount += more;
        pile.cameG += grams(pile.came, more).orElse(0);
      }
      if (fact instanceof LotFact.LotCounted counted && piles.containsKey(counted.lot())) {
        Pile pile = piles.get(counted.lot());
        double there = amount(pile.came, counted.lengthMm(), counted.massG());
        pile.unaccountedG = grams(pile.came, pile.amount - there);
        pile.amount = there;
      }
      if (fact instanceof LotFact.LotTurned turned && piles.containsKey(turned.lot())) {
        turned(piles.get(turned.lot()), turned);
      }
    }

    /** Drawn down, metal stays metal: as many grams leave the one lot as come into the other. */
    private void turned(Pile from, LotFact.LotTurned turned) {
      LotFact.LotArrived into =
          new LotFact.LotArrived(
              turned.into(),
              from.came.what(),
              from.came.metal(),
              turned.wireMm(),
              "hard",
              from.came.batch(),
              turned.lengthMm(),
              turned.massG(),
              turned.note());
      Pile pile = piles.computeIfAbsent(turned.into(), any -> new Pile(into));
      double more = amount(pile.came, turned.lengthMm(), turned.massG());
      pile.amount += more;
      grams(pile.came, more)
          .ifPresent(
              grams -> {
                from.amount -= amount(from.came, OptionalDouble.empty(), OptionalDouble.of(grams));
              });
    }

    void taken(Taking taking) {
      Pile pile = piles.get(taking.lot());
      if (pile != null) {
        double some = amount(pile.came, taking.lengthMm(), taking.massG());
        pile.amount += taking.back() ? some : -some;
      }
    }

    Map<String, Double> gramsPerMm() {
      Map<String, Double> grams = new LinkedHashMap<>();
      piles.forEach((lot, pile) -> each(pile.came).ifPresent(each -> grams.put(lot, each)));
      return grams;
    }

    List<Lot> lots() {
      return piles.values().stream().map(this::lot).toList();
    }

    private Lot lot(Pile pile) {
      boolean wire = pile.came.wireMm().isPresent();
      return new Lot(
          pile.came.lot(),
          pile.came.what(),
          pile.came.metal(),
          pile.came.wireMm(),
          pile.came.temper(),
          pile.came.batch(),
          wire ? OptionalDouble.of(pile.amount) : OptionalDouble.empty(),
          grams(pile.came, pile.amount),
          pile.cameG,
          pile.unaccountedG);
    }

    /** Grams of a millimetre; empty where thickness or density is not known. */
    private OptionalDouble each(LotFact.LotArrived lot) {
      return lot.wireMm().isPresent()
          ? Drawer.gramsPerMm(lot.metal(), lot.wireMm().getAsDouble(), reference)
          : OptionalDouble.empty();
    }

    private static Optional<Double> density(String metalOrSolder, Reference reference) {
      return reference
          .metal(metalOrSolder)
          .found()
          .map(metal -> metal.densityGCm3().value())
          .or(() -> reference.solder(metalOrSolder).found().map(Solder::densityGCm3));
    }

    private static double each(double densityGCm3, double wireMm) {
      return WireMass.grams(WireSection.round(wireMm).areaMm2(), 1, densityGCm3);
    }

    /** In mm for wire, in g for all else; what cannot be turned into it counts as nothing. */
    private double amount(LotFact.LotArrived lot, OptionalDouble mm, OptionalDouble grams) {
      if (lot.wireMm().isEmpty()) {
        return grams.orElse(0);
      }
      if (mm.isPresent()) {
        return mm.getAsDouble();
      }
      OptionalDouble each = each(lot);
      return grams.isPresent() && each.isPresent() ? grams.getAsDouble() / each.getAsDouble() : 0;
    }

    private OptionalDouble grams(LotFact.LotArrived lot, double amount) {
      if (lot.wireMm().isEmpty()) {
        return OptionalDouble.of(amount);
      }
      OptionalDouble each = each(lot);
      return each.isPresent()
          ? OptionalDouble.of(amount * each.getAsDouble())
          : OptionalDouble.empty();
    }
  }
}
