package linkwright.routine;

import java.util.Locale;

/**
 * A wait that a step offers as a timer.
 *
 * @param id by what books know it, whatever it is called
 * @param name what is waited for, as the timer is called
 * @param seconds how long, above zero
 * @param ends by what it ends
 */
public record Wait(WaitId id, String name, long seconds, WaitEnds ends) {
  public Wait {
    if (seconds <= 0) {
      throw new IllegalArgumentException("seconds must be above zero, was " + seconds);
    }
  }

  /** A wait that ends by its time, known by its name. */
  public Wait(String name, long seconds) {
    this(
        new WaitId(name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-")),
        name,
        seconds,
        WaitEnds.TIME);
  }
}
