package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainWalkTest {
  private static final String PLAN =
      """
      format: 1
      job: Ferry bell pull
      metal: copper
      wire: 0.8 mm
      link: {pattern: scroll, length: 24 mm, width: 8 mm}
      ring: {inside: 4 mm}
      finished-length: 12 cm
      clasp: {length: 15 mm, mass: 1.5 g}
      stock: [1.5 m]
      """;

  private static final List<String> BEFORE_THE_BENCH =
      List.of(
          "log length 24.1 mm; width 8 mm; next one right",
          "sample",
          "trial",
          "log links 2; rings 3; hung 58 mm",
          "follow",
          "bench");

  private static final List<String> AFTER_THE_BENCH =
      List.of(
          "weigh chain 15 g; length 12.1 cm; filings 0.4 g",
          "close",
          "start with the longer blank",
          "",
          "quit");

  @TempDir private Path folder;

  private Path plan(Commandline line) {
    return line.file("ferry.yaml", PLAN);
  }

  @Test
  void a_new_job_is_walked_to_its_close() throws IOException {
    Commandline line = new Commandline(folder);
    Jeweller jeweller = new Jeweller(BEFORE_THE_BENCH, AFTER_THE_BENCH, Integer.MAX_VALUE);

    int exit =
        line.talking(
            jeweller,
            "walk",
            "--plain",
            "--new",
            "Ferry bell pull",
            "--plan",
            plan(line).toString());
    Files.writeString(Path.of("/tmp/p-walk.txt"), line.out() + jeweller.typed());

    assertThat(exit).isZero();
    assertThat(line.err()).isEmpty();
    assertThat(line.out()).contains("Entered: job closed: start with the longer blank.");
  }
}
