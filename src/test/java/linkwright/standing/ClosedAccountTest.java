package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import org.junit.jupiter.api.Test;

class ClosedAccountTest {
  /** By its figures as they were written when it was closed, whatever was entered since. */
  @Test
  void a_closed_job_keeps_its_account() {
    Map<String, Double> figures =
        Map.of(
            "hours",
            3.0,
            "trial_hours",
            1.0,
            "metal_out_g",
            15.0,
            "unaccounted_g",
            0.4,
            "price",
            120.0,
            "price: work",
            100.0,
            "price_again",
            90.0);
    JobBook book = JobBook.scroll(Wishes.common().texts()).and(new Fact.JobClosed("", figures));
    book.enter(new Fact.MetalWeighedOut(99, "wire"));
    Closing closing =
        Closing.of(
            book.state(), Wishes.common().plan(), JobBook.HANDBOOK.routine("scroll-and-ring"));
    assertThat(closing.metalOutG()).isEqualTo(15);
    assertThat(closing.unaccountedG()).hasValue(0.4);
    assertThat(closing.seconds()).isEqualTo(3 * 3600);
    assertThat(closing.secondsWithoutTrials()).isEqualTo(2 * 3600);
    assertThat(closing.first().total()).isEqualTo(120);
    assertThat(closing.first().lines()).containsExactly(new Price.Line("work", 100));
    assertThat(closing.again().total()).isEqualTo(90);
    assertThat(closing.again().lines()).isEmpty();
    Map<String, Double> again = new LinkedHashMap<>();
    closing.into(again);
    assertThat(again).isEqualTo(figures);
    Price none = new Price(List.of(), 0);
    assertThat(new Closing(0, OptionalDouble.empty(), 1, 2, none, none).secondsWithoutTrials())
        .isZero();
  }
}
