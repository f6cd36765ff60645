package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What scripts rely on: each sum's options and exactly these keys, in this order. */
class ReckonContractTest {

  private static void keysOf(String arguments, String... keys) {
    Ran ran = Ran.reckon(split(arguments + " --as yaml"));

    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.yaml().keySet()).containsExactly(keys);
  }

  /** Words at spaces, what stands in quotes whole. */
  private static String[] split(String arguments) {
    return java.util.regex.Pattern.compile("'([^']*)'|(\\S+)")
        .matcher(arguments)
        .results()
        .map(found -> found.group(1) != null ? found.group(1) : found.group(2))
        .toArray(String[]::new);
  }

  @Test
  void wire() {
    keysOf("wire --metal sterling --wire '0.9 mm' --length '1 m'", "area_mm2", "mass_g");
    keysOf(
        "wire --metal sterling --wire '2 mm' --length '1 m' --section half-round",
        "area_mm2",
        "mass_g");
  }

  @Test
  void draw() {
    String[] keys = {"length_mm", "reduction_percent", "passes", "anneal_before"};
    keysOf("draw --from '2 mm' --to '1 mm' --length '1 m'", keys);
    keysOf(
        "draw --from '2 mm' --to '1 mm' --length '1 m' --holes '1.8 mm,1.6 mm,1.4 mm,1.2 mm,1.0 mm'"
            + " --metal sterling",
        keys);
  }

  @Test
  void ring() {
    String[] keys = {"blank_mm", "inside_length_mm", "aspect_ratio", "turn_mm"};
    keysOf("ring --wire '0.9 mm' --inside '3 mm'", keys);
    keysOf("ring --wire '0.9 mm' --inside '3 mm' --oval-inside '2.4 mm'", keys);
  }

  @Test
  void former() {
    keysOf(
        "former --metal sterling --temper hard --wire '0.9 mm' --former '3 mm' --yield 400",
        "inside_mm",
        "stress_mpa");
  }

  @Test
  void link() {
    String[] keys = {
      "length_mm", "width_mm", "inside_length_mm", "shortest_blank_mm", "joint_gaps_mm", "crossings"
    };
    keysOf("link --pattern scroll --wire '0.9 mm' --blank '38.1 mm'", keys);
    keysOf(
        "link --pattern scroll --wire '0.9 mm' --blank '38.1 mm' --former 'bow=3.5 mm' --former"
            + " tip=1mm",
        keys);
  }

  @Test
  void crossingsAreAListOfPlacesAndGaps() {
    Ran ran =
        Ran.reckon(
            split(
                "link --pattern scroll --wire '0.9 mm' --blank '38 mm' --former 'bow=1.5 mm' --as"
                    + " yaml"));
    List<?> crossings = (List<?>) ran.yaml().get("crossings");

    assertThat(crossings).isNotEmpty();
    for (Object crossing : crossings) {
      assertThat(((Map<?, ?>) crossing).keySet().stream().map(Object::toString))
          .containsExactly("at_mm", "and_mm", "gap_mm");
    }
  }

  @Test
  void blank(@TempDir Path folder) throws IOException {
    Path tried = folder.resolve("pieces.yaml");
    Files.writeString(
        tried,
        """
        - {blank: 38 mm, formers: {bow: 3.5 mm}, length: 14.1 mm, width: 5.4 mm}
        - {blank: 37 mm, verdict: longer}
        """);
    String[] keys = {
      "blank_mm", "formers", "length_mm", "width_mm", "length_spread_mm", "width_spread_mm"
    };
    String wish =
        "blank --pattern scroll --metal sterling --temper soft --wire '0.9 mm' --length '14 mm'"
            + " --width '5 mm'";
    keysOf(wish, keys);
    keysOf(
        wish + " --tried '" + tried + "' --owned 'bow=3 mm,3.5 mm' --owned 'tip=1 mm,1,5 mm'",
        keys);
  }

  @Test
  void chain() {
    String[] keys = {
      "links", "rings", "length_mm", "one_fewer_mm", "one_more_mm", "exact_ring_inside_mm"
    };
    keysOf(
        "chain --link-inside '12 mm' --ring-inside '3 mm' --length '45 cm' --clasp '12 mm'", keys);
    keysOf("chain --repeat '3 round + 1 long' --length '45 cm' --clasp '12 mm'", keys);
  }

  @Test
  void spare() {
    keysOf("spare --more 27 --good 3 --lost 1 --confidence '90 %' --usual-loss 0.05", "cut");
  }

  @Test
  void cut() {
    String[] keys = {"blanks", "rings", "left_mm", "short"};
    keysOf("cut --stock '412 mm,96 mm' --blank '38 mm' --want 10 --kerf '0.3 mm'", keys);
    keysOf(
        "cut --stock '412 mm,96 mm' --blank '38 mm' --want 10 --ring '12.3 mm' --want-rings 11"
            + " --kerf '0.3 mm'",
        keys);
  }

  @Test
  void solder() {
    keysOf(
        "solder --wire '0.9 mm' --gap '0.05 mm' --strip '1 mm x 0.3 mm' --density 9.6 --fillet '50"
            + " %' --joint side",
        "least_piece_mm", "piece_mm", "mass_g", "placed_g");
  }

  @Test
  void pull() {
    keysOf(
        "pull --metal sterling --temper soft --wire '0.9 mm' --inside '3 mm'",
        "butted_n",
        "soldered_n");
  }
}
