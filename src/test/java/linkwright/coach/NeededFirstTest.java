package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing is fitted to a piece that is not made yet, though that one lies in the pickle. */
class NeededFirstTest {
  @ParameterizedTest
  @CsvSource({
    "clasp-box, cut-tongue, box, checked",
    "clasp-box, spring-tongue, box, checked",
    "clasp-hook-and-eye, cut-eye, hook, formed",
    "end-caps, form-bail, cap, checked",
    "end-caps, check-bail, cap, checked"
  })
  void the_common_key_alone_never_leads_to_it_before(
      String routine, String fits, String to, String when) {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", routine));
    bench.goTo(first(bench.at().routine()));
    boolean came = false;

    for (int i = 0; i < 300 && !bench.notice().startsWith("All done here"); i++) {
      bench.press("page-down");
      if (bench.notice().contains("no other work waits")) {
        bench.pass(java.time.Duration.ofMinutes(10));
      }
      if (bench.at().step().id().word().equals(fits)) {
        came = true;
        assertThat(bench.job().state().piles().of(new PieceKind(to)).atOrPast(new Stage(when)))
            .as(fits)
            .isPositive();
      }
    }
    assertThat(came).isTrue();
    assertThat(bench.notice()).startsWith("All done here");
  }

  private static String first(Routine routine) {
    List<Step> steps = routine.steps();
    return steps.get(0).id().word();
  }
}
