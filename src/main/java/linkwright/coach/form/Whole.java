package linkwright.coach.form;

import java.util.OptionalInt;

/** Whole numbers as they are typed. */
public final class Whole {
  private static final int MOST = 1_000_000;

  private Whole() {}

  /** The number, if it is a whole one, not below the least and at most a million. */
  public static OptionalInt read(String text, int least) {
    if (!text.strip().matches("[0-9]{1,7}")) {
      return OptionalInt.empty();
    }
    int number = Integer.parseInt(text.strip());
    return number < least || number > MOST ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
