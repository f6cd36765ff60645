package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.quantity.Decimals;
import linkwright.quantity.Items;

/** Formers of a wish that are named as the maker names them at her bench, in place of a size. */
public final class NamedFormers {
  private NamedFormers() {}

  /**
   * The texts of a wish with sizes where her names stood: {@code tip=small step} becomes {@code
   * tip=2.4 mm}, in the links of a repeat too. What is no name of hers stays as it was typed.
   *
   * @param hersMm her own name of a former → its inside diameter, mm
   */
  public static Map<String, String> sized(Map<String, String> texts, Map<String, Double> hersMm) {
    if (hersMm.isEmpty()) {
      return texts;
    }
    Map<String, String> byName = new LinkedHashMap<>();
    hersMm.forEach((name, mm) -> byName.put(plain(name), Decimals.exactly(mm) + " mm"));
    Map<String, String> all = new LinkedHashMap<>(texts);
    all.computeIfPresent(WishKeys.LINK_FORMERS, (key, typed) -> list(typed, byName));
    all.computeIfPresent(
        WishKeys.LINK_REPEAT,
        (key, typed) -> RepeatReading.sized(typed, size -> hers(size, byName)));
    return all.equals(texts) ? texts : all;
  }

  private static String list(String typed, Map<String, String> byName) {
    return Items.of(typed).stream()
        .map(String::strip)
        .map(item -> sized(item, byName))
        .collect(Collectors.joining(", "));
  }

  private static String sized(String item, Map<String, String> byName) {
    int sign = item.indexOf('=');
    String size = sign < 0 ? null : byName.get(plain(item.substring(sign + 1)));
    return size == null ? item : item.substring(0, sign) + "=" + size;
  }

  private static String hers(String size, Map<String, String> byName) {
    return byName.getOrDefault(plain(size), size);
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
