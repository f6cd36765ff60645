package linkwright.standing;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;

/** Lots that lie in a drawer. */
public final class Lots {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private Lots() {}

  /** So much wire of a metal. */
  public static Lot wire(String id, String metal, double wireMm, double lengthMm) {
    return wire(id, metal, wireMm, lengthMm, NONE);
  }

  /** The same, of which is known what it weighs. */
  public static Lot wire(
      String id, String metal, double wireMm, double lengthMm, OptionalDouble massG) {
    return new Lot(
        id,
        "wire",
        metal,
        OptionalDouble.of(wireMm),
        "soft",
        "",
        OptionalDouble.of(lengthMm),
        massG,
        0,
        NONE);
  }

  /** What is no wire and counted by its mass. */
  public static Lot weighed(String id, String what, String metal, double massG) {
    return new Lot(id, what, metal, NONE, "", "", NONE, OptionalDouble.of(massG), 0, NONE);
  }

  public static Drawer drawer(Lot... lots) {
    return new Drawer(List.of(lots), List.of(), List.of(), Map.of(), List.of());
  }
}
