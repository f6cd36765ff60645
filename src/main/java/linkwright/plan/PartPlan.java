package linkwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.Pattern;
import linkwright.link.Rings;
import linkwright.quantity.Count;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.wire.WireSection;

/**
 * The plan of what is no chain: a clasp, rings for stock, a mended link, drawn wire. It counts
 * pieces instead of links along a length, and everything in it may stay open.
 *
 * @param metal the metal, if it was named
 * @param wireMm its wire, mm
 * @param blankMm the blank of one piece, mm
 * @param formersMm formers by name: the pattern's own, replaced by those that were named, mm
 * @param ringInsideMm inside diameter of a ring, mm
 * @param pieces how many are wanted of each kind of piece, 1 or more
 * @param usualLoss the share of pieces usually lost, 0 to 1
 */
public record PartPlan(
    Optional<Metal> metal,
    OptionalDouble wireMm,
    OptionalDouble blankMm,
    Map<String, Double> formersMm,
    OptionalDouble ringInsideMm,
    int pieces,
    double usualLoss) {
  /** The key of how many are wanted. */
  public static final String PIECES = "pieces";

  private static final int MOST_PIECES = 100_000;

  public PartPlan {
    if (pieces < 1) {
      throw new IllegalArgumentException("pieces must be 1 or more: " + pieces);
    }
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
  }

  /**
   * What was typed, read.
   *
   * @param plan the plan; empty while something is wrong
   * @param troubles key → what is wrong with what stands there
   */
  public record Reading(Optional<PartPlan> plan, Map<String, String> troubles) {
    public Reading {
      troubles = Collections.unmodifiableMap(new LinkedHashMap<>(troubles));
    }
  }

  /**
   * Reads it; a key that is missing or blank stays open, the number of pieces is then the usual
   * one.
   *
   * @param texts key → what was typed
   * @param reference where metals are looked up
   * @param pattern the pattern of the piece, if it has one
   * @param usualLoss the routine's usual loss, for one that is not typed, 0 to 1
   * @param usualPieces how many are planned by the routine as a rule, 1 or more
   */
  public static Reading of(
      Map<String, String> texts,
      Reference reference,
      Optional<Pattern> pattern,
      double usualLoss,
      int usualPieces) {
    Typed typed = new Typed(texts);
    Optional<Metal> metal = typed.optional(WishKeys.METAL, reference::metal);
    OptionalDouble wire =
        typed
            .optional(WishKeys.WIRE, WireSection::read)
            .map(read -> OptionalDouble.of(read.thicknessMm()))
            .orElse(OptionalDouble.empty());
    OptionalDouble blank = mm(typed.optional(WishKeys.LINK_BLANK, Length::readSize));
    Map<String, Double> formers = new LinkedHashMap<>();
    pattern.ifPresent(known -> formers.putAll(known.formersMm()));
    formers.putAll(new FormersReading(typed).of(WishKeys.LINK_FORMERS, pattern));
    OptionalDouble ring = mm(typed.optional(WishKeys.RING_INSIDE, Length::readSize));
    int pieces = typed.optional(PIECES, PartPlan::count).orElse(usualPieces);
    double loss =
        typed.optional(WishKeys.USUAL_LOSS, Share::read).map(Share::value).orElse(usualLoss);
    return typed.troubles().isEmpty()
        ? new Reading(
            Optional.of(new PartPlan(metal, wire, blank, formers, ring, pieces, loss)), Map.of())
        : new Reading(Optional.empty(), typed.troubles());
  }

  private static OptionalDouble mm(Optional<Length> length) {
    return length.map(found -> OptionalDouble.of(found.mm())).orElse(OptionalDouble.empty());
  }

  private static Read<Integer> count(String text) {
    Read<Integer> read = Count.read(text, 1, MOST_PIECES);
    return read.isGood()
        ? read
        : Read.bad(
            "“" + text + "” is no number of pieces: write how many you want, such as 1 or 60.");
  }

  /** The blank of one ring, π(D + d), mm; empty while its inside or wire is open. */
  public OptionalDouble ringBlankMm() {
    return ringInsideMm.isPresent() && wireMm.isPresent()
        ? OptionalDouble.of(Rings.blankMm(ringInsideMm.getAsDouble(), wireMm.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Wire for the rings wanted, spares apart, mm; empty while the blank of one is. */
  public OptionalDouble wireWithoutSparesMm() {
    OptionalDouble blank = ringBlankMm();
    return blank.isPresent()
        ? OptionalDouble.of(blank.getAsDouble() * pieces)
        : OptionalDouble.empty();
  }

  /** Length of a pallion for one joint, mm; empty while wire or metal is open. */
  public OptionalDouble solderPieceMm() {
    return metal.isPresent() && wireMm.isPresent()
        ? OptionalDouble.of(Planning.solder(wireMm.getAsDouble(), metal.get()).pieceMm())
        : OptionalDouble.empty();
  }
}
