package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.books.BookLine;
import linkwright.books.SoundLines;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.hands.Hands;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.shell.remembered.RememberedHands;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What books taught is remembered, and what is remembered is believed only of the same bytes. */
class RememberedHandsTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final Optional<String> PROGRAM = Optional.of("this one");

  @TempDir Path folder;
  private Home home;
  private Handbook handbook;

  @BeforeEach
  void books() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    book("Rosamund's bracelet", 14.3);
    book("Second", 14.6);
  }

  private void book(String name, double lengthMm) {
    OptionalDouble none = OptionalDouble.empty();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.JobOpened(name, "scroll-and-ring"));
    facts.add(new Fact.PlanSet(Wishes.common().with(WishKeys.LINK_LENGTH, "14 mm").texts()));
    facts.add(new Fact.SittingStarted("Mira"));
    facts.add(new Fact.WireAdded(PieceKind.LINK, 0.9, 2000, "soft", "batch seven", "coil-a"));
    facts.add(
        new Fact.TestPieceTried(
            0.9,
            38,
            Map.of("bow", 3.6),
            OptionalDouble.of(lengthMm),
            OptionalDouble.of(5.4),
            none,
            List.of("shorter"),
            "bows uneven"));
    facts.add(new Fact.WireCut(PieceKind.LINK, 9, 38));
    facts.add(new Fact.PiecesScrapped(PieceKind.LINK, 2, Stage.CUT, false, "melted"));
    facts.add(
        new Fact.WeighedIn(
            OptionalDouble.of(9.2), none, OptionalDouble.of(1), none, none, none, none));
    facts.add(new Fact.PricesSet(Map.of("hour", 38.5), "EUR"));
    Books books =
        new Books(
            home,
            "bench",
            InstantSource.fixed(NOW),
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    books.begin(name, facts, handbook);
    books.shut();
  }

  private Hands read(Optional<String> program) {
    return new Tray(home, RememberedHands.of(home, program)).handsAlone(handbook);
  }

  private Path known() {
    return folder.resolve("hands.known");
  }

  @Test
  void what_is_remembered_is_what_the_books_say() {
    Hands first = read(PROGRAM);
    assertThat(first.jobs()).hasSize(2).allMatch(job -> job.pieces().isPresent());
    assertThat(known()).exists();
    Tray again = new Tray(home, RememberedHands.of(home, PROGRAM));
    assertThat(again.handsAlone(handbook).jobs()).isEqualTo(first.jobs());
    Tray whole = new Tray(home);
    whole.hands(handbook, ReadingProgress.ENDLESS);
    assertThat(again.drawer(handbook)).isEqualTo(whole.drawer(handbook));
  }

  /** A book whose line says something else is seen to be taken from the file: it is not read. */
  @Test
  void a_book_of_the_same_bytes_is_not_read_again() throws IOException {
    read(PROGRAM);
    String text = Files.readString(known());
    List<BookLine> lines =
        SoundLines.in(text.getBytes(StandardCharsets.UTF_8)).stream()
            .map(
                line -> {
                  Map<String, Object> fields = new LinkedHashMap<>(line.fields());
                  fields.computeIfPresent("batch", (key, value) -> "planted");
                  return new BookLine(
                      line.number(), line.at(), line.device(), line.person(), line.kind(), fields);
                })
            .toList();
    Files.write(known(), SoundLines.written(lines));
    assertThat(read(PROGRAM).jobs()).allMatch(job -> job.batch().equals("planted"));
    assertThat(read(Optional.of("another program")).jobs())
        .noneMatch(job -> job.batch().equals("planted"));
  }

  /** Same length, same time: only the bytes differ. */
  @Test
  void a_changed_book_is_read_again_whatever_its_time_and_length() throws IOException {
    read(PROGRAM);
    Path book = home.jobs().resolve("second.yaml");
    FileTime time = Files.getLastModifiedTime(book);
    List<String> lines = new ArrayList<>(Files.readAllLines(book));
    lines.remove(lines.size() - 1);
    String shorter = String.join("\n", lines) + "\n";
    String padded = shorter + "#".repeat((int) Files.size(book) - shorter.length() - 1) + "\n";
    Files.writeString(book, padded);
    Files.setLastModifiedTime(book, time);
    assertThat(read(PROGRAM).jobs())
        .filteredOn(job -> job.slug().equals("second"))
        .allMatch(job -> !job.typed().containsKey("prices.hour"));
  }

  @Test
  void a_broken_or_foreign_file_is_passed_over_and_mended() throws IOException {
    Hands right = read(PROGRAM);
    String good = Files.readString(known());
    for (String wrong :
        List.of("", "\u0000\u0001", good.replace("link", "lonk"), good.substring(40))) {
      Files.writeString(known(), wrong);
      assertThat(read(PROGRAM).jobs()).isEqualTo(right.jobs());
      assertThat(known()).content().isEqualTo(good);
    }
    Files.delete(known());
    Files.createDirectory(known());
    assertThat(read(PROGRAM).jobs()).isEqualTo(right.jobs());
  }

  @Test
  void it_holds_no_jobs_name_and_where_no_program_is_known_nothing_is_written() throws IOException {
    read(Optional.empty());
    assertThat(known()).doesNotExist();
    read(PROGRAM);
    assertThat(known()).content().doesNotContain("Rosamund's").doesNotContain("bows uneven");
  }
}
