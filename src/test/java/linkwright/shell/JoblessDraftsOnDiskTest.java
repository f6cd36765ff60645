package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.files.Home;
import linkwright.files.Library;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed of a new job is there when the program is started again. */
class JoblessDraftsOnDiskTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;

  private Home home;
  private Performer performer;

  private Model started() {
    home = Home.find(Optional.of(folder.toString()), Map.of(), folder);
    Library library = Library.load(home);
    performer = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    Model start = Coach.begin(Start.handbook(library), Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    return performer.begin(performer.reminded(start), Demo.facts(library), Optional.empty());
  }

  private Model typed() {
    Model tray = started();
    Model at = performer.take(tray, new Message.ActChosen(Act.NEW_JOB));
    return performer.take(at, new Message.Pasted("Harbour"));
  }

  @Test
  void it_waits_till_then() {
    typed();
    performer.shut();
    Model again = started();
    assertThat(DraftWords.jobless(again)).containsEntry("new-job", Map.of("name", "Harbour"));
    Model open = performer.take(again, new Message.ActChosen(Act.NEW_JOB));
    assertThat(open.held().form().orElseThrow().text("name")).isEqualTo("Harbour");
  }

  @Test
  void once_it_is_begun_its_file_is_gone() {
    Model typed = typed();
    Model begun = performer.take(typed, new Message.KeyPressed(Key.ctrl("k")));
    assertThat(begun.job()).isPresent();
    assertThat(home.drafts().resolve("no_job.yaml")).doesNotExist();
    performer.shut();
    assertThat(Files.exists(home.jobs().resolve("harbour.yaml"))).isTrue();
  }
}
