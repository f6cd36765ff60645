package linkwright.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.reference.Clasp;
import linkwright.reference.Family;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.PublishedFigure;
import linkwright.reference.Range;
import linkwright.reference.Solder;
import linkwright.reference.Tool;
import linkwright.reference.TradeTerm;
import linkwright.routine.Hazard;

/** Metals, solders, fineness rules, clasps and limits from their files; one list of each. */
final class ReferenceYaml {
  private static final PublishedFigure NO_FIGURE = new PublishedFigure(0, "");
  private static final Range NO_RANGE = new Range(0, 0, "");

  /** Grades of solder, the hottest first. */
  private static final List<String> GRADES = List.of("hard", "medium", "easy", "extra easy");

  private ReferenceYaml() {}

  /** Reads whichever of the lists a file holds. */
  static void read(YamlFields file, DataRead shelves) {
    for (YamlFields one : file.groups("metals", "a metal")) {
      metal(one).ifPresent(metal -> shelves.metals().put(metal.id(), metal, one, "metal"));
    }
    for (YamlFields one : file.groups("solders", "a solder")) {
      solder(one).ifPresent(solder -> shelves.solders().put(solder.id(), solder, one, "solder"));
    }
    for (YamlFields one : file.groups("fineness", "a fineness rule")) {
      rule(one)
          .ifPresent(
              rule ->
                  shelves
                      .finenessRules()
                      .put(rule.country() + ", " + rule.family().word(), rule, one, "country"));
    }
    for (YamlFields one : file.groups("clasps", "a clasp")) {
      clasp(one).ifPresent(clasp -> shelves.clasps().put(clasp.id(), clasp, one, "clasp"));
    }
    for (YamlFields one : file.groups("limits", "a limit")) {
      limit(one)
          .ifPresent(
              limit ->
                  shelves.limits().put(limit.id() + ", " + limit.where(), limit, one, "limit"));
    }
    for (YamlFields one : file.groups("glossary", "a word")) {
      term(one).ifPresent(term -> shelves.glossary().put(term.word(), term, one, "word"));
    }
    for (YamlFields one : file.groups("tools", "a tool")) {
      Tool tool =
          new Tool(
              one.text("tool"),
              one.texts("also-called"),
              one.list("for", Values.word(Hazard::of, Hazard.words())).stream()
                  .map(Hazard::word)
                  .toList());
      if (one.sound()) {
        shelves.tools().put(tool.name(), tool, one, "tool");
      }
    }
    file.sound();
  }

  private static Optional<TradeTerm> term(YamlFields from) {
    String word = from.text("word");
    String american = from.textOrEmpty("american");
    TradeTerm term =
        new TradeTerm(
            word, american.isEmpty() ? word : american, from.texts("seen-as"), from.text("says"));
    return from.sound() ? Optional.of(term) : Optional.empty();
  }

  private static Optional<Metal> metal(YamlFields from) {
    String id = from.value("metal", Values::id, "");
    String name = from.text("name");
    Family family = from.value("family", Family::read, Family.OTHER);
    Optional<Integer> fineness = from.optional("fineness-permille", Values::whole);
    fineness
        .filter(permille -> permille > 1000)
        .ifPresent(
            permille ->
                from.wrong(
                    "fineness-permille",
                    "A fineness of " + permille + " is more than all of it.",
                    "Parts in a thousand, at most 1000."));
    Metal metal =
        new Metal(
            id,
            name,
            from.texts("also-called"),
            family,
            fineness.map(OptionalInt::of).orElse(OptionalInt.empty()),
            figure(from, "density-g-cm3"),
            range(from, "melts-c"),
            range(from, "anneals-c"),
            from.text("glow"),
            from.text("quench"),
            figure(from, "modulus-gpa"),
            figure(from, "yield-soft-mpa"),
            figure(from, "yield-hard-mpa"),
            figure(from, "tensile-soft-mpa"),
            figure(from, "tensile-hard-mpa"),
            reduction(from),
            from.texts("warnings"),
            from.textOrEmpty("not-in-new-plans"));
    softBelowHard(from, "yield", metal.yieldSoftMpa(), metal.yieldHardMpa());
    softBelowHard(from, "tensile", metal.tensileSoftMpa(), metal.tensileHardMpa());
    return from.sound() ? Optional.of(metal) : Optional.empty();
  }

  private static void softBelowHard(
      YamlFields from, String what, PublishedFigure soft, PublishedFigure hard) {
    if (soft.value() > hard.value() && hard.value() > 0) {
      from.wrong(
          what + "-soft-mpa",
          "\"" + what + "-soft-mpa\" is above \"" + what + "-hard-mpa\".",
          "Drawn wire is the stronger: look whether the two are the wrong way round.");
    }
  }

  /** A figure is always positive; {@code {is: 10.36, source: "…"}}. */
  private static PublishedFigure figure(YamlFields from, String key) {
    from.require(key, "Write " + key + ": {is: …, source: \"…\"}.");
    return from.group(key, "a figure")
        .flatMap(
            group -> {
              double value = group.value("is", Values::aboveNothing, 0.0);
              String source = group.text("source");
              return group.sound()
                  ? Optional.of(new PublishedFigure(value, source))
                  : Optional.empty();
            })
        .orElse(NO_FIGURE);
  }

  private static PublishedFigure reduction(YamlFields from) {
    String key = "reduction-between-anneals";
    from.require(key, "Write " + key + ": {is: 50 %, source: \"…\"}.");
    return from.group(key, "a figure")
        .flatMap(
            group -> {
              Share share = group.value("is", Share::read, new Share(0));
              String source = group.text("source");
              return group.sound()
                  ? Optional.of(new PublishedFigure(share.value(), source))
                  : Optional.empty();
            })
        .orElse(NO_FIGURE);
  }

  private static Range range(YamlFields from, String key) {
    from.require(key, "Write " + key + ": {from: …, to: …, source: \"…\"}.");
    return from.group(key, "a range")
        .flatMap(
            group -> {
              double low = group.value("from", Values::number, 0.0);
              double high = group.value("to", Values::number, 0.0);
              String source = group.text("source");
              if (low > high && group.sound()) {
                group.wrong(
                    "from",
                    "The range of \"" + key + "\" begins above its end.",
                    "The lower figure under from, the higher under to.");
              }
              return group.sound() ? Optional.of(new Range(low, high, source)) : Optional.empty();
            })
        .orElse(NO_RANGE);
  }

  private static Optional<Solder> solder(YamlFields from) {
    String id = from.value("solder", Values::id, "");
    String name = from.text("name");
    double solidusC = from.value("solidus-c", Values::number, 0.0);
    double liquidusC = from.value("liquidus-c", Values::number, 0.0);
    if (solidusC > liquidusC && from.has("liquidus-c")) {
      from.wrong(
          "solidus-c",
          "The solder begins to melt (solidus-c) above where it flows (liquidus-c).",
          "The lower figure under solidus-c.");
    }
    Family family = from.value("family", Family::read, Family.OTHER);
    int order = from.value("flow-order", Values::whole, 1);
    double density = from.value("density-g-cm3", Values::aboveNothing, 1.0);
    var alsoCalled = from.texts("also-called");
    String grade = from.textOrEmpty("grade");
    if (!grade.isEmpty() && !GRADES.contains(grade)) {
      from.wrong(
          "grade",
          "The grade \"" + grade + "\" is not one of ours.",
          "Write " + String.join(", ", GRADES) + ".");
    }
    String alloy = from.textOrEmpty("alloy");
    Optional<Integer> fine = from.optional("fineness-permille", Values::whole);
    String note = from.textOrEmpty("note");
    String source = from.text("source");
    return from.sound()
        ? Optional.of(
            new Solder(
                id,
                name,
                alsoCalled,
                family,
                solidusC,
                liquidusC,
                order,
                density,
                grade,
                alloy,
                fine.map(OptionalInt::of).orElse(OptionalInt.empty()),
                note,
                source))
        : Optional.empty();
  }

  private static Optional<FinenessRule> rule(YamlFields from) {
    FinenessRule rule =
        new FinenessRule(
            from.text("country"),
            from.value("family", Family::read, Family.OTHER),
            from.list("finenesses", Values::whole),
            from.optional("exempt-below-g", Values::notNegative),
            from.optional("of-contained", Values::flag).orElse(false),
            from.optional("any-fineness", Values::flag).orElse(false),
            solderAtLeast(from),
            from.value("compulsory", Values::flag, false),
            from.text("date"),
            from.text("source"),
            from.textOrEmpty("note"));
    return from.sound() ? Optional.of(rule) : Optional.empty();
  }

  /** {@code 650}, or by what is marked: {@code {585: 585, 916: 750}}. */
  private static Map<Integer, Integer> solderAtLeast(YamlFields from) {
    if (from.isScalar("solder-at-least")) {
      return from.optional("solder-at-least", Values::whole)
          .map(least -> Map.of(0, least))
          .orElse(Map.of());
    }
    Map<Integer, Integer> byMark = new LinkedHashMap<>();
    from.group("solder-at-least", "the solder's fineness")
        .ifPresent(
            group -> {
              for (String marked : group.names()) {
                Optional<Integer> least = group.optional(marked, Values::whole);
                Read<Integer> fineness = Values.whole(marked);
                fineness.problem().ifPresent(wrong -> group.wrong(marked, wrong, "585: 585"));
                least.ifPresent(l -> fineness.found().ifPresent(f -> byMark.put(f, l)));
              }
              group.sound();
            });
    return byMark;
  }

  private static Optional<Clasp> clasp(YamlFields from) {
    Clasp clasp =
        new Clasp(
            from.value("clasp", Values::id, ""),
            from.text("name"),
            from.value("inside-length-mm", Values::notNegative, 0.0),
            from.value("mass-g", Values::notNegative, 0.0),
            from.value("spring-inside", Values::flag, true),
            from.text("source"));
    return from.sound() ? Optional.of(clasp) : Optional.empty();
  }

  private static Optional<Limit> limit(YamlFields from) {
    Limit limit =
        new Limit(
            from.value("limit", Values::id, ""),
            from.text("where"),
            from.text("says"),
            from.text("date"),
            from.text("source"));
    return from.sound() ? Optional.of(limit) : Optional.empty();
  }
}
