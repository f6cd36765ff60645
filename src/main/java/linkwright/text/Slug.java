package linkwright.text;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** File names made from whatever a job is called. */
public final class Slug {
  private static final int LONGEST = 60;

  private static final Map<Integer, String> SPELT =
      Map.ofEntries(
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'ð', "d"),
          Map.entry((int) 'þ', "th"),
          Map.entry((int) 'ı', "i"));

  /** Names that Windows keeps for devices, whatever their ending. */
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private Slug() {}

  /**
   * A file name without ending for a job of that name: small letters a to z, digits and hyphens, 1
   * to 60 characters (and a number after it if need be), safe on every system.
   *
   * @param name what the user calls the job, any text
   * @param taken whether a file name is in use already
   */
  public static String of(String name, Predicate<String> taken) {
    String slug = plain(name);
    String candidate = slug;
    for (int next = 2; taken.test(candidate); next++) {
      candidate = slug + "-" + next;
    }
    return candidate;
  }

  private static String plain(String name) {
    String letters = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    StringBuilder out = new StringBuilder();
    letters.codePoints().forEach(c -> append(out, c));
    String slug = out.substring(0, Math.min(out.length(), LONGEST)).replaceAll("-+$", "");
    if (slug.isEmpty()) {
      return "job";
    }
    return DEVICES.contains(slug) ? "job-" + slug : slug;
  }

  private static void append(StringBuilder out, int c) {
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      out.append((char) c);
    } else if (SPELT.containsKey(c)) {
      out.append(SPELT.get(c));
    } else if (Character.isLetterOrDigit(c)) {
      // No spelling of its own in a to z: its code point keeps two such names apart.
      out.append('u').append(Integer.toHexString(c));
    } else if (Character.getType(c) != Character.NON_SPACING_MARK
        && !out.isEmpty()
        && out.charAt(out.length() - 1) != '-') {
      out.append('-');
    }
  }
}
