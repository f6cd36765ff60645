package linkwright.exchange;

import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.quantity.Decimals;

/**
 * What stands in a book already. A row that was given out of it is known by its number and moment;
 * any other says the same as an entry where the two would be given out alike.
 *
 * @param given number and moment of what was given out of it
 * @param said what its entries say, as they are given out
 * @param givenOut an entry's rows, if it were given out
 */
record StandsThere(
    Set<String> given,
    Set<Map<String, String>> said,
    Function<Fact, List<Map<String, Object>>> givenOut) {
  /** No book. */
  static final StandsThere NOTHING = new StandsThere(Set.of(), Set.of(), fact -> List.of());

  private static final String NUMBER = "number";
  private static final String WHEN = "when";

  /** Said of an entry by others, so no part of what it says. */
  private static final String SAMPLE = "sample";

  /** Amounts are told apart by a thousandth. */
  private static final int DECIMALS = 3;

  /** Of a table of a job's book; struck entries stand there no more. */
  static StandsThere in(List<Entry> entries, JobState state, String table) {
    Set<String> given = new HashSet<>();
    Set<Map<String, String>> said = new HashSet<>();
    for (Map<String, Object> row : JobTables.of(entries, state).get(table)) {
      given.add(row.get(NUMBER) + " " + row.get(WHEN));
      said.add(plain(row));
    }
    return new StandsThere(
        given,
        said,
        fact ->
            JobTables.of(List.of(new Entry(1, Instant.EPOCH, "take-in", fact)), state).get(table));
  }

  boolean gave(CsvTable.CsvRow row) {
    return given.contains(row.of(NUMBER) + " " + row.of(WHEN));
  }

  boolean says(Fact fact) {
    return !said.isEmpty()
        && givenOut.apply(fact).stream().anyMatch(row -> said.contains(plain(row)));
  }

  private static Map<String, String> plain(Map<String, Object> row) {
    Map<String, String> plain = new LinkedHashMap<>();
    row.forEach(
        (key, value) -> {
          String text = text(value);
          if (!text.isEmpty() && !List.of(NUMBER, WHEN, SAMPLE).contains(key)) {
            plain.put(key, text);
          }
        });
    return plain;
  }

  private static String text(Object value) {
    if (value instanceof Optional<?> some) {
      return some.map(StandsThere::text).orElse("");
    }
    return value instanceof Double amount
        ? Decimals.upTo(amount, DECIMALS)
        : String.valueOf(value).strip();
  }
}
