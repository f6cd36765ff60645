package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.Writing;
import linkwright.coach.keys.Act;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that another program wrote, once that program has gone. */
class TakeOverTest {
  private static final Instant NOW = Instant.parse("2026-11-25T20:00:00Z");
  private static final Fact NOTE = new Fact.Noted("from here");

  @TempDir private Path folder;
  private Handbook handbook;
  private Books books;
  private Path path;
  private Home home;

  @BeforeEach
  void aBook() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    books =
        new Books(
            home,
            "here-a2b3c4d5",
            InstantSource.fixed(NOW),
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    books.begin("Trace", List.of(new Fact.JobOpened("Trace", "round-cable")), handbook);
    books.shut();
    path = home.jobs().resolve("trace.yaml");
  }

  private BookFile theOther() {
    return BookFile.open(path, "there-x2y3z4w5", NOW).orThrow();
  }

  @Test
  void isWrittenByWhoeverLooked() throws IOException {
    BookFile other = theOther();
    assertThat(books.open("trace", handbook)).isInstanceOf(Message.JobOpened.class);
    assertThat(books.keep(List.of(NOTE), handbook))
        .isInstanceOfSatisfying(
            Message.NotKept.class,
            not -> assertThat(not.why()).startsWith("Another Linkwright is writing this job now"));
    other.close();
    assertThat(books.keep(List.of(NOTE), handbook)).isInstanceOf(Message.Kept.class);
    assertThat(Files.readString(path)).contains("from here");
    books.shut();
  }

  @Test
  void isNoMoreSaidToBeWrittenElsewhere() throws IOException {
    BookFile other = theOther();
    Message.JobOpened opened = (Message.JobOpened) books.open("trace", handbook);
    OpenJob looked = OpenJob.of(opened, handbook, Settings.USUAL);
    assertThat(looked.told()).hasSize(1);
    other.close();
    Message.Kept kept = (Message.Kept) books.keep(List.of(NOTE), handbook);
    assertThat(looked.after(kept.entries(), handbook, Settings.USUAL).told()).isEmpty();
    books.shut();
  }

  @Test
  void isWrittenHereByItselfOnceTheOtherHasGone() throws IOException {
    Performer performer = new Performer(home, "here-a2b3c4d5", () -> NOW, () -> {});
    Model blank = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    BookFile other = theOther();
    Model looked = performer.open(blank, "trace");
    assertThat(Pages.of(performer.goOn(looked)).job()).contains("looked at only");
    other.close();
    Model free = performer.goOn(looked);
    assertThat(Pages.of(free).job()).doesNotContain("looked at only");
    assertThat(free.held()).isEqualTo(looked.held());
    performer.shut();
  }

  @Test
  void isLeftAloneWhereItIsOnlyToBeLookedAt() {
    books.look("trace", handbook);
    assertThat(books.letGo(handbook)).isEmpty();
  }

  @Test
  void isShownAnewFirstIfItGrewMeanwhile() throws IOException {
    try (BookFile other = theOther()) {
      books.open("trace", handbook);
      other.append(
          List.of(
              EntryLines.line(new Entry(1, NOW, "there-x2y3z4w5", new Fact.Noted("from there")))));
    }
    assertThat(books.keep(List.of(NOTE), handbook))
        .isInstanceOfSatisfying(
            Message.JobOpened.class, opened -> assertThat(opened.entries()).hasSize(2));
    assertThat(Files.readString(path)).doesNotContain("from here");
    assertThat(books.keep(List.of(NOTE), handbook)).isInstanceOf(Message.Kept.class);
    books.shut();
  }

  @Test
  void aSittingsPersonSignsWhatIsEntered() throws IOException {
    books.open("trace", handbook);
    books.keep(List.of(new Fact.SittingStarted("Anna"), NOTE), handbook);
    books.shut();
    books.open("trace", handbook);
    books.keep(List.of(NOTE), handbook);
    books.shut();
    assertThat(BookFile.look(path).orThrow().lines())
        .extracting(line -> line.person())
        .containsExactly("", "Anna", "Anna", "Anna");
  }

  @Test
  void isReadAnewWhenSomebodyElseWroteUnderIt() throws IOException {
    books.open("trace", handbook);
    String theirs =
        "- {n: 1, at: 2026-11-25T20:00:00Z, device: pen, kind: noted, text: \"by hand\"}\n";
    Files.writeString(path, Files.readString(path) + theirs);
    assertThat(books.keep(List.of(NOTE), handbook))
        .isInstanceOfSatisfying(
            Message.NotKept.class,
            not -> assertThat(not.why()).contains("was changed by another program"));
    assertThat(books.keep(List.of(NOTE), handbook)).isInstanceOf(Message.JobOpened.class);
    assertThat(books.keep(List.of(NOTE), handbook)).isInstanceOf(Message.Kept.class);
    assertThat(Files.readString(path)).contains("by hand", "from here");
    books.shut();
  }

  @Test
  void whatWasEnteredMeanwhileIsSaidNotToBeInABookThatWasReadAnew() throws IOException {
    Performer performer = new Performer(home, "here-a2b3c4d5", () -> NOW, () -> {});
    Model blank = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    Model open = performer.open(blank, "trace");
    Files.writeString(path, Files.readString(path) + "- {n: 1, at: 2026-11-25T20:00:00Z}\n");
    Model failed =
        open.with(
            new Writing.Failed(
                new Effect.KeepFacts(List.of(NOTE)), open.held(), open.notice(), "why", true));
    Model told = performer.take(failed, new Message.ActChosen(Act.TRY_AGAIN));
    assertThat(told.writing())
        .isInstanceOfSatisfying(
            Writing.Failed.class,
            not -> assertThat(not.why()).endsWith("trying again reads it anew."));
    assertThat(Pages.of(told).body().toString())
        .contains("reads the book anew and leads to the places")
        .doesNotContain("tries the same once more");
    Model anew = performer.take(told, new Message.ActChosen(Act.TRY_AGAIN));
    assertThat(Pages.of(anew).told()).contains("was read anew", "is not in it");
    assertThat(anew.job().orElseThrow().doubtful()).hasSize(1);
    assertThat(Files.readString(path)).doesNotContain("from here");
    performer.shut();
  }
}
