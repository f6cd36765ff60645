/**
 * The place of the job card: for whom, by when, for how much, and what goes into it. Start from
 * {@link linkwright.coach.card.CardPlace}. Nothing is null.
 */
package linkwright.coach.card;
