package linkwright.plan;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.link.Pattern;

/** Wishes as they are typed, for tests. */
public final class Wishes {
  public static final Library LIBRARY = Library.load(new Home(Path.of("target", "no-home-at-all")));
  public static final List<Pattern> PATTERNS = List.copyOf(LIBRARY.patterns().values());

  private final Map<String, String> texts = new LinkedHashMap<>();

  /** The common scroll chain: 0.9 mm sterling, blanks of 38.1 mm, small rings, a clasp, 16 in. */
  public static Wishes common() {
    return new Wishes()
        .with(WishKeys.METAL, "sterling")
        .with(WishKeys.WIRE, "0.9 mm")
        .with(WishKeys.LINK_PATTERN, "scroll")
        .with(WishKeys.LINK_BLANK, "38.1 mm")
        .with(WishKeys.RING_INSIDE, "2.5 mm")
        .with(WishKeys.CLASP_LENGTH, "14 mm")
        .with(WishKeys.CLASP_MASS, "0.9 g")
        .with(WishKeys.FINISHED, "406 mm");
  }

  /**
   * 18 long links that add 15 mm, 18 round ones that add 3, a ring of 3 between any two; 450 mm.
   */
  public static Wishes figaro() {
    return new Wishes()
        .with(WishKeys.METAL, "sterling")
        .with(WishKeys.WIRE, "1 mm")
        .with(WishKeys.LINK_PATTERN, "long")
        .with(WishKeys.LINK_BLANK, "38 mm")
        .with(WishKeys.LINK_INSIDE, "15 mm")
        .with(WishKeys.LINK_REPEAT, "1 long + 1 round ring=2.8 mm blank=12.6 mm inside=3 mm")
        .with(WishKeys.RING_INSIDE, "3 mm")
        .with(WishKeys.CLASP_LENGTH, "12 mm")
        .with(WishKeys.USUAL_LOSS, "0 %")
        .with(WishKeys.FINISHED, "450 mm");
  }

  public Wishes with(String key, String text) {
    texts.put(key, text);
    return this;
  }

  public Wishes without(String... keys) {
    texts.keySet().removeAll(List.of(keys));
    return this;
  }

  /** Key → what was typed. */
  public Map<String, String> texts() {
    return Map.copyOf(texts);
  }

  public WishReading read() {
    return read(texts);
  }

  public static WishReading read(Map<String, String> texts) {
    return WishReading.of(texts, LIBRARY.reference(), PATTERNS);
  }

  /** The plan; fails with what is wrong if there is none. */
  public Plan plan() {
    WishReading reading = read();
    if (!reading.troubles().isEmpty()) {
      throw new AssertionError(reading.troubles());
    }
    return Planning.plan(reading.wish().orElseThrow()).orThrow();
  }

  /** What is wrong: a sentence beside the key, or with the whole. */
  String wrong() {
    WishReading reading = read();
    return reading.wish().isEmpty()
        ? String.join(" ", reading.troubles().values())
        : Planning.plan(reading.wish().get()).problem().orElse("");
  }
}
