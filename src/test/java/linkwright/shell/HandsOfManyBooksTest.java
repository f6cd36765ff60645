package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import linkwright.coach.kernel.Message;
import linkwright.files.DraftStore;
import linkwright.files.HandsFile;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.fit.Maker;
import linkwright.hands.Hands;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.routine.PieceKind;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What many books teach, read from the disk. */
class HandsOfManyBooksTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;
  private Home home;
  private Handbook handbook;

  @BeforeEach
  void library() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
  }

  private void book(String name, int pieces, double longerMm) {
    book(name, pieces, longerMm, NOW);
  }

  private void book(String name, int pieces, double longerMm, Instant at) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.JobOpened(name, "scroll-and-ring"));
    facts.add(new Fact.PlanSet(Wishes.common().with(WishKeys.LINK_LENGTH, "14 mm").texts()));
    facts.add(new Fact.SittingStarted("Mira"));
    for (int i = 0; i < pieces; i++) {
      facts.add(
          new Fact.TestPieceTried(
              0.9,
              38 + i % 3,
              Map.of(),
              OptionalDouble.of(14 + i % 3 * 0.6 + longerMm),
              OptionalDouble.of(5.4),
              OptionalDouble.empty(),
              List.of("right"),
              ""));
    }
    while (facts.size() < 200) {
      facts.add(new Fact.WireCut(PieceKind.LINK, 1, 38));
    }
    Books books =
        new Books(
            home,
            "bench",
            InstantSource.fixed(at),
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    books.begin(name, facts, handbook);
    books.shut();
  }

  @Test
  void threeHundredBooksAreReadOnceAndThenOnlyWhatChanged() throws Exception {
    book("Chain 0", 2, 0.3);
    Path first = home.jobs().resolve("chain-0.yaml");
    for (int i = 1; i < 300; i++) {
      Files.copy(first, home.jobs().resolve("chain-" + i + ".yaml"));
    }
    Tray tray = new Tray(home);
    long begun = System.nanoTime();
    Hands hands = tray.hands(handbook, ReadingProgress.ENDLESS);
    long once = System.nanoTime() - begun;
    begun = System.nanoTime();
    assertThat(tray.hands(handbook, ReadingProgress.ENDLESS).jobs()).hasSize(300);
    long again = System.nanoTime() - begun;
    System.out.printf(
        "hands from 300 books of 200 entries: %d ms, again %d ms%n",
        once / 1_000_000, again / 1_000_000);
    assertThat(hands.jobs()).hasSize(300);
    assertThat(again).isLessThan(once / 3);
  }

  /** What was taught is the same however old the files are, so that no job is reckoned again. */
  @Test
  void comingBackToTheTrayTeachesNothingNew() throws Exception {
    book("First", 2, 0.3, NOW);
    book("Second", 2, 0.5, NOW.plusSeconds(86_400));
    Files.setLastModifiedTime(
        home.jobs().resolve("first.yaml"), FileTime.from(NOW.plusSeconds(3_600)));
    Files.setLastModifiedTime(
        home.jobs().resolve("second.yaml"), FileTime.from(NOW.plusSeconds(90_000)));
    Tray tray = new Tray(home);
    tray.jobs(handbook, NOW, ReadingProgress.ENDLESS);
    Hands taught = tray.hands();
    assertThat(taught.jobs()).hasSize(2);
    tray.jobs(handbook, NOW, ReadingProgress.ENDLESS);
    assertThat(tray.hands()).isSameAs(taught);
  }

  /** Jobs that are none of the last share what these taught; one of them has its own. */
  @Test
  void whatTheSameJobsTaughtIsLearntOnce() {
    for (int i = 0; i < 10; i++) {
      book("Chain " + i, 1, 0.1 * i, NOW.plusSeconds(86_400L * i));
    }
    Hands all = Start.handbook(Library.load(home), home).hands();
    Metal metal = handbook.reference().metal("sterling").orThrow();
    Function<String, Maker> prior =
        slug -> all.forJob(slug, "Mira", "", Instant.MAX).prior(metal, Temper.SOFT).orElseThrow();
    assertThat(prior.apply("chain-0")).isSameAs(prior.apply("chain-1"));
    assertThat(prior.apply("chain-9")).isNotEqualTo(prior.apply("chain-0"));
  }

  @Test
  void aBookThatIsLeftOutTeachesNothing() {
    book("Long one", 3, 1.5);
    book("Short one", 3, 0.2);
    Hands both = Start.handbook(Library.load(home), home).hands();
    assertThat(both.counting()).hasSize(2);
    assertThat(new HandsFile(java.util.Set.of(), List.of()).with("long-one", true).save(home))
        .isEmpty();
    Hands one = Start.handbook(Library.load(home), home).hands();
    assertThat(one.counting()).extracting(job -> job.slug()).containsExactly("short-one");
    assertThat(one.jobs()).hasSize(2);
  }

  /** A job begun from one that was closed long ago knows what every book taught till now. */
  @Test
  void aBookThatIsOpenedBringsWhatAllBooksTaught() {
    book("Long one", 3, 1.5);
    Books books =
        new Books(
            home,
            "bench",
            InstantSource.fixed(NOW),
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    Handbook narrowed =
        handbook.with(
            Start.handbook(Library.load(home), home).hands().forJob("x", "", "", Instant.EPOCH));
    Message begun =
        books.begin("Next", List.of(new Fact.JobOpened("Next", "scroll-and-ring")), narrowed);
    books.shut();
    assertThat(begun)
        .isInstanceOfSatisfying(
            Message.JobOpened.class,
            opened ->
                assertThat(opened.hands().orElseThrow().jobs())
                    .extracting(job -> job.slug())
                    .contains("long-one"));
  }

  @Test
  void aJobIsNotTaughtByItsOwnBookNorByAnotherPerson() {
    book("Long one", 3, 1.5);
    Hands all = Start.handbook(Library.load(home), home).hands();
    assertThat(all.forJob("long-one", "Mira", "", Instant.MAX).counting()).isEmpty();
    assertThat(all.forJob("other", "Mira", "", Instant.MAX).counting()).hasSize(1);
    assertThat(all.forJob("other", "Jon", "", Instant.MAX).counting()).isEmpty();
    assertThat(all.forJob("other", "", "", NOW).counting()).as("closed before").isEmpty();
  }
}
