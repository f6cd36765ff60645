package linkwright.coach.kernel;

import static linkwright.coach.kernel.EntryKind.noted;
import static linkwright.coach.kernel.EntryKind.spoken;

import java.util.List;
import java.util.OptionalDouble;
import linkwright.job.LessonFact;
import linkwright.job.LotFact;

/** What the drawer's book and those of students say; a job's own says what it took of a lot. */
final class OtherBookEntryKinds {
  static final List<EntryKind<?>> ALL =
      List.of(
          EntryKind.beyondUndo(
              LotFact.LotArrived.class,
              (lot, in) ->
                  "into the drawer: " + lot.lot() + amount(lot.lengthMm(), lot.massG(), in)),
          EntryKind.beyondUndo(
              LotFact.LotCounted.class,
              (lot, in) ->
                  "lot " + lot.lot() + " by the scale" + amount(lot.lengthMm(), lot.massG(), in)),
          EntryKind.beyondUndo(
              LotFact.LotTurned.class,
              (lot, in) ->
                  "lot "
                      + lot.lot()
                      + " made into "
                      + lot.into()
                      + amount(lot.lengthMm(), lot.massG(), in)),
          EntryKind.takenBackAt(
              PlaceId.WIRE,
              LotFact.StockTaken.class,
              (lot, in) -> "taken from lot " + lot.lot() + amount(lot.lengthMm(), lot.massG(), in)),
          EntryKind.takenBackAt(
              PlaceId.WIRE,
              LotFact.StockReturned.class,
              (back, in) ->
                  "back into lot " + back.lot() + amount(back.lengthMm(), back.massG(), in)),
          EntryKind.beyondUndo(
              LessonFact.StudentBookOpened.class, (opened, in) -> "book of a student begun"),
          EntryKind.beyondUndo(
              LessonFact.QuestionAsked.class, (asked, in) -> "asked: " + spoken(asked.item())),
          EntryKind.beyondUndo(
              LessonFact.QuestionAnswered.class,
              (answered, in) ->
                  "answered " + (answered.right() ? "right" : "wrong") + noted(answered.given())),
          EntryKind.beyondUndo(
              LessonFact.Signed.class,
              (signed, in) ->
                  "signed by "
                      + signed.teacher()
                      + ": "
                      + spoken(signed.step())
                      + noted(signed.note())),
          EntryKind.beyondUndo(
              LessonFact.PieceStudied.class,
              (studied, in) -> "studied: " + studied.piece() + noted(studied.change())),
          EntryKind.beyondUndo(
              LessonFact.PracticeSet.class,
              (practice, in) ->
                  "practice: "
                      + practice.pieces()
                      + " of "
                      + spoken(practice.exercise())
                      + " in "
                      + practice.days()
                      + " days"),
          EntryKind.beyondUndo(
              LessonFact.PiecesMade.class,
              (made, in) ->
                  "made at " + in.titles().step(made.step()) + ": " + made.through() + " through"),
          EntryKind.beyondUndo(
              LessonFact.MetalCounted.class,
              (counted, in) -> "metal of " + counted.job() + " counted"));

  private OtherBookEntryKinds() {}

  private static String amount(OptionalDouble mm, OptionalDouble grams, EntryKind.InBook in) {
    return in.length(", ", mm) + in.mass(", ", grams);
  }
}
