package linkwright.bench;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A solder that lies at the bench, by its maker's sheet.
 *
 * @param name her name for it, or the id of one that is known
 * @param grade hard, medium, easy, extra easy; empty if it was not said
 * @param alloy the metal it is meant for; empty if it was not said
 * @param finenessPermille its fineness, parts in a thousand
 * @param solidusC where it begins to melt, °C
 * @param liquidusC where it flows, °C
 * @param stripWidthMm width of the strip or diameter of the wire it comes as, mm
 * @param stripThicknessMm thickness of the strip, mm; empty for wire
 */
public record OwnSolder(
    String name,
    String grade,
    String alloy,
    OptionalInt finenessPermille,
    OptionalDouble solidusC,
    OptionalDouble liquidusC,
    OptionalDouble stripWidthMm,
    OptionalDouble stripThicknessMm) {}
