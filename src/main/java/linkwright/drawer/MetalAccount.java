package linkwright.drawer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.job.Fact;
import linkwright.job.NotAccounted;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import linkwright.wire.WireMass;

/**
 * Where a metal went, in grams of alloy: what came into the drawer, what went into work, and what
 * came of that once a job was closed. What is lost is what the closing could not account for; where
 * nothing was weighed out for a job, what it took out of the drawer counts and what was bought for
 * it. What a job had and no lot knew came, too: where nothing was weighed out, as much as came of
 * it or was cut for it at least. Of a job that was closed with no chain weighed nothing is in
 * chains, and what is not accounted for is not lost. Solder that a job took and did not give back
 * is in its chain once that is weighed and the job closed.
 *
 * @param metal the metal, by id
 * @param fineShare its precious metal, 0 to 1; empty where its fineness is not known
 * @param cameG into the drawer, or for a job out of no lot
 * @param workG into work
 * @param openG in work still: of jobs that are not closed, or whose chain nobody weighed
 * @param chainG in finished chains as they were weighed, clasp and solder off; of solder, what did
 *     not come back
 * @param backG back as wire
 * @param cleanG clean scrap
 * @param solderedG soldered scrap
 * @param filingsG filings
 * @param sweepsG sweeps
 * @param atBenchG wire that was still at the bench of a job when it was closed, and that nothing
 *     was said of
 * @param overG links and rings that were made and that the chain did not take, as far as the
 *     account lacks them
 * @param lostG lost in work
 * @param missedG what stocktaking missed
 * @param looseG back as wire of jobs that took from no lot: it lies in none
 * @param thereG in the drawer by the books
 */
public record MetalAccount(
    String metal,
    OptionalDouble fineShare,
    double cameG,
    double workG,
    double openG,
    double chainG,
    double backG,
    double cleanG,
    double solderedG,
    double filingsG,
    double sweepsG,
    double atBenchG,
    double overG,
    double lostG,
    double missedG,
    double looseG,
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
    drawer.works().stream()
        .filter(work -> work.outG() > 0 || work.boughtMm3() > 0 || work.figures().isPresent())
        .forEach(work -> metals.add(work.metal()));
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
    Set<String> told = new LinkedHashSet<>();
    for (JobMetal job : drawer.works()) {
      if (job.metal().equals(metal)) {
        told.add(job.job());
        sums.work(
            job,
            taken(drawer, job.job(), metal, false),
            taken(drawer, job.job(), metal, true),
            bought(job, reference));
      }
    }
    // What was taken for a job that is of another metal stays in work; solder does until the chain
    // is weighed: what did not come back is in it then.
    Set<String> made =
        drawer.works().stream()
            .filter(job -> job.figures().isPresent() && job.chainWeighed())
            .map(JobMetal::job)
            .collect(Collectors.toSet());
    for (Taking taking : drawer.takings()) {
      if (!told.contains(taking.job()) && drawer.isOf(taking, metal)) {
        double grams = drawer.gramsOf(taking);
        sums.work += taking.back() ? 0 : grams;
        sums.back += taking.back() ? grams : 0;
        double stays = taking.back() ? -grams : grams;
        if (made.contains(taking.job()) && drawer.isSolder(taking)) {
          sums.chain += stays;
        } else {
          sums.open += stays;
        }
      }
    }
    return sums.account(metal, share(metal, reference));
  }

  private static double taken(Drawer drawer, String job, String metal, boolean back) {
    return drawer.takings().stream()
        .filter(taking -> taking.job().equals(job) && taking.back() == back)
        .filter(taking -> drawer.isOf(taking, metal))
        .mapToDouble(drawer::gramsOf)
        .sum();
  }

  private static double bought(JobMetal job, Reference reference) {
    if (job.boughtMm3() <= 0) {
      return 0;
    }
    double density =
        reference.metal(job.metal()).found().map(metal -> metal.densityGCm3().value()).orElse(0.0);
    return WireMass.grams(job.boughtMm3(), 1, density);
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
    private double open;
    private double chain;
    private double back;
    private double clean;
    private double soldered;
    private double filings;
    private double sweeps;
    private double atBench;
    private double over;
    private double lost;
    private double missed;
    private double loose;
    private double there;

    /** One job: what the scale said goes before what it took out of lots. */
    void work(JobMetal job, double takenG, double returnedG, double boughtG) {
      boolean weighed = job.outG() > 0;
      double known = weighed ? job.outG() : takenG + boughtG;
      boolean more = !weighed && job.figures().isPresent() && job.chainWeighed();
      double into = more ? Math.max(known, Math.max(job.accountedG(), job.ofPlanG())) : known;
      came += Math.max(0, into - takenG);
      Fact.WeighedIn in = job.in();
      double unweighed = in.wireReturnedG().isPresent() || job.outG() > 0 ? 0 : returnedG;
      work += into;
      back += unweighed;
      double returned = in.wireReturnedG().orElse(0);
      back += returned;
      loose += Math.max(0, returned - returnedG);
      if (job.figures().isEmpty()) {
        open += into - unweighed - returned;
        return;
      }
      chain += job.chainG();
      clean += in.cleanScrapG().orElse(0);
      soldered += in.solderedScrapG().orElse(0);
      filings += in.filingsG().orElse(0);
      sweeps += in.sweepsG().orElse(0);
      double gone = into > 0 ? into - unweighed - job.accountedG() : 0;
      if (!job.chainWeighed()) {
        open += gone;
        return;
      }
      NotAccounted apart = NotAccounted.of(gone, job.atBenchG(), job.piecesOverG());
      atBench += apart.atBenchG();
      over += apart.overG();
      lost += apart.lostG();
    }

    MetalAccount account(String metal, OptionalDouble share) {
      return new MetalAccount(
          metal, share, came, work, open, chain, back, clean, soldered, filings, sweeps, atBench,
          over, lost, missed, loose, there);
    }
  }
}
