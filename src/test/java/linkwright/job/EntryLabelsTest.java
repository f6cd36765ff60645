package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No two entries of one book are shown by one label. */
class EntryLabelsTest {
  @Test
  void machinesOfOneNameAreToldApartByWhichWroteFirst() {
    List<Entry> entries =
        List.of(
            entry("vm-k7f3m2q9", 1),
            entry("vm-k8f3m2q9", 1),
            entry("vm-k8f3m2q9~2", 1),
            entry("bench-k7f3m2q9", 1));
    EntryLabels labels = EntryLabels.of(entries);

    assertThat(entries.stream().map(Entry::id).map(labels::of))
        .containsExactly(
            "1 of the first vm", "1 of the second vm", "1 of the third vm", "1 of bench");
  }

  private static Entry entry(String device, int number) {
    return new Entry(number, Instant.EPOCH, device, new Fact.Noted("a note"));
  }

  @Test
  void from_the_tenth_machine_of_one_name_on_they_are_numbered() {
    List<Entry> entries = new ArrayList<>();
    for (char last : "abcdefghjk".toCharArray()) {
      entries.add(entry("vm-k7f3m2q" + last, 4));
    }
    EntryLabels labels = EntryLabels.of(entries);
    assertThat(labels.of(entries.get(8).id())).isEqualTo("4 of the ninth vm");
    assertThat(labels.of(entries.get(9).id())).isEqualTo("4 of vm number 10");
  }
}
