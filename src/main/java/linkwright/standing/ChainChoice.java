package linkwright.standing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A chain near the one wished that can be had.
 *
 * @param way what it takes
 * @param says what it takes in words, sizes in mm: {@code rings of 2.4 mm inside}
 * @param lengthMm the finished length it gives, mm
 * @param change key of the wish → what to type there instead; an empty text empties the field
 */
public record ChainChoice(Way way, String says, double lengthMm, Map<String, String> change) {
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

  public ChainChoice {
    change = Collections.unmodifiableMap(new LinkedHashMap<>(change));
  }
}
