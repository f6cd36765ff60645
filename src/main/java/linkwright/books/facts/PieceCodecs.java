package linkwright.books.facts;

import java.util.List;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.Fact;

/** Wire and the pieces that are made of it. */
final class PieceCodecs {
  private static final Words<Again> AGAIN =
      Words.of(Again.NOT_SAID, "", Again.NEXT_HEAT, "next-heat")
          .and(Again.NOW, "now")
          .and(Again.SPARES, "spares");

  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "pieces-taken",
              Fact.PiecesTaken.class,
              (fact, out) ->
                  out.pieces(fact.pieces())
                      .stage("stage", fact.stage())
                      .flag("redo", fact.redo())
                      .some("size", fact.size()),
              in ->
                  new Fact.PiecesTaken(
                      in.pieces(), in.stage("stage"), in.flag("redo"), in.some("size"))),
          new FactCodec<>(
              "pieces-through",
              Fact.PiecesThrough.class,
              (fact, out) ->
                  out.pieces(fact.pieces())
                      .stage("stage", fact.stage())
                      .flag("redo", fact.redo())
                      .step(fact.step())
                      .sizes("sizes", fact.sizes()),
              in ->
                  new Fact.PiecesThrough(
                      in.pieces(),
                      in.stage("stage"),
                      in.flag("redo"),
                      in.step(),
                      in.sizes("sizes"))),
          new FactCodec<>(
              "pieces-sent-back",
              Fact.PiecesSentBack.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .whole("count", fact.count())
                      .stage("from", fact.from())
                      .stage("to", fact.to())
                      .flag("redo", fact.redo())
                      .text("reason", fact.reason())
                      .some("again", AGAIN.word(fact.again()))
                      .some("size", fact.size()),
              in ->
                  new Fact.PiecesSentBack(
                      in.kind(),
                      in.count("count"),
                      in.stage("from"),
                      in.stage("to"),
                      in.flag("redo"),
                      in.text("reason"),
                      in.word("again", AGAIN, true),
                      in.some("size"))),
          new FactCodec<>(
              "pieces-scrapped",
              Fact.PiecesScrapped.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .whole("count", fact.count())
                      .stage("stage", fact.stage())
                      .flag("redo", fact.redo())
                      .text("reason", fact.reason())
                      .some("size", fact.size()),
              in ->
                  new Fact.PiecesScrapped(
                      in.kind(),
                      in.count("count"),
                      in.stage("stage"),
                      in.flag("redo"),
                      in.text("reason"),
                      in.some("size"))),
          new FactCodec<>(
              "joints-checked",
              BenchFact.JointsChecked.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .whole("failed", fact.failed())
                      .whole("of", fact.of())
                      .some("reason", fact.reason())
                      .step(fact.step()),
              in ->
                  new BenchFact.JointsChecked(
                      in.kind(), in.count("failed"), in.count("of"), in.some("reason"), in.step())),
          new FactCodec<>(
              "pile-placed",
              BenchFact.PilePlaced.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .stage("stage", fact.stage())
                      .raised("redo", fact.redo())
                      .text("place", fact.place())
                      .some("size", fact.size()),
              in ->
                  new BenchFact.PilePlaced(
                      in.kind(),
                      in.stage("stage"),
                      in.raised("redo"),
                      in.text("place"),
                      in.some("size"))),
          new FactCodec<>(
              "redo-planned",
              BenchFact.RedoPlanned.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .stage("stage", fact.stage())
                      .some("again", AGAIN.word(fact.again())),
              in ->
                  new BenchFact.RedoPlanned(
                      in.kind(), in.stage("stage"), in.word("again", AGAIN, true))),
          new FactCodec<>(
              "wire-cut",
              Fact.WireCut.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .whole("count", fact.count())
                      .decimal("each-mm", fact.eachMm())
                      .some("size", fact.size()),
              in ->
                  new Fact.WireCut(
                      in.kind(), in.count("count"), in.decimal("each-mm"), in.some("size"))),
          new FactCodec<>(
              "wire-added",
              Fact.WireAdded.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .decimal("wire-mm", fact.wireMm())
                      .decimal("length-mm", fact.lengthMm())
                      .text("temper", fact.temper())
                      .text("batch", fact.batch())
                      .some("lot", fact.lot()),
              in ->
                  new Fact.WireAdded(
                      in.kind(),
                      in.decimal("wire-mm"),
                      in.decimal("length-mm"),
                      in.text("temper"),
                      in.text("batch"),
                      in.some("lot"))),
          new FactCodec<>(
              "wire-discarded",
              Fact.WireDiscarded.class,
              (fact, out) ->
                  out.kind(fact.piece())
                      .decimal("length-mm", fact.lengthMm())
                      .text("why", fact.why()),
              in -> new Fact.WireDiscarded(in.kind(), in.decimal("length-mm"), in.text("why"))));

  private PieceCodecs() {}
}
