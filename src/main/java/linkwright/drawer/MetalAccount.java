package linkwright.drawer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import linkwright.job.Fact;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/**
 * Where a metal went, in grams of alloy: what came into the drawer, what went into work, and what
 * came of that. What is lost is what went into work less all that was weighed in, of the jobs that
 * were weighed in; where nothing was weighed out for a job, what it took out of the drawer counts.
 *
 * @param metal the metal, by id
 * @param fineShare its precious metal, 0 to 1; empty where its fineness is not known
 * @param cameG into the drawer
 * @param workG into work
 * @param chainG in finished chains, clasp and solder in them
 * @param backG back as wire
 * @param cleanG clean scrap
 * @param solderedG soldered scrap
 * @param filingsG filings
 * @param sweepsG sweeps
 * @param lostG lost in work; below nothing where solder and clasp weigh more than was lost
 * @param missedG what stocktaking missed
 * @param thereG in the drawer by the books
 */
public record MetalAccount(
    String metal,
    OptionalDouble fineShare,
    double cameG,
    double workG,
    double chainG,
    double backG,
    double cleanG,
    double solderedG,
    double filingsG,
    double sweepsG,
    double lostG,
    double missedG,
    double thereG) {
  private static final double WHOLE_PERMILLE = 1000;

  /** So many grams of alloy as grams of fine metal; empty where its fineness is not known. */
  public OptionalDouble fine(double alloyG) {
    return fineShare.isPresent()
        ? OptionalDouble.of(alloyG * fineShare.getAsDouble())
        : OptionalDouble.empty();
  }


  /** The accounts of all metals of the drawer and of the jobs that weighed some. */
  public static List<MetalAccount> of(Drawer drawer, Reference reference) {
    Set<String> metals = new LinkedHashSet<>();
    drawer.lots().forEach(lot -> metals.add(lot.metal()));
    drawer.works().forEach(work -> metals.add(work.metal()));
    List<MetalAccount> accounts = new ArrayList<>();
    metals.forEach(metal -> accounts.add(of(metal, drawer, reference)));
    return List.copyOf(accounts);
  }

  private static MetalAccount of(String metal, Drawer drawer, Reference reference) {
    Sums sums = new Sums();
    for (Lot lot : drawer.lots()) {
      if (lot.metal().equals(metal)) {
        sums.came += lot.cameG();
        sums.missed += lot.unaccountedG().orElse(0);
        sums.there += lot.massG().orElse(0);
      }
    }
    drawer.works().stream().filter(work -> work.metal().equals(metal)).forEach(sums::work);
    Set<String> weighed = new LinkedHashSet<>();
    drawer.works().stream()
        .filter(work -> work.metal().equals(metal) && work.outG() > 0)
        .forEach(work -> weighed.add(work.job()));
    Set<String> closed = new LinkedHashSet<>();
    drawer.works().stream()
        .filter(work -> work.metal().equals(metal) && work.in().isPresent())
        .forEach(work -> closed.add(work.job()));
    for (Taking taking : drawer.takings()) {
      if (weighed.contains(taking.job()) || !drawer.isOf(taking, metal)) {
        continue;
      }
      double grams = drawer.gramsOf(taking);
      boolean returnWeighed =
          drawer.works().stream()
              .filter(work -> work.job().equals(taking.job()))
              .flatMap(work -> work.in().stream())
              .anyMatch(in -> in.wireReturnedG().isPresent());
      if (!taking.back()) {
        sums.work += grams;
        sums.lost += closed.contains(taking.job()) ? grams : 0;
      } else if (!returnWeighed) {
        sums.back += grams;
        sums.lost -= closed.contains(taking.job()) ? grams : 0;
      }
    }
    return sums.account(metal, share(metal, reference));
  }

  private static OptionalDouble share(String metal, Reference reference) {
    OptionalInt permille =
        reference
            .metal(metal)
            .found()
            .map(Metal::finenessPermille)
            .or(() -> reference.solder(metal).found().map(Solder::finenessPermille))
            .orElse(OptionalInt.empty());
    return permille.isPresent()
        ? OptionalDouble.of(permille.getAsInt() / WHOLE_PERMILLE)
        : OptionalDouble.empty();
  }

  private static final class Sums {
    private double came;
    private double work;
    private double chain;
    private double back;
    private double clean;
    private double soldered;
    private double filings;
    private double sweeps;
    private double lost;
    private double missed;
    private double there;

    void work(JobMetal job) {
      work += job.outG();
      if (job.in().isEmpty()) {
        return;
      }
      Fact.WeighedIn in = job.in().get();
      chain += in.chainG().orElse(0);
      back += in.wireReturnedG().orElse(0);
      clean += in.cleanScrapG().orElse(0);
      soldered += in.solderedScrapG().orElse(0);
      filings += in.filingsG().orElse(0);
      sweeps += in.sweepsG().orElse(0);
      lost +=
          job.outG()
              - in.chainG().orElse(0)
              - in.wireReturnedG().orElse(0)
              - in.cleanScrapG().orElse(0)
              - in.solderedScrapG().orElse(0)
              - in.filingsG().orElse(0)
              - in.sweepsG().orElse(0);
    }

    MetalAccount account(String metal, OptionalDouble share) {
      return new MetalAccount(
          metal, share, came, work, chain, back, clean, soldered, filings, sweeps, lost, missed,
          there);
    }
  }
}
