package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.link.Pattern;
import linkwright.quantity.Decimals;
import linkwright.reference.Clasp;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Reference;

/**
 * Figures of the reference files that a plan rests on, by name, so that a kept plan can hold them:
 * each name says of what it is, and one of another metal, clasp or pattern counts no more.
 */
public final class HeldFigures {
  private static final String DENSITY = " density, g/cm3";
  private static final String MODULUS = " modulus, GPa";
  private static final String YIELD_SOFT = " yield soft, MPa";
  private static final String YIELD_HARD = " yield hard, MPa";
  private static final String TENSILE_SOFT = " tensile soft, MPa";
  private static final String TENSILE_HARD = " tensile hard, MPa";
  private static final String SOLDER = " solder's density, g/cm3";
  private static final String CLASP_LENGTH = " inside, mm";
  private static final String CLASP_MASS = " mass, g";
  private static final String FORMER = " former ";
  private static final String BENDS = " bends";

  /** The name of what a link adds by its routine, where it is folded or turned. */
  public static final String LINK_ADDS = "link adds";

  private HeldFigures() {}

  /** What the reference files and patterns say now of what a wish names. */
  public static Map<String, String> of(
      Map<String, String> texts, Reference reference, List<Pattern> patterns) {
    Map<String, String> held = new LinkedHashMap<>();
    text(texts, WishKeys.METAL)
        .flatMap(name -> reference.metal(name).found())
        .ifPresent(
            metal -> {
              put(held, metal.id() + DENSITY, metal.densityGCm3().value());
              put(held, metal.id() + MODULUS, metal.modulusGpa().value());
              put(held, metal.id() + YIELD_SOFT, metal.yieldSoftMpa().value());
              put(held, metal.id() + YIELD_HARD, metal.yieldHardMpa().value());
              put(held, metal.id() + TENSILE_SOFT, metal.tensileSoftMpa().value());
              put(held, metal.id() + TENSILE_HARD, metal.tensileHardMpa().value());
              put(held, metal.id() + SOLDER, SolderOfChain.densityGCm3(metal, reference));
            });
    text(texts, WishKeys.CLASP_LENGTH)
        .flatMap(reference::knownClasp)
        .ifPresent(
            clasp -> {
              put(held, clasp.id() + CLASP_LENGTH, clasp.insideLengthMm());
              put(held, clasp.id() + CLASP_MASS, clasp.massG());
            });
    patterns.stream()
        .filter(pattern -> isNamed(pattern.id(), texts))
        .forEach(
            pattern -> {
              pattern.formersMm().forEach((name, mm) -> put(held, former(pattern.id(), name), mm));
              HeldBends.of(pattern).ifPresent(line -> held.put(pattern.id() + BENDS, line));
            });
    return held;
  }

  /** Whether that is a figure of the reference files and none that is typed. */
  public static boolean isOne(String key) {
    return !WishKeys.ALL.contains(key);
  }

  /** The name of a former's size of that pattern. */
  public static String former(String pattern, String name) {
    return pattern + FORMER + name;
  }

  /** Whether that is the size of a former. */
  public static boolean isFormer(String key) {
    return isOne(key) && key.contains(FORMER);
  }

  /** Whether that is how a pattern is bent, which is no figure to show. */
  public static boolean isBends(String key) {
    return isOne(key) && key.endsWith(BENDS);
  }

  /** As the planned link's pattern or in the repeat, by its own name or after {@code pattern=}. */
  private static boolean isNamed(String id, Map<String, String> texts) {
    String repeat = texts.getOrDefault(WishKeys.LINK_REPEAT, "");
    return texts.getOrDefault(WishKeys.LINK_PATTERN, "").strip().equals(id)
        || List.of(repeat.split("[\\s=,:+]+")).contains(id);
  }

  private static Optional<String> text(Map<String, String> texts, String key) {
    return Optional.of(texts.getOrDefault(key, "").strip()).filter(text -> !text.isEmpty());
  }

  private static void put(Map<String, String> held, String name, double value) {
    held.put(name, Decimals.exactly(value));
  }

  /** The metal with the figures that are held of it, in the place of its own. */
  static Metal metal(Metal now, Map<String, String> texts) {
    return new Metal(
        now.id(),
        now.name(),
        now.alsoCalled(),
        now.family(),
        now.finenessPermille(),
        figure(now.densityGCm3(), texts, now.id() + DENSITY),
        now.meltC(),
        now.annealC(),
        now.glow(),
        now.quench(),
        figure(now.modulusGpa(), texts, now.id() + MODULUS),
        figure(now.yieldSoftMpa(), texts, now.id() + YIELD_SOFT),
        figure(now.yieldHardMpa(), texts, now.id() + YIELD_HARD),
        figure(now.tensileSoftMpa(), texts, now.id() + TENSILE_SOFT),
        figure(now.tensileHardMpa(), texts, now.id() + TENSILE_HARD),
        now.reductionShare(),
        now.warnings(),
        now.notPlanned());
  }

  static double solderGCm3(Metal metal, Reference reference, Map<String, String> texts) {
    return number(texts, metal.id() + SOLDER)
        .orElseGet(() -> SolderOfChain.densityGCm3(metal, reference));
  }

  static double claspMm(Clasp clasp, Map<String, String> texts) {
    return number(texts, clasp.id() + CLASP_LENGTH).orElse(clasp.insideLengthMm());
  }

  static double claspG(Clasp clasp, Map<String, String> texts) {
    return number(texts, clasp.id() + CLASP_MASS).orElse(clasp.massG());
  }

  static Optional<Woven> woven(Map<String, String> texts) {
    return Woven.read(texts.getOrDefault(LINK_ADDS, ""));
  }

  /** The pattern with the formers and the bends that are held of it. */
  static Pattern pattern(Pattern now, Map<String, String> texts) {
    Map<String, Double> formers = new LinkedHashMap<>();
    now.formersMm()
        .forEach(
            (name, mm) -> formers.put(name, number(texts, now.id() + FORMER + name).orElse(mm)));
    Map<String, Double> held = new LinkedHashMap<>();
    texts.keySet().stream()
        .filter(key -> key.startsWith(now.id() + FORMER))
        .forEach(
            key ->
                number(texts, key)
                    .ifPresent(mm -> held.put(key.substring((now.id() + FORMER).length()), mm)));
    String bends = texts.getOrDefault(now.id() + BENDS, "");
    return HeldBends.read(bends, now, held)
        .filter(kept -> !kept.equals(now))
        .orElseGet(() -> formers.equals(now.formersMm()) ? now : now.withFormers(formers));
  }

  private static PublishedFigure figure(
      PublishedFigure now, Map<String, String> texts, String name) {
    return number(texts, name)
        .filter(held -> held != now.value())
        .map(held -> new PublishedFigure(held, now.source()))
        .orElse(now);
  }

  /** A book may hold anything; what is no number counts as not held. */
  private static Optional<Double> number(Map<String, String> texts, String name) {
    return Decimals.read(texts.getOrDefault(name, ""))
        .filter(value -> Double.isFinite(value) && value > 0);
  }
}
