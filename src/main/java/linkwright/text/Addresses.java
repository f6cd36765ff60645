package linkwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a source that is named in a text can be read: the web addresses behind its words. */
public final class Addresses {
  /**
   * A stretch of a row with an address behind it.
   *
   * @param from its first character
   * @param to the character after its last
   * @param url where it leads
   */
  public record Link(int from, int to, String url) {}

  /** A web address, the name of a site, a doi, a law of the Netherlands by its number there. */
  private static final Pattern SOURCE =
      Pattern.compile(
          "(?<url>https?://[^\\s,;)]+)"
              + "|(?<doi>\\b10\\.\\d{4,9}/[^\\s,;)]+)"
              + "|(?<law>\\bBWBR\\d{7}\\b)"
              + "|(?<site>(?<![\\w@./-])(?:[a-z0-9-]+\\.)+(?:com|org|net|gov|edu|uk|de|nl|ch|fr)"
              + "(?:/[^\\s,;)]+)?(?![\\w-]))");

  private Addresses() {}

  /** The addresses that a row names, in their order; no two overlap. */
  public static List<Link> in(String row) {
    List<Link> links = new ArrayList<>();
    Matcher found = SOURCE.matcher(row);
    while (found.find()) {
      String text = found.group().replaceFirst("\\.$", "");
      String before =
          found.group("doi") != null
              ? "https://doi.org/"
              : found.group("law") != null
                  ? "https://wetten.overheid.nl/"
                  : found.group("site") != null ? "https://" : "";
      links.add(new Link(found.start(), found.start() + text.length(), before + text));
    }
    return links;
  }
}
