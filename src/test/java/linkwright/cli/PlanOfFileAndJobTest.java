package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.console.Exit;
import linkwright.coach.Bencher;
import linkwright.exchange.PlanFileText;
import linkwright.exchange.PlanYaml;
import linkwright.files.PlanFile;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.reckon.SeededWish;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;
import linkwright.standing.PlanDefaults;
import linkwright.standing.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** A plan file alone and the job that begins with it come to the same, hours and all. */
class PlanOfFileAndJobTest {
  private static final String PLAN =
      """
      format: 1
      job: Quay chain
      metal: sterling
      wire: 1.2 mm
      finished-length: 45 cm
      stock: [3 m]
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "link: {pattern: long, length: 15 mm, width: 6 mm}",
        "link: {pattern: long, length: 15 mm, width: 6 mm, repeat: 1 long + 3 round ring=5 mm}",
        "link: {pattern: long, blank: 38 mm, repeat: 1 long + 1 round ring=5 mm}\n"
            + "ring: {inside: 3.6 mm}",
        "link: {pattern: oval, length: 12 mm, width: 8 mm}\nring: {inside: 3 mm, at-ends: 4 mm}",
        "link: {pattern: round, length: 8 mm}\nring: {inside: 6 mm}",
        "link: {pattern: round, length: 8 mm, repeat: 2 round + 1 long length=14 mm}",
        "link: {pattern: eye, blank: 30 mm}",
        "link: {length: 15 mm, blank: 38 mm, repeat: 1 link + 1 round ring=5 mm}",
        "link: {length: 15 mm, blank: 38 mm}\nring: {inside: 3 mm}"
      })
  void they_agree(String link) {
    Commandline line = new Commandline(folder);
    Path file = line.file("quay.yaml", PLAN + link + "\n");
    Map<String, Object> alone = plan(line, file.toString());
    assertThat(alone).containsKeys("hours", "hours_again", "redos");
    // Whatever is asked first is confirmed: the form as it is.
    line.typing(List.of("=", "="), "walk", "--plain", "--new", "Q", "--plan", file.toString());
    assertThat(plan(line, "q")).as(line.out()).isEqualTo(alone);
  }

  private static final String ROUND = PLAN + "link: {pattern: round, formers: {ring: 10 mm}}\n";

  /** A rope of 3 mm rings; 0.7 of the wire's thickness each, as its routine says: derived. */
  @Test
  void they_agree_by_the_routine_that_the_file_names() {
    Commandline line = new Commandline(folder);
    String cord = PLAN.replace("1.2 mm", "0.9 mm") + "routine: rope\n";
    Path file = line.file("cord.yaml", cord + "link: {pattern: round, formers: {ring: 3 mm}}\n");
    Map<String, Object> alone = plan(line, file.toString());
    assertThat((Integer) alone.get("links")).isGreaterThan(600);
    // A link of 0.63 mm is lost in a doubt of 130 mm: one more is no choice.
    assertThat(alone.get("nearest").toString()).doesNotContain("one-fewer", "one-more");
    assertThat(line.err()).doesNotContain("names no routine", "do not pass");
    assertThat(line.run("plan", file.toString())).isEqualTo(Exit.GOOD);
    assertThat(line.out())
        .contains("Link adds", "One fewer: about as long", "One more: about as long")
        .doesNotContain("Link inside:");
    line.typing(List.of("=", "="), "walk", "--plain", "--new", "Q", "--plan", file.toString());
    assertThat(plan(line, "q")).as(line.out()).isEqualTo(alone);
    Path again = folder.resolve("again.yaml");
    assertThat(line.run("plan", "q", "--into", again.toString())).isEqualTo(Exit.GOOD);
    assertThat(again).content().contains("routine: \"rope\"");
    assertThat(line.run("plan", again.toString(), "--as", "yaml")).isEqualTo(Exit.GOOD);
    assertThat(line.out()).contains("\nlinks: " + alone.get("links") + "\n");
  }

  /** Sterling does not fuse: it is not silently taken for loop-in-loop. */
  @Test
  void a_file_without_a_routine_tells_what_it_was_reckoned_for() {
    Commandline line = new Commandline(folder);
    Path file = line.file("plain.yaml", ROUND);
    assertThat(line.run("plan", file.toString())).as(line.err()).isEqualTo(Exit.GOOD);
    assertThat(line.err())
        .contains("names no routine", "plain links, each hung in the next")
        .doesNotContain("is this right?");
    assertThat(line.out().replaceAll("\\s+", " "))
        .contains("Reckoned as plain links, each hung in the next", "figure-of-eight")
        .doesNotContain("oop-in-loop", "Usual loss: 8 %");
    Map<String, Object> values = plan(line, file.toString());
    assertThat(values).containsEntry("routine", "figure-of-eight");
    assertThat(values.get("remarks").toString()).contains("Reckoned as plain links");
    Path fine = line.file("fine.yaml", ROUND.replace("sterling", "fine-silver"));
    line.run("plan", fine.toString());
    assertThat(line.err()).contains("names no routine", "(loop-in-loop)");
    assertThat(line.out()).contains("Reckoned by the routine: Loop-in-loop");
  }

  /** What is named is what it is reckoned by; that it does not suit stands in the answer. */
  @Test
  void a_routine_that_does_not_suit_is_told_in_the_answer() {
    Commandline line = new Commandline(folder);
    Path loop = line.file("loop.yaml", ROUND + "routine: loop-in-loop\n");
    assertThat(line.run("plan", loop.toString())).as(line.err()).isEqualTo(Exit.GOOD);
    assertThat(line.out().replaceAll("\\s+", " "))
        .contains("This metal does not fuse to itself", "Reckoned as plain links", "Link inside")
        .doesNotContain("Reckoned by the routine");
    assertThat(line.run("plan", loop.toString(), "--as", "csv")).isEqualTo(Exit.GOOD);
    assertThat(line.out()).contains("This metal does not fuse to itself");
    String scrolls = PLAN + "link: {pattern: scroll, length: 14 mm}\n";
    Path rings = line.file("rope.yaml", scrolls + "ring: {inside: 3 mm}\nroutine: rope\n");
    assertThat(line.run("plan", rings.toString())).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("Leave the ring empty", ":8:");
    Path none = line.file("none.yaml", scrolls + "routine: rope\n");
    assertThat(line.run("plan", none.toString())).as(line.err()).isEqualTo(Exit.GOOD);
    assertThat(line.out().replaceAll("\\s+", " "))
        .contains("made for round links and not for scroll", "Reckoned as plain links")
        .doesNotContain("Link adds");
  }

  /** Whatever is made: a chain, or rings, a clasp, drawn wire. */
  @Test
  void the_plan_of_any_shipped_routine_is_read_from_its_file_as_it_was_written() {
    Handbook handbook = Bencher.SHELF;
    for (Routine routine : handbook.routines()) {
      Map<String, String> wish = wish(routine);
      Path file = folder.resolve(routine.id() + ".yaml");
      assertThat(PlanFile.write(file, Optional.of(routine.id()), wish).isGood()).isTrue();
      PlanFile read = PlanFile.read(file, Bencher.LIBRARY);
      assertThat(read.problems()).as(routine.id()).isEmpty();
      assertThat(read.texts()).isEqualTo(wish);
      assertThat(read.routine()).contains(routine.id());
      JobState opened = Bencher.with(opened(routine)).state();
      Fact kept = PlanDefaults.kept(wish, opened, handbook);
      Standing job = Bencher.with(opened(routine), kept).job().standing();
      JobState alone = Standing.newJob(read.texts(), handbook, read.routine().orElseThrow());
      assertThat(figures(Standing.of(alone, handbook))).as(routine.id()).isEqualTo(figures(job));
    }
  }

  @Test
  void what_a_job_of_rings_writes_is_planned_as_the_job_is() {
    Commandline line = new Commandline(folder);
    Path file = line.file("rings.yaml", "routine: jump-rings\npieces: 60\nwire: 1 mm\n");
    line.typing(List.of("=", "="), "walk", "--plain", "--new", "R", "--plan", file.toString());
    Path again = folder.resolve("again.yaml");
    String walked = line.out();
    assertThat(line.run("plan", "r", "--into", again.toString())).as(walked).isZero();
    assertThat(line.out()).contains("Wanted: 60");
    assertThat(line.run("plan", "r", "--as", "yaml")).as(line.err()).isZero();
    Map<String, Object> job = new Yaml().load(line.out());
    assertThat(line.run("plan", again.toString(), "--as", "yaml")).as(line.err()).isZero();
    Map<String, Object> alone = new Yaml().load(line.out());
    job.remove("job");
    alone.remove("job");
    assertThat(alone).isEqualTo(job).containsEntry("pieces", 60).containsEntry("wire_mm", 1.0);
    // Of a chain nothing is counted in pieces.
    Path chain = line.file("chain.yaml", ROUND + "pieces: 60\n");
    assertThat(line.run("plan", chain.toString())).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("pieces", ":8:");
  }

  private static Fact opened(Routine routine) {
    return new Fact.JobOpened("", routine.id());
  }

  private static Map<String, Object> figures(Standing standing) {
    return standing.counted().part().isPresent()
        ? PlanYaml.ofPieces("", standing)
        : PlanYaml.of("", standing, List.of(), Bencher.SHELF.reference());
  }

  private static Map<String, String> wish(Routine routine) {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put(WishKeys.METAL, "sterling");
    wish.put(WishKeys.WIRE, "0.9 mm");
    if (routine.makes() == Makes.CHAIN) {
      wish.put(WishKeys.LINK_PATTERN, routine.patterns().get(0));
      wish.put(WishKeys.LINK_BLANK, "38.1 mm");
      if (routine.ends() == ChainEnds.RINGS) {
        wish.put(WishKeys.RING_INSIDE, "3 mm");
        wish.put(WishKeys.RING_OVAL, "2.4 mm");
      }
      wish.put(WishKeys.FINISHED, "20 cm");
    } else {
      wish.put(WishKeys.LINK_BLANK, "38.1 mm");
      wish.put(WishKeys.RING_INSIDE, "3 mm");
      wish.put(WishKeys.USUAL_LOSS, "5 %");
      wish.put(PartPlan.PIECES, "60");
    }
    return wish;
  }

  @Test
  void a_routine_that_there_is_not_or_that_makes_no_chain_is_told_with_its_line() {
    Commandline line = new Commandline(folder);
    for (String routine : List.of("ropes", "clasp-box")) {
      Path file = line.file("no.yaml", ROUND + "routine: " + routine + "\n");
      assertThat(line.run("plan", file.toString())).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("“" + routine + "”", ":8:");
    }
  }

  /** In her words too: no figure is told by one with another last digit than by the other. */
  @ParameterizedTest
  @CsvSource({"metric,1", "inch,81"})
  void they_tell_the_same_to_the_last_digit(String units, long first) {
    Commandline line = new Commandline(folder);
    line.file("home/settings.yaml", "format: 1\nunits: " + units + "\n");
    int told = 0;
    for (long seed = first; seed < first + 9; seed++) {
      Map<String, String> wish =
          new LinkedHashMap<>(
              units.equals("inch") ? SeededWish.inInches(seed) : SeededWish.of(seed));
      wish.put(WishKeys.STOCK, units.equals("inch") ? "3 ft, 11.375 in" : "1 m, 289 mm");
      Path file = line.file(seed + ".yaml", PlanFileText.of(Optional.empty(), wish));
      if (line.run("plan", file.toString()) == Exit.GOOD) {
        String alone = line.out();
        String job = "q" + seed;
        line.typing(List.of("=", "="), "walk", "--plain", "--new", job, "--plan", file.toString());
        if (line.err().contains("The plan names no routine")) {
          // Reckoned it can be; nobody is led through the steps of other links.
          continue;
        }
        assertThat(line.run("plan", job)).as(line.err()).isEqualTo(Exit.GOOD);
        assertThat(line.out().replaceFirst("(?s)^.*?\n\n", ""))
            .as("seed " + seed + " " + wish)
            .isEqualTo(alone.replaceFirst("(?s)^.*?\n\n", ""));
        told++;
      }
    }
    assertThat(told).isGreaterThan(4);
  }

  private static Map<String, Object> plan(Commandline line, String what) {
    assertThat(line.run("plan", what, "--as", "yaml")).as(line.err()).isEqualTo(Exit.GOOD);
    Map<String, Object> values = new Yaml().load(line.out());
    assertThat(values.remove("job")).as(what).isEqualTo(what.equals("q") ? "Q" : "Quay chain");
    return values;
  }
}
