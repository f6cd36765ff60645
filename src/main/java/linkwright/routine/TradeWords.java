package linkwright.routine;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which side of the Atlantic the trade words come from; texts are written with British ones. */
public enum TradeWords {
  /** Joint, pallion, trace, belcher, bolt ring, former, lemel, ct, hallmark: as written. */
  BRITISH {
    @Override
    public String show(String british) {
      return british;
    }
  },
  /** Seam, chip, cable, rolo, spring ring, mandrel, filings, k, quality mark. */
  AMERICAN {
    @Override
    public String show(String british) {
      Matcher words = WORDS.matcher(british);
      return words.replaceAll(found -> Matcher.quoteReplacement(american(found.group())));
    }
  };

  /** British word → American word; only words that mean one thing at the bench may stand here. */
  private static final Map<String, String> PAIRS = pairs();

  private static final Pattern WORDS =
      Pattern.compile(
          PAIRS.keySet().stream()
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "“[^”]*”|\\b(", ")\\b")),
          Pattern.CASE_INSENSITIVE);

  /**
   * A text with British trade words in the words of this choice. Whole words only, one or many of
   * them, small or with a capital; what stands in quotation marks, as typed words do, stays.
   */
  public abstract String show(String british);

  private static String american(String british) {
    if (british.startsWith("“")) {
      return british;
    }
    String word = PAIRS.get(british.toLowerCase(Locale.ROOT));
    return Character.isUpperCase(british.charAt(0))
        ? word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1)
        : word;
  }

  private static Map<String, String> pairs() {
    Map<String, String> pairs = new LinkedHashMap<>();
    many(pairs, "joint", "seam");
    many(pairs, "pallion", "chip");
    many(pairs, "trace", "cable");
    many(pairs, "belcher", "rolo");
    many(pairs, "bolt ring", "spring ring");
    many(pairs, "trigger clasp", "lobster clasp");
    many(pairs, "former", "mandrel");
    many(pairs, "hallmark", "quality mark");
    many(pairs, "colour", "color");
    many(pairs, "jeweller", "jeweler");
    many(pairs, "mould", "mold");
    many(pairs, "vice", "vise");
    many(pairs, "fibre", "fiber");
    many(pairs, "vapour", "vapor");
    many(pairs, "centre", "center");
    many(pairs, "neighbour", "neighbor");
    many(pairs, "millimetre", "millimeter");
    pairs.put("burnt", "burned");
    pairs.put("towards", "toward");
    pairs.put("ovalled", "ovaled");
    pairs.put("ovalling", "ovaling");
    pairs.put("practise", "practice");
    pairs.put("practised", "practiced");
    pairs.put("harmonised", "harmonized");
    pairs.put("bevelled", "beveled");
    pairs.put("labelling", "labeling");
    pairs.put("centred", "centered");
    pairs.put("colouring", "coloring");
    pairs.put("sulphur", "sulfur");
    pairs.put("sulphide", "sulfide");
    pairs.put("trousers", "pants");
    pairs.put("jewellery", "jewelry");
    pairs.put("labelled", "labeled");
    pairs.put("oxidises", "oxidizes");
    pairs.put("oxidising", "oxidizing");
    pairs.put("cling film", "plastic wrap");
    pairs.put("lemel", "filings");
    pairs.put("ct", "k");
    pairs.put("carat", "karat");
    pairs.put("grey", "gray");
    pairs.put("smoulder", "smolder");
    pairs.put("smoulders", "smolders");
    pairs.put("smouldering", "smoldering");
    pairs.put("residual-current switch", "ground-fault interrupter");
    pairs.put("council", "city");
    pairs.put("petrol", "gasoline");
    pairs.put("carriage", "shipping");
    pairs.put("metre", "meter");
    pairs.put("litre", "liter");
    pairs.put("neutralise", "neutralize");
    pairs.put("methylated spirit", "denatured alcohol");
    pairs.put("spirit", "alcohol");
    return pairs;
  }

  private static void many(Map<String, String> pairs, String british, String american) {
    pairs.put(british, american);
    pairs.put(british + "s", american + "s");
  }
}
