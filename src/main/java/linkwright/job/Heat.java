package linkwright.job;

import java.time.Instant;

/**
 * A count or a wait at a step: where that step burns gas, something was heated then.
 *
 * @param id the entry
 * @param at when; never before what its book last said of hot work
 * @param nth the how-manieth heat of its book, for a clock that is set back changes no order
 */
public record Heat(EntryId id, Instant at, int nth) {}
