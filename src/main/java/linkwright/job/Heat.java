package linkwright.job;

import java.time.Instant;

/**
 * A count or a wait at a step: where that step burns gas, something was heated then.
 *
 * @param id the entry
 * @param at when; never before what its book last said of hot work
 * @param written when by the entry itself: two acts under a clock that was set back differ in it
 * @param nth the how-manieth heat of its book, for a clock that is set back changes no order
 * @param words how many words of hot work its book held then
 */
public record Heat(EntryId id, Instant at, Instant written, int nth, int words) {}
