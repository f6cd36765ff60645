package linkwright.coach.form;

import java.util.ArrayList;
import java.util.List;
import linkwright.routine.TradeWords;

/**
 * One of the answers that a field takes.
 *
 * @param id what is typed and kept
 * @param says what it is, beside it; empty where its name says enough
 * @param words what else it may be found by
 */
public record Offered(String id, String says, List<String> words) {
  public Offered {
    words = List.copyOf(words);
  }

  /** One whose name says enough. */
  public static Offered of(String id) {
    return new Offered(id, "", List.of());
  }

  /** The same, told in those trade words. */
  Offered inWords(TradeWords trade) {
    return new Offered(id, trade.show(says), words);
  }

  List<String> names() {
    List<String> names = new ArrayList<>(List.of(id, says));
    names.addAll(words);
    return names;
  }
}
