package linkwright.wire;

import java.util.Locale;
import linkwright.quantity.Read;

/** How two ends of wire meet at a joint. */
public enum JointKind {
  /** End against end, both cut flat. */
  BUTT,
  /** An end cut flat against the side of round wire. */
  SIDE;

  /** Reads the word written in files and commands. */
  public static Read<JointKind> read(String typed) {
    return switch (typed.strip().toLowerCase(Locale.ROOT)) {
      case "butt" -> Read.good(BUTT);
      case "side" -> Read.good(SIDE);
      default ->
          Read.bad(
              "“"
                  + typed.strip()
                  + "” is not a kind of joint. Write butt (end to end) or side (end against wire).");
    };
  }
}
