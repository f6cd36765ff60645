package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script, with a Java that only says what it was asked. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(60)
class LaunchTest {
  /**
   * Lays the archive when asked to; else tells its arguments, once a new archive is there if it is
   * to wait for one.
   */
  private static final String JAVA =
      """
      #!/bin/sh
      for each; do
          case $each in
              -XX:ArchiveClassesAtExit=*)
                  echo tried >> "$JAVA_HOME/tries"
                  [ "${LAYS_NONE:-}" ] || echo laid > "${each#*=}"
                  exit 0 ;;
          esac
      done
      if [ "${WAIT_IN:-}" ]; then
          until [ "$(find "$WAIT_IN" -name '*.jsa' -newer "$JAVA_HOME/old" 2>/dev/null)" ]; do :; done
      fi
      for each; do echo "$each"; done
      """;

  private static final Instant OLD = Instant.parse("1999-01-01T00:00:00Z");

  /** As an install that came from elsewhere may be dated: in the future by this machine's clock. */
  private static final Instant BUILT = Instant.parse("2222-02-02T02:02:02Z");

  @TempDir Path folder;
  private Path script;
  private String laysNone = "";

  @BeforeEach
  void layTheProgramOut() throws IOException {
    script = Files.copy(Path.of("src/main/launch/linkwright"), folder.resolve("linkwright"));
    Files.setLastModifiedTime(
        Files.writeString(folder.resolve("linkwright.jar"), ""), FileTime.from(BUILT));
    Path java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
    Files.setLastModifiedTime(Files.writeString(folder.resolve("jdk/old"), ""), FileTime.from(OLD));
    Files.writeString(java, JAVA);
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @Test
  void handsEveryArgumentOnAsItIs() throws Exception {
    assertThat(start(folder.resolve("no\ncache"), "", "--home", "a b", "", "*"))
        .endsWith("-jar", folder.resolve("linkwright.jar").toString(), "--home", "a b", "", "*")
        .noneMatch(each -> each.contains("SharedArchive"));
  }

  @Test
  void usesClassesLaidReadyByTheFirstStartUntilTheJarIsReplaced() throws Exception {
    Path cache = folder.resolve("cache");
    String laidIn = cache.resolve("linkwright").toString();
    assertThat(start(cache, laidIn, "jobs")).noneMatch(each -> each.contains("SharedArchive"));
    List<Path> laid;
    try (Stream<Path> files = Files.list(cache.resolve("linkwright"))) {
      laid = files.toList();
    }
    assertThat(laid).hasSize(1);
    assertThat(start(cache, "", "jobs")).contains("-XX:SharedArchiveFile=" + laid.get(0));

    Files.setLastModifiedTime(laid.get(0), FileTime.from(Instant.EPOCH));
    assertThat(start(cache, laidIn, "jobs")).noneMatch(each -> each.contains("SharedArchive"));
    assertThat(start(cache, "", "jobs")).contains("-XX:SharedArchiveFile=" + laid.get(0));
  }

  @Test
  void laysThemAnewForAJarOfAnEarlierDate() throws Exception {
    Path cache = folder.resolve("cache");
    String laidIn = cache.resolve("linkwright").toString();
    start(cache, laidIn, "jobs");
    assertThat(start(cache, "", "jobs")).anyMatch(each -> each.contains("SharedArchive"));
    FileTime earlier = FileTime.from(OLD.plusSeconds(9));
    Files.setLastModifiedTime(folder.resolve("linkwright.jar"), earlier);
    assertThat(start(cache, "", "jobs")).noneMatch(each -> each.contains("SharedArchive"));
    Path laid;
    try (Stream<Path> files = Files.list(cache.resolve("linkwright"))) {
      laid = files.filter(each -> each.toString().endsWith(".jsa")).findFirst().orElseThrow();
    }
    while (!Files.getLastModifiedTime(laid).equals(earlier)) {
      Thread.sleep(10);
    }
    assertThat(start(cache, "", "jobs")).contains("-XX:SharedArchiveFile=" + laid);
  }

  @Test
  void triesOnceWhereJavaLaysNone() throws Exception {
    Path cache = folder.resolve("cache");
    laysNone = "yes";
    start(cache, cache.resolve("linkwright").toString(), "jobs");
    for (int i = 0; i < 3; i++) {
      assertThat(start(cache, "", "jobs")).noneMatch(each -> each.contains("SharedArchive"));
      Thread.sleep(200);
    }
    assertThat(folder.resolve("jdk/tries")).hasContent("tried\n");
  }

  @Test
  void startsWhereNothingCanBeLaidReady() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertThat(start(file, "", "jobs")).endsWith("jobs");
  }

  private List<String> start(Path cache, String waitIn, String... arguments) throws Exception {
    ProcessBuilder builder = new ProcessBuilder("sh", script.toString());
    builder.command().addAll(List.of(arguments));
    builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    builder.environment().put("WAIT_IN", waitIn);
    builder.environment().put("LAYS_NONE", laysNone);
    builder.environment().remove("LINKWRIGHT_JAVA_OPTIONS");
    Process process = builder.redirectErrorStream(true).start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(told).isZero();
    return told.lines().toList();
  }
}
