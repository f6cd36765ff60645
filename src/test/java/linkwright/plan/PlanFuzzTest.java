package linkwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import linkwright.quantity.Read;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, there is a plan or a sentence; never an exception, never NaN. */
class PlanFuzzTest {
  private static final List<String> ODD =
      List.of(
          "",
          " ",
          "0",
          "0 mm",
          "-3 mm",
          "1e9 m",
          "1e-9 mm",
          "NaN",
          "Infinity mm",
          "0,9 mm",
          "0.9",
          "1/0 in",
          "1 1/2 in",
          "19 AWG",
          "-5 AWG",
          "999 SWG",
          "20 SWG",
          "10000 m",
          "0.001 mm",
          "5 %",
          "100 %",
          "0 %",
          "99.999 %",
          "1000 g",
          "0 g",
          "412 mm,96 mm",
          ",",
          ";",
          "鎖",
          "\u0000",
          "scroll",
          "round",
          "hook-link",
          "figure-of-eight",
          "long",
          "tip=0.1 mm",
          "bow=1 mm, tip=9 mm",
          "sterling",
          "soft",
          "hard",
          "0.5 mm",
          "3 mm",
          "2.4 mm",
          "40 mm",
          "14 mm",
          "5 mm",
          "1 m");
  private static final List<String> NUMBERS =
      List.of(
          "0.01", "0.3", "0.9", "1", "1.5", "2.5", "3", "7", "14", "38.1", "120", "450", "9999");
  private static final List<String> UNITS =
      List.of(" mm", " mm", " mm", " cm", " in", " m", " g", "");

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void random_wishes_give_a_plan_or_a_sentence(long seed) {
    Random chance = new Random(seed);
    int plans = 0;
    for (int i = 0; i < 250; i++) {
      Map<String, String> texts = texts(chance);
      try {
        WishReading reading = Wishes.read(texts);
        assertThat(reading.wish().isPresent() || !reading.troubles().isEmpty()).isTrue();
        if (reading.wish().isPresent()) {
          Read<Plan> plan = Planning.plan(reading.wish().get());
          plan.problem().ifPresent(PlanFuzzTest::assertSentence);
          plan.found().ifPresent(PlanFuzzTest::assertFinite);
          plans += plan.isGood() ? 1 : 0;
        }
        reading.troubles().values().forEach(PlanFuzzTest::assertSentence);
      } catch (RuntimeException | AssertionError broken) {
        throw new AssertionError("seed " + seed + ", round " + i + ": " + texts, broken);
      }
    }
    assertThat(plans).as("seed %d gives some plans too", seed).isPositive();
  }

  private static Map<String, String> texts(Random chance) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(WishKeys.METAL, "sterling");
    texts.put(WishKeys.WIRE, "0.9 mm");
    texts.put(WishKeys.LINK_PATTERN, "scroll");
    texts.put(WishKeys.LINK_BLANK, "38.1 mm");
    texts.put(WishKeys.RING_INSIDE, "3 mm");
    texts.put(WishKeys.FINISHED, "40 cm");
    for (int changes = 1 + chance.nextInt(4); changes > 0; changes--) {
      String key = WishKeys.ALL.get(chance.nextInt(WishKeys.ALL.size()));
      texts.put(key, chance.nextInt(3) == 0 ? any(ODD, chance) : number(chance));
    }
    return texts;
  }

  private static String number(Random chance) {
    return any(NUMBERS, chance) + any(UNITS, chance);
  }

  private static String any(List<String> texts, Random chance) {
    return texts.get(chance.nextInt(texts.size()));
  }

  private static void assertSentence(String text) {
    String own = text.replaceAll("“[^”]*”", "it");
    assertThat(own).doesNotContain("Infinity", "NaN", "Exception", "null").matches("(?s).*[.?]");
  }

  private static void assertFinite(Plan plan) {
    assertThat(plan.links()).isPositive();
    assertThat(plan.rings()).isNotNegative();
    assertThat(
            List.of(
                plan.lengthMm(),
                plan.oneMoreMm(),
                plan.linkBlankMm(),
                plan.linkInsideMm(),
                plan.wireLinksMm(),
                plan.wireRingsMm(),
                plan.wireSpareMm(),
                plan.wireSpareRingsMm(),
                plan.solderPlacedG(),
                plan.plusMinusMm(),
                plan.massLinksG(),
                plan.massRingsG(),
                plan.massSolderG(),
                plan.massChainG(),
                plan.pull().buttedN(),
                plan.pull().solderedN()))
        .as(plan.wish().toString())
        .allMatch(value -> value >= 0 && value < Double.POSITIVE_INFINITY);
    assertThat(plan.remarks()).allSatisfy(PlanFuzzTest::assertSentence);
  }
}
