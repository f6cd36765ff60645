package linkwright.link;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Matcher;
import linkwright.quantity.Count;
import linkwright.quantity.Read;

/**
 * What comes again along a chain whose elements hook into each other: "3 round + 1 long".
 *
 * @param parts in their order along the chain, at least one
 */
public record Repeat(List<RepeatPart> parts) {
  private static final java.util.regex.Pattern PART =
      java.util.regex.Pattern.compile("(\\d{1,4})\\s+([\\p{L}][\\p{L}\\d -]*)");
  private static final double MOST = 1e6;

  /** A length is typed, and told, rounded: shorter by no more than that is as long. */
  static final double AS_WRITTEN_MM = 0.01;

  public Repeat {
    parts = List.copyOf(parts);
  }

  /**
   * So many of one kind in a row.
   *
   * @param count how many, at least 1
   * @param kind the kind's name, such as a pattern's id
   */
  public record RepeatPart(int count, String kind) {}

  /**
   * A chain of whole repeats.
   *
   * @param repeats how many, at least 1
   * @param pieces how many of each kind, in the order in which they come
   * @param lengthMm the finished length, in millimetres
   * @param oneFewerMm with one repeat fewer; empty where that leaves none
   * @param oneMoreMm with one repeat more
   */
  public record CountedRepeats(
      long repeats,
      Map<String, Long> pieces,
      double lengthMm,
      OptionalDouble oneFewerMm,
      double oneMoreMm) {
    public CountedRepeats {
      pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    }

    /** How many pieces in all. */
    public long total() {
      return pieces.values().stream().mapToLong(Long::longValue).sum();
    }
  }

  /** Reads "3 round + 1 long": counts and kinds with a plus between. */
  public static Read<Repeat> read(String written) {
    List<RepeatPart> parts = new ArrayList<>();
    for (String part : written.split("\\+", -1)) {
      Matcher matcher = PART.matcher(part.strip());
      int many = matcher.matches() ? Count.inDigits(matcher.group(1), 4).orElse(0) : 0;
      if (many == 0) {
        return Read.bad(
            "\""
                + part.strip()
                + "\" in the repeat \""
                + written.strip()
                + "\" is not a number of a kind: write it like 3 round + 1 long.");
      }
      parts.add(new RepeatPart(many, matcher.group(2).strip()));
    }
    return Read.good(new Repeat(parts));
  }

  /** The kinds, each once, in the order in which they come. */
  public List<String> kinds() {
    return parts.stream().map(RepeatPart::kind).distinct().toList();
  }

  /**
   * What one repeat adds to the chain, in millimetres, or a sentence where a kind has no length.
   *
   * @param insideMm each kind's inside length, in millimetres
   */
  public Read<Double> lengthMm(Map<String, Double> insideMm) {
    double sum = 0;
    for (RepeatPart part : parts) {
      Double each = insideMm.get(part.kind());
      if (each == null) {
        return Read.bad(
            "The repeat has \""
                + part.kind()
                + "\", whose inside length is not known: "
                + (insideMm.isEmpty()
                    ? "give it."
                    : "give it, or use "
                        + String.join(", ", new TreeSet<>(insideMm.keySet()))
                        + "."));
      }
      Optional<String> fault =
          SizeFault.faultUnlessPositive("The inside length of \"" + part.kind() + "\"", each);
      if (fault.isPresent()) {
        return Read.bad(fault.get());
      }
      sum += part.count() * each;
    }
    return Read.good(sum);
  }

  /**
   * The whole repeats whose length with the clasp is nearest a wish (of two as near, the longer),
   * or a sentence: a length that can't be, or a wish shorter than one repeat.
   *
   * @param insideMm each kind's inside length, in millimetres
   * @param wishedMm the finished length wished for, clasp and all, in millimetres
   * @param claspMm the clasp's length, inside end to inside end, in millimetres; 0 for none
   */
  public Read<CountedRepeats> counted(
      Map<String, Double> insideMm, double wishedMm, double claspMm) {
    return lengthMm(insideMm).flatMap(unitMm -> counted(unitMm, wishedMm, claspMm));
  }

  private Read<CountedRepeats> counted(double unitMm, double wishedMm, double claspMm) {
    Optional<String> fault =
        SizeFault.first(
            SizeFault.faultIfNegative("The clasp's length", claspMm),
            SizeFault.faultUnlessPositive("The finished length", wishedMm));
    if (fault.isPresent()) {
      return Read.bad(fault.get());
    }
    if (wishedMm < unitMm + claspMm - AS_WRITTEN_MM) {
      return Read.bad(
          "A finished length of "
              + Sizes.mm(wishedMm)
              + " is shorter than one repeat"
              + (claspMm > 0 ? " and the clasp" : "")
              + ": the shortest chain is "
              + Sizes.mm(unitMm + claspMm)
              + ".");
    }
    double real = (wishedMm - claspMm) / unitMm;
    if (real > MOST) {
      return Read.bad(
          "A finished length of "
              + Sizes.mm(wishedMm)
              + " takes more than a million repeats of "
              + Sizes.mm(unitMm)
              + ": look at the units.");
    }
    long repeats = (long) Math.floor(real + 0.5 + 1e-9);
    Map<String, Long> pieces = new LinkedHashMap<>();
    for (RepeatPart part : parts) {
      pieces.merge(part.kind(), part.count() * repeats, Long::sum);
    }
    return Read.good(
        new CountedRepeats(
            repeats,
            pieces,
            repeats * unitMm + claspMm,
            repeats == 1
                ? OptionalDouble.empty()
                : OptionalDouble.of((repeats - 1) * unitMm + claspMm),
            (repeats + 1) * unitMm + claspMm));
  }
}
