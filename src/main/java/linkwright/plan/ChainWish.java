package linkwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.reference.Metal;
import linkwright.reference.Temper;

/**
 * A chain as it is wished, everything read and within its domain.
 *
 * @param job the job's name
 * @param metal the metal of wire and rings
 * @param wireMm the links' wire, mm, above 0
 * @param temper the temper in which it is bent and worn
 * @param link the link
 * @param ring the rings that join the links; empty where links join each other
 * @param finishedMm the finished length wished, clasp included, mm, above 0
 * @param claspMm the clasp from inside end to inside end, pulled, mm, 0 or more
 * @param claspG the clasp's mass, g, 0 or more
 * @param kerfMm wire that one cut turns to dust, mm, 0 or more
 * @param coilTailMm wire by which a coil of rings is held, mm, 0 or more
 * @param usualLoss the share of pieces usually lost, 0 to 1
 * @param confidence the wished chance of having cut enough, above 0, below 1
 * @param solderGCm3 density of the solder that the first joints take, g/cm³
 * @param stockMm lengths of the links' wire on hand, mm
 * @param ringStockMm lengths of the rings' wire; empty where they are cut from {@code stockMm} too
 */
public record ChainWish(
    String job,
    Metal metal,
    double wireMm,
    Temper temper,
    WishedLink link,
    Optional<WishedRing> ring,
    double finishedMm,
    double claspMm,
    double claspG,
    double kerfMm,
    double coilTailMm,
    double usualLoss,
    double confidence,
    double solderGCm3,
    List<Double> stockMm,
    Optional<List<Double>> ringStockMm) {
  public ChainWish {
    stockMm = List.copyOf(stockMm);
    ringStockMm = ringStockMm.map(List::copyOf);
  }

  /** The same wish with other rings. */
  public ChainWish withRing(WishedRing chosen) {
    return new ChainWish(
        job,
        metal,
        wireMm,
        temper,
        link,
        Optional.of(chosen),
        finishedMm,
        claspMm,
        claspG,
        kerfMm,
        coilTailMm,
        usualLoss,
        confidence,
        solderGCm3,
        stockMm,
        ringStockMm);
  }

  /** Whether the rings are of the links' own wire. */
  public boolean ringsOfSameWire() {
    return ring.map(rings -> Math.abs(rings.wireMm() - wireMm) < 0.0005).orElse(false);
  }

  /** The finished size wished of a link, where length and width were both given. */
  public Optional<linkwright.fit.LinkSize> linkSize() {
    OptionalDouble length = link.lengthMm();
    OptionalDouble width = link.widthMm();
    return length.isPresent() && width.isPresent()
        ? Optional.of(new linkwright.fit.LinkSize(length.getAsDouble(), width.getAsDouble()))
        : Optional.empty();
  }
}
