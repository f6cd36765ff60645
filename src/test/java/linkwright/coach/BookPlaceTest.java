package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.book.BookHeld;
import linkwright.coach.book.BookRows;
import linkwright.coach.kernel.BookTitles;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.EntryWords;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BookPlaceTest {
  private final Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "k");

  private static BookHeld screen(Apprentice apprentice) {
    return (BookHeld) apprentice.model().held();
  }

  private static Optional<Entry> chosen(Apprentice apprentice) {
    BookHeld screen = screen(apprentice);
    return BookRows.of(apprentice.model(), screen).entry(screen.at());
  }

  private Apprentice noted(String text) {
    return apprentice.press("n").type(text).press("ctrl-k");
  }

  /** What is entered is named as the screens name it, not as files do. */
  @Test
  void steps_and_cautions_are_called_by_their_titles() {
    var told = BookTitles.of(apprentice.model());
    var step = apprentice.model().handbook().routine(told.routine()).orElseThrow().steps().get(1);
    var caution = apprentice.model().handbook().cautions().get(0);
    for (Fact fact :
        List.of(
            new Fact.StepOpened(step.id()),
            new Fact.StepDone(step.id()),
            new BenchFact.StepSkipped(step.id(), "why"))) {
      assertThat(EntryWords.of(fact, apprentice.model())).contains(": " + step.title());
    }
    assertThat(EntryWords.of(new Fact.CautionSeen(caution.id()), apprentice.model()))
        .isEqualTo("caution seen: " + caution.title());
    assertThat(EntryWords.of(new Fact.CautionSeen("gone-now"), apprentice.model()))
        .isEqualTo("caution seen: gone now");
  }

  @Nested
  class Notes {
    @Test
    void areWrittenAndStandOnTop() {
      noted("eye a little tight");
      assertThat(apprentice.lastFact()).isEqualTo(new Fact.Noted("eye a little tight"));
      assertThat(chosen(apprentice).orElseThrow().fact()).isEqualTo(apprentice.lastFact());
    }

    @Test
    void withoutWordsAreNotWritten() {
      apprentice.press("n", "ctrl-k");
      assertThat(Troubles.in(apprentice.model().held().form().orElseThrow())).isTrue();
    }

    @Test
    void leaveTheChosenEntryChosen() {
      noted("one").press("down");
      Entry before = chosen(apprentice).orElseThrow();
      noted("two");
      assertThat(chosen(apprentice)).contains(before);
    }
  }

  @Nested
  class Striking {
    @Test
    void asksWhyAndTheEntryCountsNoMore() {
      apprentice.enter(new Fact.WireCut(PieceKind.LINK, 3, 42.3)).opens(List.of());
      apprentice.press("k", "x").type("miscounted").press("ctrl-k");
      assertThat(apprentice.lastFact())
          .isEqualTo(new Fact.Struck(new EntryId("bench", 3), "miscounted"));
      assertThat(apprentice.model().job().orElseThrow().state().wire().usedMm(PieceKind.LINK))
          .isZero();
    }

    @Test
    void withoutAReasonIsNotDone() {
      noted("one").press("x", "ctrl-k");
      assertThat(apprentice.lastFact()).isInstanceOf(Fact.Noted.class);
    }

    @Test
    void aStruckEntryBringsItBackByStrikingItsStrike() {
      apprentice.enter(new Fact.WireCut(PieceKind.LINK, 3, 42.3)).opens(List.of());
      apprentice.press("k", "x").type("miscounted").press("ctrl-k");
      apprentice.press("down", "x").type("was right").press("ctrl-k");
      assertThat(apprentice.lastFact())
          .isEqualTo(new Fact.Struck(new EntryId("bench", 4), "was right"));
      assertThat(apprentice.model().job().orElseThrow().state().wire().usedMm(PieceKind.LINK))
          .isEqualTo(3 * 42.3);
    }

    @Test
    void theStrikeItselfBringsTheEntryBackToo() {
      noted("one").press("x").type("no").press("ctrl-k");
      apprentice.press("up", "x").type("yes").press("ctrl-k");
      BookHeld screen = screen(apprentice);
      BookRows rows = BookRows.of(apprentice.model(), screen);
      Entry note = rows.entry(2).orElseThrow();
      assertThat(note.fact()).isEqualTo(new Fact.Noted("one"));
      assertThat(rows.struck(note)).isFalse();
    }

    @Test
    void theFirstEntryIsRefused() {
      apprentice.press("end", "x");
      assertThat(apprentice.told()).contains("cannot be struck");
      assertThat(apprentice.model().held().form()).isEmpty();
    }
  }

  @Nested
  class Searching {
    @Test
    void everyLetterFiltersAndAllWordsMustBeThere() {
      noted("Öse zu eng").press("n").type("Öse passt").press("ctrl-k");
      apprentice.press("/").type("öse");
      assertThat(screen(apprentice).found()).containsExactly(3, 2);
      apprentice.type(" eng");
      assertThat(screen(apprentice).found()).containsExactly(2);
      apprentice.type("x");
      assertThat(screen(apprentice).found()).isEmpty();
    }

    @Test
    void enterStaysWithWhatIsFoundAndAllComeBack() {
      noted("one").press("/").type("one").press("enter");
      assertThat(screen(apprentice).form()).isEmpty();
      assertThat(screen(apprentice).found()).hasSize(1);
      apprentice.press("a");
      assertThat(screen(apprentice).found()).hasSize(3);
    }

    @Test
    void whatIsStruckInASearchIsTheEntryShown() {
      noted("one").press("n").type("two").press("ctrl-k", "/");
      apprentice.type("one").press("enter", "x").type("no").press("ctrl-k");
      assertThat(apprentice.lastFact()).isEqualTo(new Fact.Struck(new EntryId("bench", 3), "no"));
    }
  }

  @Nested
  class InALongBook {
    private Apprentice longBook() {
      List<Fact> notes = new ArrayList<>();
      for (int i = 0; i < 10_000; i++) {
        notes.add(new Fact.Noted("note " + i));
      }
      return Apprentice.withManyEntries(notes).press("esc", "k");
    }

    @Test
    void pagesAndEndsAreReached() {
      Apprentice reader = longBook();
      reader.press("page-down");
      assertThat(screen(reader).at()).isEqualTo(13);
      reader.press("end");
      assertThat(chosen(reader).orElseThrow().number()).isEqualTo(1);
      reader.press("home");
      assertThat(chosen(reader).orElseThrow().number()).isEqualTo(10_002);
    }

    @Test
    void aRareNoteIsFound() {
      Apprentice reader = longBook().press("/").type("note 4711");
      assertThat(screen(reader).found()).hasSize(1);
      assertThat(chosen(reader).orElseThrow().fact()).isEqualTo(new Fact.Noted("note 4711"));
    }
  }

  @Nested
  class DoubtfulLines {
    private final DoubtfulLine readable =
        new DoubtfulLine(
            4,
            "63a117ba",
            "- {n: 3 …}",
            Optional.of(new Entry(3, Apprentice.BEGIN, "bench", new Fact.Noted("torn"))));
    private final DoubtfulLine unreadable =
        new DoubtfulLine(5, "00000000", "- {n: 4, at", Optional.empty());

    @Test
    void standOnTopAndAreAcceptedByTheirCheck() {
      apprentice.opens(List.of(readable, unreadable)).press("k", "g");
      assertThat(apprentice.asked()).contains(new Effect.AcceptLine("63a117ba"));
    }

    @Test
    void areReadBeforeTheyAreAccepted() {
      apprentice.opens(List.of(readable)).press("k", "down", "g");
      assertThat(apprentice.asked()).doesNotHaveAnyElementsOfTypes(Effect.AcceptLine.class);
      assertThat(screen(apprentice).at()).isZero();
    }

    @Test
    void thatCannotBeReadCannotBeAccepted() {
      apprentice.opens(List.of(unreadable)).press("k", "g");
      assertThat(apprentice.told()).contains("Mend it in an editor");
      assertThat(apprentice.asked()).doesNotHaveAnyElementsOfTypes(Effect.AcceptLine.class);
    }

    @Test
    void onceAcceptedTheBookStaysOpenHere() {
      apprentice.opens(List.of(readable)).press("k", "g");
      apprentice.enter(new Fact.LineAccepted("63a117ba")).opens(List.of());
      assertThat(apprentice.model().held()).isInstanceOf(BookHeld.class);
      assertThat(apprentice.told()).startsWith("The line is accepted");
    }
  }
}
