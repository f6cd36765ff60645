package linkwright.plan;

import java.util.OptionalDouble;

/**
 * The rings wished.
 *
 * @param insideMm inside diameter of the finished round ring, mm, above 0
 * @param wireMm the rings' wire, mm, above 0
 * @param ovalInsideMm inside width once squeezed to an oval, mm; empty where they stay round
 */
public record WishedRing(double insideMm, double wireMm, OptionalDouble ovalInsideMm) {}
