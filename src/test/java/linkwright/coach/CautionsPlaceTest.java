package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.cautions.CautionWords;
import linkwright.coach.cautions.CautionsHeld;
import linkwright.coach.tray.TrayHeld;
import linkwright.job.Fact;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CautionsPlaceTest {
  private static CautionsHeld screen(Apprentice apprentice) {
    return (CautionsHeld) apprentice.model().held();
  }

  @Nested
  class WithoutAJob {
    private final Apprentice apprentice = Apprentice.atTheTray().press("c");

    @Test
    void areListedByTitle() {
      assertThat(CautionWords.of(apprentice.model()).stream().map(line -> line.card().title()))
          .containsExactly("Fresh air", "Ladders in the store", "Torch and gas");
    }

    @Test
    void upAndDownStopAtTheEnds() {
      apprentice.press("up");
      assertThat(screen(apprentice).at()).isZero();
      apprentice.press("down", "down", "down", "down");
      assertThat(screen(apprentice).at()).isEqualTo(2);
    }

    @Test
    void enterOpensOneAndShutsItAgain() {
      apprentice.press("enter");
      assertThat(screen(apprentice).open()).isTrue();
      apprentice.press("down");
      assertThat(screen(apprentice)).isEqualTo(new CautionsHeld(1, true, 0, "", Optional.empty()));
      apprentice.press("enter");
      assertThat(screen(apprentice).open()).isFalse();
    }

    @Test
    void escLeadsBackToTheTray() {
      apprentice.press("esc");
      assertThat(apprentice.model().held()).isInstanceOf(TrayHeld.class);
    }
  }

  @Nested
  class AtAJob {
    private final Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "c");

    @Test
    void thoseOfTheOpenStepStandFirstAndThoseOfNoStepLast() {
      List<CautionWords.Line> lines = CautionWords.of(apprentice.model());
      assertThat(lines.get(0).card().id()).isEqualTo("ventilation");
      assertThat(lines.get(0).now()).isTrue();
      assertThat(lines.get(2).card().id()).isEqualTo("ladder");
      assertThat(lines.get(2).stands()).isEmpty();
    }

    @Test
    void ofEachThatBelongsToAnyStepItIsToldWhetherItWasSeen() {
      List<CautionWords.Line> lines =
          CautionWords.of(apprentice.model()).stream()
              .filter(line -> line.applies() && !line.steps().isEmpty())
              .toList();
      assertThat(lines).anySatisfy(line -> assertThat(line.now()).isFalse());
      assertThat(lines).allSatisfy(line -> assertThat(line.stands()).startsWith("not seen, step"));
    }

    @Test
    void oneThatWasSeenSaysSoInTheNextSittingTooForTwoWeeks() {
      apprentice.enter(new Fact.CautionSeen("ventilation")).opens(List.of());
      assertThat(CautionWords.of(apprentice.model()).get(0).stands()).startsWith("seen, step");
      apprentice.enter(new Fact.SittingStarted("")).opens(List.of());
      assertThat(CautionWords.of(apprentice.model()).get(0).stands()).startsWith("seen, step");
      apprentice.wait(15 * 24 * 3600);
      assertThat(CautionWords.of(apprentice.model()).get(0).stands()).startsWith("not seen, step");
    }
  }
}
