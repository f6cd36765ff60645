package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * A place of the coach is a package below {@code coach} and knows no other: it answers where to go
 * by an id, and only {@code coach} itself lists them all. What all places share knows none of them.
 */
class PlacesApartTest {
  private static final String COACH = "linkwright.coach";
  private static final Set<String> SHARED = Set.of("kernel", "form", "keys", "content");

  @Test
  void no_place_knows_another() {
    assertThat(breaches(Program.known())).isEmpty();
  }

  @Test
  void a_place_that_knows_another_or_the_list_of_all_is_found() {
    assertThat(
            breaches(
                Map.of(
                    COACH,
                    Set.of(COACH + ".kernel", COACH + ".tray", COACH + ".bench"),
                    COACH + ".kernel",
                    Set.of(COACH + ".content", COACH + ".tray"),
                    COACH + ".tray",
                    Set.of(COACH + ".kernel", COACH, "linkwright.job"),
                    COACH + ".bench",
                    Set.of(COACH + ".bench.count", COACH + ".tray"),
                    COACH + ".bench.count",
                    Set.of(COACH + ".bench"))))
        .containsExactly("bench knows tray", "kernel knows tray", "tray knows coach itself");
  }

  private static Set<String> breaches(Map<String, Set<String>> known) {
    Set<String> breaches = new TreeSet<>();
    known.forEach(
        (name, others) -> {
          String place = placeOf(name);
          for (String other : others) {
            boolean below = other.startsWith(COACH + ".") || other.equals(COACH);
            String there = placeOf(other);
            if (!place.isEmpty() && below && !there.equals(place) && !SHARED.contains(there)) {
              breaches.add(place + " knows " + (there.isEmpty() ? "coach itself" : there));
            }
          }
        });
    return breaches;
  }

  /** The first part of a package's name below coach; empty for coach itself and all others. */
  private static String placeOf(String name) {
    return name.startsWith(COACH + ".")
        ? name.substring(COACH.length() + 1).split("\\.", 2)[0]
        : "";
  }
}
