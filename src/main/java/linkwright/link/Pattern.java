package linkwright.link;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A link's centre line as runs and bends over named formers, and where its joints are. Any values
 * are held; {@link PatternCheck} says what is wrong with them.
 *
 * @param id its name in files and commands, such as {@code hook-link}
 * @param says one sentence that lets a jeweller picture it
 * @param formersMm inside diameters of the formers in millimetres, by name, in the file's order
 * @param path from the tip to the middle of the blank, or the whole link where {@code other} is
 *     {@link OtherHalf#NONE}
 * @param other how the other half follows
 * @param closed whether the two tips meet, so that the wire is a loop
 * @param joints the places to solder on one link
 * @param usual the sizes at which it is usually made, where the file says
 */
public record Pattern(
    String id,
    String says,
    Map<String, Double> formersMm,
    List<PatternPart> path,
    OtherHalf other,
    boolean closed,
    List<Joint> joints,
    Optional<UsualSizes> usual) {
  /** Formers are sold by tenths of a millimetre. */
  private static final double FORMER_STEP_MM = 0.1;

  public Pattern {
    formersMm = Collections.unmodifiableMap(new LinkedHashMap<>(formersMm));
    path = List.copyOf(path);
    joints = List.copyOf(joints);
  }

  /** The same over other formers of the same names. */
  public Pattern withFormers(Map<String, Double> othersMm) {
    return new Pattern(id, says, othersMm, path, other, closed, joints, usual);
  }

  /**
   * The same over formers at least as thick as the wire that is bent over them: what a pattern's
   * own formers come to where nobody named others.
   *
   * @param wireMm the wire's thickness, mm, above 0
   */
  public Pattern withFormersFor(double wireMm) {
    double leastMm = Math.ceil(wireMm / FORMER_STEP_MM - 1e-9) / (1 / FORMER_STEP_MM);
    Map<String, Double> thickEnough = new LinkedHashMap<>(formersMm);
    thickEnough.replaceAll((name, mm) -> Math.max(mm, leastMm));
    return withFormers(thickEnough);
  }

  /** Whether this is one closed bend and nothing else: a ring, which is pulled any way. */
  public boolean isRing() {
    return closed && other == OtherHalf.NONE && path.size() == 1 && path.get(0) instanceof Bend;
  }
}
