package linkwright.job.plan;

/** What a ring adds along the pull: its inside diameter, or the oval's inside length. */
final class RingLength {
  private RingLength() {}

  static double insideLengthMm(WishedRing ring) {
    return 0;
  }
}
