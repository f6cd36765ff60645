package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is out of reason of a lot is asked before it is entered; what says nothing is refused. */
class DrawerCommandTest {
  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void threeMetresOfSterling() {
    line = new Commandline(folder);
    drawer(0, "--came", "March", "--wire", "0.9 mm", "--length", "3 m");
  }

  private String drawer(int exit, String... more) {
    String[] all = new String[more.length + 1];
    all[0] = "drawer";
    System.arraycopy(more, 0, all, 1, more.length);
    assertThat(line.run(all)).as(line.out() + line.err()).isEqualTo(exit);
    return exit == 0 ? line.out() : line.err();
  }

  @Test
  void a_count_far_above_or_below_the_books_is_asked_about() {
    // 3 m of 0.9 mm sterling weigh 19.8 g.
    assertThat(drawer(1, "--count", "March", "--mass", "198 g"))
        .contains("198", "the books say 19.77 g", "did more come?", "--even-so");
    assertThat(drawer(1, "--count", "March", "--length", "30 mm")).contains("is so much gone?");
    assertThat(drawer(0)).contains("3 m");
    assertThat(drawer(0, "--count", "March", "--length", "30 mm", "--even-so")).contains("30 mm");
    assertThat(drawer(0, "--count", "March", "--length", "29 mm")).contains("29 mm");
  }

  @Test
  void a_length_and_a_mass_that_are_not_of_one_wire_are_asked_about() {
    assertThat(drawer(1, "--count", "March", "--length", "2.9 m", "--mass", "9 g"))
        .contains("2.9 m of that wire weigh 19.11 g", "which is it?");
    assertThat(drawer(1, "--came", "April", "--wire", "1 mm", "--length", "2 m", "--mass", "1.6 g"))
        .contains("which is it?");
    assertThat(drawer(0)).doesNotContain("April");
    drawer(0, "--came", "April", "--wire", "1 mm", "--length", "2 m", "--mass", "16.4 g");
  }

  @Test
  void a_length_without_a_thickness_and_another_metal_under_one_name_are_refused() {
    assertThat(drawer(2, "--came", "Sheet", "--length", "20 mm")).contains("give its mass");
    assertThat(
            drawer(
                2, "--came", "March", "--metal", "copper", "--wire", "0.9 mm", "--length", "1 m"))
        .contains("“March” is sterling of 0.9 mm");
    drawer(0, "--came", "Strip", "--metal", "hard-silver", "--mass", "12 g");
    assertThat(drawer(2, "--count", "Strip", "--length", "20 mm")).contains("counted by its mass");
    assertThat(drawer(0)).contains("12 g", "3 m");
  }
}
