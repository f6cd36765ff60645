package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.LessonFact;
import linkwright.lesson.ClassRoom;
import linkwright.routine.StepId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A class that is looked at while its students go on, each in her own program. */
class ClassAnewTest extends StudentBench {
  private static final String HER = "s-1";

  private Path book;

  @BeforeEach
  void herBook() throws IOException {
    Path there = folder.resolve("class/bench-1/students");
    Files.createDirectories(there);
    try (BookFile begun = BookFile.create(there, HER, "bench-1", now).orThrow()) {
      begun
          .append(
              List.of(
                  EntryLines.line(
                      new Entry(1, now, "bench-1", HER, new LessonFact.StudentBookOpened(HER)))))
          .orThrow();
    }
    book = there.resolve(HER + ".yaml");
    lead(PlaceId.CLASS_ROOM, folder.resolve("class").toString());
    assertThat(seat().step()).isEmpty();
  }

  @Test
  void the_open_page_reads_the_books_anew_by_itself_once_a_minute() throws IOException {
    says("bench/chain", "scroll-and-ring/next/check-links", now);
    now = now.plus(Duration.ofSeconds(40));
    tick();
    assertThat(seat().step()).as("not every second").isEmpty();
    now = now.plus(Duration.ofSeconds(21));
    tick();
    assertThat(seat().step()).isEqualTo("scroll-and-ring/check-links");
    assertThat(parts().toString()).contains("Check every joint", "read at 17:01");
  }

  @Test
  void a_key_reads_them_anew_at_once() throws IOException {
    says("bench/chain", "scroll-and-ring/next/check-links", now);
    press("r");
    assertThat(seat().step()).isEqualTo("scroll-and-ring/check-links");
  }

  /** What she did since tells when she was heard of, not that she was at the step then. */
  @Test
  void she_was_at_the_step_when_that_was_said_and_heard_of_since() throws IOException {
    Instant there = now.minus(Duration.ofDays(1));
    says("bench/chain", "scroll-and-ring/next/check-links", there);
    says("scroll-and-ring/2026-03-02/1", "scroll-and-ring/next/lay-out/order", now);
    says("bench/chain", "card/pickle/own/0", now);
    press("r");
    assertThat(seat().step()).isEqualTo("scroll-and-ring/check-links");
    assertThat(seat().stepAt()).isEqualTo(there);
    assertThat(parts().toString()).contains("1 Mar, 17:00", "17:00, ");
  }

  /** Neither the class nor her report waits for a question that was taken out. */
  @Test
  void what_no_routine_asks_any_more_is_not_due() throws IOException {
    Instant lastWeek = now.minus(Duration.ofDays(9));
    says("scroll-and-ring/2026-02-21/1", "scroll-and-ring/next/no-such-step", lastWeek);
    says("scroll-and-ring/2026-02-21/1", "scroll-and-ring/next/check-links", lastWeek);
    press("r");
    assertThat(parts().toString()).contains(", 0, 1]");
    press("enter");
    assertThat(parts().toString()).contains("1 question is due today.");
  }

  private ClassRoom.Seat seat() {
    return model.learning().room().orElseThrow().students().get(0);
  }

  private void tick() {
    model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
  }

  /** In hot work nothing is asked; a step that she opens then is where she is. */
  @Test
  void a_step_counts_once_it_is_said_or_opened_by_her_while_a_flame_is_lit() throws IOException {
    asked("bench/chain", "scroll-and-ring/next/anneal", now);
    press("r");
    assertThat(seat().step()).as("asked and not said").isEmpty();
    assertThat(parts().toString()).contains("[" + HER + " (bench-1), none yet, , ");
    says("bench/chain", "scroll-and-ring/next/anneal", now);
    Path jobs = folder.resolve("class/bench-1/jobs");
    Files.createDirectories(jobs);
    Instant at = now.plusSeconds(1);
    try (BookFile job = BookFile.create(jobs, "chain", "b", at).orThrow()) {
      List<Fact> facts =
          List.of(
              new Fact.JobOpened("chain", "scroll-and-ring"),
              new Fact.StepOpened(new StepId("check-links")));
      for (Fact fact : facts) {
        at = enter(job, fact, at);
      }
      press("r");
      assertThat(seat().step()).as("opened, and to be said").isEqualTo("scroll-and-ring/anneal");
      at = enter(job, flame(HotWorkState.LIT), at);
      at = enter(job, new Fact.StepOpened(new StepId("solder-links")), at);
      at = enter(job, flame(HotWorkState.SHUT), at);
    }
    press("r");
    assertThat(seat().step()).isEqualTo("scroll-and-ring/solder-links");
    assertThat(seat().stepAt()).isEqualTo(at.minusSeconds(2));
  }

  private static Fact flame(HotWorkState state) {
    return new BenchFact.HotWorkSaid(state, StepId.NONE, "", Optional.empty(), "");
  }

  private static Instant enter(BookFile job, Fact fact, Instant at) throws IOException {
    job.append(List.of(EntryLines.line(new Entry(job.nextNumber(), at, "b", HER, fact)))).orThrow();
    return at.plusSeconds(1);
  }

  /** She says what comes, or what she is asked, in another program. */
  private void says(String lesson, String item, Instant at) throws IOException {
    EntryId question = asked(lesson, item, at);
    enter(new LessonFact.QuestionAnswered(question, "", true), at);
  }

  private EntryId asked(String lesson, String item, Instant at) throws IOException {
    return enter(new LessonFact.QuestionAsked(lesson, item, 1), at);
  }

  private EntryId enter(LessonFact fact, Instant at) throws IOException {
    try (BookFile open = BookFile.open(book, "bench-1", at).orThrow()) {
      Entry entry = new Entry(open.nextNumber(), at, "bench-1", HER, fact);
      open.append(List.of(EntryLines.line(entry))).orThrow();
      return entry.id();
    }
  }
}
