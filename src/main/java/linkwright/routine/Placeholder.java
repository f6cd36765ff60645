package linkwright.routine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import linkwright.quantity.Decimals;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;

/** What may stand in braces in a text. */
final class Placeholder {
  /** Finds a placeholder; group 1 is what stands in the braces. */
  static final Pattern IN_TEXT = Pattern.compile("\\{([^{}]*)\\}");

  /** The one placeholder that stands as a sentence of its own. */
  static final String SENTENCE = "quench";

  /** A former of the pattern, by its name there: {@code {former body}}. */
  private static final String FORMER = "former ";

  /** A wire's thickness, to be shown with its gauge number: <code>{wire 0.9 mm}</code>. */
  private static final String WIRE = "wire ";

  private static final double MM_PER_INCH = 25.4;

  /** Below a thousandth of an inch a length would be shown as none. */
  private static final double THOUSANDTH_MM = 0.025;

  /** A fraction this near a text's length says the same at the bench. */
  private static final double NEAR = 0.08;

  private static final Map<String, String> PLAIN_WORDS = plainWords();

  private Placeholder() {}

  /** The names that stand for something of the job, in the order of the format's description. */
  static List<String> names() {
    return List.copyOf(PLAIN_WORDS.keySet());
  }

  /** Whether it is a name, a former, or a fixed length. */
  static boolean isKnown(String name) {
    return PLAIN_WORDS.containsKey(name)
        || (name.startsWith(FORMER) && name.length() > FORMER.length())
        || fixed(name, UnitStyle.METRIC).isPresent();
  }

  /** The former that a name asks for; empty if it asks for none. */
  static Optional<String> former(String name) {
    return name.startsWith(FORMER)
        ? Optional.of(name.substring(FORMER.length()).strip())
        : Optional.empty();
  }

  /** A fixed length in the user's units; empty if the name is not one. */
  static Optional<String> fixed(String name, UnitStyle units) {
    if (name.startsWith(WIRE)) {
      return mm(name.substring(WIRE.length())).map(units::wire);
    }
    return mm(name).map(mm -> units == UnitStyle.INCH ? inches(mm) : units.length(mm));
  }

  /**
   * A length of a text as a workbench rule shows it, the nearest sixteenth of an inch, as long as
   * that is near enough; small ones, which are tolerances, in decimals.
   */
  private static String inches(double mm) {
    if (mm < THOUSANDTH_MM) {
      return Decimals.fixed(mm / MM_PER_INCH, 4) + " in";
    }
    long sixteenths = Math.round(mm / MM_PER_INCH * 16);
    double off = Math.abs(sixteenths * MM_PER_INCH / 16 - mm);
    if (sixteenths == 0 || off > NEAR * mm) {
      return UnitStyle.INCH.length(mm);
    }
    long whole = sixteenths / 16;
    long over = sixteenths % 16;
    long common = over == 0 ? 1 : Long.lowestOneBit(over);
    String fraction = over == 0 ? "" : over / common + "/" + 16 / common;
    return (whole == 0 ? fraction : over == 0 ? "" + whole : whole + " " + fraction) + " in";
  }

  /** What is read when the job has no value for the name. */
  static String plainWords(String name) {
    if (name.startsWith(FORMER)) {
      return "the planned size";
    }
    return PLAIN_WORDS.getOrDefault(name, "the planned " + name);
  }

  private static Optional<Double> mm(String typed) {
    Read<Length> read = Length.read(typed);
    return read.found().map(Length::mm);
  }

  private static Map<String, String> plainWords() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("wire", "the planned thickness");
    words.put("blank", "the planned length");
    words.put("former", "the planned size");
    words.put("ring inside", "the planned size");
    words.put("ring wire", "the planned thickness");
    words.put("ring blank", "the planned length");
    words.put("rings to cut", "as many as are asked for");
    words.put("oval inside", "the planned width");
    words.put("solder piece", "the wire is thick");
    words.put("anneals", "see the supplier's sheet");
    words.put("glow", "flux clear as glass, or a temperature paint that melts");
    words.put(SENTENCE, "Let the red fade, then quench, unless the metal's sheet says otherwise.");
    words.put("links", "the planned number of");
    words.put("rings", "the planned number of");
    words.put("blanks", "as many as are asked for");
    words.put("link length", "the planned length");
    words.put("link width", "the planned width");
    return words;
  }
}
