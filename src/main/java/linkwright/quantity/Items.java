package linkwright.quantity;

import java.util.ArrayList;
import java.util.List;

/** Lists of amounts as they are typed. */
public final class Items {
  private Items() {}

  /**
   * The items of a list. A comma or semicolon separates, but a comma between two digits is a
   * decimal sign: {@code 0,9 mm, 12 g} has two items.
   *
   * @return one item or more, as typed; blank ones too, so that they can be told
   */
  public static List<String> of(String typed) {
    List<String> items = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < typed.length(); i++) {
      if (separates(typed, i)) {
        items.add(typed.substring(from, i));
        from = i + 1;
      }
    }
    items.add(typed.substring(from));
    return items;
  }

  private static boolean separates(String typed, int i) {
    char mark = typed.charAt(i);
    boolean betweenDigits =
        i > 0
            && i + 1 < typed.length()
            && Character.isDigit(typed.charAt(i - 1))
            && Character.isDigit(typed.charAt(i + 1));
    return mark == ';' || (mark == ',' && !betweenDigits);
  }
}
