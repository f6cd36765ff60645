package linkwright.job;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How the entries of one book are shown: each by a label that no other of the book has, its number
 * where one machine wrote all of it. Where two machines are called alike, as much of what tells
 * them apart is shown as is needed.
 */
public final class EntryLabels {
  private static final int ALL_LETTERS = 8;

  private final Map<String, String> shown;

  private EntryLabels(Map<String, String> shown) {
    this.shown = shown;
  }

  /** The labels of a book's entries. */
  public static EntryLabels of(List<Entry> entries) {
    Map<String, Set<String>> alike = new HashMap<>();
    entries.stream()
        .map(entry -> entry.id().device())
        .distinct()
        .forEach(
            device ->
                alike
                    .computeIfAbsent(EntryId.shown(device, 0), any -> new HashSet<>())
                    .add(device));
    Map<String, String> shown = new HashMap<>();
    alike
        .values()
        .forEach(
            devices -> {
              int letters = enough(devices);
              devices.forEach(device -> shown.put(device, EntryId.shown(device, letters)));
            });
    // On one machine the number tells each from any other.
    shown.replaceAll((device, name) -> shown.size() > 1 ? name + "-" : "");
    return new EntryLabels(shown);
  }

  private static int enough(Set<String> devices) {
    int letters = 0;
    while (letters < ALL_LETTERS && different(devices, letters) < devices.size()) {
      letters++;
    }
    return letters;
  }

  private static long different(Set<String> devices, int letters) {
    return devices.stream().map(device -> EntryId.shown(device, letters)).distinct().count();
  }

  /** The label of an entry of that book. */
  public String of(EntryId id) {
    return shown.getOrDefault(id.device(), EntryId.shown(id.device(), 0) + "-") + id.number();
  }
}
