package linkwright.routine;

/**
 * What a routine says of a kind of piece besides its stages.
 *
 * @param pattern id of the link pattern it is bent by; empty for the one that is planned
 * @param perRepeat how many links come in one repeat of the chain, 1 or more; 1 of other kinds
 */
public record PieceDetail(String pattern, int perRepeat) {
  public PieceDetail {
    if (perRepeat < 1) {
      throw new IllegalArgumentException("perRepeat must be 1 or more, was " + perRepeat);
    }
  }

  /** So many of a kind, by their pattern: "2 round rings". */
  String counted(PieceKind kind, int many) {
    String which = pattern.isEmpty() ? "" : pattern + " ";
    return many + " " + which + kind.word(many);
  }
}
