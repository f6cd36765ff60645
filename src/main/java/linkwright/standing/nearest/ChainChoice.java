package linkwright.standing.nearest;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;

/**
 * A chain near the one wished that can be had.
 *
 * @param way what it takes
 * @param what the clasp's name, what comes before the size; empty where size or links say it
 * @param sizeMm the size it takes, mm; empty where there is none
 * @param links how many links it has, those of all sizes together
 * @param lengthMm the finished length it gives, mm
 * @param change key of the wish → what to type there instead; an empty text empties the field
 */
public record ChainChoice(
    Way way,
    String what,
    OptionalDouble sizeMm,
    int links,
    double lengthMm,
    Map<String, String> change) {
  /** What is changed to come near the wish. */
  public enum Way {
    /** The rings' size. */
    FIT_RING("ring"),
    /** The links' size. */
    FIT_LINK("link"),
    /** One link fewer. */
    ONE_FEWER("one-fewer"),
    /** One link more. */
    ONE_MORE("one-more"),
    /** A jump ring at each end, between the chain and its clasp. */
    JUMP_RINGS("jump-rings"),
    /** Another clasp. */
    CLASP("clasp");

    private final String id;

    Way(String id) {
      this.id = id;
    }

    /** The short word for it in files. */
    public String id() {
      return id;
    }
  }

  /** What it takes in words: {@code rings of 2.4 mm inside}, {@code 23 links}. */
  public String says(UnitStyle units) {
    String size = sizeMm.isPresent() ? units.length(sizeMm.getAsDouble()) : "";
    return switch (way) {
      case FIT_RING -> "rings of " + size + " inside";
      case FIT_LINK -> (what.isEmpty() ? "links of " : what) + size;
      case JUMP_RINGS -> "a jump ring of " + size + " inside at each end";
      case CLASP -> SaidIn.units(what, units);
      case ONE_FEWER, ONE_MORE -> PieceKind.LINK.counted(links);
    };
  }

  /** The same with its links: {@code 24 links and rings of 2.4 mm inside}. */
  public String saysWithLinks(UnitStyle units) {
    String counted = PieceKind.LINK.counted(links);
    String says = says(units);
    return says.equals(counted) ? counted : counted + " and " + says;
  }

  public ChainChoice {
    change = Collections.unmodifiableMap(new LinkedHashMap<>(change));
  }
}
