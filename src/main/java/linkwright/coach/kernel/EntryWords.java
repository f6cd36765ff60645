package linkwright.coach.kernel;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.routine.TradeWords;

/** An entry in words, as the book and undo show it, and where undo takes it back. */
public final class EntryWords {
  private static final Map<Class<? extends Fact>, EntryKind<?>> KINDS =
      Stream.of(
              JobEntryKinds.ALL,
              SittingEntryKinds.ALL,
              PieceEntryKinds.ALL,
              OtherBookEntryKinds.ALL)
          .flatMap(List::stream)
          .collect(Collectors.toUnmodifiableMap(EntryKind::fact, Function.identity()));

  private EntryWords() {}

  /** One line that says what the fact is; amounts in the user's units. */
  public static String of(Fact fact, Model model) {
    return of(fact, BookTitles.of(model), model.settings());
  }

  static String of(Fact fact, BookTitles titles, Settings settings) {
    return of(fact, titles, settings, id -> Integer.toString(id.number()));
  }

  /**
   * The same in a book whose entries are told apart by labels.
   *
   * @param label what an entry that is named in it is called there
   */
  public static String of(
      Fact fact, BookTitles titles, Settings settings, Function<EntryId, String> label) {
    TradeWords words = settings.british() ? TradeWords.BRITISH : TradeWords.AMERICAN;
    return oneLine(
        kind(fact).told(fact, new EntryKind.InBook(settings.units(), words, titles, label)));
  }

  /** The same as a sentence quotes it: what was typed in it is told as it was typed. */
  public static String quoted(Fact fact, Model model) {
    return "“" + of(fact, model) + "”";
  }

  /** The places at which undo takes such a fact back; none where it has an act of its own. */
  public static Set<PlaceId> takenBackAt(Fact fact) {
    return kind(fact).takenBackAt();
  }

  /** Whether undo takes anything back at a place. */
  public static boolean anythingTakenBackAt(PlaceId place) {
    return KINDS.values().stream().anyMatch(kind -> kind.takenBackAt().contains(place));
  }

  /** No entry is to be read as another: a kind without words of its own is a fault. */
  private static EntryKind<?> kind(Fact fact) {
    EntryKind<?> kind = KINDS.get(fact.getClass());
    if (kind == null) {
      throw new IllegalStateException("No words for " + fact.getClass().getSimpleName());
    }
    return kind;
  }

  /** What somebody typed over several lines must not look like lines of ours. */
  private static String oneLine(String words) {
    return words.strip().replaceAll("\\s*\\R\\s*", " / ");
  }
}
