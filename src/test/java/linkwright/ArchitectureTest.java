package linkwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linkwright.fit.Fit;
import linkwright.link.BendStep;
import linkwright.link.BendSteps;
import linkwright.link.CentreLine;
import linkwright.link.Eye;
import linkwright.link.Formed;
import linkwright.link.Pattern;
import linkwright.link.Point;
import linkwright.link.UsualSizes;
import linkwright.plan.LinkInHands;
import linkwright.plan.Planning;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which room knows which, and what the core keeps away from. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("linkwright");

  /** Room → the rooms it may know, besides itself. */
  private static final Map<String, Set<String>> KNOWS = new LinkedHashMap<>();

  /** The rooms without file, thread, clock, chance or any library. */
  private static final List<String> CORE =
      List.of(
          "quantity",
          "reference",
          "text",
          "wire",
          "link",
          "fit",
          "cutting",
          "yield",
          "routine",
          "bench",
          "job",
          "plan",
          "hands",
          "drawer",
          "standing",
          "reckon",
          "lesson",
          "exchange",
          "coach",
          "view",
          "plain");

  static {
    room("text");
    room("quantity");
    room("reference", "quantity");
    room("wire", "quantity", "reference");
    room("link", "quantity", "wire");
    room("fit", "quantity", "link", "wire");
    room("cutting", "quantity");
    room("yield");
    room("bench", "quantity");
    room("routine", "quantity", "reference", "text");
    room("job", "quantity", "routine");
    Set<String> planned =
        Set.of("quantity", "reference", "wire", "link", "fit", "cutting", "yield");
    room("plan", planned);
    Set<String> known = with(planned, "plan", "routine", "job", "text", "bench", "hands", "drawer");
    room("drawer", "quantity", "reference", "wire", "job", "routine");
    room("hands", with(planned, "plan", "routine", "job"));
    room("standing", known);
    Set<String> counted = with(known, "standing");
    room("lesson", "quantity", "reference", "wire", "link", "routine", "job");
    room("reckon", counted);
    room("exchange", counted);
    Set<String> reckoned = with(counted, "reckon", "lesson", "exchange");
    room("coach", reckoned);
    room("view", reckoned, "coach");
    room("plain", reckoned, "coach");
    Set<String> core = with(reckoned, "coach", "view");
    room("terminal", core);
    room("disk");
    room("files", counted, "disk", "exchange");
    room("books.facts", "quantity", "routine", "job");
    room("books", counted, "disk", "exchange", "files", "books.facts");
    Set<String> outside = with(core, "disk", "files", "books", "terminal");
    room("shell", outside, "plain");
    room("schema", core, "files", "books.facts");
    room("cli.console", outside, "shell", "plain");
    room("cli.walk", outside, "shell", "cli.console", "plain");
    room("cli", outside, "shell", "cli.console", "cli.walk", "plain", "schema");
  }

  /** Copying arrays is the one thing that System does without looking at the world. */
  private static final DescribedPredicate<JavaAccess<?>> OF_THE_SYSTEM =
      new DescribedPredicate<>("is of System") {
        @Override
        public boolean test(JavaAccess<?> access) {
          return access.getTargetOwner().isEquivalentTo(System.class)
              && !access.getName().equals("arraycopy");
        }
      };

  private static void room(String name, String... knows) {
    KNOWS.put(name, Set.of(knows));
  }

  private static void room(String name, Set<String> knows, String... more) {
    KNOWS.put(name, with(knows, more));
  }

  private static Set<String> with(Set<String> some, String... more) {
    Set<String> all = new HashSet<>(some);
    all.addAll(Arrays.asList(more));
    return Set.copyOf(all);
  }

  private static String roomOf(JavaClass type) {
    String name = type.getPackageName();
    return name.startsWith("linkwright.") ? name.substring("linkwright.".length()) : "";
  }

  private static Set<String> rooms() {
    return PROGRAM.stream()
        .map(ArchitectureTest::roomOf)
        .filter(room -> !room.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The room of the order that this one is or lies in; a package inside a room has no own line. */
  private static String inTheOrder(String room) {
    String found = room;
    while (!KNOWS.containsKey(found) && found.contains(".")) {
      found = found.substring(0, found.lastIndexOf('.'));
    }
    return found;
  }

  @Test
  void every_room_has_its_place_in_the_order() {
    assertThat(KNOWS.keySet())
        .containsAll(rooms().stream().map(ArchitectureTest::inTheOrder).toList());
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_knows_only_the_rooms_before_it(String room) {
    Set<String> allowed = with(KNOWS.get(inTheOrder(room)), inTheOrder(room));
    classes()
        .that()
        .resideInAPackage("linkwright." + room)
        .should()
        .onlyDependOnClassesThat(
            new DescribedPredicate<JavaClass>("are in " + new TreeSet<>(allowed) + " or outside") {
              @Override
              public boolean test(JavaClass type) {
                boolean ours = type.getPackageName().startsWith("linkwright");
                return !ours || allowed.contains(inTheOrder(roomOf(type)));
              }
            })
        .check(PROGRAM);
  }

  /**
   * Drawings take a link's shape from its room; readings and wordings have no figure of their own.
   */
  private static final Set<Class<?>> SHAPES =
      Set.of(
          Formed.class,
          Pattern.class,
          UsualSizes.class,
          Point.class,
          CentreLine.class,
          Eye.class,
          BendStep.class,
          BendSteps.class);

  private static final DescribedPredicate<JavaClass> RECKONS =
      new DescribedPredicate<>("reckon") {
        @Override
        public boolean test(JavaClass type) {
          String room = roomOf(type);
          boolean sum =
              room.equals("link")
                  && SHAPES.stream().noneMatch(type::isEquivalentTo)
                  && !type.isEnum();
          boolean hands = type.isEquivalentTo(Fit.class);
          boolean plans =
              type.isEquivalentTo(Planning.class) || type.isEquivalentTo(LinkInHands.class);
          return Set.of("wire", "cutting", "yield").contains(room) || sum || hands || plans;
        }
      };

  @ParameterizedTest
  @ValueSource(strings = {"coach", "view", "plain", "cli", "shell", "terminal"})
  void what_shows_figures_reckons_none(String room) {
    noClasses()
        .that()
        .resideInAPackage("linkwright." + room + "..")
        .should()
        .dependOnClassesThat(RECKONS)
        .check(PROGRAM);
  }

  @ParameterizedTest
  @MethodSource("core")
  void the_core_has_no_file_no_thread_no_process_and_no_library(String room) {
    noClasses()
        .that()
        .resideInAPackage("linkwright." + room + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.io..",
            "java.nio..",
            "java.net..",
            "java.util.concurrent..",
            "com.googlecode..",
            "org.yaml..",
            "picocli..")
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(Thread.class, Process.class, ProcessBuilder.class, Runtime.class)
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  @ParameterizedTest
  @MethodSource("core")
  void the_core_is_told_the_time_and_has_no_chance_of_its_own(String room) {
    noClasses()
        .that()
        .resideInAPackage("linkwright." + room + "..")
        .should()
        .callMethod(Instant.class, "now")
        .orShould()
        .callMethod(LocalDate.class, "now")
        .orShould()
        .callMethod(LocalTime.class, "now")
        .orShould()
        .callMethod(LocalDateTime.class, "now")
        .orShould()
        .callMethod(ZonedDateTime.class, "now")
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(Clock.class, InstantSource.class, Random.class)
        .orShould()
        .accessTargetWhere(OF_THE_SYSTEM)
        .orShould()
        .callMethod(Math.class, "random")
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  static List<String> core() {
    return CORE;
  }

  @Nested
  class Libraries {
    @Test
    void lanterna_is_known_to_the_terminal_alone() {
      onlyIn("com.googlecode..", "terminal");
    }

    @Test
    void snakeyaml_is_known_to_files_and_books_alone() {
      onlyIn("org.yaml..", "files", "books");
    }

    @Test
    void picocli_is_known_to_the_commands_alone() {
      noClasses()
          .that()
          .resideOutsideOfPackages("linkwright.cli..", "linkwright")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .check(PROGRAM);
    }

    private void onlyIn(String library, String... rooms) {
      noClasses()
          .that()
          .resideOutsideOfPackages(
              Arrays.stream(rooms).map(room -> "linkwright." + room + "..").toArray(String[]::new))
          .should()
          .dependOnClassesThat()
          .resideInAPackage(library)
          .check(PROGRAM);
    }
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void every_room_says_what_it_is_for(String room) throws Exception {
    Path said = Path.of("src/main/java/linkwright", room.split("\\.")).resolve("package-info.java");
    assertThat(said).exists();
    assertThat(Files.readString(said)).contains("/**", "null", "@link");
  }

  @Test
  void what_another_room_need_not_see_is_final_or_sealed_or_a_record() {
    assertThat(
            PROGRAM.stream()
                .filter(type -> !type.isInterface() && !type.isEnum() && !type.isAnonymousClass())
                .filter(type -> !type.getModifiers().contains(JavaModifier.FINAL))
                .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
                .filter(type -> !type.reflect().isSealed())
                .filter(type -> type.getSource().isPresent() && type.isTopLevelClass())
                .map(JavaClass::getName)
                .filter(name -> !name.endsWith("package-info"))
                .toList())
        .isEmpty();
  }
}
