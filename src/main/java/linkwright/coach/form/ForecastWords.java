package linkwright.coach.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.quantity.Decimals;
import linkwright.standing.Quote;
import linkwright.standing.Standing;

/** What is still to come, in words: hours, the chance of finishing, pieces redone. */
public final class ForecastWords {
  private ForecastWords() {}

  /** Hours with their doubt, rounded by it: {@code 5.3 ± 0.7}. */
  public static String hours(double hours, double plusMinus) {
    return plusMinus > 0 ? Decimals.withDoubt(hours, plusMinus) : Decimals.upTo(hours, 1);
  }

  /** The hours of the same chain made again without trials. */
  public static String hoursAgain(Quote quote) {
    return "about " + Decimals.foreseen(quote.hoursAgain(), 1);
  }

  /** What it costs then, with its money. */
  public static String priceAgain(Quote quote) {
    String money = quote.currency().isBlank() ? "" : " " + quote.currency();
    return Decimals.fixed(quote.again().total(), 0) + money;
  }

  /** How many are still expected to be redone; empty where nothing says. */
  public static Optional<String> redos(Standing standing) {
    return standing.redos().isPresent()
        ? Optional.of("about " + Decimals.foreseen(standing.redos().getAsDouble(), 0))
        : Optional.empty();
  }

  /** One sentence on all that is to come; empty where there is no plan or nothing left. */
  public static Optional<String> of(Standing standing) {
    List<String> parts = new ArrayList<>();
    standing
        .jobHours()
        .filter(hours -> hours.hoursToGo() > 0)
        .ifPresent(
            hours ->
                parts.add(
                    "about "
                        + hours(hours.hoursToGo(), hours.plusMinus())
                        + " h to go ("
                        + hours.from().word()
                        + ")"));
    redos(standing).ifPresent(redos -> parts.add(redos + " to be redone"));
    standing
        .chance()
        .ifPresent(
            chance ->
                parts.add(Decimals.percent(chance, 0) + " sure that the wire on hand will do"));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of("To come: " + String.join("; ", parts) + ".");
  }
}
