package linkwright.coach.kernel;

import static linkwright.coach.kernel.EntryKind.counted;
import static linkwright.coach.kernel.EntryKind.noted;
import static linkwright.coach.kernel.EntryKind.size;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.job.BenchFact;
import linkwright.job.Fact;

/** Pieces between their stages, their joints, the wire that they are cut from. */
final class PieceEntryKinds {
  static final List<EntryKind<?>> ALL =
      List.of(
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              Fact.PiecesTaken.class,
              (taken, in) ->
                  "in hand: "
                      + counted(taken.pieces())
                      + size(taken.size())
                      + (taken.redo() ? ", to be redone" : "")),
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              Fact.PiecesThrough.class,
              (through, in) ->
                  counted(through.pieces())
                      + sizes(through.sizes())
                      + " "
                      + through.stage()
                      + (through.redo() ? ", redone" : "")),
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              Fact.PiecesSentBack.class,
              (back, in) ->
                  counted(Map.of(back.piece(), back.count()))
                      + size(back.size())
                      + " to redo at "
                      + back.to()
                      + ": "
                      + back.reason()),
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              Fact.PiecesScrapped.class,
              (scrapped, in) ->
                  counted(Map.of(scrapped.piece(), scrapped.count()))
                      + size(scrapped.size())
                      + " scrapped: "
                      + scrapped.reason()),
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              BenchFact.JointsChecked.class,
              (joints, in) ->
                  in.words().show("joints looked at: ")
                      + joints.failed()
                      + " of "
                      + joints.of()
                      + " failed"
                      + noted(joints.reason())),
          EntryKind.beyondUndo(BenchFact.RedoPlanned.class, (planned, in) -> planned(planned)),
          EntryKind.takenBackAt(
              PlaceId.PILES,
              BenchFact.PilePlaced.class,
              (pile, in) ->
                  pile.piece().many()
                      + " "
                      + (pile.redo() ? "to redo at " : "")
                      + pile.stage()
                      + " lie in: "
                      + pile.place()),
          EntryKind.takenBackAt(
                  PlaceId.BENCH,
                  Fact.WireCut.class,
                  (cut, in) ->
                      counted(Map.of(cut.piece(), cut.count()))
                          + size(cut.size())
                          + " cut, "
                          + in.length(cut.eachMm())
                          + " of wire each")
              .andAt(PlaceId.WIRE),
          EntryKind.takenBackAt(PlaceId.WIRE, Fact.WireAdded.class, PieceEntryKinds::came),
          EntryKind.takenBackAt(
              PlaceId.WIRE,
              Fact.WireDiscarded.class,
              (gone, in) ->
                  "wire lost, for "
                      + gone.piece().many()
                      + ": "
                      + in.length(gone.lengthMm())
                      + noted(gone.why())));

  private PieceEntryKinds() {}

  private static String sizes(Map<String, Integer> sizes) {
    return sizes.isEmpty()
        ? ""
        : sizes.entrySet().stream()
            .map(each -> each.getValue() + " " + each.getKey())
            .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String planned(BenchFact.RedoPlanned planned) {
    return planned.piece().many()
        + " to redo at "
        + planned.stage()
        + ": "
        + switch (planned.again()) {
          case NEXT_HEAT -> "with the next heat";
          case NOW -> "now";
          case SPARES -> "spares cover them";
          case NOT_SAID -> "not said when";
        };
  }

  private static String came(Fact.WireAdded wire, EntryKind.InBook in) {
    return "wire came for "
        + wire.piece().many()
        + ": "
        + in.length(wire.lengthMm())
        + " of "
        + in.units().wire(wire.wireMm())
        + (wire.temper().isBlank() ? "" : ", " + wire.temper())
        + (wire.batch().isBlank() ? "" : ", batch " + wire.batch());
  }
}
