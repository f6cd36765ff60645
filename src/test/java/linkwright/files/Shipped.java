package linkwright.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.quantity.Share;
import linkwright.reference.Clasp;
import linkwright.reference.Family;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Range;
import linkwright.reference.Reference;
import linkwright.reference.Solder;
import linkwright.reference.Tool;
import linkwright.reference.TradeTerm;
import linkwright.routine.Caution;
import linkwright.routine.Gear;
import linkwright.routine.Hazard;
import linkwright.routine.StudyQuestion;
import linkwright.routine.When;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The shipped files, read for tests. */
@SuppressWarnings("unchecked")
final class Shipped {
  private Shipped() {}

  static Reference reference() {
    return new Reference(
        list("shared/metals.yaml", "metals").stream().map(Shipped::metal).toList(),
        list("shared/solders.yaml", "solders").stream().map(Shipped::solder).toList(),
        list("shared/fineness.yaml", "fineness").stream().map(Shipped::rule).toList(),
        list("shared/clasps.yaml", "clasps").stream().map(Shipped::clasp).toList(),
        list("shared/fineness.yaml", "limits").stream().map(Shipped::limit).toList(),
        list("shared/glossary.yaml", "glossary").stream().map(Shipped::term).toList(),
        List.of(),
        list("shared/tools.yaml", "tools").stream().map(Shipped::tool).toList());
  }

  private static Tool tool(Map<String, Object> from) {
    return new Tool(
        (String) from.get("tool"),
        (List<String>) from.getOrDefault("also-called", List.of()),
        (List<String>) from.getOrDefault("for", List.of()));
  }

  private static TradeTerm term(Map<String, Object> from) {
    String word = (String) from.get("word");
    return new TradeTerm(
        word,
        (String) from.getOrDefault("american", word),
        (List<String>) from.getOrDefault("seen-as", List.of()),
        (String) from.get("says"));
  }

  private static Limit limit(Map<String, Object> from) {
    return new Limit(
        (String) from.get("limit"),
        (String) from.get("where"),
        (String) from.get("says"),
        (String) from.get("date"),
        (String) from.get("source"));
  }

  static List<Caution> cautions() {
    try (Stream<Path> files = Files.list(Path.of("safety"))) {
      return files.sorted().map(file -> caution(map(file.toString()))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, Object> map(String file) {
    try {
      return new Yaml(new SafeConstructor(new LoaderOptions()))
          .load(Files.readString(Path.of(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, Object>> list(String file, String key) {
    return (List<Map<String, Object>>) map(file).get(key);
  }

  private static double number(Object o) {
    return ((Number) o).doubleValue();
  }

  private static PublishedFigure figure(Map<String, Object> m, String key) {
    Map<String, Object> f = (Map<String, Object>) m.get(key);
    Object is = f.get("is");
    double value =
        is instanceof Number n ? n.doubleValue() : Share.read((String) is).orThrow().value();
    return new PublishedFigure(value, (String) f.get("source"));
  }

  private static Range range(Map<String, Object> m, String key) {
    Map<String, Object> r = (Map<String, Object>) m.get(key);
    return new Range(number(r.get("from")), number(r.get("to")), (String) r.get("source"));
  }

  private static Metal metal(Map<String, Object> m) {
    Object fine = m.get("fineness-permille");
    return new Metal(
        (String) m.get("metal"),
        (String) m.get("name"),
        (List<String>) m.get("also-called"),
        Family.read((String) m.get("family")).orThrow(),
        fine == null ? OptionalInt.empty() : OptionalInt.of((Integer) fine),
        figure(m, "density-g-cm3"),
        range(m, "melts-c"),
        range(m, "anneals-c"),
        (String) m.get("glow"),
        (String) m.get("quench"),
        figure(m, "modulus-gpa"),
        figure(m, "yield-soft-mpa"),
        figure(m, "yield-hard-mpa"),
        figure(m, "tensile-soft-mpa"),
        figure(m, "tensile-hard-mpa"),
        figure(m, "reduction-between-anneals"),
        (List<String>) m.get("warnings"),
        (String) m.getOrDefault("not-in-new-plans", ""));
  }

  private static Solder solder(Map<String, Object> m) {
    return new Solder(
        (String) m.get("solder"),
        (String) m.get("name"),
        (List<String>) m.get("also-called"),
        Family.read((String) m.get("family")).orThrow(),
        number(m.get("solidus-c")),
        number(m.get("liquidus-c")),
        (Integer) m.get("flow-order"),
        number(m.get("density-g-cm3")),
        (String) m.get("grade"),
        (String) m.get("alloy"),
        OptionalInt.of((Integer) m.get("fineness-permille")),
        (String) m.get("note"),
        (String) m.get("source"));
  }

  private static FinenessRule rule(Map<String, Object> m) {
    return new FinenessRule(
        (String) m.get("country"),
        Family.read((String) m.get("family")).orThrow(),
        (List<Integer>) m.get("finenesses"),
        Optional.ofNullable(m.get("exempt-below-g")).map(Shipped::number),
        m.get("of-contained") != null,
        m.get("any-fineness") != null,
        solderAtLeast(m.get("solder-at-least")),
        (Boolean) m.get("compulsory"),
        (String) m.get("date"),
        (String) m.get("source"),
        (String) m.get("note"));
  }

  private static Map<Integer, Integer> solderAtLeast(Object given) {
    return given == null
        ? Map.of()
        : given instanceof Integer one ? Map.of(0, one) : (Map<Integer, Integer>) given;
  }

  private static Clasp clasp(Map<String, Object> m) {
    return new Clasp(
        (String) m.get("clasp"),
        (String) m.get("name"),
        number(m.get("inside-length-mm")),
        number(m.get("mass-g")),
        (Boolean) m.get("spring-inside"),
        (String) m.get("source"));
  }

  private static When when(Map<String, List<String>> words) {
    return words == null
        ? When.ALWAYS
        : new When(words, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Caution caution(Map<String, Object> m) {
    Set<Hazard> covers =
        ((List<String>) m.get("covers"))
            .stream().map(word -> Hazard.of(word).orElseThrow()).collect(Collectors.toSet());
    List<Gear> wear =
        ((List<Map<String, String>>) m.get("wear"))
            .stream().map(w -> new Gear(w.get("sign"), w.get("says"))).toList();
    return new Caution(
        (String) m.get("caution"),
        (String) m.get("title"),
        covers,
        (String) m.get("short"),
        (String) m.get("can-happen"),
        (List<String>) m.get("do"),
        (List<String>) m.get("do-not"),
        (List<String>) m.get("if-it-goes-wrong"),
        wear,
        (String) m.get("source"),
        (String) m.get("defers"),
        when((Map<String, List<String>>) m.get("when")),
        questions((List<Map<String, Object>>) m.getOrDefault("questions", List.of())),
        (boolean) m.getOrDefault("only-at-its-steps", false));
  }

  @SuppressWarnings("unchecked")
  private static List<StudyQuestion> questions(List<Map<String, Object>> all) {
    return all.stream()
        .map(
            each ->
                new StudyQuestion(
                    (String) each.get("asks"),
                    (List<String>) each.get("answers"),
                    (String) each.getOrDefault("why", "")))
        .toList();
  }
}
