package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** A mark is taken back in the book that it stands in; a book that the class led to leads back. */
class LessonBookUndoTest extends StudentBench {
  private void noJob() {
    press("esc");
    model = performer.take(model, new Message.ActChosen(Act.TO_TRAY));
    assertThat(model.job()).isEmpty();
  }

  private void sign(String teacher) {
    press("g");
    model = performer.take(model, new Message.Pasted(teacher));
    press("down", "ctrl-u", "down");
    model = performer.take(model, new Message.Pasted("link 4"));
    press("ctrl-k");
  }

  private List<Entry> book() {
    return StudentBooks.entries(StudentBooks.path(home, mara)).orThrow();
  }

  @Test
  void the_last_mark_of_the_day_is_taken_back_by_an_entry_with_a_job_open_and_without() {
    for (boolean job : List.of(true, false)) {
      lead(PlaceId.STUDENT, mara);
      sign("EK");
      sign("JB");
      int entries = book().size();
      press("c", "enter", "u");
      assertThat(model.notice().text())
          .isEqualTo("Taken back in the book of Mara Quill: the mark of JB.");
      assertThat(learner().signed()).hasSize(1);
      assertThat(parts().toString()).contains("signed by EK").doesNotContain("signed by JB");
      assertThat(book()).as("nothing is erased").hasSize(entries + 1);
      assertThat(book().get(entries).fact()).isInstanceOf(Fact.Struck.class);
      assertThat(book().get(entries).person()).as("nobody signed that").isEqualTo(model.person());
      press("u");
      assertThat(learner().signed()).isEmpty();
      press("z", "z");
      assertThat(learner().signed()).extracting(mark -> mark.fact().teacher()).contains("EK", "JB");
      assertThat(book().subList(entries, book().size()))
          .extracting(Entry::person)
          .as("by whoever is at the bench, in no teacher's name")
          .containsOnly(model.person());
      press("z");
      assertThat(model.notice().text()).isEqualTo("Nothing was undone here.");
      press("u", "u", "u");
      assertThat(model.notice().text()).startsWith("Nothing is taken back: no mark");
      assertThat(book()).hasSize(entries + 6);
      if (job) {
        press("esc");
        noJob();
      }
    }
  }

  @Test
  void whoever_is_at_the_bench_takes_it_back_in_her_own_name() {
    press("@");
    model = performer.take(model, new Message.Pasted("Mara Quill"));
    press("ctrl-k");
    lead(PlaceId.STUDENT, mara);
    sign("Tea");
    int entries = book().size();
    press("u", "z");
    assertThat(book().subList(entries, book().size()))
        .extracting(Entry::person)
        .containsExactly(mara, mara);
  }

  @Test
  void a_mark_of_another_day_stays() {
    lead(PlaceId.STUDENT, mara);
    sign("EK");
    now = now.plus(Duration.ofDays(1));
    press("u");
    assertThat(learner().signed()).hasSize(1);
    assertThat(model.notice().text()).startsWith("Nothing is taken back");
  }

  @Test
  void a_book_that_the_class_led_to_is_left_for_the_class_at_her_line() {
    StudentBooks.named(home, "Anna").orThrow();
    noJob();
    for (String name : List.of("Anna", "Mara Quill")) {
      String id = StudentBooks.named(home, name).orThrow();
      lead(PlaceId.LESSON, "jump-rings " + id);
    }
    lead(PlaceId.CLASS_ROOM, "");
    press("down", "enter");
    String title = Pages.of(model).body().title();
    press("g", "esc", "esc");
    assertThat(model.held().place()).isEqualTo(PlaceId.CLASS_ROOM);
    press("enter");
    assertThat(Pages.of(model).body().title()).isEqualTo(title);
    press("esc", "esc");
    assertThat(model.held().place()).isEqualTo(PlaceId.TRAY);
  }
}
