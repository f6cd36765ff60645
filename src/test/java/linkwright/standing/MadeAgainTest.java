package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import linkwright.files.PlanFiles;
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.again.MadeAgain;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class MadeAgainTest {
  private static final Handbook HANDBOOK = JobBook.HANDBOOK;

  /** Wished by a link of 14 mm; settled on a sample of 38.1 mm and a trial of three links. */
  private static JobBook earlier() {
    JobBook book =
        JobBook.scroll(
            Wishes.common()
                .without(WishKeys.LINK_BLANK)
                .with(WishKeys.LINK_LENGTH, "14 mm")
                .with(WishKeys.LINK_WIDTH, "5.2 mm")
                .with(WishKeys.STOCK, "2 m")
                .texts());
    EntryId piece =
        book.enter(
            new Fact.TestPieceTried(
                0.9,
                38.1,
                Map.of("tip", 1.2),
                OptionalDouble.of(14.2),
                OptionalDouble.of(5.3),
                OptionalDouble.empty(),
                List.of("right"),
                ""));
    book.enter(new Fact.SampleChosen(piece, true));
    EntryId trial =
        book.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.of(2), 49.3, 0, ""));
    book.enter(new Fact.TrialChosen(trial));
    book.enter(new Fact.JobClosed("As it was."));
    return book;
  }

  private static Plan again(JobState state, Map<String, String> changes) {
    MadeAgain again = MadeAgain.of(state, HANDBOOK, changes, UnitStyle.METRIC);
    return Standing.of(again.begun(state, HANDBOOK), HANDBOOK).counted().plan().orElseThrow();
  }

  @Test
  void the_second_chain_is_the_first_one_as_it_was_settled() {
    Plan first = earlier().standing().counted().plan().orElseThrow();
    Plan second = again(earlier().state(), Map.of(WishKeys.JOB, "Another"));
    assertThat(second.links()).isEqualTo(first.links());
    assertThat(second.rings()).isEqualTo(first.rings());
    assertThat(second.linkBlankMm()).isEqualTo(38.1);
    assertThat(second.linkInsideMm()).isCloseTo(first.linkInsideMm(), Offset.offset(0.005));
    assertThat(second.lengthMm()).isCloseTo(first.lengthMm(), Offset.offset(0.3));
    assertThat(second.wish().ring()).isEqualTo(first.wish().ring());
    assertThat(second.wish().stockMm()).as("wire is asked anew").isEmpty();
  }

  @Test
  void another_length_is_counted_with_the_same_link() {
    Plan longer =
        again(earlier().state(), Map.of(WishKeys.JOB, "Longer", WishKeys.FINISHED, "60 cm"));
    Plan first = earlier().standing().counted().plan().orElseThrow();
    assertThat(longer.links()).isGreaterThan(first.links());
    assertThat(longer.linkBlankMm()).isEqualTo(38.1);
  }

  @Test
  void in_another_metal_the_look_stays_and_the_blank_is_found_anew() {
    MadeAgain gold =
        MadeAgain.of(
            earlier().state(),
            HANDBOOK,
            Map.of(WishKeys.METAL, "gold-14k-yellow"),
            UnitStyle.METRIC);
    assertThat(gold.wish()).doesNotContainKeys(WishKeys.LINK_BLANK, WishKeys.LINK_INSIDE);
    assertThat(gold.wish()).containsEntry(WishKeys.LINK_LENGTH, "14.2 mm");
    assertThat(gold.anew()).hasSize(3);
    assertThat(gold.carries()).anyMatch(each -> each.contains("same outside size"));
  }

  @Test
  void wire_to_order_weighs_as_its_metal_does_kerf_tail_and_spares_included() {
    Plan plan = Wishes.common().with(WishKeys.KERF, "0.3 mm").plan();
    WireToOrder order = WireToOrder.of(plan);
    assertThat(order.linksMm()).isCloseTo(plan.wireTotalMm(), Offset.offset(1e-9));
    double sterling = Math.PI * 0.9 * 0.9 / 4 * plan.wireTotalMm() / 1000 * 10.36;
    assertThat(order.massG()).isCloseTo(sterling, Offset.offset(0.02));
  }

  @Test
  void a_loss_that_was_had_is_taken_in_place_of_the_usual_one() {
    JobBook book = earlier();
    book.enter(new Fact.PiecesTaken(Map.of(PieceKind.LINK, 20), Stage.CUT, false));
    book.enter(new Fact.WireCut(PieceKind.LINK, 20, 38.1));
    book.enter(new Fact.PiecesScrapped(PieceKind.LINK, 6, Stage.ANNEALED, false, "melted"));
    MadeAgain again = MadeAgain.of(book.state(), HANDBOOK, Map.of(), UnitStyle.METRIC);
    double loss = book.standing().left().get(PieceKind.LINK).lossShare();
    assertThat(again.wish().get(WishKeys.USUAL_LOSS)).startsWith("" + (int) (100 * loss));
  }

  @Test
  void where_books_tell_of_losses_the_loss_is_the_one_that_a_new_plan_reckons_with() {
    JobBook book = earlier();
    book.enter(new Fact.PiecesTaken(Map.of(PieceKind.LINK, 20), Stage.CUT, false));
    book.enter(new Fact.WireCut(PieceKind.LINK, 20, 38.1));
    book.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 20), Stage.ANNEALED, false, new StepId("anneal")));
    book.enter(new Fact.PiecesScrapped(PieceKind.LINK, 6, Stage.ANNEALED, false, "melted"));
    TaughtJob taught = HANDBOOK.taught("a", book.entries(), book.state());
    Handbook all = HANDBOOK.with(Hands.of(List.of(taught), Set.of()));
    String told = PlanDefaults.loss(HANDBOOK.routine("scroll-and-ring"), all).value();
    Sourced.Source alone = PlanDefaults.loss(HANDBOOK.routine("scroll-and-ring"), all).from();
    assertThat(alone).isEqualTo(Sourced.Source.HANDS);
    Handbook own =
        all.with(linkwright.bench.OwnBench.NONE.with(Map.of("all", 0.3), Map.of(), Map.of()));
    Sourced both = PlanDefaults.loss(HANDBOOK.routine("scroll-and-ring"), own);
    assertThat(both.from()).as("her bench's is in it").isEqualTo(Sourced.Source.BENCH_AND_HANDS);
    assertThat(both.value()).isNotEqualTo(told);
    MadeAgain again =
        MadeAgain.of(book.state(), all.forJob("a", book.entries()), Map.of(), UnitStyle.METRIC);
    assertThat(again.wish()).containsEntry(WishKeys.USUAL_LOSS, told);
    assertThat(told).isNotEqualTo("5 %");
    assertThat(again.carries()).anyMatch(each -> each.startsWith("A loss of " + told));
  }

  @Test
  void it_is_kept_with_what_it_was_reckoned_with() {
    MadeAgain again = MadeAgain.of(earlier().state(), HANDBOOK, Map.of(), UnitStyle.METRIC);
    assertThat(again.facts(earlier().entries(), earlier().state()).get(1))
        .isEqualTo(new Fact.PlanSet(again.wish(), again.settled()));
    Plan kept =
        Standing.of(again.begun(earlier().state(), HANDBOOK), HANDBOOK)
            .counted()
            .plan()
            .orElseThrow();
    Plan shown =
        Standing.ofTyped(again.wish(), again.begun(earlier().state(), HANDBOOK), HANDBOOK)
            .counted()
            .plan()
            .orElseThrow();
    assertThat(kept.wireTotalMm()).isEqualTo(shown.wireTotalMm());
  }

  @Test
  void a_plan_written_to_a_file_is_read_as_it_was_typed() {
    Map<String, String> wish =
        MadeAgain.of(earlier().state(), HANDBOOK, Map.of(), UnitStyle.METRIC).wish();
    assertThat(PlanFiles.readBack(wish)).containsExactlyInAnyOrderEntriesOf(wish);
  }

  @Test
  void formers_written_with_semicolons_or_decimal_commas_are_read_back() {
    Map<String, String> wish =
        Wishes.common().with(WishKeys.LINK_FORMERS, "tip=1,2 mm; bow=3,5 mm").texts();
    assertThat(Wishes.read(PlanFiles.readBack(wish)).wish().orElseThrow().link().formersMm())
        .isEqualTo(Map.of("tip", 1.2, "bow", 3.5));
  }

  @Test
  void whoReadsInchesCarriesInchesOver() {
    MadeAgain again = MadeAgain.of(earlier().state(), HANDBOOK, Map.of(), UnitStyle.INCH);
    assertThat(again.carries()).isNotEmpty().noneMatch(says -> says.contains(" mm"));
    assertThat(again.wish().get(WishKeys.LINK_BLANK)).endsWith(" in");
  }
}
