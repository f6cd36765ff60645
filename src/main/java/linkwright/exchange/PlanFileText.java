package linkwright.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.quantity.Items;

/** A plan as it stands in a plan file. */
public final class PlanFileText {
  /** The key of the routine that it is made by, which is none of the wish. */
  public static final String ROUTINE = "routine";

  /** The keys of a plan, in the order in which they stand there: of a chain, or of pieces. */
  public static final List<String> KEYS =
      Stream.concat(WishKeys.ALL.stream(), Stream.of(PartPlan.PIECES)).toList();

  private PlanFileText() {}

  /**
   * The text of a plan file; every value is quoted, as it was typed.
   *
   * @param routine the routine that it is made by; empty for none
   */
  public static String of(Optional<String> routine, Map<String, String> texts) {
    StringBuilder text = new StringBuilder("format: 1\n");
    routine
        .filter(id -> !id.isBlank())
        .ifPresent(id -> text.append(ROUTINE).append(": ").append(quoted(id)).append('\n'));
    String group = "";
    for (String key : KEYS) {
      String value = texts.getOrDefault(key, "").strip();
      if (value.isEmpty()) {
        continue;
      }
      int dot = key.indexOf('.');
      String at = dot < 0 ? "" : key.substring(0, dot);
      if (!at.isEmpty() && !at.equals(group)) {
        text.append(at).append(":\n");
      }
      group = at;
      String indent = at.isEmpty() ? "" : "  ";
      text.append(indent).append(key.substring(dot + 1)).append(": ");
      text.append(key.equals(WishKeys.LINK_FORMERS) ? formers(value) : quoted(value)).append('\n');
    }
    return text.toString();
  }

  private static String formers(String value) {
    return Items.of(value).stream()
        .map(each -> each.split("=", 2))
        .map(pair -> quoted(pair[0].strip()) + ": " + quoted(pair[pair.length - 1].strip()))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String quoted(String value) {
    return '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
