package linkwright.routine;

import java.util.Collection;
import java.util.List;

/**
 * A kind of piece that a routine makes and counts. The kinds are the routine's own data; the two
 * that every chain has are named here, and nowhere else.
 *
 * @param id the word for it in routines and job books; none for no kind
 */
public record PieceKind(String id) {
  public static final PieceKind NONE = new PieceKind("");

  /** A link of the chain. */
  public static final PieceKind LINK = new PieceKind("link");

  /** A ring that joins two links. */
  public static final PieceKind RING = new PieceKind("ring");

  /** The words for some kinds, in their order. */
  public static List<String> words(Collection<PieceKind> kinds) {
    return kinds.stream().map(PieceKind::id).toList();
  }

  /** So many of it in words: "1 link", "12 links". */
  public String counted(int count) {
    return count + " " + word(count);
  }

  /** The word for so many of it: "link", "links"; "box", "boxes". */
  public String word(int count) {
    return count == 1 ? id : id.matches(".*(s|x|z|ch|sh)") ? id + "es" : id + "s";
  }

  /** The word for several of it. */
  public String many() {
    return word(2);
  }

  // A record's own are slow in Java's quick compiler, and each entry of a book asks them often.
  @Override
  public boolean equals(Object other) {
    return other instanceof PieceKind same && id.equals(same.id);
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** The word for it, as it is shown. */
  @Override
  public String toString() {
    return id;
  }
}
