package linkwright.routine;

/**
 * The jobs that a routine is meant for, and what is told of others before their plan is kept.
 *
 * @param when the jobs it is meant for
 * @param otherwise what is told of others: a sentence
 */
public record Suits(When when, String otherwise) {}
