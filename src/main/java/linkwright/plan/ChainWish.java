package linkwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.wire.WireSection;

/**
 * A chain as it is wished, everything read and within its domain.
 *
 * @param job the job's name
 * @param metal the metal of wire and rings
 * @param wire the links' wire; its thickness is what is bent and what the next link hooks over
 * @param ringWire the rings' wire; the links' where none is named
 * @param temper the temper in which it is bent and worn
 * @param link the link
 * @param repeat how many of it come again with which other links
 * @param ring the rings that join the links; empty where links join each other
 * @param endRingMm inside diameter of a jump ring at each end, mm; empty without
 * @param finishedMm the finished length wished, clasp included, mm, above 0
 * @param extenderMm how much of that length, at its end, the clasp may be hooked short of, mm; 0
 *     for none
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
    WireSection wire,
    WireSection ringWire,
    Temper temper,
    WishedLink link,
    WishedRepeat repeat,
    Optional<WishedRing> ring,
    OptionalDouble endRingMm,
    double finishedMm,
    double extenderMm,
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

  /** Thickness of the links' wire, mm: of half-round wire, flat side in, its height. */
  public double wireMm() {
    return wire.thicknessMm();
  }

  /** The links' wire as it is called, the section too where it is not round. */
  public String wireSaid(UnitStyle units) {
    return wire.said(units);
  }

  /** The rings' wire as it is called. */
  public String ringWireSaid(UnitStyle units) {
    return ringWireNow().said(units);
  }

  /** Section of the links' wire, mm². */
  public double wireAreaMm2() {
    return wire.areaMm2();
  }

  /** Section of the rings' wire, mm². */
  public double ringAreaMm2() {
    return ringWireNow().areaMm2();
  }

  /** The rings' wire; a ring that was tried in another thickness is of round wire. */
  WireSection ringWireNow() {
    double mm = ring.map(WishedRing::wireMm).orElse(wireMm());
    return Math.abs(ringWire.thicknessMm() - mm) < 0.0005 ? ringWire : WireSection.round(mm);
  }

  /** The same wish with other rings. */
  public ChainWish withRing(WishedRing chosen) {
    return with(link, repeat, Optional.of(chosen));
  }

  /** A chain of that link alone. */
  ChainWish withLink(WishedLink other) {
    return with(other, WishedRepeat.ALIKE, ring);
  }

  /** Names of the links beside the planned one. */
  public List<String> others() {
    return repeat.others().stream().map(OtherLink::name).toList();
  }

  /** The wish of a chain of one of its links alone; the planned one has no name. */
  public ChainWish of(String size) {
    return repeat.others().stream()
        .filter(other -> other.name().equals(size))
        .findFirst()
        .map(other -> withLink(other.link()))
        .orElseGet(() -> withLink(link));
  }

  private ChainWish with(WishedLink linked, WishedRepeat again, Optional<WishedRing> rings) {
    return new ChainWish(
        job,
        metal,
        wire,
        ringWire,
        temper,
        linked,
        again,
        rings,
        endRingMm,
        finishedMm,
        extenderMm,
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
    return ring.isPresent() && ringWireNow().isLike(wire);
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
