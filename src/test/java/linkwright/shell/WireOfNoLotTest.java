package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.drawer.MetalAccount;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
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
}
