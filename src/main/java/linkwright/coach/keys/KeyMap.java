package linkwright.coach.keys;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which key does what. A screen offers acts in order; the first that has the key gets it.
 *
 * @param changed act id → the user's own keys for it, by the names of {@link KeyNames}
 * @param away acts of other places of the job: where a sentence names one, the way there comes
 *     first
 */
public record KeyMap(Map<String, List<String>> changed, Set<Act> away) {
  /** What nobody may lay another act over: flames, cautions, and what says that it burns. */
  private static final Set<Act> SAFETY =
      EnumSet.of(Act.TO_HOT_WORK, Act.SEEN, Act.LIT, Act.HOT_ON, Act.SHUT_FIRST);

  /** A key of safety stays with it: no other act has it that has not got it without a file. */
  public KeyMap {
    Map<String, List<String>> wished = changed;
    Map<String, List<String>> safe = new HashMap<>(changed);
    for (Act act : changed.isEmpty() ? new Act[0] : Act.values()) {
      List<String> keys = changed.getOrDefault(act.id(), act.keys());
      List<String> left = keys.stream().filter(key -> !isOfSafety(wished, act, key)).toList();
      if (left.size() < keys.size()) {
        safe.put(act.id(), left);
      }
    }
    changed = Map.copyOf(safe);
    away = Set.copyOf(away);
  }

  /** Whether a key that an act is to have is one of safety, which keeps it. */
  public static boolean isOfSafety(Map<String, List<String>> wished, Act act, String key) {
    return !SAFETY.contains(act)
        && SAFETY.stream()
            .filter(safety -> wished.getOrDefault(safety.id(), safety.keys()).contains(key))
            .anyMatch(safety -> !(safety.keys().contains(key) && act.keys().contains(key)));
  }

  /** The keys as they are without the user's file. */
  public static final KeyMap USUAL = new KeyMap(Map.of());

  /** These keys, wherever one is. */
  public KeyMap(Map<String, List<String>> changed) {
    this(changed, Set.of());
  }

  /** The same keys where those acts are of other places of the job. */
  public KeyMap away(Set<Act> acts) {
    return new KeyMap(changed, acts);
  }

  /** The keys of an act, in order; the first is shown. */
  public List<String> keysOf(Act act) {
    return changed.getOrDefault(act.id(), act.keys());
  }

  /** The first key of an act, as it is shown; what stands for none where the user took all away. */
  public String firstOf(Act act) {
    List<String> keys = keysOf(act);
    return keys.isEmpty() ? "(no key)" : keys.get(0);
  }

  /** The first key of an act as a sentence names it, a sign in quotes, with the way to it. */
  public String spokenOf(Act act) {
    return away.contains(act) ? spoken(Act.ROUND) + " " + spoken(act) : spoken(act);
  }

  private String spoken(Act act) {
    String key = firstOf(act);
    return switch (key) {
      case ".", ",", "/", "?" -> "“" + key + "”";
      default -> key;
    };
  }

  /** The act that a key means among those on offer; with Caps Lock on it means the same. */
  public Optional<Act> find(Key key, List<Act> offered) {
    String name = KeyNames.of(key);
    return find(name, offered).or(() -> find(name.toLowerCase(Locale.ROOT), offered));
  }

  /** The act that gets the key of that name among those on offer. */
  public Optional<Act> first(String name, List<Act> offered) {
    return find(name, offered);
  }

  private Optional<Act> find(String name, List<Act> offered) {
    return offered.stream().filter(act -> keysOf(act).contains(name)).findFirst();
  }
}
