package linkwright.plan;

/**
 * A further link of a chain whose links are of several sizes.
 *
 * @param name what it is called, such as {@code round}
 * @param perRepeat how many of it one repeat takes, 1 or more
 * @param link the link itself
 */
public record OtherLink(String name, int perRepeat, WishedLink link) {}
