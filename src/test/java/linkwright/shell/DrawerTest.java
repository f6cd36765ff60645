package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.content.Prose;
import linkwright.coach.drawer.DrawerContent;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.drawer.MetalAccount;
import linkwright.drawer.Taking;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LotFact;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.Handbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawer on the disk: lots, what jobs take and give back, the scale. */
class DrawerTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @TempDir Path folder;
  private Home home;
  private Handbook handbook;
  private Books books;
  private Instant now = NOW;

  @BeforeEach
  void lotOfThreeMetres() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    InstantSource clock =
        () -> {
          now = now.plusSeconds(1);
          return now;
        };
    books = new Books(home, "bench", clock, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
    assertThat(
            DrawerBook.keep(
                home,
                "bench",
                now,
                new LotFact.LotArrived(
                    "march",
                    "wire",
                    "sterling",
                    OptionalDouble.of(0.9),
                    "soft",
                    "b7",
                    OptionalDouble.of(3000),
                    NONE,
                    "")))
        .isEmpty();
    assertThat(DrawerBook.problems(home)).isEmpty();
  }

  private Lot lot() {
    return Start.handbook(Library.load(home), home).drawer().lots().get(0);
  }

  private void take(double mm) {
    books.keep(
        List.of(new Fact.WireAdded(PieceKind.LINK, 0.9, mm, "soft", "b7", "march")), handbook);
  }

  private void giveBack(double mm) {
    books.keep(
        List.of(
            new LotFact.StockReturned("march", PieceKind.LINK, OptionalDouble.of(mm), NONE, "")),
        handbook);
  }

  private void begin() {
    books.begin(
        "Gate chain",
        List.of(
            new Fact.JobOpened("Gate chain", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts())),
        handbook);
  }

  @Test
  void what_a_job_takes_is_gone_and_what_comes_back_is_there() {
    begin();
    take(1200);
    assertThat(lot().lengthMm().orElseThrow()).isEqualTo(1800);
    giveBack(150);
    assertThat(lot().lengthMm().orElseThrow()).isEqualTo(1950);
    // 1.95 m of 0.9 mm sterling at 10.36 g/cm³ (supplier's data sheet).
    assertThat(lot().massG().orElseThrow())
        .isCloseTo(1.95 * Math.PI * 0.81 / 4 * 10.36, Offset.offset(0.001));
  }

  @Test
  void one_weight_puts_a_lot_right_and_says_what_was_missed() {
    begin();
    take(1000);
    double there = lot().massG().orElseThrow() - 0.5;
    DrawerBook.keep(
        home,
        "bench",
        now.plusSeconds(60),
        new LotFact.LotCounted("march", NONE, OptionalDouble.of(there), ""));
    assertThat(lot().massG().orElseThrow()).isCloseTo(there, Offset.offset(1e-9));
    assertThat(lot().unaccountedG().orElseThrow()).isCloseTo(0.5, Offset.offset(1e-9));
  }

  @Test
  void drawn_down_metal_stays_metal() {
    double before = lot().massG().orElseThrow();
    DrawerBook.keep(
        home,
        "bench",
        now.plusSeconds(60),
        new LotFact.LotTurned(
            "march", "thin", OptionalDouble.of(0.6), OptionalDouble.of(900), NONE, ""));
    List<Lot> lots = Start.handbook(Library.load(home), home).drawer().lots();
    assertThat(lots).extracting(Lot::id).containsExactly("march", "thin");
    // 900 mm of 0.6 mm are 900·(0.6/0.9)² = 400 mm of 0.9 mm.
    assertThat(lots.get(0).lengthMm().orElseThrow()).isCloseTo(2600, Offset.offset(1e-9));
    double now = lots.get(0).massG().orElseThrow() + lots.get(1).massG().orElseThrow();
    assertThat(now).isCloseTo(before, Offset.offset(1e-9));
  }

  @Test
  void a_job_that_dies_at_any_byte_leaves_no_wire_lost_or_doubled() throws Exception {
    begin();
    take(1200);
    take(300);
    giveBack(150);
    books.shut();
    Path book = home.jobs().resolve("gate-chain.yaml");
    byte[] whole = Files.readAllBytes(book);
    Path cut = folder.resolve("cut.yaml");
    for (int bytes = 200; bytes <= whole.length; bytes++) {
      Files.write(cut, Arrays.copyOf(whole, bytes));
      List<Entry> entries =
          BookFile.look(cut)
              .found()
              .map(read -> EntryLines.entries(read.lines()))
              .orElse(List.of());
      JobState state = JobState.replay(entries, handbook.stages());
      double has =
          state.wire().addedMm(PieceKind.LINK).stream().mapToDouble(Double::doubleValue).sum()
              - state.wire().discardedMm(PieceKind.LINK);
      Drawer drawer =
          Drawer.of(
              DrawerBook.entries(home),
              Taking.in("gate", entries),
              List.of(),
              handbook.reference());
      assertThat(drawer.lots().get(0).lengthMm().orElseThrow() + has)
          .as("cut at byte %d", bytes)
          .isEqualTo(3000);
    }
  }

  @Test
  void a_broken_book_of_the_drawer_stops_nothing_and_is_told() throws Exception {
    Path file = folder.resolve("drawer.yaml");
    Files.writeString(file, Files.readString(file).replace("3000", "3100"));
    assertThat(DrawerBook.problems(home)).isNotEmpty();
    assertThat(DrawerBook.problems(home).get(0)).contains("drawer.yaml");
    assertThat(Start.handbook(Library.load(home), home).drawer().lots()).isEmpty();
  }

  private static LotFact arrived(String lot) {
    return new LotFact.LotArrived(
        lot, "metal", "sterling", NONE, "", "", NONE, OptionalDouble.of(20), "");
  }

  @Test
  void what_lies_beside_a_book_that_was_moved_away_leads_no_entry_astray() throws Exception {
    Files.delete(home.drawer());
    assertThat(folder.resolve("drawer.lock")).exists();
    assertThat(DrawerBook.keep(home, "bench", now, arrived("june"))).isEmpty();
    assertThat(lot().id()).isEqualTo("june");
    assertThat(DrawerBook.problems(home))
        .as("what was moved away is missed")
        .singleElement()
        .asString()
        .contains("Entry 1 of bench is missing");
  }

  @Test
  void neither_a_link_that_leads_out_nor_a_jobs_book_is_taken_for_the_drawer() throws Exception {
    begin();
    Path job = home.jobs().resolve("gate-chain.yaml");
    books.shut();
    Path outside = Files.createTempDirectory("outside").resolve("theirs.yaml");
    Files.copy(home.drawer(), outside);
    Files.delete(home.drawer());
    Files.createSymbolicLink(home.drawer(), outside);
    for (Path theirs : List.of(outside, job)) {
      String before = Files.readString(theirs);
      assertThat(DrawerBook.keep(home, "bench", now, arrived("june"))).isPresent();
      assertThat(DrawerBook.problems(home)).hasSize(1);
      assertThat(DrawerBook.entries(home)).isEmpty();
      assertThat(theirs).hasContent(before);
      Files.deleteIfExists(home.drawer());
      Files.copy(job, home.drawer());
    }
  }

  @Test
  void two_jobs_that_lack_the_same_wire_are_told() {
    for (String name : List.of("Gate chain", "Porch chain")) {
      books.begin(
          name,
          List.of(
              new Fact.JobOpened(name, "scroll-and-ring"),
              new Fact.PlanSet(Wishes.common().with("finished-length", "80 cm").texts())),
          handbook);
    }
    Handbook now = Start.handbook(Library.load(home), home);
    List<String> told =
        new DrawerContent(UnitStyle.METRIC)
            .of(now.drawer(), -1, TrayReading.of(home, now, NOW), now.reference()).stream()
                .filter(Prose.class::isInstance)
                .map(part -> ((Prose) part).text())
                .toList();
    assertThat(told).hasSize(1);
    assertThat(told.get(0)).contains("2 jobs lack the wire of march", "Gate chain", "Porch chain");
  }

  /** Sterling is 925 parts of silver in a thousand by its name; 0.9 mm weighs 6.59 g a metre. */
  @Test
  void the_account_says_where_the_metal_went_in_alloy_and_fine() {
    begin();
    take(2000);
    giveBack(100);
    books.keep(
        List.of(
            new Fact.WeighedIn(
                OptionalDouble.of(9.0),
                NONE,
                NONE,
                OptionalDouble.of(1.0),
                OptionalDouble.of(0.8),
                OptionalDouble.of(0.5),
                OptionalDouble.of(0.2)),
            new Fact.JobClosed("")),
        handbook);
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    double metre = Math.PI * 0.81 / 4 * 10.36;
    Offset<Double> near = Offset.offset(0.001);
    assertThat(account.cameG()).isCloseTo(3 * metre, near);
    assertThat(account.workG()).isCloseTo(2 * metre, near);
    assertThat(account.backG()).isCloseTo(0.1 * metre, near);
    assertThat(account.thereG()).isCloseTo(1.1 * metre, near);
    assertThat(account.lostG()).isCloseTo(1.9 * metre - 11.5, near);
    assertThat(account.fine(account.cameG()).orElseThrow()).isCloseTo(0.925 * 3 * metre, near);
    // What came is in the drawer, in chains, in scrap, or lost: nothing twice and nothing missing.
    assertThat(
            account.thereG()
                + account.chainG()
                + account.cleanG()
                + account.solderedG()
                + account.filingsG()
                + account.sweepsG()
                + account.lostG())
        .isCloseTo(account.cameG(), near);
  }

  @Test
  void a_job_that_is_closed_with_nothing_made_puts_no_planned_chain_among_the_made_ones() {
    begin();
    take(1000);
    Map<String, Double> planned = Map.of("metal_out_g", 5.6, "mass_chain_g", 5.6);
    books.keep(List.of(new Fact.JobClosed("", planned)), handbook);
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    assertThat(account.chainG()).isZero();
    assertThat(account.lostG()).isZero();
    assertThat(account.openG()).isCloseTo(account.workG(), Offset.offset(1e-9)).isPositive();
  }

  @Test
  void what_was_weighed_out_and_in_for_a_job_goes_before_what_it_took() {
    begin();
    take(2000);
    books.keep(
        List.of(
            new Fact.MetalWeighedOut(14, "wire"),
            new Fact.WeighedIn(
                OptionalDouble.of(9.0), NONE, OptionalDouble.of(3.0), NONE, NONE, NONE, NONE),
            new Fact.JobClosed("", Map.of("metal_out_g", 14.0, "unaccounted_g", 2.3))),
        handbook);
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    assertThat(account.workG()).isEqualTo(14);
    assertThat(account.backG()).isEqualTo(3);
    // The closing took 0.3 g of clasp and solder off the chain; the account says the same.
    assertThat(account.lostG()).isCloseTo(2.3, Offset.offset(1e-9));
    assertThat(account.chainG()).isCloseTo(8.7, Offset.offset(1e-9));
  }

  @Test
  void what_is_in_work_is_told_until_the_job_is_closed_and_drawing_down_brings_nothing() {
    begin();
    take(1000);
    DrawerBook.keep(
        home,
        "bench",
        now,
        new LotFact.LotTurned(
            "march", "thin", OptionalDouble.of(0.6), OptionalDouble.of(900), NONE, ""));
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    double metre = Math.PI * 0.81 / 4 * 10.36;
    assertThat(account.openG()).isCloseTo(metre, Offset.offset(0.001));
    assertThat(account.lostG()).isZero();
    assertThat(account.cameG()).isCloseTo(3 * metre, Offset.offset(0.001));
    assertThat(account.thereG()).isCloseTo(2 * metre, Offset.offset(0.001));
  }

  @Test
  void solder_is_a_lot_by_weight_that_a_job_takes_from() {
    DrawerBook.keep(
        home,
        "bench",
        now,
        new LotFact.LotArrived(
            "hard strip", "solder", "hard-silver", NONE, "", "", NONE, OptionalDouble.of(20), ""));
    begin();
    books.keep(
        List.of(
            new LotFact.StockTaken("hard strip", PieceKind.NONE, NONE, OptionalDouble.of(1.5), "")),
        handbook);
    Lot strip = Start.handbook(Library.load(home), home).drawer().lots().get(1);
    assertThat(strip.massG().orElseThrow()).isEqualTo(18.5);
  }

  private MetalAccount account() {
    Handbook now = Start.handbook(Library.load(home), home);
    return MetalAccount.of(now.drawer(), now.reference()).get(0);
  }

  private static Fact weighed(double chain, double wire) {
    return new Fact.WeighedIn(
        OptionalDouble.of(chain), NONE, OptionalDouble.of(wire), NONE, NONE, NONE, NONE);
  }

  @Test
  void wire_bought_for_a_job_came_and_is_not_lost_below_nothing() {
    begin();
    double metre = Math.PI * 0.81 / 4 * 10.36;
    take(300);
    books.keep(List.of(new Fact.WireAdded(PieceKind.LINK, 0.9, 1000, "soft", "")), handbook);
    assertThat(account().cameG()).isCloseTo(4 * metre, Offset.offset(0.001));
    assertThat(account().openG()).isCloseTo(1.3 * metre, Offset.offset(0.001));
    books.keep(
        List.of(
            weighed(7.0, 1.1),
            new Fact.JobClosed("", Map.of("metal_out_g", 8.1, "unaccounted_g", 0.0))),
        handbook);
    MetalAccount account = account();
    assertThat(account.lostG()).isCloseTo(1.3 * metre - 8.1, Offset.offset(0.001));
    // It went back into the lot it was taken from.
    assertThat(account.thereG()).isCloseTo(2.7 * metre + 1.1, Offset.offset(0.001));
    assertThat(account.looseG()).isZero();
  }

  @Test
  void wire_that_comes_back_to_no_lot_is_told_as_such_and_nothing_is_lost_below_nothing() {
    begin();
    books.keep(List.of(new Fact.WireAdded(PieceKind.LINK, 0.9, 100, "soft", "")), handbook);
    books.keep(
        List.of(
            weighed(9.0, 1.1),
            new Fact.JobClosed("", Map.of("metal_out_g", 10.1, "unaccounted_g", 0.0))),
        handbook);
    assertThat(account().looseG()).isCloseTo(1.1, Offset.offset(1e-9));
    assertThat(account().lostG()).isCloseTo(0, Offset.offset(1e-9));
  }
}
