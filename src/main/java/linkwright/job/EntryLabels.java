package linkwright.job;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the entries of one book are shown: each by a label that no other of the book has, its number
 * where one machine wrote all of it, else its number and the machine. Machines that are called
 * alike are told apart by which of them wrote first: what tells them apart inside is no word.
 */
public final class EntryLabels {
  private static final List<String> WHICH =
      List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth");

  private final Map<String, String> shown;

  private EntryLabels(Map<String, String> shown) {
    this.shown = shown;
  }

  /** The labels of a book's entries. */
  public static EntryLabels of(List<Entry> entries) {
    List<String> devices = entries.stream().map(entry -> entry.id().device()).distinct().toList();
    Map<String, String> shown = new HashMap<>();
    // On one machine the number tells each from any other.
    machines(devices)
        .forEach((device, name) -> shown.put(device, devices.size() == 1 ? "" : " of " + name));
    return new EntryLabels(shown);
  }

  /**
   * What a person calls each of these machines.
   *
   * @param devices their names in books, in the order in which they first wrote, none twice
   */
  public static Map<String, String> machines(List<String> devices) {
    Map<String, String> machines = new LinkedHashMap<>();
    for (String device : devices) {
      machines.put(
          device,
          named(device, devices.stream().filter(any -> name(any).equals(name(device))).toList()));
    }
    return machines;
  }

  /** What a person calls a machine, without the number of a copied home. */
  private static String name(String device) {
    return EntryId.shown(device).replaceFirst("~\\d+$", "");
  }

  private static String named(String device, List<String> alike) {
    String name = name(device);
    int at = alike.indexOf(device);
    if (alike.size() == 1) {
      return name;
    }
    return at < WHICH.size() ? "the " + WHICH.get(at) + " " + name : name + " number " + (at + 1);
  }

  /** The label of an entry of that book. */
  public String of(EntryId id) {
    return id.number() + shown.getOrDefault(id.device(), " of " + name(id.device()));
  }
}
