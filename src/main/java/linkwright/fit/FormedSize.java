package linkwright.fit;

/**
 * The outside size of a formed link.
 *
 * @param lengthMm along the line of pull
 * @param widthMm across it
 * @param shortestBlankMm the shortest blank that these formers and hands can make the pattern of
 */
record FormedSize(double lengthMm, double widthMm, double shortestBlankMm) {}
