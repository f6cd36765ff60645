package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyNames;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two jobs at one machine: no hour counts in both, and whoever works, works in both. */
class OneSittingTest {
  @TempDir private Path folder;
  private Home home;
  private Handbook handbook;
  private Performer performer;
  private Model model;
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");

  private void begin() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    Books books =
        new Books(
            home,
            "window-a2b3c4d5",
            () -> now,
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    for (String name : List.of("one", "two")) {
      List<Fact> facts = new ArrayList<>(Demo.facts(Library.load(home)));
      facts.set(0, new Fact.JobOpened(name, "scroll-and-ring"));
      books.begin(name, facts, handbook);
      books.shut();
    }
    performer = new Performer(home, "window-a2b3c4d5", () -> now, () -> {});
    model = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, now, 80, 24);
    model =
        performer.begin(model, List.of(new Fact.JobOpened("x", "byzantine")), Optional.of("one"));
  }

  private void press(String... keys) {
    for (String key : keys) {
      pass(Duration.ofSeconds(2));
      model = performer.take(model, new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
    }
  }

  private void pass(Duration time) {
    now = now.plus(time);
    model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
  }

  private List<Entry> book(String slug) {
    BookFile book = BookFile.look(home.jobs().resolve(slug + ".yaml")).found().orElseThrow();
    return EntryLines.entries(book.lines());
  }

  private double minutes(String slug) {
    return JobState.replay(book(slug), handbook.stages()).times().totalSeconds() / 60;
  }

  /** To the bench of another job, by the tray. */
  private void go(String slug) {
    press("esc", "a");
    model = performer.open(model, slug);
    press("b");
  }

  @Test
  void work_at_another_job_ends_the_sitting_in_the_first() {
    begin();
    press("b");
    pass(Duration.ofMinutes(10));
    go("two");
    assertThat(book("one"))
        .last()
        .extracting(Entry::fact)
        .isInstanceOf(BenchFact.SittingEnded.class);
    assertThat(minutes("one")).isBetween(10.0, 10.5);
    pass(Duration.ofMinutes(30));
    go("one");
    pass(Duration.ofMinutes(5));
    press("space");
    assertThat(minutes("two")).isBetween(30.0, 30.5);
    assertThat(minutes("one")).isBetween(15.0, 16.0);
  }

  @Test
  void a_look_at_the_tray_ends_nothing() {
    begin();
    press("b");
    int entries = book("one").size();
    go("one");
    assertThat(book("one")).hasSize(entries);
  }

  @Test
  void who_works_works_in_every_job() {
    begin();
    press("b", "@");
    model = performer.take(model, new Message.Pasted("Ana"));
    press("ctrl-k");
    go("two");
    press("@");
    model = performer.take(model, new Message.Pasted("Bo"));
    press("ctrl-k");
    go("one");
    press("space");
    assertThat(book("one")).last().extracting(Entry::person).isEqualTo("Bo");
  }

  @Test
  void a_book_that_another_window_writes_is_left_alone() {
    begin();
    press("b");
    Performer other = new Performer(home, "window-a2b3c4d5", () -> now, () -> {});
    Model there = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, now, 80, 24);
    there = other.begin(there, List.of(new Fact.JobOpened("x", "byzantine")), Optional.of("two"));
    now = now.plusSeconds(5);
    there = other.take(there, new Message.KeyPressed(KeyNames.read("b").orElseThrow()));
    assertThat(there.notice().text()).doesNotContain("Not written");
    assertThat(book("one"))
        .last()
        .extracting(Entry::fact)
        .isNotInstanceOf(BenchFact.SittingEnded.class);
    other.shut();
  }
}
