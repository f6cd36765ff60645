package linkwright.routine;

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
}
