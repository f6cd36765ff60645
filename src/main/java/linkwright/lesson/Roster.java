package linkwright.lesson;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Whom a teacher teaches: the one home of names. Books hold ids.
 *
 * @param names id → the teacher's own word for her
 * @param gapDays days between one asking and the next
 */
public record Roster(Map<String, String> names, int gapDays) {
  /** The book of whoever learns here without a name. */
  public static final String OWN = "own";

  /** The longest time between one asking and the next, days. */
  public static final int LONGEST_GAP_DAYS = 90;

  /** Nobody so far. */
  public static final Roster EMPTY = new Roster(Map.of(), Recall.GAP_DAYS);

  public Roster {
    names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
  }

  /** What a student is called here; her id where no name is known, you for the maker herself. */
  public String name(String id) {
    return id.equals(OWN) ? "you" : names.getOrDefault(id, id);
  }

  /** The ids, in the order in which they were written. */
  public List<String> ids() {
    return List.copyOf(names.keySet());
  }

  /** The id of that name, or itself if it is one; a few letters do for a name. */
  public Optional<String> find(String typed) {
    String wanted = plain(typed);
    if (names.containsKey(wanted) || wanted.equals(OWN)) {
      return Optional.of(wanted);
    }
    return names.entrySet().stream()
        .filter(each -> plain(each.getValue()).equals(wanted))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The same with a name more. */
  public Roster and(String id, String name) {
    Map<String, String> more = new LinkedHashMap<>(names);
    more.put(id, name);
    return new Roster(more, gapDays);
  }

  /** The same without her. */
  public Roster without(String id) {
    Map<String, String> fewer = new LinkedHashMap<>(names);
    fewer.remove(id);
    return new Roster(fewer, gapDays);
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
