package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Samples of a chain of several links: the planned one has no name, others have. */
class SampleOfAnotherLinkTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Fact.TestPieceTried piece(double blankMm, String size) {
    return new Fact.TestPieceTried(
        0.9, blankMm, Map.of(), NONE, NONE, NONE, List.of("right"), "", "", false, size);
  }

  private static Fact chosen(int piece) {
    return new Fact.SampleChosen(ShortBook.id(piece), false);
  }

  /** Pieces 1 and 2 are of the planned link, 3 and 4 of the long one. */
  private static Trials trials(Fact... more) {
    Fact[] facts = new Fact[4 + more.length];
    facts[0] = piece(38, "");
    facts[1] = piece(39, "");
    facts[2] = piece(61, "long");
    facts[3] = piece(62, "long");
    System.arraycopy(more, 0, facts, 4, more.length);
    return ShortBook.state(facts).trials();
  }

  @Test
  void each_link_has_its_own() {
    Trials trials = trials(chosen(1), chosen(3));
    assertThat(trials.samplePiece("")).contains(piece(38, ""));
    assertThat(trials.samplePiece("long")).contains(piece(61, "long"));
    assertThat(trials.samplePiece("round")).isEmpty();
    assertThat(trials.samplePiece()).isEqualTo(trials.samplePiece(""));
  }

  @Test
  void the_one_chosen_last_is_it() {
    Trials trials = trials(chosen(3), chosen(1), chosen(4), chosen(2));
    assertThat(trials.samplePiece("")).contains(piece(39, ""));
    assertThat(trials.samplePiece("long")).contains(piece(62, "long"));
  }

  @Test
  void only_those_chosen_are_samples() {
    Trials trials = trials(chosen(1), chosen(3));
    assertThat(List.of(1, 2, 3, 4))
        .filteredOn(number -> trials.isSample(ShortBook.id(number)))
        .containsExactly(1, 3);
    assertThat(trials().isSample(ShortBook.id(1))).isFalse();
  }

  @Test
  void what_was_chosen_before_is_of_the_same_link() {
    Trials trials = trials(chosen(1), chosen(3));
    assertThat(trials.before(new Fact.SampleChosen(ShortBook.id(4), true)))
        .map(Fact.SampleChosen::piece)
        .contains(ShortBook.id(3));
    assertThat(trials.before(new Fact.SampleChosen(ShortBook.id(2), true)))
        .map(Fact.SampleChosen::piece)
        .contains(ShortBook.id(1));
    assertThat(trials().before(new Fact.SampleChosen(ShortBook.id(4), true))).isEmpty();
  }
}
