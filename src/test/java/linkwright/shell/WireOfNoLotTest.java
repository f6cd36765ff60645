package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Settings;
import linkwright.drawer.MetalAccount;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.standing.ClosedFigures;
import linkwright.standing.Handbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wire on hand that stands in the plan alone came, too: as much of it as came of the job. */
class WireOfNoLotTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @TempDir private Path folder;

  @Test
  void the_account_of_its_job_balances() {
    Home home = new Home(folder);
    Handbook handbook = Start.handbook(Library.load(home));
    Instant at = Instant.parse("2026-03-04T17:00:00Z");
    Books books =
        new Books(home, "bench", () -> at, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
    books.begin(
        "Gate chain",
        List.of(
            new Fact.JobOpened("Gate chain", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts())),
        handbook);
    OptionalDouble chain = OptionalDouble.of(9.0);
    OptionalDouble back = OptionalDouble.of(1.5);
    OptionalDouble clean = OptionalDouble.of(0.7);
    OptionalDouble filings = OptionalDouble.of(0.1);
    books.keep(
        List.of(
            new Fact.WeighedIn(chain, NONE, back, clean, NONE, filings, NONE),
            new Fact.JobClosed("", Map.of())),
        handbook);
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    Offset<Double> near = Offset.offset(1e-9);
    assertThat(account.cameG()).isCloseTo(11.3, near);
    assertThat(account.workG()).isCloseTo(11.3, near);
    assertThat(account.chainG()).isCloseTo(9.0, near);
    assertThat(account.looseG()).isCloseTo(1.5, near);
    assertThat(account.lostG()).isZero();
    assertThat(account.chainG() + account.looseG() + account.cleanG() + account.filingsG())
        .isCloseTo(account.cameG(), near);
    assertThat(account.fine(account.cameG()).orElseThrow()).isCloseTo(0.925 * 11.3, near);
  }

  /** What was cut of it went into work, and what did not come of that is lost. */
  @Test
  void what_was_cut_of_it_went_into_work() {
    Home home = new Home(folder);
    Handbook handbook = Start.handbook(Library.load(home));
    Instant at = Instant.parse("2026-03-04T17:00:00Z");
    Books books =
        new Books(home, "bench", () -> at, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
    Map<String, String> wish = new HashMap<>(Demo.plan(Library.load(home)).texts());
    wish.put("stock", "500 mm");
    books.begin(
        "Gate chain",
        List.of(new Fact.JobOpened("Gate chain", "scroll-and-ring"), new Fact.PlanSet(wish)),
        handbook);
    books.keep(List.of(new Fact.WireCut(PieceKind.LINK, 3, 41.0333, "")), handbook);
    OptionalDouble chain = OptionalDouble.of(0.6);
    books.keep(List.of(new Fact.WeighedIn(chain, NONE, NONE, NONE, NONE, NONE, NONE)), handbook);
    Message kept = books.open("gate-chain", handbook);
    OpenJob job = OpenJob.of((Message.JobOpened) kept, handbook, Settings.USUAL);
    books.keep(
        List.of(new Fact.JobClosed("", ClosedFigures.of(job.state(), job.standing(), handbook))),
        handbook);
    Handbook now = Start.handbook(Library.load(home), home);
    MetalAccount account = MetalAccount.of(now.drawer(), now.reference()).get(0);
    double cut = 3 * 41.0333 * Math.PI / 4 * 10.36 / 1000;
    Offset<Double> near = Offset.offset(0.02);
    assertThat(account.workG()).isCloseTo(cut, near);
    assertThat(account.cameG()).isCloseTo(cut, near);
    assertThat(account.chainG() + account.lostG()).isCloseTo(cut, near);
    assertThat(account.lostG()).isPositive();
  }
}
