package linkwright.plan;

/**
 * What one link of a chain of several sizes adds in the mean, from a hung length.
 *
 * @param insideMm the mean over the links that hung, mm, above 0
 * @param links how many hung
 */
public record HungMean(double insideMm, int links) {}
