package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import org.junit.jupiter.api.Test;

/**
 * A rehearsal on the screen: what is said first, the cards whole, and that it is told when left.
 */
class RehearsalTest {
  private static List<Prose.Kind> kinds(Content content) {
    return content.parts().stream()
        .filter(part -> part instanceof Prose prose && !prose.text().isBlank())
        .map(part -> ((Prose) part).kind())
        .toList();
  }

  /** Whoever reads from the top knows what can hurt before she knows what to do. */
  @Test
  void what_to_mind_stands_before_what_to_do_at_every_step() {
    Bencher bencher = Bencher.atTheTray();
    for (Routine routine : Bencher.LIBRARY.routines().values()) {
      bencher.take(new Message.Led(PlaceId.REHEARSAL, routine.id()));
      for (Step step : routine.steps()) {
        List<Prose.Kind> said = kinds(Pages.of(bencher.model()).body());
        int act = said.indexOf(Prose.Kind.DO);
        assertThat(act).as(routine.id() + "/" + step.id()).isNotNegative();
        for (Prose.Kind first : List.of(Prose.Kind.CAUTION, Prose.Kind.MIND, Prose.Kind.STOP)) {
          assertThat(said.lastIndexOf(first)).as(first + " at " + step.id()).isLessThan(act);
        }
        assertThat(said.contains(Prose.Kind.MIND)).isEqualTo(!step.mind().isEmpty());
        bencher.take(new Message.ActChosen(Act.DRY_ON));
      }
    }
  }

  @Test
  void the_cautions_of_a_step_are_shown_whole_by_a_key_and_the_step_again_by_the_same() {
    Bencher bencher = Bencher.atTheTray();
    bencher.take(new Message.Led(PlaceId.REHEARSAL, "jump-rings"));
    while (!title(bencher).equals("Solder the rings")) {
      bencher.press("space");
    }
    bencher.press("c");
    List<String> cards =
        Pages.of(bencher.model()).body().parts().stream()
            .filter(part -> part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION_TITLE)
            .map(part -> ((Prose) part).text())
            .toList();
    assertThat(cards).contains("Torch and fuel gas", "Fume and fresh air").hasSize(5);
    assertThat(bencher.model().held().place()).isEqualTo(PlaceId.REHEARSAL);
    bencher.press("c");
    assertThat(kinds(Pages.of(bencher.model()).body())).contains(Prose.Kind.DO);
    assertThat(title(bencher)).isEqualTo("Solder the rings");
  }

  /** The drawings one after the other, then the texts again; the trade words the same way. */
  @Test
  void a_step_is_seen_drawn_by_its_key_and_its_words_are_explained_by_theirs() {
    Bencher bencher = Bencher.atTheTray();
    bencher.take(new Message.Led(PlaceId.REHEARSAL, "jump-rings"));
    while (!title(bencher).equals("Solder the rings")) {
      bencher.press("space");
    }
    List<Part> texts = Pages.of(bencher.model()).body().parts();
    Set<String> drawn = new HashSet<>();
    bencher.press("p");
    while (!Pages.of(bencher.model()).body().parts().equals(texts)) {
      assertThat(drawn.add(title(bencher))).as("a drawing of its own").isTrue();
      assertThat(Pages.of(bencher.model()).body().parts())
          .hasAtLeastOneElementOfType(Drawing.class);
      bencher.press("p");
    }
    assertThat(drawn).contains("The pallion on the joint, seen from above").hasSizeGreaterThan(1);
    bencher.press("e");
    assertThat(bencher.model().held().place()).isEqualTo(PlaceId.REHEARSAL);
    assertThat(Pages.of(bencher.model()).body().parts().toString()).contains("pallion");
    bencher.press("e");
    assertThat(Pages.of(bencher.model()).body().parts()).isEqualTo(texts);
  }

  /** Another routine than the open job's is drawn without that job's link. */
  @Test
  void the_bends_of_the_job_stand_at_its_own_routine_alone() {
    Bencher bencher = Bencher.withTheDemo();
    assertThat(bends(bencher, "scroll-and-ring")).isPositive();
    assertThat(bends(bencher, "oval-and-long")).isZero();
    assertThat(bends(Bencher.atTheTray(), "scroll-and-ring")).isZero();
  }

  private static int bends(Bencher bencher, String routine) {
    bencher.take(new Message.Led(PlaceId.REHEARSAL, routine));
    int bends = 0;
    for (int i = 0; i < Bencher.LIBRARY.routines().get(routine).steps().size(); i++) {
      bencher.press("p");
      bends += title(bencher).equals("Bend by bend") ? 1 : 0;
      bencher.press("space");
    }
    return bends;
  }

  @Test
  void it_is_not_left_in_silence_while_a_job_is_worked_on() {
    Bencher bencher = Bencher.withTheDemo();
    bencher.press("esc");
    bencher.take(new Message.ActChosen(Act.TO_REHEARSAL));
    assertThat(bencher.model().held().place()).isEqualTo(PlaceId.REHEARSAL);
    bencher.press("esc");
    assertThat(bencher.model().held().place()).isEqualTo(PlaceId.ROUND);
    assertThat(bencher.model().notice().text())
        .contains("The rehearsal is left: nothing of it was entered.", "from here on counts");
  }

  private static String title(Bencher bencher) {
    for (Part part : Pages.of(bencher.model()).body().parts()) {
      if (part instanceof Prose prose && prose.kind() == Prose.Kind.HEAD) {
        return prose.text();
      }
    }
    return "";
  }
}
