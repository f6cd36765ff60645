package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.standing.Handbook;
import linkwright.text.Slug;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading a tray of many jobs, and breaking it off. */
class TrayTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final int JOBS = 20;

  @TempDir Path folder;
  private Home home;
  private Handbook handbook;

  @BeforeEach
  void layJobsInTheTray() throws IOException {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    for (int i = 0; i < JOBS; i++) {
      Path book = job("Chain " + (char) ('a' + i));
      Files.setLastModifiedTime(book, FileTime.from(NOW.plusSeconds(i)));
    }
  }

  @Test
  void readsThoseChangedLastFirstAndLeavesOutTheRestWhenBrokenOff() {
    Tray tray = new Tray(home);
    List<TrayJob> jobs = tray.jobs(handbook, NOW, (done, all) -> done < 8);
    assertThat(jobs)
        .extracting(TrayJob::name)
        .containsExactlyInAnyOrderElementsOf(
            IntStream.range(12, JOBS).mapToObj(i -> "Chain " + (char) ('a' + i)).toList());
    assertThat(tray.unread()).isEqualTo(12);

    assertThat(tray.jobs(handbook, NOW, ReadingProgress.ENDLESS)).hasSize(JOBS);
    assertThat(tray.unread()).isZero();
  }

  @Test
  void tellsHowManyJobsAreNotReadYet() {
    Performer performer =
        new Performer(home, "bench", InstantSource.fixed(NOW), () -> {}, (done, all) -> done < 16);
    Model begin = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    Model model = performer.begin(begin, List.of(), Optional.empty());
    assertThat(model.tray()).hasSize(16);
    assertThat(model.notice().text()).startsWith("4 jobs are not read yet");
  }

  @Test
  void tellsAtTheTrayWhatKeepsABookFromBeingListed() throws IOException {
    Files.createSymbolicLink(home.jobs().resolve("lost.yaml"), folder.resolve("nowhere.yaml"));
    Performer performer =
        new Performer(home, "bench", InstantSource.fixed(NOW), () -> {}, ReadingProgress.ENDLESS);
    Model begin = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    Model model = performer.begin(begin, List.of(), Optional.empty());
    assertThat(model.tray()).hasSize(JOBS);
    assertThat(model.notice().text()).contains("lost.yaml");
    assertThat(model.notice().trouble()).isTrue();
  }

  /** Names at once, figures between keys: nobody waits for a long reckoning. */
  @Test
  void reckonsBetweenKeysWhatTakesLongAndKeepsTheOrder() {
    Tray tray = new Tray(home);
    List<TrayJob> whole = tray.jobs(handbook, NOW, ReadingProgress.ENDLESS);
    ReadingProgress hurried =
        new ReadingProgress() {
          private int asked;

          @Override
          public boolean goOn(int done, int all) {
            asked = done == 0 ? asked + 1 : asked;
            return asked < 2;
          }

          @Override
          public boolean later() {
            return true;
          }
        };
    Tray slow = new Tray(home);
    List<TrayJob> named = slow.jobs(handbook, NOW, hurried);
    assertThat(named).extracting(TrayJob::slug).isEqualTo(slugs(whole));
    assertThat(named).extracting(TrayJob::stands).containsOnly("being reckoned");
    assertThat(slow.isBehind()).isTrue();
    List<TrayJob> more = slow.more(handbook, NOW);
    assertThat(more).filteredOn(job -> job.stands().equals("being reckoned")).hasSize(JOBS - 4);
    while (slow.isBehind()) {
      more = slow.more(handbook, NOW);
    }
    assertThat(more).isEqualTo(whole);
    assertThat(slow.unread()).isZero();
  }

  private static List<String> slugs(List<TrayJob> jobs) {
    return jobs.stream().map(TrayJob::slug).toList();
  }

  @Test
  void readsABookAgainOnlyAfterItsFileChanged() throws IOException {
    Tray tray = new Tray(home);
    tray.jobs(handbook, NOW, ReadingProgress.ENDLESS);
    Path book = home.jobs().resolve("chain-c.yaml");
    FileTime before = Files.getLastModifiedTime(book);
    Files.delete(book);
    Files.move(job("Chain z"), book);
    Files.setLastModifiedTime(book, before);
    assertThat(tray.jobs(handbook, NOW, ReadingProgress.ENDLESS))
        .extracting(TrayJob::name)
        .contains("Chain c")
        .doesNotContain("Chain z");

    Files.setLastModifiedTime(book, FileTime.from(NOW.plusSeconds(60)));
    assertThat(tray.jobs(handbook, NOW, ReadingProgress.ENDLESS))
        .extracting(TrayJob::name)
        .contains("Chain z")
        .doesNotContain("Chain c");
  }

  @Test
  void tellsATimerThatCameDueThoughItsBookIsNotReadAgain() {
    Books books = books();
    books.open("chain-a", handbook);
    books.keep(List.of(new Fact.TimerStarted("pickle", 60)), handbook);
    books.shut();

    Tray tray = new Tray(home);
    assertThat(waits(tray, NOW)).isEmpty();
    assertThat(waits(tray, NOW.plusSeconds(61))).containsExactly("pickle is due");
  }

  private List<String> waits(Tray tray, Instant now) {
    return tray.jobs(handbook, now, ReadingProgress.ENDLESS).stream()
        .filter(job -> job.slug().equals("chain-a"))
        .findFirst()
        .orElseThrow()
        .waits();
  }

  private Path job(String name) {
    Books books = books();
    books.begin(name, List.of(new Fact.JobOpened(name, "scroll-and-ring")), handbook);
    books.shut();
    return home.jobs().resolve(Slug.of(name, taken -> false) + ".yaml");
  }

  private Books books() {
    DraftStore drafts = new DraftStore(home.drafts());
    return new Books(home, "bench", InstantSource.fixed(NOW), drafts, ReadingProgress.ENDLESS);
  }
}
