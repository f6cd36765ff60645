package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A link of 14 mm by 5.4 mm is wished; within 3 % of its length and 6 % of its width it is so. */
class VerdictOfSizesTest {
  private final JobBook book =
      JobBook.scroll(
          Wishes.common()
              .without(WishKeys.LINK_BLANK)
              .with(WishKeys.LINK_LENGTH, "14 mm")
              .with(WishKeys.LINK_WIDTH, "5.4 mm")
              .texts());

  private TestPieces pieces() {
    return TestPieces.of(book.standing(), book.state(), "").orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "14, 5.4, RIGHT",
    "13.59, 5.4, RIGHT",
    "13.57, 5.4, LONGER",
    "14.41, 5.4, RIGHT",
    "14.43, 5.4, SHORTER",
    "14, 5.08, RIGHT",
    "14, 5.07, WIDER",
    "14, 5.72, RIGHT",
    "14, 5.73, NARROWER",
    "13, 6, LONGER NARROWER",
    "15, 5, SHORTER WIDER",
  })
  void measured_sizes_say_what_the_next_piece_should_be(
      double lengthMm, double widthMm, String verdicts) {
    assertThat(
            pieces().verdictOf(lengthMm, widthMm).stream()
                .map(Enum::name)
                .collect(Collectors.joining(" ")))
        .isEqualTo(verdicts);
  }

  @Test
  void each_piece_of_the_link_is_drawn_as_it_was_made() {
    OptionalDouble none = OptionalDouble.empty();
    for (double blankMm : List.of(36.0, 40.0)) {
      book.enter(
          new Fact.TestPieceTried(0.9, blankMm, Map.of(), none, none, none, List.of("longer"), ""));
    }
    book.enter(
        new Fact.TestPieceTried(
            0.9, 30, Map.of(), none, none, none, List.of("longer"), "", "", false, "other"));
    TestPieces pieces = pieces();
    assertThat(pieces.made()).hasSize(3);
    assertThat(pieces.made().get(1).orElseThrow().lengthMm())
        .isGreaterThan(pieces.made().get(0).orElseThrow().lengthMm());
    assertThat(pieces.made().get(2)).as("of another link").isEmpty();
    assertThat(pieces.wished()).isPresent();
    assertThat(pieces.proposed()).isPresent();
  }

  @Test
  void without_a_plan_or_a_pattern_test_pieces_teach_nothing() {
    JobBook bare = JobBook.of("scroll-and-ring");
    assertThat(TestPieces.of(bare.standing(), bare.state(), "")).isEmpty();
    JobBook plain =
        JobBook.scroll(
            Wishes.common()
                .without(WishKeys.LINK_PATTERN)
                .with(WishKeys.LINK_LENGTH, "14 mm")
                .texts());
    assertThat(plain.standing().counted().wish()).isPresent();
    assertThat(TestPieces.of(plain.standing(), plain.state(), "")).isEmpty();
  }
}
