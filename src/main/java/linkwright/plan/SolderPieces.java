package linkwright.plan;

/**
 * Pallions of one size.
 *
 * @param joints how many, one for each joint
 * @param pieceMm length of one, mm
 */
public record SolderPieces(int joints, double pieceMm) {}
