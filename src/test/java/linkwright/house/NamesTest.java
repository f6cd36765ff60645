package linkwright.house;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NamesTest {
  @Test
  void one_name_is_one_class() throws IOException {
    Exceptions.of("doubled-names").areAllThatIsFound(doubled());
  }

  @Test
  void one_name_is_one_file_of_program_and_tests() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      Map<String, Long> byName =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".java") && !name.equals("package-info.java"))
              .collect(groupingBy(name -> name, TreeMap::new, counting()));
      assertThat(byName).hasSizeGreaterThan(1000);
      byName.values().removeIf(many -> many == 1);
      assertThat(byName).isEmpty();
    }
  }

  /**
   * Names of files that stand twice, or that a class inside another file has too, unless nobody
   * outside that file can see it. Names inside two files alone are told apart by what they are in.
   */
  private static List<String> doubled() {
    Map<String, List<JavaClass>> byName =
        Program.CLASSES.stream()
            .filter(NamesTest::isSeen)
            .collect(groupingBy(JavaClass::getSimpleName, TreeMap::new, toList()));
    assertThat(byName).hasSizeGreaterThan(300);
    List<String> doubled = new ArrayList<>();
    byName.forEach(
        (name, types) -> {
          if (types.size() > 1 && types.stream().anyMatch(JavaClass::isTopLevelClass)) {
            doubled.add(name + " x" + types.size());
          }
        });
    return doubled;
  }

  private static boolean isSeen(JavaClass type) {
    return !type.isAnonymousClass()
        && !type.isLocalClass()
        && !type.getSimpleName().equals("package-info")
        && !Modifier.isPrivate(type.reflect().getModifiers());
  }
}
