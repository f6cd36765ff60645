package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import linkwright.files.Home;
import linkwright.job.EntryId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeviceIdTest {
  @TempDir Path folder;

  private String id(String state, String machine, String home) {
    return new DeviceId(folder.resolve(state), machine).of(new Home(folder.resolve(home)), "bench");
  }

  @Test
  void staysTheSameForOneMachineAndHome() {
    String first = id("state", "m1", "home");
    assertThat(first).matches("bench-[a-z0-9]{8}");
    assertThat(id("state", "m1", "home")).isEqualTo(first);
  }

  @Test
  void isAnotherForACopiedHomeAndForAnotherMachine() throws IOException {
    String first = id("state", "m1", "home");
    assertThat(id("state", "m1", "copy")).as("copied").isNotEqualTo(first);
    assertThat(id("other", "m1", "home")).as("synced to another user's state").isNotEqualTo(first);
    Files.createDirectories(folder.resolve("clone"));
    Files.copy(folder.resolve("state/devices.yaml"), folder.resolve("clone/devices.yaml"));
    assertThat(id("clone", "m2", "home")).as("a whole disk cloned").isNotEqualTo(first);
  }

  @Test
  void isAnotherEachTimeWhereItCannotBeKeptAndStopsNothing() throws IOException {
    Files.writeString(folder.resolve("state"), "a file");
    assertThat(id("state", "m1", "home")).isNotEqualTo(id("state", "m1", "home"));
  }

  @Test
  void isShownWithoutWhatOnlyTellsItApart() {
    EntryId entry = new EntryId(id("state", "m1", "home"), 7);
    assertThat(entry).hasToString("bench-7");
    assertThat(EntryId.parse(entry.written())).contains(entry);
    assertThat(new EntryId("anna-computer", 3)).hasToString("anna-computer-3");
  }

  @Test
  void isKeptWhereTheSystemKeepsWhatBelongsToOneMachine() {
    Path user = folder.resolve("user");
    assertThat(DeviceId.stateFolder(Map.of("XDG_STATE_HOME", "/var/x"), user))
        .isEqualTo(Path.of("/var/x/linkwright"));
    assertThat(DeviceId.stateFolder(Map.of(), user))
        .isEqualTo(user.resolve(".local/state/linkwright"));
  }
}
