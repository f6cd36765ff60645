package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.shell.Demo;
import linkwright.standing.StillToDo;
import org.junit.jupiter.api.Test;

/** A maker counts joints: 6 of 18 failed. They count by link, each of two joints here. */
class JointsPlaceTest {
  /** Nine links of the demo wait to be checked. */
  static Bencher atTheCheck() {
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    facts.add(new Fact.WireCut(PieceKind.LINK, 9, 42.9));
    List<Stage> stages =
        Bencher.SHELF.routine("scroll-and-ring").orElseThrow().pieces().get(PieceKind.LINK);
    for (Stage stage : stages.subList(1, stages.indexOf(StillToDo.JUDGED))) {
      facts.add(new Fact.PiecesThrough(Map.of(PieceKind.LINK, 9), stage, false, new StepId("any")));
    }
    return Bencher.with(facts.toArray(Fact[]::new)).goTo("check-links");
  }

  private static Bencher entered(String failed, String of, String on) {
    return atTheCheck()
        .press("j")
        .type(failed)
        .press("enter")
        .type(of)
        .press("enter")
        .type(on)
        .press("ctrl-k");
  }

  @Test
  void six_of_eighteen_on_four_links_leave_five_good_and_four_to_be_done_again() {
    Bencher bench = entered("6", "18", "4");
    assertThat(bench.entered(BenchFact.JointsChecked.class))
        .singleElement()
        .satisfies(
            joints -> {
              assertThat(joints.failed()).isEqualTo(6);
              assertThat(joints.of()).isEqualTo(18);
            });
    assertThat(bench.pile("link").atOrPast(StillToDo.JUDGED)).isEqualTo(5);
    assertThat(bench.pile("link").inRedo()).isEqualTo(4);
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
  }

  @Test
  void one_undo_takes_the_whole_of_it_back() {
    Bencher bench = entered("6", "18", "4").press("u");
    assertThat(bench.pile("link").atOrPast(StillToDo.JUDGED)).isZero();
    assertThat(bench.pile("link").inRedo()).isZero();
  }

  @Test
  void on_how_many_links_is_asked_where_it_can_be_more_than_one_number() {
    Bencher bench = entered("6", "18", "");
    assertThat(bench.entered(BenchFact.JointsChecked.class)).isEmpty();
    assertThat(bench.form().fields().get(2).trouble().orElse(""))
        .isEqualTo("6 failed joints are on 3 to 6 links: give how many.");
    assertThat(entered("0", "18", "").pile("link").atOrPast(StillToDo.JUDGED)).isEqualTo(9);
    assertThat(entered("1", "18", "").pile("link").inRedo()).isEqualTo(1);
  }

  @Test
  void more_than_wait_and_a_joint_left_over_are_asked_about() {
    assertThat(entered("6", "20", "4").form().fields().get(1).trouble().orElse(""))
        .isEqualTo("20 joints are 10 links, and 9 wait here.");
    Bencher odd = entered("6", "17", "4");
    assertThat(odd.notice()).contains("one link was not looked at whole");
    odd.press("ctrl-k");
    assertThat(odd.pile("link").atOrPast(StillToDo.JUDGED)).isEqualTo(5);
    assertThat(entered("7", "6", "4").notice() + entered("7", "6", "4").form())
        .contains("Not more");
  }
}
