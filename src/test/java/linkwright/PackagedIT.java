package linkwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What {@code mvn package} lays down is whole: program, libraries, licences, bill of materials. */
class PackagedIT {
  private static final Path JAR = Path.of(System.getProperty("linkwright.jar"));
  private static final Path FOLDER = JAR.getParent();
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private static List<Path> libraries() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER.resolve("lib"))) {
      return files.sorted().toList();
    }
  }

  private static String inTheJar(String name) throws IOException {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      byte[] bytes = jar.getInputStream(jar.getJarEntry(name)).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  @Test
  void the_libraries_beside_it_are_those_written_down() throws IOException {
    assertThat(libraries()).isNotEmpty();
    assertThat(Files.readAllLines(LibrariesTest.WRITTEN_DOWN))
        .containsAll(Checksums.lines(libraries()));
  }

  @Test
  void licences_and_notices_stand_in_the_jar_and_beside_lib_alike() throws IOException {
    for (String name :
        List.of("LICENSE", "THIRD-PARTY.txt", "licenses/LGPL-3.0.txt", "licenses/GPL-3.0.txt")) {
      assertThat(inTheJar("META-INF/" + name)).isEqualTo(Files.readString(FOLDER.resolve(name)));
    }
    assertThat(inTheJar("META-INF/LICENSE")).contains("Apache License", "Version 2.0");
    assertThat(inTheJar("META-INF/licenses/LGPL-3.0.txt"))
        .contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 3");
    assertThat(inTheJar("META-INF/licenses/GPL-3.0.txt"))
        .contains("GNU GENERAL PUBLIC LICENSE", "Version 3");
  }

  @Test
  void every_library_has_its_notice_and_no_other_has() throws IOException {
    List<String> noticed =
        Files.readAllLines(FOLDER.resolve("THIRD-PARTY.txt")).stream()
            .filter(line -> line.matches("\\S+\\.jar"))
            .sorted()
            .toList();
    assertThat(libraries().stream().map(file -> file.getFileName().toString()).toList())
        .isEqualTo(noticed);
  }

  @Test
  void the_bill_of_materials_names_every_library_with_its_licence() throws IOException {
    // Its plugin does nothing under Maven's own -o; without the network it works.
    assumeThat(System.getProperty("linkwright.offline")).isNotEqualTo("offline: true");
    String bill = Files.readString(FOLDER.resolve("linkwright-bom.json"));
    for (Path library : libraries()) {
      String file = library.getFileName().toString();
      String name = file.substring(0, file.lastIndexOf('-'));
      String version = file.substring(name.length() + 1, file.length() - ".jar".length());
      assertThat(bill).containsPattern("/" + name + "@" + Pattern.quote(version));
      String sum = Checksums.lines(List.of(library)).get(0).substring(0, 64);
      assertThat(bill).as(name).contains(sum);
    }
    assertThat(bill).contains("\"Apache-2.0\"").containsPattern("LGPL|Lesser General Public");
  }

  @Test
  void the_manual_page_has_a_section_for_every_command() throws Exception {
    List<String> page = Files.readAllLines(FOLDER.resolve("linkwright.1"));
    assertThat(page.get(0)).startsWith(".TH LINKWRIGHT 1 ");
    List<String> listed =
        Pattern.compile("(?m)^  ([a-z-]+) {2,}\\S")
            .matcher(ran(JAVA, "-jar", JAR.toString(), "--help").split("Commands:", 2)[1])
            .results()
            .map(found -> found.group(1))
            .toList();
    assertThat(listed).hasSizeGreaterThan(20).contains("plan", "reckon");
    for (String command : listed) {
      assertThat(page).contains(".SS linkwright " + command.replace("-", "\\-"));
    }
    for (String sum : List.of("ring", "blank", "chain")) {
      assertThat(page).contains(".SS linkwright reckon " + sum);
    }
    assertThat(page).contains(".SH NAME", ".SH OPTIONS", ".SH FILES", ".SH EXIT STATUS");
  }

  @Test
  void the_manual_page_is_set_without_a_warning() throws Exception {
    assumeThat(Files.isExecutable(Path.of("/usr/bin/groff"))).isTrue();
    String set =
        ran(
            "/usr/bin/groff",
            "-man",
            "-Tascii",
            "-ww",
            "-P-cbou",
            FOLDER.resolve("linkwright.1").toString());
    assertThat(set).doesNotContain("warning", "error:").contains("EXIT STATUS");
  }

  /** What a program says, errors too, once it ended well. */
  private static String ran(String... words) throws Exception {
    Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(told).isZero();
    return told;
  }

  @Test
  void the_jar_tells_the_version_of_the_build_file() throws Exception {
    String told = ran(JAVA, "-jar", JAR.toString(), "--version");
    String version = told.strip().substring("linkwright ".length());
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<artifactId>linkwright</artifactId>\n  <version>" + version + "<");
  }
}
