package linkwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Count;
import linkwright.quantity.Read;

/**
 * Reads what comes again along a chain: {@code 1 long + 2 round ring=3 mm}. The planned link goes
 * by its pattern's name or by {@code link}; each other by its pattern's name, or by a name of its
 * own with {@code pattern=…}, and says its sizes: blank, length, width, inside, its formers. The
 * ring after each link may be named as {@code ring}, and changes nothing.
 */
final class RepeatReading {
  private static final Pattern PART =
      Pattern.compile("(\\d{1,3})\\s+([\\p{L}][\\p{L}\\d-]*)\\s*[,:]?\\s*(.*)");
  private static final Pattern SIZE =
      Pattern.compile("([\\p{L}-]+)\\s*=\\s*([^=]*?)[,;]?\\s*(?=$|[\\p{L}-]+\\s*=)");
  private static final int MOST_SIZES = 5;

  /** The ring that joins: one comes after every link, said or not. */
  private static final String RING = "ring";

  private static final Map<String, String> KEYS =
      Map.of(
          "pattern", WishKeys.LINK_PATTERN,
          "blank", WishKeys.LINK_BLANK,
          "length", WishKeys.LINK_LENGTH,
          "width", WishKeys.LINK_WIDTH,
          "inside", WishKeys.LINK_INSIDE);

  /** Reads a link of the same chain from texts by the wish's keys. */
  private final BiFunction<String, Map<String, String>, Read<WishedLink>> links;

  private final String planned;
  private final Set<String> patterns;

  /**
   * A reading of repeats.
   *
   * @param planned the pattern of the planned link; empty for one known by its measures
   * @param patterns ids of all patterns
   * @param links name and texts by the wish's keys → the link
   */
  RepeatReading(
      String planned,
      List<String> patterns,
      BiFunction<String, Map<String, String>, Read<WishedLink>> links) {
    this.planned = planned;
    this.patterns = new LinkedHashSet<>(patterns);
    this.links = links;
  }

  Read<WishedRepeat> read(String text) {
    int count = 0;
    int rings = 0;
    Map<String, Integer> times = new LinkedHashMap<>();
    Map<String, Map<String, String>> texts = new LinkedHashMap<>();
    for (String written : text.split("\\+", -1)) {
      Matcher part = PART.matcher(written.strip());
      int many = part.matches() ? Count.inDigits(part.group(1), 3).orElse(0) : 0;
      if (many == 0) {
        return Read.bad(
            "“"
                + written.strip()
                + "” is not a number of links: write 1 long + 1 round ring=3 mm.");
      }
      String name = part.group(2);
      if (name.equals("link") || name.equals(planned)) {
        if (!part.group(3).isBlank()) {
          return Read.bad("The sizes of the planned link stand in its own fields, not here.");
        }
        count += many;
        continue;
      }
      if (name.equals(RING) && part.group(3).isBlank()) {
        rings += many;
        continue;
      }
      times.merge(name, many, Integer::sum);
      Optional<String> wrong =
          sizes(part.group(3), texts.computeIfAbsent(name, any -> new LinkedHashMap<>()));
      if (wrong.isPresent()) {
        return Read.bad(wrong.get());
      }
    }
    int links = count + times.values().stream().mapToInt(Integer::intValue).sum();
    if (rings > 0 && rings != links) {
      return Read.bad(
          "A ring comes after every link, "
              + links
              + " in this repeat: leave the rings out here, ring inside says their size; or give"
              + " what stands between as a link of its own, as 1 small pattern=round ring=3 mm.");
    }
    return count == 0
        ? Read.bad(
            "Say how many of the planned link a repeat has, as 1 "
                + (planned.isEmpty() ? "link" : planned)
                + " + 1 round ring=3 mm.")
        : repeat(count, others(times, texts));
  }

  /**
   * A repeat as typed, with each former's size as told by that; all else stays as it was typed.
   *
   * @param size what was typed for a former → what is to stand there
   */
  static String sized(String text, UnaryOperator<String> size) {
    List<String> parts = new ArrayList<>();
    for (String written : text.split("\\+", -1)) {
      StringBuilder part = new StringBuilder(written);
      Matcher said = SIZE.matcher(written);
      int longer = 0;
      while (said.find()) {
        if (!KEYS.containsKey(said.group(1))) {
          String now = size.apply(said.group(2));
          part.replace(said.start(2) + longer, said.end(2) + longer, now);
          longer += now.length() - said.group(2).length();
        }
      }
      parts.add(part.toString());
    }
    return String.join("+", parts);
  }

  private Read<WishedRepeat> repeat(int count, Read<List<OtherLink>> others) {
    return others.map(
        found -> new WishedRepeat(planned.isEmpty() ? "link" : planned, count, found));
  }

  private static Optional<String> sizes(String written, Map<String, String> texts) {
    Matcher size = SIZE.matcher(written.strip());
    int end = 0;
    StringBuilder formers = new StringBuilder(texts.getOrDefault(WishKeys.LINK_FORMERS, ""));
    while (size.find() && size.start() == end) {
      end = size.end();
      String key = KEYS.get(size.group(1));
      if (key != null) {
        texts.put(key, size.group(2).strip());
      } else {
        formers.append(formers.isEmpty() ? "" : ", ").append(size.group(1)).append('=');
        formers.append(size.group(2).strip());
      }
    }
    if (!formers.isEmpty()) {
      texts.put(WishKeys.LINK_FORMERS, formers.toString());
    }
    return end == written.strip().length()
        ? Optional.empty()
        : Optional.of(
            "“"
                + written.strip().substring(end)
                + "” is no size: write blank=30 mm, length=12 mm, or a former as ring=3 mm.");
  }

  private Read<List<OtherLink>> others(
      Map<String, Integer> times, Map<String, Map<String, String>> texts) {
    if (times.size() >= MOST_SIZES) {
      return Read.bad("At most " + MOST_SIZES + " sizes of link are planned for one chain.");
    }
    List<OtherLink> others = new ArrayList<>();
    for (Map.Entry<String, Map<String, String>> other : texts.entrySet()) {
      String name = other.getKey();
      other.getValue().putIfAbsent(WishKeys.LINK_PATTERN, patterns.contains(name) ? name : planned);
      Read<WishedLink> link = links.apply(name, other.getValue());
      if (link instanceof Read.Bad<WishedLink> bad) {
        return Read.bad(name + ": " + bad.sentence());
      }
      others.add(new OtherLink(name, times.get(name), link.orThrow()));
    }
    return Read.good(others);
  }
}
