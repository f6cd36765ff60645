package linkwright.bench;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The pickle in use.
 *
 * @param kind what it is made of, such as citric; empty if it was not said
 * @param usualSeconds how long pieces usually stay in, s
 * @param mixed the day it was mixed; blue pickle is spent whatever the day
 */
public record Pickle(String kind, OptionalLong usualSeconds, Optional<LocalDate> mixed) {
  /** Nothing was said. */
  public static final Pickle NOT_SAID = new Pickle("", OptionalLong.empty(), Optional.empty());
}
