package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EntryIdTest {
  @ParameterizedTest(name = "{0}, {1}: written {2}, shown {3}")
  @CsvSource({
    "bench, 7, bench-7, bench-7",
    "bench-k7f3m2q9, 7, bench-k7f3m2q9-7, bench-7",
    "bench-k7f3m2q9~2, 7, bench-k7f3m2q9~2-7, bench~2-7",
    "back-room, 12, back-room-12, back-room-12",
    "bench-workshop, 1, bench-workshop-1, bench-workshop-1",
  })
  void is_written_whole_and_shown_without_what_tells_machines_apart(
      String device, int number, String written, String shown) {
    EntryId id = new EntryId(device, number);
    assertThat(id.written()).isEqualTo(written);
    assertThat(id).hasToString(shown);
    assertThat(EntryId.parse(written)).contains(id);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "bench", "-7", "bench-", "bench-seven", "bench-7 "})
  void of_another_shape_is_none(String text) {
    assertThat(EntryId.parse(text)).isEmpty();
  }

  @Test
  void of_a_device_of_one_letter_is_one() {
    assertThat(EntryId.parse("b-7")).contains(new EntryId("b", 7));
  }

  @Test
  void entries_are_numbered_from_one() {
    Fact remark = new Fact.Noted("begun");
    assertThat(new Entry(1, Instant.EPOCH, "bench", remark).id())
        .isEqualTo(new EntryId("bench", 1));
    assertThatThrownBy(() -> new Entry(0, Instant.EPOCH, "bench", remark))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number must be 1 or more, was 0");
  }
}
