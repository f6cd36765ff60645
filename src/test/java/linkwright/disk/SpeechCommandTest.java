package linkwright.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command that nobody can start is told before it was needed. */
class SpeechCommandTest {
  @TempDir Path folder;

  private String trouble(String command) {
    return SpeechCommand.trouble(command, List.of(folder.toString())).orElse("");
  }

  private void program(String name) throws IOException {
    Path program = Files.createFile(folder.resolve(name));
    assertThat(program.toFile().setExecutable(true)).isTrue();
  }

  @Test
  void whatCanBeStartedIsRight() throws IOException {
    program("espeak-ng");
    assertThat(trouble("espeak-ng -s 150")).isEmpty();
    assertThat(trouble(folder.resolve("espeak-ng") + " -v en")).isEmpty();
    assertThat(trouble(" ")).isEmpty();
  }

  @Test
  void whatIsNotHereIsToldWithWhatIs() throws IOException {
    assertThat(trouble("please say it"))
        .contains("no program “please” here", "espeak-ng, spd-say", "none of them");
    program("espeak-ng");
    assertThat(trouble("loudly")).contains("there is espeak-ng");
    Files.createFile(folder.resolve("notes.txt"));
    assertThat(trouble("notes.txt")).as("no program").isNotEmpty();
  }
}
