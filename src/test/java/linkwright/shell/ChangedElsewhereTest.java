package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyNames;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.Wishes;
import linkwright.standing.Handbook;
import linkwright.view.Screens;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Her bench and her drawer changed by another program while this one runs. */
class ChangedElsewhereTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @TempDir Path folder;
  private Home home;
  private Performer performer;
  private Model model;

  @BeforeEach
  void aPlannedJob() throws IOException {
    home = new Home(folder);
    Files.writeString(home.bench(), "format: 1\nkerf: 0.2 mm\n");
    performer = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    List<Fact> facts =
        List.of(
            new Fact.JobOpened("Gate chain", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts()));
    Model begun =
        Coach.begin(
            Start.handbook(Library.load(home)), Settings.USUAL, Screens::parts, NOW, 80, 24);
    model = performer.begin(begun, facts, Optional.of("gate-chain"));
    idle();
  }

  private void idle() {
    model = performer.goOn(model);
  }

  private void press(String... keys) {
    for (String key : keys) {
      model = performer.take(model, new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
    }
  }

  private String told() {
    return model.notice().toString();
  }

  @Test
  void a_bench_that_another_program_changed_is_read_anew_and_told() throws IOException {
    Files.writeString(home.bench(), "format: 1\nkerf: 0.35 mm\n");
    idle();
    assertThat(model.handbook().own().kerfMm()).hasValue(0.35);
    assertThat(told()).contains("bench.yaml was changed by another program");
  }

  @Test
  void what_is_wrong_in_it_then_is_told_with_its_place() throws IOException {
    Files.writeString(home.bench(), "format: 1\nkerf: thin, really\n");
    idle();
    assertThat(model.handbook().own().kerfMm()).isEmpty();
    assertThat(told()).contains("bench.yaml, line 2, column 7");
  }

  @Test
  void a_form_that_is_open_stays_and_the_bench_is_read_once_it_is_shut() throws IOException {
    press("w", "n");
    assertThat(model.held().form()).isPresent();
    Files.writeString(home.bench(), "format: 1\nkerf: 0.35 mm\n");
    idle();
    assertThat(model.held().form()).isPresent();
    assertThat(model.handbook().own().kerfMm()).hasValue(0.2);
    press("esc");
    idle();
    assertThat(model.handbook().own().kerfMm()).hasValue(0.35);
  }

  @Test
  void what_is_changed_here_is_not_told_as_changed_elsewhere() {
    press("a", "o", "n");
    press("ctrl-k");
    model =
        performer.take(
            model, new Message.Ticked(NOW.plusSeconds(20), NOW.plusSeconds(20), Optional.empty()));
    idle();
    assertThat(told()).doesNotContain("another program");
  }

  @Test
  void a_lot_of_another_program_can_be_chosen_in_a_form_that_is_open() {
    lot("first");
    idle();
    press("w", "n");
    assertThat(lots()).containsExactly("first");
    lot("second");
    idle();
    assertThat(lots()).containsExactly("first", "second");
  }

  private void byAnotherProgram(String slug, String name, Fact... facts) {
    Books other =
        new Books(
            home,
            "other",
            InstantSource.fixed(NOW.plusSeconds(60)),
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    Handbook handbook = Start.handbook(Library.load(home));
    if (name.isEmpty()) {
      assertThat(other.open(slug, handbook)).isInstanceOf(Message.JobOpened.class);
      assertThat(other.keep(List.of(facts), handbook)).isInstanceOf(Message.Kept.class);
    } else {
      assertThat(other.begin(name, List.of(facts), handbook)).isInstanceOf(Message.JobOpened.class);
    }
    other.shut();
  }

  private List<String> tray() {
    return model.tray().stream().map(job -> job.name() + (job.closed() ? ", closed" : "")).toList();
  }

  @Test
  void a_job_that_another_program_began_or_closed_stands_in_the_tray_and_the_chosen_one_stays() {
    press("a");
    assertThat(tray()).containsExactly("Gate chain");
    byAnotherProgram("", "Second", new Fact.JobOpened("Second", "scroll-and-ring"));
    idle();
    assertThat(tray()).containsExactly("Second", "Gate chain");
    byAnotherProgram("second", "", new Fact.JobClosed(""));
    idle();
    assertThat(tray()).containsExactly("Gate chain", "Second, closed");
    byAnotherProgram("", "Third", new Fact.JobOpened("Third", "scroll-and-ring"));
    idle();
    assertThat(tray().get(0)).isEqualTo("Third");
    press("enter");
    assertThat(model.job().orElseThrow().slug()).as("what was chosen").isEqualTo("gate-chain");
  }

  @Test
  void the_tray_is_not_read_anew_under_a_form() {
    press("a", "n");
    byAnotherProgram("", "Second", new Fact.JobOpened("Second", "scroll-and-ring"));
    idle();
    assertThat(model.held().form()).isPresent();
    assertThat(tray()).containsExactly("Gate chain");
    press("esc");
    idle();
    assertThat(tray()).containsExactly("Second", "Gate chain");
  }

  private List<String> lots() {
    return model.held().form().orElseThrow().fields().stream()
        .filter(field -> field.id().equals("lot"))
        .flatMap(field -> field.choices().stream())
        .map(choice -> choice.id())
        .toList();
  }

  private void lot(String name) {
    Fact came =
        new LotFact.LotArrived(
            name,
            "wire",
            "sterling",
            OptionalDouble.of(0.9),
            "soft",
            "",
            OptionalDouble.of(1000),
            NONE,
            "");
    assertThat(DrawerBook.keep(home, "other", NOW, came)).isEmpty();
  }
}
