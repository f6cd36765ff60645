package linkwright.plan;

import java.util.List;
import java.util.Map;

/**
 * The keys of a wish, as they stand in a plan file ({@code link: {blank: …}} is {@code link.blank})
 * and in a job book.
 */
public final class WishKeys {
  public static final String JOB = "job";
  public static final String METAL = "metal";
  public static final String WIRE = "wire";
  public static final String TEMPER = "temper";
  public static final String LINK_PATTERN = "link.pattern";
  public static final String LINK_BLANK = "link.blank";
  public static final String LINK_FORMERS = "link.formers";
  public static final String LINK_LENGTH = "link.length";
  public static final String LINK_WIDTH = "link.width";
  public static final String LINK_INSIDE = "link.inside-length";
  public static final String LINK_REPEAT = "link.repeat";
  public static final String RING_INSIDE = "ring.inside";
  public static final String RING_WIRE = "ring.wire";
  public static final String RING_OVAL = "ring.oval-inside";
  public static final String RING_ENDS = "ring.at-ends";
  public static final String FINISHED = "finished-length";
  public static final String EXTENDER = "extender";
  public static final String CLASP_LENGTH = "clasp.length";
  public static final String CLASP_MASS = "clasp.mass";
  public static final String KERF = "kerf";
  public static final String COIL_TAIL = "coil-tail";
  public static final String USUAL_LOSS = "usual-loss";
  public static final String STOCK = "stock";
  public static final String RING_STOCK = "ring-stock";
  public static final String CONFIDENCE = "confidence";

  /** All keys, in the order in which they are asked for. */
  public static final List<String> ALL =
      List.of(
          JOB,
          METAL,
          WIRE,
          TEMPER,
          LINK_PATTERN,
          LINK_BLANK,
          LINK_FORMERS,
          LINK_LENGTH,
          LINK_WIDTH,
          LINK_INSIDE,
          LINK_REPEAT,
          RING_INSIDE,
          RING_WIRE,
          RING_OVAL,
          RING_ENDS,
          FINISHED,
          EXTENDER,
          CLASP_LENGTH,
          CLASP_MASS,
          KERF,
          COIL_TAIL,
          USUAL_LOSS,
          STOCK,
          RING_STOCK,
          CONFIDENCE);

  private static final Map<String, String> LABELS =
      Map.ofEntries(
          Map.entry(WIRE, "thickness"),
          Map.entry(LINK_BLANK, "blank"),
          Map.entry(LINK_FORMERS, "formers"),
          Map.entry(LINK_INSIDE, "link inside"),
          Map.entry(LINK_REPEAT, "repeat"),
          Map.entry(RING_WIRE, "ring thickness"),
          Map.entry(RING_OVAL, "oval inside"),
          Map.entry(RING_ENDS, "rings at ends"),
          Map.entry(STOCK, "wire on hand"),
          Map.entry(RING_STOCK, "wire for rings"),
          Map.entry(CONFIDENCE, "chance"));

  private WishKeys() {}

  /** What a maker calls it, in the plan's form and wherever a plan is told. */
  public static String label(String key) {
    return LABELS.getOrDefault(key, key.replaceAll("[.-]", " "));
  }
}
