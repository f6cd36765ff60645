package linkwright.routine;

/**
 * A kind of piece that a routine makes and counts. The kinds are the routine's own data; the two
 * that every chain has are named here, and nowhere else.
 *
 * @param id the word for it in routines and job books
 */
public record PieceKind(String id) {
  /** A link of the chain. */
  public static final PieceKind LINK = new PieceKind("link");

  /** A ring that joins two links. */
  public static final PieceKind RING = new PieceKind("ring");

  public PieceKind {
    if (id.isBlank()) {
      throw new IllegalArgumentException("a kind of piece has a name");
    }
  }

  /** Whether that word names this kind. */
  public boolean is(String word) {
    return id.equals(word);
  }
}
