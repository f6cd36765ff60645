package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.timers.TimerWords;
import linkwright.job.Fact;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TimersPlaceTest {
  private final Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "m");

  @Test
  void theBenchLeadsThere() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("esc", "b");
    while (Places.of(bench.model()).acts(bench.model()).contains(Act.SEEN)) {
      bench.press("space");
    }
    bench.press("m");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.TIMERS);
  }

  private void set(String name, String time) {
    apprentice.press("n").type(name).press("enter").type(time).press("ctrl-k");
  }

  @Test
  void undo_of_one_says_the_key_that_ends_it_here() {
    set("pickle", "8 min");
    apprentice.press("u");
    assertThat(apprentice.model().notice().text())
        .contains("Undo strikes no wait")
        .contains("It is ended here (");
  }

  @Nested
  class SettingOne {
    @Test
    void entersItsNameAndSeconds() {
      set("pickle", "1 h 30 min");
      assertThat(apprentice.lastFact()).isEqualTo(new Fact.TimerStarted("pickle", 5400));
      assertThat(apprentice.model().held().form()).isEmpty();
    }

    @Test
    void asksForNameAndTime() {
      apprentice.press("n", "ctrl-k");
      Form form = apprentice.model().held().form().orElseThrow();
      assertThat(form.fields().get(0).trouble()).contains("Say what it is for, such as pickle.");
      assertThat(form.fields().get(1).trouble()).contains("Give a time, such as 8 min.");
      assertThat(apprentice.lastFact()).isInstanceOf(Fact.PlanSet.class);
    }

    @Test
    void tellsATimeThatCannotBeReadAndOneOfNothing() {
      apprentice.press("n").type("pickle").press("enter").type("8 mn");
      assertThat(trouble()).contains("“mn” is not a unit of time. Did you mean 8 min?");
      apprentice.press("backspace", "backspace", "backspace", "backspace").type("0 s");
      assertThat(trouble()).contains("That is no time at all. Give 1 s or more.");
    }

    private String trouble() {
      Form form = apprentice.model().held().form().orElseThrow();
      return form.fields().get(1).trouble().orElse("");
    }

    @Test
    void losesNothingTypedWhenTheFormIsLeft() {
      apprentice.press("n").type("pickle").press("esc", "n");
      assertThat(apprentice.model().held().form().orElseThrow().text("name")).isEqualTo("pickle");
    }

    @Test
    void losesNothingTypedWhenTheDiskRefuses() {
      apprentice.diskRefuses("The disk is full.");
      set("pickle", "8 min");
      assertThat(apprentice.told()).contains("The disk is full.");
      assertThat(apprentice.model().held().form().orElseThrow().text("time")).isEqualTo("8 min");
    }

    @Test
    void dropsTheDraftOnceItIsEntered() {
      set("pickle", "8 min");
      assertThat(apprentice.asked()).contains(new Effect.DropDraft("gate-chain", "timer"));
      apprentice.press("n");
      assertThat(apprentice.model().held().form().orElseThrow().text("name")).isEmpty();
    }
  }

  @Nested
  class WithSeveral {
    @Test
    void standInTheOrderInWhichTheyEnd() {
      set("long", "8 min");
      set("short", "1 min");
      assertThat(TimerWords.inOrder(apprentice.model()).stream().map(wait -> wait.run().name()))
          .containsExactly("short", "long");
    }

    @Test
    void theChosenOneIsStoppedAndUndoDoesNotReachIt() {
      set("long", "8 min");
      set("short", "1 min");
      apprentice.press("down", "enter");
      assertThat(TimerWords.inOrder(apprentice.model()).stream().map(wait -> wait.run().name()))
          .containsExactly("short");
      assertThat(apprentice.told()).startsWith("long: stopped with 8 min left.");
      apprentice.press("u");
      assertThat(TimerWords.inOrder(apprentice.model())).hasSize(1);
    }

    @Test
    void oneThatIsDueRingsUntilAnsweredAndNotOftenerThanEveryTenSeconds() {
      set("short", "30 s");
      apprentice.wait(31);
      assertThat(bells()).isEqualTo(1);
      apprentice.wait(5);
      assertThat(bells()).isEqualTo(1);
      apprentice.wait(6);
      assertThat(bells()).isEqualTo(2);
      apprentice.press("page-down").wait(60);
      assertThat(apprentice.told()).isEqualTo("short: quiet.");
      assertThat(bells()).isEqualTo(2);
    }

    private long bells() {
      return apprentice.asked().stream().filter(Effect.RingBell.class::isInstance).count();
    }

    @Test
    void goOnWhileTheProgramIsShut() {
      set("pickle", "8 min");
      apprentice.opens(java.util.List.of()).wait(600);
      assertThat(
              TimerWords.inOrder(apprentice.model()).get(0).run().rings(apprentice.model().now()))
          .isTrue();
    }
  }

  @Test
  void aLookerCannotSetOne() {
    apprentice.looksOnly();
    set("pickle", "8 min");
    assertThat(apprentice.told()).contains("Another Linkwright is writing this job");
    assertThat(apprentice.lastFact()).isInstanceOf(Fact.PlanSet.class);
  }
}
