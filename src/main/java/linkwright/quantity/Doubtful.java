package linkwright.quantity;

/**
 * An amount that can be, and is out of reason. It is asked about before it is kept: one key keeps
 * it as it stands, nothing is refused for ever.
 *
 * @param question what is asked, a sentence that ends with a question mark
 * @param meant what was likely meant, as it would be typed; empty where nothing suggests itself
 */
public record Doubtful(String question, String meant) {}
