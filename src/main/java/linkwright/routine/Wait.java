package linkwright.routine;

/**
 * A wait that a step offers as a timer.
 *
 * @param name what is waited for, as the timer is called
 * @param seconds how long, above zero
 */
public record Wait(String name, long seconds) {
  public Wait {
    if (seconds <= 0) {
      throw new IllegalArgumentException("seconds must be above zero, was " + seconds);
    }
  }
}
