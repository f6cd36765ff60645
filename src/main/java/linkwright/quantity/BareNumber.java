package linkwright.quantity;

import java.util.ArrayList;
import java.util.List;

/** Numbers typed without their unit, where the user's own may be meant. */
public final class BareNumber {
  private static final String ANY = "1";

  private BareNumber() {}

  /** Whether a number and nothing else stands here: {@code 30}, {@code 0,9}, {@code 5/16}. */
  public static boolean is(String typed) {
    String text = typed.strip();
    // What ends in a letter has its unit already.
    return !text.isEmpty()
        && !Character.isLetter(text.codePointBefore(text.length()))
        && Written.read(text, ANY).map(written -> written.rest().isEmpty()).orElse(false);
  }

  /** Whether a whole number above nothing stands here, and nothing else. */
  public static boolean isWhole(String typed) {
    return typed.strip().matches("[1-9][0-9]{0,2}");
  }

  /** A share typed without its sign: 30 is 30 %, and a part below one is the part it says. */
  public static String asShare(String typed) {
    if (!is(typed)) {
      return typed;
    }
    double number = Written.read(typed, ANY).orThrow().number();
    return number > 0 && number < 1 ? Decimals.upTo(100 * number, 4) + " %" : typed.strip() + " %";
  }

  /**
   * The text with that unit behind each bare number of a list; what has a unit, or is no number,
   * stays as it is, and a name before an equals sign stays with its number.
   */
  public static String complete(String typed, String unit) {
    List<String> items = new ArrayList<>();
    boolean changed = false;
    for (String item : Items.of(typed)) {
      String name = item.substring(0, item.indexOf('=') + 1);
      String number = item.substring(name.length());
      boolean bare = is(number);
      changed |= bare;
      items.add(bare ? name + number.strip() + " " + unit : item.strip());
    }
    return changed ? String.join(", ", items) : typed;
  }
}
