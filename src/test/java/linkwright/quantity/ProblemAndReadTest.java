package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemAndReadTest {
  @Test
  void aProblemIsOneSentenceAfterAnotherWithItsPlaceFirst() {
    assertThat(new Problem("my.yaml", 3, 7, "“sterlng” is not a metal", "Did you mean sterling?"))
        .extracting(Problem::sentence)
        .isEqualTo("my.yaml, line 3, column 7: “sterlng” is not a metal. Did you mean sterling?");
    assertThat(new Problem("my.yaml", 3, 0, "It ends too soon.", "").sentence())
        .isEqualTo("my.yaml, line 3: It ends too soon.");
    assertThat(new Problem("", 0, 0, "No wire", "Write one").sentence())
        .isEqualTo("No wire. Write one.");
  }

  @Test
  void aPlaceBeforeTheBeginningIsAProgrammersError() {
    assertThatThrownBy(() -> new Problem("a", -1, 0, "", ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aGoodReadingGoesOnAndABadOneStays() {
    Read<Integer> good = Read.good(2);
    Read<Integer> bad = Read.bad("no");
    assertThat(good.map(n -> n + 1)).isEqualTo(Read.good(3));
    assertThat(bad.map(n -> n + 1)).isEqualTo(Read.bad("no"));
    assertThat(good.flatMap(n -> Read.bad("later"))).isEqualTo(Read.bad("later"));
    assertThat(bad.flatMap(n -> Read.good(1))).isEqualTo(Read.bad("no"));
    assertThat(good.found()).contains(2);
    assertThat(bad.found()).isEmpty();
    assertThat(good.problem()).isEmpty();
    assertThat(bad.problem()).contains("no");
    assertThat(bad.orElse(9)).isEqualTo(9);
    assertThatThrownBy(bad::orThrow).hasMessage("no");
  }

  @Test
  void manyReadingsAreAllTheValuesOrAllTheSentences() {
    assertThat(Read.all(List.of(Read.good(1), Read.good(2)))).isEqualTo(Read.good(List.of(1, 2)));
    assertThat(Read.all(List.of(Read.bad("A."), Read.good(2), Read.bad("B."))))
        .isEqualTo(Read.bad("A. B."));
  }
}
