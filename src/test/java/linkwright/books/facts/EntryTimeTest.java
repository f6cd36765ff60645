package linkwright.books.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The time of an entry, against the library's own reader of ISO 8601. */
class EntryTimeTest {
  private static Optional<Instant> ours(String text) {
    try {
      return Optional.of(EntryTime.read(text));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private static Optional<Instant> theirs(String text) {
    try {
      return Optional.of(Instant.parse(text));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  @Test
  void isReadAsTheLibraryReadsIt() {
    long seed = 20261126;
    Random chance = new Random(seed);
    String letters = "0123456789-:TZ.+ tz";
    for (int round = 0; round < 20_000; round++) {
      int nanos = chance.nextInt(1_000_000_000);
      int[] steps = {1, 1_000, 1_000_000, 1_000_000_000};
      int step = steps[chance.nextInt(4)];
      Instant at =
          Instant.ofEpochSecond(
              chance.nextLong(-62_000_000_000L, 253_000_000_000L), (long) nanos / step * step);
      StringBuilder text = new StringBuilder(at.toString());
      assertThat(ours(text.toString())).as("seed %d, round %d", seed, round).contains(at);
      text.setCharAt(chance.nextInt(text.length()), letters.charAt(chance.nextInt(19)));
      if (round % 3 == 0) {
        text.deleteCharAt(chance.nextInt(text.length()));
      }
      String wrong = text.toString();
      assertThat(ours(wrong))
          .as("seed %d, round %d: %s", seed, round, wrong)
          .isEqualTo(theirs(wrong));
    }
  }
}
