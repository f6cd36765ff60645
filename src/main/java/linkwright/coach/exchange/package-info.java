/**
 * The place where files go out to other programs and rows come in from theirs. Start from {@link
 * linkwright.coach.exchange.ExchangePlace}. Nothing is null.
 */
package linkwright.coach.exchange;
