package linkwright.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.routine.Stage;

/**
 * The pieces of one kind, by where they stand.
 *
 * @param stages the stages in order; a piece standing at one waits for the next
 * @param standing stage → pieces that have come through it and not yet through the next
 * @param redo stage → pieces that go back to be done again at that stage
 * @param through stage → pieces that ever came through, redone ones each time
 * @param redoReasons reason → how often a piece was sent back for it
 * @param scrapReasons reason → pieces scrapped for it
 * @param lost stage → pieces scrapped when they were at it
 * @param again stage → when the pieces of its redo pile are to be done again, where that was said
 */
public record Pile(
    List<Stage> stages,
    Map<Stage, Integer> standing,
    Map<Stage, Integer> redo,
    Map<Stage, Integer> through,
    Map<String, Integer> redoReasons,
    Map<String, Integer> scrapReasons,
    Map<Stage, Integer> lost,
    Map<Stage, Again> again) {

  /** Of a kind that the routine does not make. */
  static final Pile NONE = empty(List.of());

  static Pile empty(List<Stage> stages) {
    return new Pile(
        List.copyOf(stages), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
  }

  /** Pieces that wait for a stage, the redo pile not among them; for the first stage none wait. */
  public int waitingFor(Stage stage) {
    int at = stages.indexOf(stage);
    return at < 1 ? 0 : standing.getOrDefault(stages.get(at - 1), 0);
  }

  /** The first stage; none where there is none. */
  Stage first() {
    return stages.isEmpty() ? Stage.NONE : stages.get(0);
  }

  /** Pieces to be redone at a stage. */
  public int redoAt(Stage stage) {
    return redo.getOrDefault(stage, 0);
  }

  /** When the redo pile of a stage is to be redone. */
  public Again again(Stage stage) {
    return again.getOrDefault(stage, Again.NOT_SAID);
  }

  /** The same, with that said of the redo pile of a stage, if it has pieces. */
  Pile saidAgain(Stage stage, Again when) {
    if (redoAt(stage) == 0 || when == Again.NOT_SAID) {
      return this;
    }
    Map<Stage, Again> said = new LinkedHashMap<>(again);
    said.put(stage, when);
    return new Pile(
        stages, standing, redo, through, redoReasons, scrapReasons, lost, Map.copyOf(said));
  }

  /** Pieces that stand at a stage or beyond it, and are in no redo pile. */
  public int atOrPast(Stage stage) {
    int at = stages.indexOf(stage);
    int sum = 0;
    for (int i = Math.max(at, 0); i < stages.size(); i++) {
      sum += standing.getOrDefault(stages.get(i), 0);
    }
    return at < 0 ? 0 : sum;
  }

  /** Whether the one chain has so many of them at that stage: any more are spare. */
  public boolean chainHas(Stage stage, int wanted) {
    int joined = stages.indexOf(Stage.JOINED);
    return joined >= 0
        && stages.indexOf(stage) >= joined
        && wanted > 0
        && atOrPast(stage) >= wanted;
  }

  /** Pieces not scrapped: everything cut that may still end in the chain. */
  public int alive() {
    return sum(standing) + sum(redo);
  }

  /** Pieces in all redo piles. */
  public int inRedo() {
    return sum(redo);
  }

  /** Pieces lost for good. */
  public int scrapped() {
    return sum(scrapReasons);
  }

  /** How often a piece was sent back. */
  public int sentBack() {
    return sum(redoReasons);
  }

  /** Pieces at the last stage. */
  public int finished() {
    return stages.isEmpty() ? 0 : standing.getOrDefault(stages.get(stages.size() - 1), 0);
  }

  /** Pieces alive that came through a stage, those that are to be done again later on too. */
  public int cameThrough(Stage stage) {
    int at = stages.indexOf(stage);
    return atOrPast(stage)
        + redo.entrySet().stream()
            .filter(pieces -> at >= 0 && stages.indexOf(pieces.getKey()) > at)
            .mapToInt(Map.Entry::getValue)
            .sum();
  }

  /** Whether that stage is the one where pieces begin. */
  public boolean begins(Stage stage) {
    return !stages.isEmpty() && stages.get(0).equals(stage);
  }

  Pile begun(int count) {
    if (stages.isEmpty()) {
      return this;
    }
    Stage first = stages.get(0);
    return with(plus(standing, first, count), redo, plus(through, first, count));
  }

  Pile placed(Stage stage, int count) {
    return with(plus(standing, stage, count), redo, through);
  }

  /**
   * At least so many at a stage or beyond it, in no redo pile: those that stand before it are taken
   * first, the furthest first; what lacks then was made without being counted here.
   */
  Pile atLeast(Stage stage, int count) {
    int at = stages.indexOf(stage);
    int lacks = count - atOrPast(stage);
    Pile next = this;
    for (int i = at - 1; i >= 0 && lacks > 0; i--) {
      Stage before = stages.get(i);
      int going = Math.min(lacks, next.standing.getOrDefault(before, 0));
      next = next.with(plus(next.standing, before, -going), next.redo, next.through);
      next = next.placed(stage, going);
      lacks -= going;
    }
    return at < 0 || lacks <= 0 ? next : next.placed(stage, lacks);
  }

  /** One piece fewer where a sample stood that is no longer link 1, if it stands there still. */
  Pile withdrawn(Stage stage) {
    int there = Math.min(1, standing.getOrDefault(stage, 0));
    return with(plus(standing, stage, -there), redo, through);
  }

  /*
   * Never more pieces move than there are. The bench refuses it, but an earlier entry may have been
   * struck since, or two machines may have written one book: what is not there cannot come through.
   */

  Pile moved(Stage stage, int count, boolean fromRedo) {
    int going = Math.min(count, there(stage, fromRedo));
    Pile left = taken(stage, going, fromRedo);
    return left.with(plus(left.standing, stage, going), left.redo, plus(through, stage, going));
  }

  Pile sentBack(Stage from, Stage to, int count, boolean fromRedo, String reason) {
    int going = Math.min(count, there(from, fromRedo));
    Pile left = taken(from, going, fromRedo);
    return new Pile(
        stages,
        left.standing,
        plus(left.redo, stages.contains(to) ? to : from, going),
        through,
        plus(redoReasons, reason, going),
        scrapReasons,
        lost,
        left.again);
  }

  Pile scrapped(Stage stage, int count, boolean fromRedo, String reason) {
    int going = Math.min(count, there(stage, fromRedo));
    Pile left = taken(stage, going, fromRedo);
    return new Pile(
        stages,
        left.standing,
        left.redo,
        through,
        redoReasons,
        plus(scrapReasons, reason, going),
        plus(lost, stage, going),
        left.again);
  }

  int there(Stage stage, boolean inRedo) {
    return inRedo ? redoAt(stage) : waitingFor(stage);
  }

  /** So many fewer that wait for a stage; more, if the count is below nothing. */
  Pile taken(Stage stage, int count, boolean fromRedo) {
    return fromRedo
        ? with(standing, plus(redo, stage, -count), through)
        : with(plus(standing, before(stage), -count), redo, through);
  }

  private Pile with(
      Map<Stage, Integer> newStanding,
      Map<Stage, Integer> newRedo,
      Map<Stage, Integer> newThrough) {
    Map<Stage, Again> left = again;
    if (!newRedo.keySet().containsAll(again.keySet())) {
      // What was said of a redo pile holds as long as it has pieces.
      left = new LinkedHashMap<>(again);
      left.keySet().retainAll(newRedo.keySet());
      left = Map.copyOf(left);
    }
    return new Pile(
        stages, newStanding, newRedo, newThrough, redoReasons, scrapReasons, lost, left);
  }

  /** Both piles together. */
  Pile and(Pile other) {
    Map<Stage, Again> said = new LinkedHashMap<>(again);
    other.again.forEach(said::putIfAbsent);
    return new Pile(
        stages.isEmpty() ? other.stages : stages,
        sum(standing, other.standing),
        sum(redo, other.redo),
        sum(through, other.through),
        sum(redoReasons, other.redoReasons),
        sum(scrapReasons, other.scrapReasons),
        sum(lost, other.lost),
        Map.copyOf(said));
  }

  private static <K> Map<K, Integer> sum(Map<K, Integer> one, Map<K, Integer> other) {
    Map<K, Integer> both = new LinkedHashMap<>(one);
    other.forEach((key, count) -> both.merge(key, count, Integer::sum));
    both.values().removeIf(count -> count == 0);
    return Map.copyOf(both);
  }

  private Stage before(Stage stage) {
    int at = stages.indexOf(stage);
    return at < 1 ? Stage.NONE : stages.get(at - 1);
  }

  private static <K> Map<K, Integer> plus(Map<K, Integer> counts, K key, int add) {
    if (key.equals(Stage.NONE) || add == 0) {
      return counts;
    }
    Map<K, Integer> sum = MapSums.plus(counts, key, add, Integer::sum);
    if (sum.get(key) != 0) {
      return sum;
    }
    Map<K, Integer> left = new LinkedHashMap<>(sum);
    left.remove(key);
    return Map.copyOf(left);
  }

  private static int sum(Map<?, Integer> counts) {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }
}
