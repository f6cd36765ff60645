package linkwright.wire;

/**
 * One pull through one hole.
 *
 * @param fromMm diameter before, mm
 * @param toMm the hole, mm
 * @param reduction share of the area that this pass takes off, 0 to 1
 * @param cumulativeSinceAnneal share of the area taken off since the last anneal, this pass
 *     included
 * @param annealBefore whether the wire is annealed before this pass
 */
public record Pass(
    double fromMm,
    double toMm,
    double reduction,
    double cumulativeSinceAnneal,
    boolean annealBefore) {}
