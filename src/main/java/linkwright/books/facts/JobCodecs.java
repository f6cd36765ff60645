package linkwright.books.facts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.Sourced;

/**
 * The job as a whole: its opening, plan, card, prices, weighing and closing; and the book's own.
 */
final class JobCodecs {
  private static final Words<Sourced.Source> SOURCES =
      Words.of(Sourced.Source.TYPED, "typed", Sourced.Source.BENCH, "bench")
          .and(Sourced.Source.HANDS, "hands")
          .and(Sourced.Source.BENCH_AND_HANDS, "bench-and-hands")
          .and(Sourced.Source.USUAL, "usual");

  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "job-opened",
              Fact.JobOpened.class,
              (fact, out) ->
                  out.text("name", fact.name())
                      .text("routine", fact.routine())
                      .some("again", fact.again()),
              in -> new Fact.JobOpened(in.text("name"), in.text("routine"), in.some("again"))),
          new FactCodec<>(
              "plan-set",
              Fact.PlanSet.class,
              (fact, out) ->
                  out.map("wish", fact.wish()).someOf("used", written(fact.reckonedWith())),
              in -> new Fact.PlanSet(in.texts("wish"), sourced(in))),
          new FactCodec<>(
              "card-set",
              BenchFact.CardSet.class,
              (fact, out) -> out.map("card", fact.card()),
              in -> new BenchFact.CardSet(in.texts("card"))),
          new FactCodec<>(
              "prices-set",
              Fact.PricesSet.class,
              (fact, out) -> out.map("prices", fact.prices()).text("currency", fact.currency()),
              in -> new Fact.PricesSet(in.decimals("prices"), in.text("currency"))),
          new FactCodec<>(
              "metal-weighed-out",
              Fact.MetalWeighedOut.class,
              (fact, out) -> out.decimal("mass-g", fact.massG()).text("what", fact.what()),
              in -> new Fact.MetalWeighedOut(in.decimal("mass-g"), in.text("what"))),
          new FactCodec<>(
              "weighed-in",
              Fact.WeighedIn.class,
              (fact, out) ->
                  out.measured("chain-g", fact.chainG())
                      .measured("length-mm", fact.lengthMm())
                      .measured("wire-returned-g", fact.wireReturnedG())
                      .measured("clean-scrap-g", fact.cleanScrapG())
                      .measured("soldered-scrap-g", fact.solderedScrapG())
                      .measured("filings-g", fact.filingsG())
                      .measured("sweeps-g", fact.sweepsG()),
              in ->
                  new Fact.WeighedIn(
                      in.measured("chain-g"),
                      in.measured("length-mm"),
                      in.measured("wire-returned-g"),
                      in.measured("clean-scrap-g"),
                      in.measured("soldered-scrap-g"),
                      in.measured("filings-g"),
                      in.measured("sweeps-g"))),
          new FactCodec<>(
              "noted",
              Fact.Noted.class,
              (fact, out) -> out.text("text", fact.text()),
              in -> new Fact.Noted(in.text("text"))),
          new FactCodec<>(
              "struck",
              Fact.Struck.class,
              (fact, out) -> out.entry("entry", fact.entry()).text("why", fact.why()),
              in -> new Fact.Struck(in.entry("entry"), in.text("why"))),
          new FactCodec<>(
              "line-accepted",
              Fact.LineAccepted.class,
              (fact, out) -> out.text("line-crc", fact.lineCrc()),
              in -> new Fact.LineAccepted(in.text("line-crc"))),
          new FactCodec<>(
              "job-closed",
              Fact.JobClosed.class,
              (fact, out) ->
                  out.text("next-time", fact.nextTime()).someOf("figures", fact.figures()),
              in -> new Fact.JobClosed(in.text("next-time"), in.someNumbers("figures"))),
          new FactCodec<>(
              "job-reopened",
              Fact.JobReopened.class,
              (fact, out) -> out.text("why", fact.why()),
              in -> new Fact.JobReopened(in.text("why"))),
          new FactCodec<>(
              "job-put-away",
              BenchFact.JobPutAway.class,
              (fact, out) -> out.flag("away", fact.away()),
              in -> new BenchFact.JobPutAway(in.flag("away"))));

  private JobCodecs() {}

  private static Map<String, Map<String, String>> written(Map<String, Sourced> values) {
    Map<String, Map<String, String>> written = new LinkedHashMap<>();
    values.forEach(
        (name, value) -> {
          Map<String, String> both = new LinkedHashMap<>();
          both.put("is", value.value());
          both.put("from", SOURCES.word(value.from()));
          written.put(name, both);
        });
    return written;
  }

  private static Map<String, Sourced> sourced(FactIn in) {
    Map<String, Sourced> values = new LinkedHashMap<>();
    in.someGroups("used")
        .forEach(
            (name, group) -> {
              values.put(name, new Sourced(group.text("is"), group.word("from", SOURCES, false)));
              in.troubles().addAll(group.troubles());
            });
    return values;
  }
}
