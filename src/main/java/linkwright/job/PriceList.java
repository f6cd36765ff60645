package linkwright.job;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The user's own figures for the price; there are no defaults, since they are nobody else's.
 *
 * @param values name → figure; a name that is missing counts as 0
 */
public record PriceList(Map<String, Double> values) {
  /** Money for a gram of the metal as bought. */
  public static final String METAL_PER_G = "metal-per-g";

  /** Share of that price that the refiner credits for filings and sweeps, 0 to 1. */
  public static final String FILINGS_CREDIT = "filings-credit";

  /** Share of that price credited for clean and soldered scrap, 0 to 1. */
  public static final String SCRAP_CREDIT = "scrap-credit";

  /** Money for a gram of solder. */
  public static final String SOLDER_PER_G = "solder-per-g";

  /** Money for an hour at the bench. */
  public static final String HOUR = "hour";

  /** Overhead as a share of the labour, 0 or more. */
  public static final String OVERHEAD = "overhead";

  /** Margin as a share of the cost, 0 or more. */
  public static final String MARGIN = "margin";

  /** Money for clasp and other findings. */
  public static final String FINDINGS = "findings";

  /** Money for assay and marking. */
  public static final String ASSAY = "assay";

  /** Money for carriage. */
  public static final String CARRIAGE = "carriage";

  /** Tax as a share of the price, 0 or more. */
  public static final String TAX = "tax";

  /** All names, in the order in which they are asked for. */
  public static final List<String> NAMES =
      List.of(
          METAL_PER_G,
          SCRAP_CREDIT,
          FILINGS_CREDIT,
          SOLDER_PER_G,
          HOUR,
          OVERHEAD,
          MARGIN,
          FINDINGS,
          ASSAY,
          CARRIAGE,
          TAX);

  private static final Set<String> SHARES =
      Set.of(SCRAP_CREDIT, FILINGS_CREDIT, OVERHEAD, MARGIN, TAX);

  /** Whether it is a share, 0 to 1 or more, and no amount of money. */
  public static boolean isShare(String name) {
    return SHARES.contains(name);
  }

  /** The figure of that name, 0 if none was given. */
  public double of(String name) {
    return values.getOrDefault(name, 0.0);
  }
}
