package linkwright.fit;

import java.util.List;
import linkwright.link.Pattern;

/**
 * The test pieces of an earlier job, as they bear on a later one.
 *
 * @param pattern the link's pattern
 * @param wireMm its wire, mm, above 0
 * @param stressShare the stress that its metal's data give, over the modulus
 * @param sameMetal whether it was of the later job's metal and temper: its stress bears on it
 * @param sameBatch whether it was of the very batch of wire
 * @param pieces the pieces, in order
 * @param wish the size that their verdicts speak of
 */
public record EarlierJob(
    Pattern pattern,
    double wireMm,
    double stressShare,
    boolean sameMetal,
    boolean sameBatch,
    List<Tried> pieces,
    LinkSize wish) {
  public EarlierJob {
    FitArguments.positive("wireMm", wireMm);
    pieces = List.copyOf(pieces);
  }
}
