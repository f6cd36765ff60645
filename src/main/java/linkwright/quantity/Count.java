package linkwright.quantity;

import java.util.Optional;

/** Whole numbers of pieces as they are typed. */
public final class Count {
  /** A million: more pieces than anybody makes by hand. */
  public static final int MOST = 1_000_000;

  private Count() {}

  /** The number that a text is, if it is nothing but digits, so many at most and no more than 9. */
  public static Optional<Integer> inDigits(String text, int most) {
    return text.matches("[0-9]{1," + most + "}")
        ? Optional.of(Integer.parseInt(text))
        : Optional.empty();
  }

  /** Reads a whole number of pieces in digits, from 0 to a million. */
  public static Read<Integer> read(String typed) {
    return read(typed, 0, MOST);
  }

  /** Reads a whole number in digits, from a least to a most. */
  public static Read<Integer> read(String typed, int least, int most) {
    String text = Written.tidy(typed);
    if (!text.matches("[+-]?\\d{1,18}")) {
      return Read.bad(
          Written.quoted(typed) + " is not a whole number. Write it in digits, as in 27.");
    }
    long number = Long.parseLong(text);
    if (number < least) {
      return Read.bad(
          Written.quoted(typed)
              + (number < 0 ? " is below nothing" : " is too few")
              + ": it is "
              + least
              + " or more.");
    }
    return number > most
        ? Read.bad(
            Written.quoted(typed)
                + (most == MOST
                    ? " is more than a million pieces: check the number."
                    : " is too many: it is " + most + " at most."))
        : Read.good((int) number);
  }
}
