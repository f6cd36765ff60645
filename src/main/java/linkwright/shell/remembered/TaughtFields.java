package linkwright.shell.remembered;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.books.BookLine;
import linkwright.books.EntryLines;
import linkwright.drawer.JobMetal;
import linkwright.drawer.Taking;
import linkwright.fit.EarlierJob;
import linkwright.fit.LinkSize;
import linkwright.fit.Tried;
import linkwright.hands.Pace;
import linkwright.hands.StageResult;
import linkwright.hands.TaughtJob;
import linkwright.hands.Verdicts;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.link.Pattern;
import linkwright.standing.Handbook;

/**
 * What one book taught and took, as fields of a line and back. The job's name, which may be a
 * customer's, is not among them.
 */
public final class TaughtFields {
  private static final String KIND = "taught";

  /**
   * What a book came to.
   *
   * @param taught what it taught
   * @param takings what it took out of lots and gave back
   * @param metal what the scale said of its metal; empty without one
   */
  public record Came(TaughtJob taught, List<Taking> takings, Optional<JobMetal> metal) {
    public Came {
      takings = List.copyOf(takings);
    }
  }

  private TaughtFields() {}

  /** The line for it; empty where reading it again would not give the very same. */
  static Optional<BookLine> line(
      int number, Came came, Map<String, Object> book, Handbook handbook) {
    try {
      Map<String, Object> fields = new LinkedHashMap<>(book);
      fields.putAll(fields(came));
      TaughtJob taught = came.taught();
      BookLine line = new BookLine(number, taught.last(), "hands", taught.person(), KIND, fields);
      return came(line, taught.slug(), taught.name(), handbook).filter(came::equals).map(x -> line);
    } catch (IllegalArgumentException unusual) {
      return Optional.empty();
    }
  }

  private static Map<String, Object> fields(Came came) {
    TaughtJob taught = came.taught();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("metal", taught.metal());
    fields.put("batch", taught.batch());
    taught.pieces().ifPresent(pieces -> fields.put("pieces", pieces(pieces)));
    Map<String, Object> stages = new LinkedHashMap<>();
    taught
        .stages()
        .forEach(
            (stage, each) ->
                stages.put(
                    stage, List.of(each.through(), each.returned(), each.again(), each.lost())));
    fields.put("stages", stages);
    Map<String, Object> paces = new LinkedHashMap<>();
    taught
        .paces()
        .forEach(
            (what, pace) ->
                paces.put(what, List.of(pace.seconds(), pace.times(), pace.ordinarySeconds())));
    fields.put("paces", paces);
    fields.put("typed", taught.typed());
    fields.put("pickle", taught.pickleSeconds());
    fields.put("takings", came.takings().stream().map(TaughtFields::taking).toList());
    came.metal().ifPresent(metal -> fields.put("account", account(metal)));
    return fields;
  }

  private static Map<String, Object> pieces(EarlierJob job) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("pattern", job.pattern().id());
    fields.put("formers", job.pattern().formersMm());
    fields.put("wire", job.wireMm());
    fields.put("stress", job.stressShare());
    fields.put("wish", List.of(job.wish().lengthMm(), job.wish().widthMm()));
    List<Object> all = new ArrayList<>();
    for (Tried tried : job.pieces()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("blank", tried.blankMm());
      one.put("formers", tried.formersMm());
      some(one, "length", tried.lengthMm());
      some(one, "width", tried.widthMm());
      one.put("says", tried.verdicts().stream().map(Verdicts::word).toList());
      all.add(one);
    }
    fields.put("tried", all);
    return fields;
  }

  private static Map<String, Object> taking(Taking taking) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("when", taking.at().toString());
    one.put("lot", taking.lot());
    some(one, "length", taking.lengthMm());
    some(one, "mass", taking.massG());
    one.put("back", taking.back());
    return one;
  }

  private static Map<String, Object> account(JobMetal metal) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("metal", metal.metal());
    fields.put("out", metal.outG());
    fields.put("bought", metal.boughtMm3());
    fields.put("in", EntryLines.line(new Entry(1, Instant.EPOCH, "hands", metal.in())).fields());
    metal.figures().ifPresent(figures -> fields.put("figures", figures));
    return fields;
  }

  private static void some(Map<String, Object> into, String key, OptionalDouble value) {
    value.ifPresent(number -> into.put(key, number));
  }

  // And back.

  /** What a line says of the book of that name; empty where it cannot be read. */
  static Optional<Came> came(BookLine line, String slug, String name, Handbook handbook) {
    try {
      Given from = new Given(line.fields());
      Optional<EarlierJob> pieces =
          line.fields().containsKey("pieces")
              ? Optional.of(pieces(from.group("pieces"), handbook))
              : Optional.empty();
      Map<String, StageResult> stages = new LinkedHashMap<>();
      from.group("stages").fields().forEach((stage, each) -> stages.put(stage, stage(each)));
      Map<String, Pace> paces = new LinkedHashMap<>();
      from.group("paces").fields().forEach((what, each) -> paces.put(what, pace(each)));
      TaughtJob taught =
          new TaughtJob(
              slug,
              name,
              line.at(),
              line.person(),
              from.text("metal"),
              from.text("batch"),
              pieces,
              stages,
              paces,
              from.texts("typed"),
              from.numbers("pickle"));
      List<Taking> takings =
          from.groups("takings").stream().map(each -> taking(each, slug)).toList();
      Optional<JobMetal> metal =
          line.fields().containsKey("account")
              ? Optional.of(account(from.group("account"), slug))
              : Optional.empty();
      return Optional.of(new Came(taught, takings, metal));
    } catch (IllegalArgumentException | DateTimeException wrong) {
      return Optional.empty();
    }
  }

  private static EarlierJob pieces(Given from, Handbook handbook) {
    Pattern pattern =
        handbook
            .pattern(from.text("pattern"))
            .orElseThrow(() -> new IllegalArgumentException("no such pattern"))
            .withFormers(from.measures("formers"));
    List<Tried> tried =
        from.groups("tried").stream()
            .map(
                one ->
                    new Tried(
                        one.number("blank"),
                        one.measures("formers"),
                        one.some("length"),
                        one.some("width"),
                        Verdicts.of(one.list("says").stream().map(Given::text).toList())))
            .toList();
    List<Double> wish = from.numbers("wish");
    return new EarlierJob(
        pattern,
        from.number("wire"),
        from.number("stress"),
        true,
        false,
        tried,
        new LinkSize(wish.get(0), wish.get(1)));
  }

  private static StageResult stage(Object value) {
    List<Object> four = Given.list(value, 4);
    return new StageResult(
        Given.count(four.get(0)),
        Given.count(four.get(1)),
        Given.counts(four.get(2)),
        Given.counts(four.get(3)));
  }

  private static Pace pace(Object value) {
    List<Object> three = Given.list(value, 3);
    return new Pace(
        Given.number(three.get(0)), Given.count(three.get(1)), Given.number(three.get(2)));
  }

  private static Taking taking(Given one, String slug) {
    return new Taking(
        slug,
        Instant.parse(one.text("when")),
        one.text("lot"),
        one.some("length"),
        one.some("mass"),
        Boolean.TRUE.equals(one.fields().get("back")));
  }

  private static JobMetal account(Given from, String slug) {
    Fact in =
        EntryLines.entry(
                new BookLine(1, Instant.EPOCH, "hands", "weighed-in", from.group("in").fields()))
            .fact();
    if (!(in instanceof Fact.WeighedIn weighed)) {
      throw new IllegalArgumentException("nothing that was weighed in");
    }
    return new JobMetal(
        slug,
        from.text("metal"),
        from.number("out"),
        from.number("bought"),
        weighed,
        from.fields().containsKey("figures")
            ? Optional.of(from.measures("figures"))
            : Optional.empty());
  }
}
