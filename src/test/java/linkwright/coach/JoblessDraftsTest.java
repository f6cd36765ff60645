package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.Act;
import org.junit.jupiter.api.Test;

/** What is typed and belongs to no job waits wherever one goes, and is told until it is entered. */
class JoblessDraftsTest {
  private static Apprentice typed() {
    return Apprentice.withAJob(Map.of()).press("a", "n").type("Harbour");
  }

  /** It was lost on the way to any other place. */
  @Test
  void a_new_job_waits_while_one_is_elsewhere() {
    Apprentice bench = typed().press("esc", "r", "a");
    assertThat(bench.shown()).contains("typed, not begun: a new job, “Harbour”");
    assertThat(bench.press("n").shown()).contains("Harbour");
  }

  @Test
  void it_is_on_the_disk_before_it_is_begun() {
    assertThat(typed().asked())
        .contains(new Effect.KeepDraft(Effect.NO_JOB, "new-job", Map.of("name", "Harbour")));
  }

  @Test
  void the_places_of_an_open_job_tell_that_something_waits_in_the_tray() {
    Apprentice bench = typed().press("esc").opens(List.of()).press("esc", "v");
    assertThat(bench.shown()).contains("all jobs; typed, not entered");
    assertThat(bench.press("a", "ctrl-x").told())
        .isEqualTo("Thrown away: what was typed of a new job.");
    assertThat(bench.asked()).contains(new Effect.DropDraft(Effect.NO_JOB, "new-job"));
    assertThat(bench.press("n").shown()).doesNotContain("Harbour");
  }

  /** The foot said that the text stays, and it was gone. */
  @Test
  void what_came_into_the_drawer_waits_while_one_is_elsewhere() {
    Apprentice bench = Apprentice.atTheTray().press("d", "n").type("silver March");
    assertThat(bench.shown()).contains("text stays");
    bench.press("esc", "a");
    assertThat(bench.shown())
        .contains("typed, not entered: a lot that came")
        .contains("ctrl-x throws away");
    assertThat(bench.press("d", "n").shown()).contains("silver March");
    assertThat(bench.press("ctrl-x", "n").shown()).doesNotContain("silver March");
  }

  @Test
  void only_what_was_typed_of_her_bench_waits_not_what_stood_there() {
    Apprentice bench = Apprentice.atTheTray().press("o", "n").type("Anna");
    assertThat(bench.asked())
        .last()
        .isInstanceOfSatisfying(
            Effect.KeepDraft.class, draft -> assertThat(draft.texts()).hasSize(1));
    assertThat(bench.press("esc", "n").shown()).contains("Anna");
  }

  @Test
  void what_is_entered_waits_no_more() {
    Apprentice bench = typed().press("ctrl-k").opens(List.of());
    assertThat(bench.asked()).contains(new Effect.DropDraft(Effect.NO_JOB, "new-job"));
    assertThat(bench.press("esc").shown()).doesNotContain("typed, not entered");
  }

  /** A stocktaking and a draw-down were lost on esc, and one lot's are none of another's. */
  @Test
  void what_is_typed_of_a_lot_waits_with_that_lot() {
    Apprentice bench = DrawerPlaceTest.withLots(Apprentice.atTheTray()).press("d", "s");
    bench.type("9.0 g").press("esc", "d", "down").type("april").press("esc");
    assertThat(bench.press("down", "s").shown()).contains("strip").doesNotContain("9.0 g");
    bench.type("7.5 g").press("esc", "up");
    assertThat(bench.press("s").shown()).contains("march").contains("9.0 g");
    assertThat(bench.press("esc", "d").shown()).contains("april");
    bench.press("esc", "a");
    assertThat(bench.shown())
        .contains("typed, not entered: a stocktaking (march), a stocktaking (strip)")
        .contains("drawn down; ctrl-x throws away, one by one");
    bench.press("d", "s", "ctrl-x", "down");
    assertThat(bench.press("s").shown()).contains("7.5 g");
    assertThat(bench.press("esc", "up", "s").shown()).doesNotContain("9.0 g");
  }

  /** All lots that were being counted went at one press. */
  @Test
  void of_what_is_typed_of_several_lots_the_first_that_is_told_is_thrown_away() {
    Apprentice bench = DrawerPlaceTest.withLots(Apprentice.atTheTray()).press("d", "s");
    bench.type("9.0 g").press("esc", "down", "s").type("7.5 g").press("esc", "a");
    assertThat(bench.shown())
        .contains("typed, not entered: a stocktaking (march), a stocktaking (strip); ctrl-x");
    assertThat(bench.press("ctrl-x").told())
        .isEqualTo("Thrown away: what was typed of a stocktaking (march).");
    assertThat(bench.shown()).contains("typed, not entered: a stocktaking; ctrl-x");
    assertThat(bench.press("d", "s").shown()).contains("march").doesNotContain("9.0 g");
    assertThat(bench.press("esc", "down", "s").shown()).contains("strip").contains("7.5 g");
  }

  @Test
  void what_is_to_be_written_out_waits() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("g", "n");
    assertThat(bench.shown()).contains("A file for other programs").contains("text stays");
    bench.press("down", "down", "down").type("march").press("esc", "b", "esc");
    assertThat(bench.press("g", "n").shown()).contains("march");
  }

  @Test
  void what_is_typed_of_her_choices_waits() {
    Apprentice bench = Apprentice.atTheTray().press(",");
    assertThat(bench.shown()).contains("text stays");
    bench.type("x77").press("esc");
    assertThat(bench.shown()).contains("typed, not entered: your choices");
    assertThat(bench.press(",").shown()).contains("x77");
  }

  @Test
  void what_waits_is_told_and_thrown_away_where_it_is_typed_too() {
    Apprentice bench = Apprentice.atTheTray().press("d");
    assertThat(bench.shown()).doesNotContain("typed, not entered");
    bench.press("n").type("silver March").press("esc");
    assertThat(bench.shown()).contains("typed, not entered: a lot that came").contains("ctrl-x");
    assertThat(bench.press("ctrl-x").told())
        .isEqualTo("Thrown away: what was typed of a lot that came.");
    assertThat(bench.shown()).doesNotContain("typed, not entered");
    bench.press("esc", "o", "n").type("Zora").press("esc");
    assertThat(bench.shown()).contains("typed, not entered: your bench");
    assertThat(bench.press("esc").shown()).contains("typed, not entered: your bench");
    assertThat(bench.press("o", "ctrl-x").shown()).doesNotContain("typed, not entered");
    assertThat(bench.press("n").shown()).doesNotContain("Zora");
  }

  /** It was marked at the tray, which another job shares. */
  @Test
  void a_file_of_a_job_that_is_typed_is_told_at_out_and_in_of_that_job() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("g", "n");
    bench.press("down", "down", "down").type("march").press("esc");
    assertThat(bench.shown()).contains("n goes on, there ctrl-x throws");
    bench.press("esc");
    assertThat(bench.shown())
        .contains("rows out of theirs; typed, not")
        .doesNotContain("all jobs; typed, not entered");
  }

  @Test
  void a_name_of_who_works_waits_until_it_is_entered() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("@");
    bench.type("Ma");
    assertThat(bench.shown()).contains("text stays");
    assertThat(bench.press("esc", "@").shown()).contains("Ma");
    bench.type("ra").press("ctrl-k");
    assertThat(bench.press("@").shown()).doesNotContain("name            Mara");
  }

  /** The first letter replaces what stood there before, not what somebody typed. */
  @Test
  void words_that_wait_are_gone_on_with() {
    assertThat(typed().press("esc", "n").type("Q").shown()).contains("HarbourQ");
  }

  /** The tray alone told of it, and a new student's name was lost on esc. */
  @Test
  void what_waits_is_told_where_it_was_typed() {
    Apprentice bench = DrawerPlaceTest.withLots(Apprentice.atTheTray()).press("d", "s");
    bench.type("9.0 g").press("esc");
    assertThat(bench.shown()).contains("typed, not entered: a stocktaking; s goes on");
    assertThat(bench.press("down").shown()).doesNotContain("a stocktaking");
    bench
        .take(new Message.ActChosen(Act.TO_EXCHANGE))
        .take(new Message.ActChosen(Act.TAKE_ROWS))
        .press("down")
        .type("march.csv")
        .press("esc");
    assertThat(bench.shown()).contains("typed, not entered: rows to be read; ");
    Apprentice class_ =
        Apprentice.atTheTray()
            .take(new Message.ActChosen(Act.TO_LESSON))
            .take(new Message.ActChosen(Act.NEW_STUDENT));
    class_.type("Mara").press("esc");
    assertThat(class_.shown()).contains("typed, not entered: a new student; ");
    assertThat(class_.take(new Message.ActChosen(Act.NEW_STUDENT)).shown()).contains("Mara");
  }
}
