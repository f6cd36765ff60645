package linkwright.routine;

/**
 * What a routine says of a kind of piece besides its stages.
 *
 * @param pattern id of the link pattern it is bent by; empty for the one that is planned
 * @param perRepeat how many come in one repeat of the chain, 1 or more
 */
public record PieceDetail(String pattern, int perRepeat) {
  public PieceDetail {
    if (perRepeat < 1) {
      throw new IllegalArgumentException("perRepeat must be 1 or more, was " + perRepeat);
    }
  }

  /** So many of a kind as one repeat takes, by their pattern: "2 round rings". */
  String counted(PieceKind kind) {
    String which = pattern.isEmpty() ? "" : pattern + " ";
    return perRepeat + " " + which + kind.word(perRepeat);
  }
}
