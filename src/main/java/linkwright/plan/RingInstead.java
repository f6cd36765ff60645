package linkwright.plan;

/**
 * A ring wished after a trial length hung with another was chosen: the wish counts.
 *
 * @param tried the ring that hung in the trial
 * @param wished the ring wished since
 */
public record RingInstead(WishedRing tried, WishedRing wished) {}
