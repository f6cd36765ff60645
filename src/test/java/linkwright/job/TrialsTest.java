package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TrialsTest {
  private static Fact.TestPieceTried piece(double blankMm) {
    return new Fact.TestPieceTried(
        0.9,
        blankMm,
        Map.of("eye", 2.5),
        OptionalDouble.of(14),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of("longer"),
        "");
  }

  private static Fact.TrialMeasured hung(double mm) {
    return new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.empty(), mm, 0, "");
  }

  private static Trials trials(Fact... facts) {
    return ShortBook.state(facts).trials();
  }

  @Nested
  class TestPieces {
    @Test
    void stand_in_the_order_in_which_they_were_made() {
      assertThat(trials(piece(38), piece(40), piece(39)).inOrder())
          .extracting(Fact.TestPieceTried::blankMm)
          .containsExactly(38.0, 40.0, 39.0);
    }

    @Test
    void of_none_no_sample_can_be_chosen() {
      assertThat(trials().samplePiece()).isEmpty();
      assertThat(trials().inOrder()).isEmpty();
      assertThat(trials(new Fact.SampleChosen(ShortBook.id(7), true)).samplePiece()).isEmpty();
    }

    @Test
    void the_sample_is_the_one_chosen_last() {
      Fact first = new Fact.SampleChosen(ShortBook.id(1), false);
      Fact second = new Fact.SampleChosen(ShortBook.id(2), true);
      Trials trials = trials(piece(38), piece(40), first, second);
      assertThat(trials.samplePiece()).contains(piece(40));
      assertThat(trials.sample()).map(Fact.SampleChosen::firstLink).contains(true);
    }

    @Test
    void made_after_the_sample_leave_it_the_sample() {
      Trials trials = trials(piece(38), new Fact.SampleChosen(ShortBook.id(1), false), piece(40));
      assertThat(trials.samplePiece()).contains(piece(38));
      assertThat(trials.inOrder()).hasSize(2);
    }

    @Test
    void handed_out_cannot_be_changed() {
      Trials trials = trials(piece(38));
      assertThatThrownBy(() -> trials.pieces().clear())
          .isInstanceOf(UnsupportedOperationException.class);
    }
  }

  @Nested
  class TrialLengths {
    @Test
    void none_is_followed_before_one_is_chosen() {
      assertThat(trials(hung(52.3)).chosen()).isEmpty();
      assertThat(trials(new Fact.TrialChosen(ShortBook.id(9))).chosen()).isEmpty();
    }

    @Test
    void the_chain_follows_the_one_chosen_last() {
      Trials trials =
          trials(
              hung(52.3),
              hung(53.1),
              new Fact.TrialChosen(ShortBook.id(1)),
              new Fact.TrialChosen(ShortBook.id(2)));
      assertThat(trials.chosen()).contains(hung(53.1));
      assertThat(trials.lengths().values()).containsExactly(hung(52.3), hung(53.1));
    }

    @Test
    void a_piece_or_a_sample_after_it_leaves_it_chosen() {
      Trials trials =
          trials(
              hung(52.3),
              new Fact.TrialChosen(ShortBook.id(1)),
              piece(38),
              new Fact.SampleChosen(ShortBook.id(3), false),
              hung(60));
      assertThat(trials.chosen()).contains(hung(52.3));
      assertThat(trials.samplePiece()).contains(piece(38));
    }
  }
}
