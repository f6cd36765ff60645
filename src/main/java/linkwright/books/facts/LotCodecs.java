package linkwright.books.facts;

import java.util.List;
import linkwright.job.LotFact;
import linkwright.routine.PieceKind;

/** The drawer's lots, and what jobs take out of them and bring back. */
final class LotCodecs {
  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "lot-arrived",
              LotFact.LotArrived.class,
              (fact, out) ->
                  out.text("lot", fact.lot())
                      .text("what", fact.what())
                      .text("metal", fact.metal())
                      .measured("wire-mm", fact.wireMm())
                      .some("temper", fact.temper())
                      .some("batch", fact.batch())
                      .measured("length-mm", fact.lengthMm())
                      .measured("mass-g", fact.massG())
                      .some("note", fact.note()),
              in ->
                  new LotFact.LotArrived(
                      in.text("lot"),
                      in.text("what"),
                      in.text("metal"),
                      in.measured("wire-mm"),
                      in.some("temper"),
                      in.some("batch"),
                      in.measured("length-mm"),
                      in.measured("mass-g"),
                      in.some("note"))),
          new FactCodec<>(
              "lot-counted",
              LotFact.LotCounted.class,
              (fact, out) ->
                  out.text("lot", fact.lot())
                      .measured("length-mm", fact.lengthMm())
                      .measured("mass-g", fact.massG())
                      .some("note", fact.note()),
              in ->
                  new LotFact.LotCounted(
                      in.text("lot"),
                      in.measured("length-mm"),
                      in.measured("mass-g"),
                      in.some("note"))),
          new FactCodec<>(
              "lot-turned",
              LotFact.LotTurned.class,
              (fact, out) ->
                  out.text("lot", fact.lot())
                      .text("into", fact.into())
                      .measured("wire-mm", fact.wireMm())
                      .measured("length-mm", fact.lengthMm())
                      .measured("mass-g", fact.massG())
                      .some("note", fact.note()),
              in ->
                  new LotFact.LotTurned(
                      in.text("lot"),
                      in.text("into"),
                      in.measured("wire-mm"),
                      in.measured("length-mm"),
                      in.measured("mass-g"),
                      in.some("note"))),
          new FactCodec<>(
              "stock-taken",
              LotFact.StockTaken.class,
              (fact, out) ->
                  out.text("lot", fact.lot())
                      .some("piece", fact.piece().id())
                      .measured("length-mm", fact.lengthMm())
                      .measured("mass-g", fact.massG())
                      .some("note", fact.note()),
              in ->
                  new LotFact.StockTaken(
                      in.text("lot"),
                      new PieceKind(in.some("piece")),
                      in.measured("length-mm"),
                      in.measured("mass-g"),
                      in.some("note"))),
          new FactCodec<>(
              "stock-returned",
              LotFact.StockReturned.class,
              (fact, out) ->
                  out.text("lot", fact.lot())
                      .some("piece", fact.piece().id())
                      .measured("length-mm", fact.lengthMm())
                      .measured("mass-g", fact.massG())
                      .some("note", fact.note()),
              in ->
                  new LotFact.StockReturned(
                      in.text("lot"),
                      new PieceKind(in.some("piece")),
                      in.measured("length-mm"),
                      in.measured("mass-g"),
                      in.some("note"))));

  private LotCodecs() {}
}
