package linkwright.books.facts;

import java.util.List;
import linkwright.job.Fact;

/** What is tried before the run. */
final class TrialCodecs {
  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "test-piece-tried",
              Fact.TestPieceTried.class,
              (fact, out) ->
                  out.decimal("wire-mm", fact.wireMm())
                      .decimal("blank-mm", fact.blankMm())
                      .map("formers-mm", fact.formersMm())
                      .measured("length-mm", fact.lengthMm())
                      .measured("width-mm", fact.widthMm())
                      .measured("inside-mm", fact.insideMm())
                      .list("verdicts", fact.verdicts())
                      .text("note", fact.note())
                      .some("lot", fact.lot())
                      .raised("confirmed", fact.confirmed())
                      .some("size", fact.size()),
              in ->
                  new Fact.TestPieceTried(
                      in.decimal("wire-mm"),
                      in.decimal("blank-mm"),
                      in.decimals("formers-mm"),
                      in.measured("length-mm"),
                      in.measured("width-mm"),
                      in.measured("inside-mm"),
                      in.list("verdicts"),
                      in.text("note"),
                      in.some("lot"),
                      in.raised("confirmed"),
                      in.some("size"))),
          new FactCodec<>(
              "sample-chosen",
              Fact.SampleChosen.class,
              (fact, out) ->
                  out.entry("piece", fact.piece())
                      .flag("first-link", fact.firstLink())
                      .some("size", fact.size()),
              in ->
                  new Fact.SampleChosen(in.entry("piece"), in.flag("first-link"), in.some("size"))),
          new FactCodec<>(
              "trial-measured",
              Fact.TrialMeasured.class,
              (fact, out) ->
                  out.whole("links", fact.links())
                      .whole("rings", fact.rings())
                      .decimal("ring-inside-mm", fact.ringInsideMm())
                      .measured("oval-inside-mm", fact.ovalInsideMm())
                      .decimal("hung-mm", fact.hungMm())
                      .decimal("clasp-mm", fact.claspMm())
                      .text("note", fact.note()),
              in ->
                  new Fact.TrialMeasured(
                      in.count("links"),
                      in.count("rings"),
                      in.decimal("ring-inside-mm"),
                      in.measured("oval-inside-mm"),
                      in.decimal("hung-mm"),
                      in.decimal("clasp-mm"),
                      in.text("note"))),
          new FactCodec<>(
              "trial-chosen",
              Fact.TrialChosen.class,
              (fact, out) -> out.entry("trial", fact.trial()).sizes("sizes", fact.sizes()),
              in -> new Fact.TrialChosen(in.entry("trial"), in.sizes("sizes"))));

  private TrialCodecs() {}
}
