package linkwright.job;

import java.time.Instant;

/**
 * A count or a wait at a step: where that step burns gas, something was heated then.
 *
 * @param id the entry
 * @param at when; never before what its book last said of hot work
 */
public record Heat(EntryId id, Instant at) {}
