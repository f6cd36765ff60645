package linkwright.link;

import java.util.Optional;
import java.util.stream.Stream;

/** A place to solder on one link, by what closes against what. */
public enum Joint {
  /** A tip closes against the wire it meets; of two such joints the first takes the first tip. */
  TIP_TO_BODY("tip to body"),
  /** The tip from which a {@code whole} pattern is walked closes against the wire it meets. */
  FIRST_TIP_TO_BODY("first tip to body"),
  /** The tip at which a {@code whole} pattern's walk ends closes against the wire it meets. */
  LAST_TIP_TO_BODY("last tip to body"),
  /** The two tips close against each other, flush: the butt joint of a ring or an oval. */
  TIP_TO_TIP("tip to tip"),
  /** The side of a tip's curl lies against the wire beside it; the first such joint, first tip. */
  CURL_TO_BODY("curl to body");

  private final String words;

  Joint(String words) {
    this.words = words;
  }

  /** How a pattern file writes it. */
  public String words() {
    return words;
  }

  /** The joint that a pattern file means by these words. */
  public static Optional<Joint> of(String words) {
    return Stream.of(values()).filter(joint -> joint.words.equals(words)).findFirst();
  }
}
