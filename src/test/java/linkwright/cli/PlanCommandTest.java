package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import linkwright.cli.console.Exit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

class PlanCommandTest {
  private static final String PLAN =
      """
      format: 1
      job: Harbour watch chain
      metal: sterling
      wire: 1.1 mm
      link: {pattern: oval, length: 12 mm, width: 8 mm}
      ring: {inside: 3 mm}
      finished-length: 24 cm
      clasp: {length: 12 mm, mass: 1.1 g}
      stock: [2 m]
      """;

  @TempDir private Path folder;
  private Commandline line;

  @BeforeEach
  void begin() {
    line = new Commandline(folder);
  }

  private int plan(String text, String... more) {
    String file = line.file("watch.yaml", text).toString();
    String[] all = new String[more.length + 2];
    all[0] = "plan";
    all[1] = file;
    System.arraycopy(more, 0, all, 2, more.length);
    return line.run(all);
  }

  @Test
  void of_a_job_without_a_plan_nothing_is_written() {
    line.typing(List.of("quit"), "walk", "--plain", "--new", "Q");
    Path into = folder.resolve("q-plan.yaml");
    assertThat(line.run("plan", "q", "--into", into.toString())).isEqualTo(Exit.PROBLEMS);
    assertThat(line.err()).contains("This job has no plan yet");
    assertThat(into).doesNotExist();
  }

  private static String with(String key, String value) {
    return PLAN.replaceFirst("(?m)^" + key + ":.*$", key + ": " + value);
  }

  /** Keys of the first release: they and their meaning stay. */
  private static final List<String> FIRST_KEYS =
      List.of(
          "job",
          "routine",
          "metal",
          "wire_mm",
          "temper",
          "finished_length_mm",
          "clasp_length_mm",
          "clasp_mass_g",
          "links",
          "rings",
          "length_mm",
          "one_fewer_mm",
          "one_more_mm",
          "exact_ring_inside_mm",
          "link_blank_mm",
          "link_inside_mm",
          "link_length_mm",
          "link_width_mm",
          "ring_blank_mm",
          "ring_turn_mm",
          "ring_inside_length_mm",
          "blanks_to_cut",
          "end_rings",
          "sizes",
          "wire_links_mm",
          "wire_rings_mm",
          "wire_spare_mm",
          "wire_total_mm",
          "wire_short_mm",
          "cuts",
          "mass_links_g",
          "mass_rings_g",
          "mass_solder_g",
          "mass_chain_g",
          "joints",
          "solder_pieces",
          "solder_piece_mm",
          "weakest",
          "butted_n",
          "soldered_n",
          "remarks",
          "fineness");

  /** Keys that came later. */
  private static final List<String> LATER_KEYS =
      List.of(
          "solder_placed_g",
          "length_plus_minus_mm",
          "hours",
          "hours_plus_minus",
          "hours_to_go",
          "redos",
          "chance",
          "wire_spare_rings_mm",
          "nearest",
          "hours_again",
          "wire_to_order_g",
          "reckoned_with",
          "wire_short_links_mm",
          "wire_short_rings_mm",
          "solder_by_size");

  @Nested
  class A_plan_that_works_out {
    @Test
    void has_every_key_that_a_script_may_count_on() {
      assertThat(plan(PLAN, "--as", "yaml")).isZero();
      Map<String, Object> values = new Yaml().load(line.out());
      assertThat(values.keySet()).containsAll(FIRST_KEYS).containsAll(LATER_KEYS);
      assertThat(values.keySet()).hasSize(FIRST_KEYS.size() + LATER_KEYS.size());
      int links = (int) values.get("links");
      assertThat(values.get("rings")).isEqualTo(links + 1);
      double total =
          (double) values.get("wire_links_mm")
              + (double) values.get("wire_rings_mm")
              + (double) values.get("wire_spare_mm")
              + (double) values.get("wire_spare_rings_mm");
      assertThat((double) values.get("wire_total_mm"))
          .isCloseTo(total, org.assertj.core.api.Assertions.within(1e-5));
      assertThat(line.err()).isEmpty();
    }

    @Test
    void has_no_key_for_what_it_cannot_say() {
      line.file(
          "home/bench.yaml",
          "format: 1\nprices: {currency: EUR, hour: 30, metal-per-g: {sterling: 0.8}}\n");
      assertThat(plan(PLAN, "--as", "yaml")).isZero();
      Map<String, Object> priced = new Yaml().load(line.out());
      assertThat(priced).containsKeys("price", "price_again", "price_plus_minus");
      assertThat(plan(with("ring", "{inside: 1.81 mm}"), "--as", "yaml")).isZero();
      Map<String, Object> tight = new Yaml().load(line.out());
      assertThat(tight).doesNotContainKey("exact_ring_inside_mm");
      assertThat(tight.values()).doesNotContainNull();
    }

    @Test
    void each_choice_near_it_says_its_links_and_its_length() {
      assertThat(plan(PLAN, "--as", "yaml")).isZero();
      Map<String, Object> values = new Yaml().load(line.out());
      assertThat((List<?>) values.get("nearest"))
          .allSatisfy(
              choice ->
                  assertThat((Map<?, ?>) choice)
                      .hasSize(4)
                      .extracting("links", "length_mm", "way", "says")
                      .doesNotContainNull());
    }

    @Test
    void mass_of_solder_is_what_fills_the_joints_and_what_is_placed_stays_in_the_chain() {
      assertThat(plan(PLAN, "--as", "yaml")).isZero();
      Map<String, Object> values = new Yaml().load(line.out());
      double placed = (double) values.get("solder_placed_g");
      assertThat((double) values.get("mass_solder_g")).isLessThan(placed);
      double clasp = ((Number) values.get("clasp_mass_g")).doubleValue();
      assertThat((double) values.get("mass_chain_g"))
          .isCloseTo(
              (double) values.get("mass_links_g")
                  + (double) values.get("mass_rings_g")
                  + placed
                  + clasp,
              org.assertj.core.api.Assertions.within(1e-5));
      assertThat((List<?>) values.get("nearest")).isNotEmpty();
    }

    @Test
    void is_told_for_reading_with_all_that_is_needed_at_the_bench() {
      assertThat(plan(PLAN)).isZero();
      assertThat(line.out())
          .contains("Harbour watch chain", "links", "rings", "blank", "Cut the wire on hand so")
          .contains("24", "UK:")
          .doesNotContain("NaN");
    }

    /** A folded loop adds some six tenths of its inside: the whole of it is a third too much. */
    @Test
    void reckons_what_a_folded_link_adds_and_says_so_until_that_is_entered() {
      String loops =
          """
          format: 1
          metal: fine-silver
          wire: 0.8 mm
          finished-length: 450 mm
          link: {pattern: round, formers: {ring: 11 mm}%s}
          """;
      assertThat(plan(loops.formatted(""))).isZero();
      assertThat(line.out().replaceAll("\\s+", " "))
          .contains("Link adds: 7.31 mm, reckoned", "some six tenths of the ring's inside")
          .doesNotContain("Solder has to be");
      assertThat(plan(loops.formatted(", inside-length: 6.6 mm"))).isZero();
      assertThat(line.out().replaceAll("\\s+", " ")).doesNotContain("six tenths");
    }

    @Test
    void is_told_in_the_units_and_words_of_the_user() {
      line.file("home/settings.yaml", "format: 1\nunits: inch\nwords: american\n");
      assertThat(plan(PLAN)).isZero();
      assertThat(line.out()).contains(" in", " dwt", "Seams").doesNotContain(" mm", "Joints");
    }

    @Test
    void is_told_in_ASCII_where_nothing_else_can_be_shown() {
      line = new Commandline(folder, false);
      assertThat(plan(PLAN)).isZero();
      assertThat(line.out()).matches("\\A[\\n -~]*\\z");
    }

    @Test
    void says_how_much_wire_is_missing() {
      assertThat(plan(with("stock", "[100 mm]"))).isZero();
      assertThat(line.out()).containsPattern("Wire to buy: [0-9.]+ mm\\.");
    }
  }

  @Nested
  class Bad_input {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "wire | 1.1 stone | stone",
          "wire | -3 mm | -3 mm",
          "wire | 12 mm | thicker",
          "metal | stirling | Did you mean sterling?",
          "link | {pattern: scroll, blank: 9 mm} | the shortest that works is",
          "finished-length | 15 mm | shorter than",
          "finished-length | 24 cn | Did you mean 24 cm?",
        })
    void is_told_in_a_sentence_with_its_place(String key, String value, String told) {
      assertThat(plan(with(key, value))).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("watch.yaml", told).matches("(?s).*[.?]\n");
      assertThat(line.err()).doesNotContain("Exception", "NaN");
      assertThat(line.out()).isEmpty();
    }

    @Test
    void is_told_all_at_once_each_with_line_and_column() {
      String text = with("wire", "-3 mm").replace("metal: sterling", "metal: stirling");
      assertThat(plan(text)).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err().lines())
          .anyMatch(each -> each.contains("watch.yaml:3:"))
          .anyMatch(each -> each.contains("watch.yaml:4:"));
    }

    @Test
    void is_told_for_a_key_that_nobody_knows_with_the_nearest_one() {
      assertThat(plan(PLAN.replace("stock:", "stocks:"))).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("stocks", "stock");
    }

    @Test
    void is_told_for_a_file_that_is_broken() {
      assertThat(plan("format: 1\nlink: {pattern: oval\nwire: [")).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("watch.yaml:").doesNotContain("Exception");
    }

    @Test
    void is_told_for_an_empty_file() {
      assertThat(plan("")).isEqualTo(Exit.PROBLEMS);
      assertThat(line.err()).contains("watch.yaml");
    }
  }

  @Nested
  class Wrong_use {
    @Test
    void is_a_file_that_is_not_there() {
      assertThat(line.run("plan", "nowhere.yaml")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).isEqualTo("There is no file nowhere.yaml.\n");
    }

    @Test
    void is_a_folder_in_place_of_a_file() {
      assertThat(line.run("plan", folder.toString())).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("is a folder");
    }

    @Test
    void is_no_file_at_all() {
      assertThat(line.run("plan")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("FILE");
    }

    @Test
    void is_a_form_that_nobody_knows() {
      assertThat(plan(PLAN, "--as", "table")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("table", "--as text", "yaml");
    }

    @Test
    void is_a_word_that_is_no_command() {
      assertThat(line.run("plam")).isEqualTo(Exit.WRONG_USE);
      assertThat(line.err()).contains("Did you mean plan?");
    }
  }

  @Test
  void what_is_within_reach_is_written_in_the_form_that_is_asked_for() {
    assertThat(plan(PLAN, "--from", "metal=20 g", "--as", "yaml")).isEqualTo(Exit.GOOD);
    assertThat(new Yaml().<Map<String, Object>>load(line.out())).containsKey("within-reach");
  }

  /** 20 g are 12.860 dwt, 0.5 ozt 15.552 g (1 ozt is 31.1034768 g, of 20 dwt). */
  @Test
  void a_mass_in_the_other_systems_unit_is_told_in_hers_too() {
    assertThat(plan(PLAN, "--from", "metal=0.5 ozt")).isEqualTo(Exit.GOOD);
    assertThat(line.out()).contains("15.55 g (0.5 ozt)");
    assertThat(plan(PLAN, "--from", "metal=20 g")).isEqualTo(Exit.GOOD);
    assertThat(line.out()).contains("there is 20 g,");
  }

  @Test
  void a_saw_that_takes_thirty_millimetres_is_asked_about() {
    assertThat(plan(PLAN + "kerf: 30 mm\n")).isEqualTo(Exit.GOOD);
    assertThat(line.err()).contains("A cut that takes 30 mm?");
  }
}
