package linkwright.job;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import linkwright.quantity.Money;
import linkwright.quantity.Read;

/**
 * What was agreed for a job: for whom, by when, for how much; and whether it was put away.
 *
 * @param said key → what was typed, by the keys below; what was left empty is missing
 * @param away whether the job was put away from the tray
 */
public record JobCard(Map<String, String> said, boolean away) {
  /** The customer, in her own words. */
  public static final String CUSTOMER = "customer";

  /** The day it is promised for: 2026-12-20. */
  public static final String PROMISED = "promised";

  /** The price that was named. */
  public static final String QUOTE = "quote";

  /** What was paid ahead. */
  public static final String DEPOSIT = "deposit";

  /** Metal that the customer brought: what, and how heavy. */
  public static final String OWN_METAL = "own-metal";

  /** Which solder is in it, so that a repair knows. */
  public static final String SOLDER = "solder";

  /** The clasp. */
  public static final String CLASP = "clasp";

  /** The mark that is to be struck. */
  public static final String MARK = "mark";

  private static final Set<String> NO_MARK = Set.of("none", "no", "no mark", "-");

  /** All keys, in the order in which they are asked for. */
  public static final List<String> KEYS =
      List.of(CUSTOMER, PROMISED, QUOTE, DEPOSIT, OWN_METAL, SOLDER, CLASP, MARK);

  static final JobCard BLANK = new JobCard(Map.of(), false);

  /** Copies the map. */
  public JobCard {
    said = Fact.copy(said);
  }

  JobCard after(Fact fact) {
    if (fact instanceof BenchFact.CardSet set) {
      return new JobCard(set.card(), away);
    }
    return fact instanceof BenchFact.JobPutAway put ? new JobCard(said, put.away()) : this;
  }

  /** What was said of that key; empty for nothing. */
  public String of(String key) {
    return said.getOrDefault(key, "");
  }

  /** Whether it is to have a mark: something was said of it, and not that there is none. */
  public boolean wantsMark() {
    String said = of(MARK).strip();
    return !said.isEmpty() && !NO_MARK.contains(said.toLowerCase(Locale.ROOT));
  }

  /** The promised day as it can be read; empty where none was promised. */
  public Optional<LocalDate> promised() {
    return readDay(of(PROMISED)).found();
  }

  /** Days from that day to the promised one, below nothing once it is past; empty without one. */
  public OptionalLong daysLeft(LocalDate today) {
    return promised()
        .map(day -> OptionalLong.of(ChronoUnit.DAYS.between(today, day)))
        .orElse(OptionalLong.empty());
  }

  /** Reads a day, {@code 2026-12-20} or {@code 20.12.2026}. */
  public static Read<LocalDate> readDay(String typed) {
    String text = typed.strip().replaceFirst("^(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})$", "$3-0$2-0$1");
    try {
      return Read.good(LocalDate.parse(text.replaceAll("-0(\\d{2})(?!\\d)", "-$1")));
    } catch (DateTimeParseException noDay) {
      return Read.bad("“" + typed.strip() + "” is not a day: write it as 2026-12-20.");
    }
  }

  /** What is still to be paid: the price named less what was paid; empty without a price. */
  public OptionalDouble owed() {
    Optional<Money> quote = Money.read(of(QUOTE)).found();
    double paid = Money.read(of(DEPOSIT)).map(Money::amount).orElse(0.0);
    return quote.isPresent()
        ? OptionalDouble.of(quote.get().amount() - paid)
        : OptionalDouble.empty();
  }

  /** The money of the price that was named; empty where none was written. */
  public String currency() {
    return Money.read(of(QUOTE)).map(Money::currency).orElse("");
  }
}
