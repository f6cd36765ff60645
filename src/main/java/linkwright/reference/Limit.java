package linkwright.reference;

/**
 * What a law allows of a substance in what is worn.
 *
 * @param id the substance, as files and commands name it
 * @param where where it applies
 * @param says the limit in words
 * @param date when it was read
 * @param source the law
 */
public record Limit(String id, String where, String says, String date, String source) {}
