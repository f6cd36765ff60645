package linkwright.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * The links of a chain of several sizes, each size in a pile of its own.
 *
 * @param piles size → its pile; {@link #UNSAID} for those of which no size was said. Empty as long
 *     as no size was said of any link
 */
public record LinkSizes(Map<String, Pile> piles) {
  /** Of these links no size was said: entered by an earlier version, or all links are alike. */
  public static final String UNSAID = "";

  static final LinkSizes NONE = new LinkSizes(Map.of());

  /** How many of a kind of piece are of each size, by what was said; the rest is of none. */
  public static Map<String, Integer> of(PieceKind piece, int count, Map<String, Integer> sizes) {
    Map<String, Integer> all = new LinkedHashMap<>();
    int rest = count;
    for (Map.Entry<String, Integer> size : sizes.entrySet()) {
      int here = piece.equals(PieceKind.LINK) ? Math.min(rest, size.getValue()) : 0;
      all.merge(size.getKey(), here, Integer::sum);
      rest -= here;
    }
    all.merge(UNSAID, rest, Integer::sum);
    all.values().removeIf(none -> none == 0);
    return all;
  }

  /** The sizes said of links on their way; none where none was. */
  static Map<String, Integer> of(Map<OnWay, Integer> ways, boolean redo) {
    Map<String, Integer> sizes = new LinkedHashMap<>();
    ways.forEach(
        (way, count) -> {
          if (way.redo() == redo && !way.size().isEmpty()) {
            sizes.merge(way.size(), count, Integer::sum);
          }
        });
    return sizes;
  }

  static Map<String, Integer> one(String size, int count) {
    return Map.of(size, count);
  }

  /** The same once a size is said: what there is till then is of none. */
  LinkSizes begun(Pile all, Map<String, Integer> said) {
    boolean named = piles.isEmpty() && !said.isEmpty() && !said.keySet().equals(Set.of(UNSAID));
    return named ? new LinkSizes(Map.of(UNSAID, all)) : this;
  }

  /** The pile of a size; an empty one if there is none. */
  public Pile of(String size) {
    Pile any = piles.getOrDefault(UNSAID, Pile.empty(List.of()));
    return piles.getOrDefault(size, Pile.empty(any.stages()));
  }

  /** All but these together; empty where there are no others. */
  public Optional<Pile> without(List<String> sizes) {
    return piles.entrySet().stream()
        .filter(each -> !sizes.contains(each.getKey()))
        .map(Map.Entry::getValue)
        .reduce(Pile::and);
  }

  /** All sizes together. */
  Pile all() {
    return piles.values().stream().reduce(Pile::and).orElseThrow();
  }

  /** So many more of each size. */
  LinkSizes added(Map<String, Integer> counts, BiFunction<Pile, Integer, Pile> how) {
    LinkSizes next = this;
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      next = next.with(each.getKey(), how.apply(next.of(each.getKey()), each.getValue()));
    }
    return next;
  }

  /**
   * So many of each size go from where they wait. Where fewer of a size are there than are said to
   * go, the rest is taken from those of no said size, which thereby is said; those that go without
   * a size are such, and then any.
   */
  LinkSizes gone(
      Map<String, Integer> counts, Stage stage, boolean redo, BiFunction<Pile, Integer, Pile> how) {
    LinkSizes next = this;
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      next =
          each.getKey().equals(UNSAID)
              ? next.anyGone(each.getValue(), stage, redo, how)
              : next.sizeGone(each.getKey(), each.getValue(), stage, redo, how);
    }
    return next;
  }

  private LinkSizes sizeGone(
      String size, int count, Stage stage, boolean redo, BiFunction<Pile, Integer, Pile> how) {
    int lacks = Math.max(0, count - of(size).there(stage, redo));
    int said = Math.min(lacks, of(UNSAID).there(stage, redo));
    LinkSizes ready =
        said == 0
            ? this
            : with(UNSAID, of(UNSAID).taken(stage, said, redo))
                .with(size, of(size).taken(stage, -said, redo));
    return ready.with(size, how.apply(ready.of(size), count));
  }

  private LinkSizes anyGone(
      int count, Stage stage, boolean redo, BiFunction<Pile, Integer, Pile> how) {
    LinkSizes next = this;
    int rest = count;
    Map<String, Pile> order = new LinkedHashMap<>();
    order.put(UNSAID, of(UNSAID));
    order.putAll(piles);
    for (String size : order.keySet()) {
      int going = Math.min(rest, next.of(size).there(stage, redo));
      next = going == 0 ? next : next.with(size, how.apply(next.of(size), going));
      rest -= going;
    }
    return next;
  }

  /** Something was done to each of the piles. */
  LinkSizes each(UnaryOperator<Pile> how) {
    Map<String, Pile> all = new LinkedHashMap<>();
    piles.forEach((size, pile) -> all.put(size, how.apply(pile)));
    return new LinkSizes(all);
  }

  /** As {@link Pile#atLeast} says, of each size. */
  LinkSizes atLeast(Stage stage, Map<String, Integer> counts) {
    LinkSizes next = this;
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      if (!each.getKey().equals(UNSAID)) {
        next = next.with(each.getKey(), next.of(each.getKey()).atLeast(stage, each.getValue()));
      }
    }
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    int lacks = all - next.all().atOrPast(stage);
    for (String size : List.copyOf(next.piles().keySet())) {
      Pile pile = next.of(size);
      int going = Math.min(lacks, pile.alive() - pile.inRedo() - pile.atOrPast(stage));
      if (going > 0) {
        next = next.with(size, pile.atLeast(stage, pile.atOrPast(stage) + going));
        lacks -= going;
      }
    }
    return lacks > 0 ? next.with(UNSAID, next.of(UNSAID).placed(stage, lacks)) : next;
  }

  LinkSizes with(String size, Pile pile) {
    Map<String, Pile> more = new LinkedHashMap<>(piles);
    more.put(size, pile);
    return new LinkSizes(Collections.unmodifiableMap(more));
  }
}
