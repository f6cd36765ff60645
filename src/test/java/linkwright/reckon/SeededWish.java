package linkwright.reckon;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.plan.WishKeys;

/** Wishes drawn from a seed: any shipped link, by whatever it can be told by. */
public final class SeededWish {
  private static final List<String> METALS =
      List.of("sterling", "fine-silver", "copper", "brass", "gold-14k-yellow", "gold-18k-yellow");

  private static final Pattern MM = Pattern.compile("([0-9.]+) mm");

  private SeededWish() {}

  public static Map<String, String> of(long seed) {
    Random random = new Random(seed);
    List<linkwright.link.Pattern> patterns =
        Sums.SHIPPED.patterns().values().stream()
            .filter(each -> !each.id().endsWith("hook") && !each.id().equals("eye"))
            .toList();
    linkwright.link.Pattern pattern = patterns.get(random.nextInt(patterns.size()));
    double wire = (6 + random.nextInt(10)) / 10.0;
    double scale = wire * (1 + random.nextDouble());
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put(WishKeys.METAL, METALS.get(random.nextInt(METALS.size())));
    wish.put(WishKeys.TEMPER, random.nextInt(4) == 0 ? "hard" : "soft");
    wish.put(WishKeys.WIRE, BigDecimal.valueOf(wire).toPlainString() + " mm");
    wish.put(WishKeys.LINK_PATTERN, pattern.id());
    if (random.nextBoolean()) {
      wish.put(WishKeys.LINK_LENGTH, tenth(12 * scale));
      wish.put(WishKeys.LINK_WIDTH, tenth(pattern.isRing() ? 12 * scale : 5 * scale));
    } else if (random.nextInt(4) == 0) {
      wish.put(WishKeys.LINK_LENGTH, tenth(10 * scale));
    } else if (!pattern.isRing()) {
      wish.put(WishKeys.LINK_BLANK, tenth(38 * scale));
    }
    if (random.nextBoolean() || (pattern.isRing() && !wish.containsKey(WishKeys.LINK_LENGTH))) {
      wish.put(
          WishKeys.LINK_FORMERS,
          pattern.formersMm().entrySet().stream()
              .map(each -> each.getKey() + "=" + tenth(each.getValue() * (0.8 + scale / 4)))
              .collect(Collectors.joining("; ")));
    }
    if (random.nextBoolean()) {
      double inside = wire * (2.2 + 2 * random.nextDouble());
      wish.put(WishKeys.RING_INSIDE, tenth(inside));
      if (random.nextInt(3) == 0) {
        wish.put(WishKeys.RING_WIRE, tenth(wire * 0.9));
      }
      if (random.nextInt(3) == 0) {
        wish.put(WishKeys.RING_OVAL, tenth(inside * 0.85));
      }
    }
    wish.put(WishKeys.FINISHED, (150 + random.nextInt(500)) + " mm");
    if (random.nextBoolean()) {
      wish.put(WishKeys.CLASP_LENGTH, (5 + random.nextInt(20)) + " mm");
    }
    if (random.nextInt(3) == 0) {
      wish.put(WishKeys.KERF, "0.3 mm");
    }
    if (random.nextInt(3) == 0) {
      wish.put(WishKeys.USUAL_LOSS, random.nextInt(20) + " %");
    }
    return wish;
  }

  /** The same as somebody types it who works in inches. */
  public static Map<String, String> inInches(long seed) {
    Map<String, String> wish = new LinkedHashMap<>(of(seed));
    wish.replaceAll((key, text) -> MM.matcher(text).replaceAll(SeededWish::inches));
    return wish;
  }

  private static String inches(MatchResult mm) {
    return String.format(Locale.ROOT, "%.3f in", Double.parseDouble(mm.group(1)) / 25.4);
  }

  static String tenth(double mm) {
    return String.format(Locale.ROOT, "%.1f mm", mm);
  }
}
