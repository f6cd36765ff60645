package linkwright.link;

import java.util.Optional;

/**
 * Wire bent over a former. The centre line has the radius (D + d)/2; with {@code to} it changes
 * evenly with the angle from the first former's radius to the second's.
 *
 * @param over the former's name
 * @param to the former that the bend grows (or shrinks) to; empty where it keeps its radius
 * @param turnDeg how far it turns, in degrees, more than 0
 * @param side to which hand
 * @param eye whether it holds the next element of the chain
 * @param curl whether the file calls it a curl, the trade's word for a tip rolled up; bent alike
 * @param overOnPurpose whether this bend may cross other wire: {@code over: true} beside it
 */
public record Bend(
    String over,
    Optional<String> to,
    double turnDeg,
    Side side,
    boolean eye,
    boolean curl,
    boolean overOnPurpose)
    implements PatternPart {}
