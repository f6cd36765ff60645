package linkwright.books.facts;

import java.util.List;
import linkwright.job.LessonFact;

/** What is asked, answered, signed and practised. */
final class LessonCodecs {
  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "student-book-opened",
              LessonFact.StudentBookOpened.class,
              (fact, out) -> out.text("student", fact.student()),
              in -> new LessonFact.StudentBookOpened(in.text("student"))),
          new FactCodec<>(
              "question-asked",
              LessonFact.QuestionAsked.class,
              (fact, out) ->
                  out.text("lesson", fact.lesson())
                      .text("item", fact.item())
                      .whole("seed", fact.seed()),
              in ->
                  new LessonFact.QuestionAsked(
                      in.text("lesson"), in.text("item"), in.number("seed"))),
          new FactCodec<>(
              "question-answered",
              LessonFact.QuestionAnswered.class,
              (fact, out) ->
                  out.entry("question", fact.question())
                      .text("given", fact.given())
                      .flag("right", fact.right()),
              in ->
                  new LessonFact.QuestionAnswered(
                      in.entry("question"), in.text("given"), in.flag("right"))),
          new FactCodec<>(
              "signed",
              LessonFact.Signed.class,
              (fact, out) ->
                  out.text("teacher", fact.teacher())
                      .some("step", fact.step())
                      .some("piece", fact.piece())
                      .some("note", fact.note()),
              in ->
                  new LessonFact.Signed(
                      in.text("teacher"), in.some("step"), in.some("piece"), in.some("note"))),
          new FactCodec<>(
              "piece-studied",
              LessonFact.PieceStudied.class,
              (fact, out) ->
                  out.text("piece", fact.piece())
                      .text("expected", fact.expected())
                      .text("got", fact.got())
                      .text("change", fact.change()),
              in ->
                  new LessonFact.PieceStudied(
                      in.text("piece"), in.text("expected"), in.text("got"), in.text("change"))),
          new FactCodec<>(
              "practice-set",
              LessonFact.PracticeSet.class,
              (fact, out) ->
                  out.text("exercise", fact.exercise())
                      .whole("pieces", fact.pieces())
                      .whole("days", fact.days()),
              in ->
                  new LessonFact.PracticeSet(
                      in.text("exercise"), in.count("pieces"), in.count("days"))),
          new FactCodec<>(
              "pieces-made",
              LessonFact.PiecesMade.class,
              (fact, out) ->
                  out.text("job", fact.job())
                      .text("routine", fact.routine())
                      .step(fact.step())
                      .whole("through", fact.through())
                      .someOf("redo", fact.redo())
                      .whole("scrapped", fact.scrapped())
                      .entry("up-to", fact.upTo()),
              in ->
                  new LessonFact.PiecesMade(
                      in.text("job"),
                      in.text("routine"),
                      in.step(),
                      in.count("through"),
                      in.someCounts("redo"),
                      in.count("scrapped"),
                      in.entry("up-to"))),
          new FactCodec<>(
              "metal-counted",
              LessonFact.MetalCounted.class,
              (fact, out) ->
                  out.text("job", fact.job())
                      .decimal("out-g", fact.outG())
                      .decimal("back-g", fact.backG()),
              in ->
                  new LessonFact.MetalCounted(
                      in.text("job"), in.decimal("out-g"), in.decimal("back-g"))));

  private LessonCodecs() {}
}
