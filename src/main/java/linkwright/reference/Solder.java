package linkwright.reference;

import java.util.List;
import java.util.OptionalInt;

/**
 * A solder.
 *
 * @param id the short word that names it in files and commands
 * @param name its name for reading
 * @param alsoCalled other names that find it
 * @param family the metals it is meant for
 * @param solidusC where it begins to melt, °C
 * @param liquidusC where it flows, °C, not below the solidus
 * @param flowOrder its place in order of use: 1 flows hottest and is used first
 * @param densityGCm3 density, g/cm³
 * @param grade hard, medium, easy or extra easy, by where it flows; empty if it is not said
 * @param alloy what it is made of; empty if it is not said
 * @param finenessPermille its precious metal, parts in a thousand, if it is said
 * @param note what to mind with it
 * @param source where its figures come from
 */
public record Solder(
    String id,
    String name,
    List<String> alsoCalled,
    Family family,
    double solidusC,
    double liquidusC,
    int flowOrder,
    double densityGCm3,
    String grade,
    String alloy,
    OptionalInt finenessPermille,
    String note,
    String source) {
  /** Copies the list and refuses what can't be. */
  public Solder {
    alsoCalled = List.copyOf(alsoCalled);
    if (!(solidusC <= liquidusC)) {
      throw new IllegalArgumentException("solidusC " + solidusC + " above liquidusC " + liquidusC);
    }
    if (!(densityGCm3 > 0)) {
      throw new IllegalArgumentException("densityGCm3 must be above 0, not " + densityGCm3);
    }
  }

  /** Whether it is known to be at least this fine, parts in a thousand. */
  public boolean isAsFineAs(int permille) {
    return finenessPermille.isPresent() && finenessPermille.getAsInt() >= permille;
  }
}
