package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.BenchFact;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The computer's clock was set while the program was shut; the machine counts on all the same. */
class ClockNotesTest {
  @TempDir private Path folder;
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");
  private Duration up = Duration.ofHours(3);
  private String start = "this-start";

  private ClockNotes notes() {
    return new ClockNotes(
        folder.resolve("state/clock"), () -> Optional.of(new ClockNotes.Boot(start, up)));
  }

  private void pass(Duration time) {
    now = now.plus(time);
    up = up.plus(time);
  }

  /** A job in which something was heated, put out and set to a timer of 8 min, a minute apart. */
  private void worked() {
    Home home = new Home(folder.resolve("home"));
    Books books =
        new Books(home, "bench", () -> now, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
    books.noting(notes());
    List<Fact> facts = new ArrayList<>(Demo.facts(Library.load(home)));
    facts.set(0, new Fact.JobOpened("gate", "round-cable"));
    books.begin("gate", facts, Start.handbook(Library.load(home)));
    StepId anneal = new StepId("anneal-wire");
    Fact lit = new BenchFact.HotWorkSaid(HotWorkState.LIT, anneal, "", Optional.of(List.of()), "");
    for (Fact fact :
        List.of(
            new Fact.StepOpened(anneal), lit, new Fact.StepDone(anneal), out(facts.size() + 2))) {
      pass(Duration.ofMinutes(1));
      books.keep(List.of(fact), Start.handbook(Library.load(home)));
    }
    books.keep(List.of(new Fact.TimerStarted("kettle", 480)), Start.handbook(Library.load(home)));
    books.shut();
  }

  private static Fact out(int lit) {
    return new BenchFact.HotWorkSaid(
        HotWorkState.SHUT,
        StepId.NONE,
        "every flame out",
        Optional.of(List.of(new EntryId("bench", lit))),
        "");
  }

  private Model begun() {
    Home home = new Home(folder.resolve("home"));
    Performer performer = new Performer(home, "bench", () -> now, () -> {}).noting(notes());
    Model model =
        Coach.begin(Start.handbook(Library.load(home)), Settings.USUAL, Paging.WHOLE, now, 80, 24);
    model =
        performer.begin(
            performer.clocked(model),
            List.of(new Fact.JobOpened("x", "byzantine")),
            Optional.of("gate"));
    model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
    performer.shut();
    return model;
  }

  private static Duration timer(Model model) {
    return model.timers().running().get(0).left(model.steady());
  }

  @Test
  void a_clock_set_forward_before_the_start_ends_neither_wait_nor_watch_and_is_told() {
    worked();
    pass(Duration.ofMinutes(3));
    now = now.plus(Duration.ofHours(2));
    Model model = begun();
    assertThat(timer(model)).isEqualTo(Duration.ofMinutes(5));
    assertThat(model.notice().text()).contains("look at the pieces");
    assertThat(model.tray().get(0).waits()).noneMatch(wait -> wait.endsWith("is due"));
    assertThat(model.watch().orElseThrow().left(model.steady())).isEqualTo(Duration.ofMinutes(56));
  }

  @Test
  void set_twice_with_entries_between_it_is_known_of_each() {
    worked();
    now = now.plus(Duration.ofHours(1));
    pass(Duration.ofMinutes(1));
    notes().note(now);
    pass(Duration.ofMinutes(1));
    now = now.plus(Duration.ofHours(1));
    assertThat(timer(begun())).isEqualTo(Duration.ofMinutes(6));
  }

  @Test
  void time_that_went_by_is_taken_at_its_word_and_so_is_a_machine_that_was_started_anew()
      throws IOException {
    worked();
    pass(Duration.ofMinutes(3));
    assertThat(notes().moves(now).all()).isEmpty();
    assertThat(timer(begun())).isEqualTo(Duration.ofMinutes(5));
    now = now.plus(Duration.ofHours(2));
    start = "the-next-start";
    up = Duration.ofMinutes(1);
    assertThat(notes().moves(now).all()).isEmpty();
    Files.writeString(folder.resolve("state/clock"), "this-start\nno duration\n");
    start = "this-start";
    assertThat(notes().moves(now).all()).isEmpty();
  }

  @Test
  void this_machine_tells_such_a_clock_or_none() {
    ClockNotes here = ClockNotes.in(folder.resolve("state"));
    here.note(now);
    assertThat(Files.exists(folder.resolve("state/clock")))
        .isEqualTo(Files.exists(Path.of("/proc/uptime")));
    assertThat(here.moves(now).all()).isEmpty();
  }
}
