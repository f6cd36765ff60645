/**
 * One chain being made: the entries of its book and what they add up to. What follows from that,
 * figure by figure, is another room's.
 *
 * <p>Start from {@link linkwright.job.Fact} (what can be entered) and {@link
 * linkwright.job.JobState} (what the entries add up to). Lengths are mm, masses g, times seconds or
 * instants. Nothing is null; what is not known is an empty optional.
 */
package linkwright.job;
