package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.walk.Opening;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job begins with a plan that was saved to a file. */
class SavedPlanTest {
  private static final List<Fact> BEFORE = List.of(new Fact.JobOpened("Gate", "scroll-and-ring"));

  @TempDir private Path folder;
  private Home home;
  private Handbook handbook;

  @BeforeEach
  void aSavedPlan() throws IOException {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    Files.createDirectories(folder.resolve("plans"));
    PlanFile.write(
            folder.resolve("plans").resolve("gate.yaml"), Optional.empty(), Wishes.common().texts())
        .orThrow();
  }

  @Test
  void it_is_found_by_its_name_and_by_its_path_and_is_what_was_typed() {
    String whole = folder.resolve("plans").resolve("gate.yaml").toString();
    for (String typed : List.of("gate", "gate.yaml", whole)) {
      assertThat(SavedPlan.read(home, typed, BEFORE, handbook).orThrow().get(1))
          .isInstanceOfSatisfying(
              Fact.PlanSet.class,
              plan ->
                  assertThat(plan.wish())
                      .containsEntry(
                          WishKeys.FINISHED, Wishes.common().texts().get(WishKeys.FINISHED)));
    }
  }

  @Test
  void its_pattern_says_which_routine_unless_one_was_chosen() throws IOException {
    String oval = "oval";
    PlanFile.write(
            folder.resolve("plans").resolve("oval.yaml"),
            Optional.empty(),
            Wishes.common().with(WishKeys.LINK_PATTERN, oval).texts())
        .orThrow();
    Fact.JobOpened open = new Fact.JobOpened("Gate", "");
    String byFile =
        Standing.newJob(Wishes.common().with(WishKeys.LINK_PATTERN, oval).texts(), handbook)
            .course()
            .routine();
    assertThat(byFile).isNotEmpty().isNotEqualTo("scroll-and-ring");
    assertThat(SavedPlan.read(home, "oval", List.of(open), handbook).orThrow().get(0))
        .isEqualTo(new Fact.JobOpened("Gate", byFile));
    assertThat(SavedPlan.read(home, "oval", BEFORE, handbook).orThrow().get(0))
        .isEqualTo(BEFORE.get(0));
  }

  @Test
  void its_own_routine_goes_before_its_patterns_and_after_one_that_was_chosen() {
    PlanFile.write(
            folder.resolve("plans").resolve("cord.yaml"),
            Optional.of("rope"),
            Wishes.common()
                .with(WishKeys.LINK_PATTERN, "round")
                .without(WishKeys.RING_INSIDE, WishKeys.RING_OVAL)
                .texts())
        .orThrow();
    assertThat(
            SavedPlan.read(home, "cord", List.of(new Fact.JobOpened("Gate", "")), handbook)
                .orThrow()
                .get(0))
        .isEqualTo(new Fact.JobOpened("Gate", "rope"));
    assertThat(SavedPlan.read(home, "cord", BEFORE, handbook).orThrow().get(0))
        .isEqualTo(BEFORE.get(0));
  }

  @Test
  void what_does_not_fuse_is_not_begun_by_a_routine_that_fuses() throws IOException {
    Map<String, String> links = new HashMap<>(Wishes.common().texts());
    links.put(WishKeys.LINK_PATTERN, "round");
    links.keySet().removeIf(key -> key.startsWith("ring."));
    List<Fact> open = List.of(new Fact.JobOpened("Gate", ""));
    for (String metal : List.of("sterling", "fine-silver")) {
      links.put(WishKeys.METAL, metal);
      Path file = folder.resolve("plans").resolve(metal + ".yaml");
      PlanFile.write(file, Optional.empty(), links).orThrow();
    }
    assertThat(SavedPlan.read(home, "fine-silver", open, handbook).orThrow().get(0))
        .isEqualTo(new Fact.JobOpened("Gate", "loop-in-loop"));
    assertThat(SavedPlan.read(home, "sterling", BEFORE, handbook).problem()).isEmpty();
    assertThat(SavedPlan.read(home, "sterling", open, handbook).problem().orElse(""))
        .contains("not for its metal");
    String sterling = folder.resolve("plans").resolve("sterling.yaml").toString();
    assertThat(
            Opening.begin("Gate", Optional.empty(), Optional.of(sterling), Library.load(home))
                .problem()
                .orElse(""))
        .contains("not for its metal");
  }

  @Test
  void one_that_is_not_there_or_cannot_be_read_begins_nothing() throws IOException {
    Files.writeString(folder.resolve("plans").resolve("bad.yaml"), "format: 1\nwire: [");
    for (String typed : List.of("gat", "bad", "\0")) {
      Read<List<Fact>> read = SavedPlan.read(home, typed, BEFORE, handbook);
      assertThat(read.problem()).as(typed).isPresent();
    }
  }

  @Test
  void one_that_is_no_ordinary_file_is_there_but_no_plan() throws IOException {
    Path lies = Files.createDirectories(folder.resolve("plans").resolve("march.yaml"));
    for (String typed : List.of("march", "march.yaml", lies.toString())) {
      assertThat(SavedPlan.read(home, typed, BEFORE, handbook).problem().orElse(""))
          .isEqualTo("“" + typed + "” is a folder: name the plan file in it.");
    }
  }
}
