package linkwright.routine;

/**
 * Something to wear or a sign to mind.
 *
 * @param sign the ISO 7010 code, such as M004
 * @param says what it means, in words
 */
public record Gear(String sign, String says) {}
