package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class ShippedFromJarTest {
  @TempDir Path folder;

  @Test
  void theDataAreFoundInAJarAsInTheBuildsFolder() throws Exception {
    String fromFolder = whatAProgramFinds(System.getProperty("java.class.path"));
    String fromJar = whatAProgramFinds(classPathWithJar());
    assertThat(fromJar).isEqualTo(fromFolder).contains("scroll-and-ring", "torch", "hook-link");
  }

  private String classPathWithJar() throws IOException {
    Path classes = Path.of("target", "classes").toAbsolutePath();
    // A blank in the name: such a folder is not rare, and its address is written otherwise.
    Path jar = Files.createDirectories(folder.resolve("my tools")).resolve("linkwright.jar");
    pack(classes, jar);
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(part -> Path.of(part).toAbsolutePath().equals(classes) ? jar.toString() : part)
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static void pack(Path classes, Path jar) throws IOException {
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out);
        Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        packed.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
        packed.write(Files.readAllBytes(file));
        packed.closeEntry();
      }
    }
  }

  private String whatAProgramFinds(String classPath) throws Exception {
    Process child =
        new ProcessBuilder(
                List.of(
                    ProcessHandle.current().info().command().orElse("java"),
                    "-XX:TieredStopAtLevel=1",
                    "-cp",
                    classPath,
                    LibraryProcess.class.getName(),
                    folder.resolve("home").toString()))
            .redirectErrorStream(true)
            .start();
    String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(child.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(child.exitValue()).as(said).isZero();
    return said;
  }
}
