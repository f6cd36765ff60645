/**
 * What the coach knows and does: a model, messages, and an update that answers with a new model and
 * the effects to perform. Pure: the clock, the disk and the terminal are somebody else's. Start
 * from {@link linkwright.coach.Coach}; how one screen behaves is a small class that ends in Place.
 * Nothing is null.
 */
package linkwright.coach;
