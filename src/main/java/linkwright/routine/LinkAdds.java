package linkwright.routine;

/**
 * What a link adds along the pull where it is folded or turned into its neighbours, so that it is
 * not its inside: so much of its inside and so many thicknesses of its wire.
 *
 * @param ofInside share of the inside
 * @param ofWire thicknesses of the wire; below 0 where they are taken off
 * @param off how far that may be off, as a share of it, one standard deviation, above 0, below 1
 */
public record LinkAdds(double ofInside, double ofWire, double off) {}
