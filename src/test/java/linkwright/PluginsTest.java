package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The plugins that the build names are those that were looked at, as far as they lie in the local
 * repository. Maven 3.8 cannot be told their checksums, so it is told after they have run, and what
 * they bring with them is not told. After a change of a version, {@code -Dlibraries=write}.
 */
class PluginsTest {
  private static final Path WRITTEN_DOWN = Path.of("src", "test", "resources", "plugins.sha256");
  private static final Pattern NAMED =
      Pattern.compile(
          "(?:<groupId>([\\w.-]+)</groupId>\\s*)?<artifactId>([\\w.-]+)</artifactId>\\s*"
              + "<version>([\\w.$\\{}-]+)</version>");

  /** The local repository: a library's jar lies in it below its group, name and version. */
  private static Path repository() {
    Path jar =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .map(Path::of)
            .filter(path -> path.getFileName().toString().startsWith("assertj-core"))
            .findFirst()
            .orElseThrow();
    return jar.getParent().resolve("../../../..").normalize();
  }

  private static List<Path> plugins() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    List<Path> jars = new ArrayList<>();
    for (MatchResult each : NAMED.matcher(pom).results().toList()) {
      String group = each.group(1) == null ? "org.apache.maven.plugins" : each.group(1);
      String version = version(pom, each.group(3));
      Path folder =
          repository().resolve(group.replace('.', '/')).resolve(each.group(2)).resolve(version);
      if (Files.isDirectory(folder)) {
        try (Stream<Path> files = Files.list(folder)) {
          files.filter(file -> file.toString().endsWith(".jar")).forEach(jars::add);
        }
      }
    }
    return jars;
  }

  private static String version(String pom, String written) {
    Matcher named = Pattern.compile("\\$\\{(.*)}").matcher(written);
    return named.matches()
        ? pom.replaceAll("(?s).*<" + named.group(1) + ">(.*?)</" + named.group(1) + ">.*", "$1")
        : written;
  }

  @Test
  void areByteForByteThoseWrittenDown() throws IOException {
    List<String> found = Checksums.lines(plugins());
    if (System.getProperty("libraries", "").equals("write")) {
      Files.write(WRITTEN_DOWN, found);
    }
    assertThat(found).as("those that run the tests at least").hasSizeGreaterThan(5);
    assertThat(Files.readAllLines(WRITTEN_DOWN)).containsAll(found);
  }
}
