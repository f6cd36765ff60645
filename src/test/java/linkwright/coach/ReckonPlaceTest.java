package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.tray.TrayHeld;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Sum;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReckonPlaceTest {

  private static Apprentice open(Apprentice apprentice, String sum) {
    apprentice.press("r");
    for (Sum each : Reckoner.sums()) {
      if (each.id().equals(sum)) {
        return apprentice.press("enter");
      }
      apprentice.press("down");
    }
    throw new AssertionError("no sum " + sum);
  }

  private static Apprentice inAJob() {
    return Apprentice.withAJob(Map.of());
  }

  @Nested
  class WithoutAJob {
    @Test
    void everySumIsListedAndEscGoesBackToTheTray() {
      Apprentice apprentice = Apprentice.atTheTray().press("r");

      Reckoner.sums().forEach(sum -> assertThat(apprentice.shown()).contains(sum.title()));
      assertThat(apprentice.press("esc").model().held()).isInstanceOf(TrayHeld.class);
    }

    @Test
    void theResultIsThereWithTheLastKey() {
      Apprentice apprentice = open(Apprentice.atTheTray(), "wire");

      apprentice.type("sterling").press("enter").type("0.9 mm").press("enter").type("1 ");
      assertThat(apprentice.shown()).contains("0.007 g");
      assertThat(apprentice.type("m").shown()).contains("6.59 g");
    }

    @Test
    void whatIsStillEmptyIsAskedForAndNotCalledWrong() {
      String shown = open(Apprentice.atTheTray(), "wire").shown();

      assertThat(shown).contains("Give the thickness").doesNotContain("!");
    }

    @Test
    void whatIsTypedWrongIsToldAtOnce() {
      assertThat(open(Apprentice.atTheTray(), "wire").type("starling").shown())
          .contains("Did you mean sterling?");
    }

    @Test
    void whatWasTypedIsThereAgainWhenOneComesBackToTheSum() {
      Apprentice apprentice = open(Apprentice.atTheTray(), "wire").type("copper");

      assertThat(apprentice.press("esc", "down", "enter", "esc", "up", "enter").shown())
          .contains("copper");
    }

    @Test
    void enteringTheLastLineGoesBackToTheSums() {
      Apprentice apprentice = open(Apprentice.atTheTray(), "spare").type("27").press("ctrl-k");

      assertThat(apprentice.model().held().form()).isEmpty();
      assertThat(apprentice.facts()).isEmpty();
    }

    @Test
    void theLinkOfABlankIsDrawn() {
      Apprentice apprentice = open(Apprentice.atTheTray(), "link");

      apprentice.type("scroll").press("enter").type("0.9 mm").press("enter").type("38.1 mm");

      assertThat(apprentice.shown()).contains("mm long and").containsPattern("[⠁-⣿]{3}");
    }
  }

  @Nested
  class WithAJob {
    @Test
    void theFormsAreFilledFromThePlan() {
      Apprentice apprentice = open(inAJob(), "chain");

      assertThat(apprentice.model().held().form().orElseThrow().text("length")).isEqualTo("19 cm");
      assertThat(apprentice.model().held().form().orElseThrow().text("clasp")).isEqualTo("16 mm");
      // The plan's own count is what the same sum by itself comes to.
      int links =
          apprentice.model().job().orElseThrow().standing().counted().plan().orElseThrow().links();
      assertThat(apprentice.shown()).contains(links + " links");
    }

    @Test
    void everySumFilledFromThePlanHasNothingWrongInIt() {
      for (Sum sum : Reckoner.sums()) {
        Form form = open(inAJob(), sum.id()).model().held().form().orElseThrow();

        assertThat(Troubles.in(form)).as(sum.id() + " " + form.texts()).isFalse();
      }
    }

    @Test
    void theRingsOwnWireIsTakenForTheRing() {
      Apprentice apprentice =
          open(Apprentice.withAJob(Map.of(WishKeys.RING_WIRE, "0.8 mm")), "ring");

      assertThat(apprentice.model().held().form().orElseThrow().text("wire")).isEqualTo("0.8 mm");
    }

    @Test
    void theResultCanBeNotedInTheBook() {
      Apprentice apprentice = open(inAJob(), "ring").press("ctrl-k");

      assertThat(apprentice.lastFact()).isInstanceOf(Fact.Noted.class);
      assertThat(((Fact.Noted) apprentice.lastFact()).text())
          .startsWith("rings and ovals: A ring of 3.2 mm inside takes a blank of 13.2 mm");
      assertThat(apprentice.told()).isEqualTo("Noted in the book.");
    }

    @Test
    void nothingIsNotedWhileSomethingIsMissing() {
      Apprentice apprentice = open(inAJob(), "wire");
      int before = apprentice.facts().size();

      apprentice.press("ctrl-k");

      assertThat(apprentice.facts()).hasSize(before);
      assertThat(apprentice.told()).contains("Nothing to note yet").contains("Give the length");
    }

    @Test
    void whatIsTypedIsKeptBesideTheBook() {
      Apprentice apprentice = open(inAJob(), "wire").press("down", "down").type("3 m");

      assertThat(apprentice.asked())
          .anyMatch(
              effect ->
                  effect instanceof Effect.KeepDraft draft
                      && draft.form().equals("reckon-wire")
                      && draft.texts().get("length").equals("3 m"));
    }
  }
}
