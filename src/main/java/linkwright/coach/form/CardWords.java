package linkwright.coach.form;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.job.JobCard;
import linkwright.quantity.Decimals;

/** The job card in words, for its own place and for those that show a line of it. */
public final class CardWords {
  private CardWords() {}

  /** What a line of the card is called. */
  public static String label(String key) {
    return switch (key) {
      case JobCard.OWN_METAL -> "metal brought";
      case JobCard.PROMISED -> "promised for";
      case JobCard.QUOTE -> "price named";
      case JobCard.DEPOSIT -> "paid ahead";
      default -> key;
    };
  }

  /** The card in a line: for whom, by when, what is to be paid, what is to be struck. */
  public static String line(JobCard card, LocalDate today) {
    List<String> words = new ArrayList<>();
    if (!card.of(JobCard.CUSTOMER).isEmpty()) {
      words.add("for " + card.of(JobCard.CUSTOMER));
    }
    days(card, today).ifPresent(words::add);
    owed(card).ifPresent(owed -> words.add(owed + " to be paid"));
    if (!card.of(JobCard.MARK).isEmpty()) {
      words.add("mark " + card.of(JobCard.MARK));
    }
    if (words.isEmpty()) {
      return card.said().isEmpty() ? "nothing written yet" : "written";
    }
    return String.join(", ", words);
  }

  private static Optional<String> days(JobCard card, LocalDate today) {
    return when(card, today).map(when -> "promised " + card.promised().orElseThrow() + ", " + when);
  }

  /** How long until the promised day: in 12 days, today, 3 days ago; empty without one. */
  public static Optional<String> when(JobCard card, LocalDate today) {
    if (card.daysLeft(today).isEmpty()) {
      return Optional.empty();
    }
    long days = card.daysLeft(today).getAsLong();
    String many = Math.abs(days) + (Math.abs(days) == 1 ? " day" : " days");
    return Optional.of(days == 0 ? "today" : days > 0 ? "in " + many : many + " ago");
  }

  /** What is still to be paid, with its money; empty where no price was named. */
  public static Optional<String> owed(JobCard card) {
    return card.owed().isPresent()
        ? Optional.of(Decimals.money(card.owed().getAsDouble(), card.currency()))
        : Optional.empty();
  }
}
