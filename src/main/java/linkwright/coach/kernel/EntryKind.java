package linkwright.coach.kernel;

import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.TradeWords;

/**
 * What the places say of one kind of entry, and where undo takes it back.
 *
 * @param fact the class of its facts
 * @param words one fact in words
 * @param takenBackAt the places at which undo takes it back; none where it has an act of its own
 * @param <F> its facts
 */
record EntryKind<F extends Fact>(
    Class<F> fact, BiFunction<F, InBook, String> words, Set<PlaceId> takenBackAt) {
  /**
   * Where an entry is told.
   *
   * @param units how amounts are written
   * @param words what things of the trade are called
   * @param titles what its steps and cautions are called
   * @param label what another entry that is named in it is called
   */
  record InBook(
      UnitStyle units, TradeWords words, BookTitles titles, Function<EntryId, String> label) {
    String length(double mm) {
      return units.length(mm);
    }

    String mass(double grams) {
      return units.mass(grams);
    }

    /** A length behind its word; empty without one. */
    String length(String before, OptionalDouble mm) {
      return mm.isPresent() ? before + length(mm.getAsDouble()) : "";
    }

    /** A mass behind its word; empty without one. */
    String mass(String before, OptionalDouble grams) {
      return grams.isPresent() ? before + mass(grams.getAsDouble()) : "";
    }
  }

  /** A kind that has an act of its own by which it is taken back, if at all. */
  static <F extends Fact> EntryKind<F> beyondUndo(
      Class<F> fact, BiFunction<F, InBook, String> words) {
    return new EntryKind<>(fact, words, Set.of());
  }

  /** A kind that undo takes back at a place, and nowhere else. */
  static <F extends Fact> EntryKind<F> takenBackAt(
      PlaceId place, Class<F> fact, BiFunction<F, InBook, String> words) {
    return new EntryKind<>(fact, words, EnumSet.of(place));
  }

  /** The same, taken back at another place too. */
  EntryKind<F> andAt(PlaceId other) {
    Set<PlaceId> places = EnumSet.of(other);
    places.addAll(takenBackAt);
    return new EntryKind<>(fact, words, places);
  }

  String told(Fact of, InBook in) {
    return words.apply(fact.cast(of), in);
  }

  /** An id as words: the title itself may have changed since, or its file be gone. */
  static String spoken(String id) {
    return id.replace('-', ' ');
  }

  /** What was said with it, behind a colon; empty where nothing was. */
  static String noted(String note) {
    return note.isBlank() ? "" : ": " + note;
  }

  static String size(String size) {
    return size.isEmpty() ? "" : " (" + size + ")";
  }

  static String counted(Map<PieceKind, Integer> pieces) {
    return pieces.entrySet().stream()
        .map(each -> each.getKey().counted(each.getValue()))
        .collect(Collectors.joining(" and "));
  }
}
