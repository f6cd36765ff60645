package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemPlaceTest {
  private static Problem whole(String wrong) {
    return new Problem("my.yaml", 0, 0, wrong, "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"my.yaml is empty", "There is no my.yaml", "No “a” in my.yaml: none"})
  void a_sentence_that_names_its_file_is_not_told_it_again(String wrong) {
    assertThat(whole(wrong).namesFile()).isTrue();
    assertThat(whole(wrong).sentence()).isEqualTo(wrong + ".");
  }

  @ParameterizedTest
  @ValueSource(strings = {"The file is empty", "Not-my.yaml is there", "my.yaml.bak is there"})
  void another_name_is_not_its_own(String wrong) {
    assertThat(whole(wrong).namesFile()).isFalse();
    assertThat(whole(wrong).sentence()).isEqualTo("my.yaml: " + wrong + ".");
  }

  @Test
  void a_place_in_the_file_is_told_although_the_sentence_names_the_file() {
    Problem problem = new Problem("my.yaml", 2, 0, "my.yaml says so twice", "");
    assertThat(problem.namesFile()).isFalse();
    assertThat(problem.sentence()).isEqualTo("my.yaml, line 2: my.yaml says so twice.");
  }

  @Test
  void a_place_without_a_file_is_its_line() {
    assertThat(new Problem("", 4, 2, "", "").place()).isEqualTo("line 4, column 2");
    assertThat(new Problem("a", 0, 2, "", "").place()).isEqualTo("a");
    assertThat(new Problem("", 0, 0, "a b", "").namesFile()).isFalse();
  }

  @Test
  void the_same_trouble_in_a_file_of_another_name() {
    assertThat(new Problem("a", 3, 7, "wrong", "right").in("b"))
        .isEqualTo(new Problem("b", 3, 7, "wrong", "right"));
  }

  @Test
  void how_many_more_there_are() {
    assertThat(Problem.more("a", 1).sentence())
        .isEqualTo("a: One problem more. Mend these first, then check again.");
    assertThat(Problem.more("a", 7).wrong()).isEqualTo("7 problems more.");
    assertThat(Problem.more("a", 7).stands()).isEqualTo(7);
  }
}
