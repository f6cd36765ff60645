package linkwright.standing;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import linkwright.job.Pile;
import linkwright.routine.Stage;
import linkwright.yield.BlanksToCut;
import linkwright.yield.LossOnTheWay;
import linkwright.yield.OnTheWay;
import linkwright.yield.Rate;
import linkwright.yield.StagePassed;
import linkwright.yield.Yield;

/**
 * What is still to do for one kind of piece, counted anew after every entry.
 *
 * @param wanted pieces the chain takes
 * @param good pieces that came good
 * @param inWork pieces that are cut and not judged yet, redo piles among them
 * @param redo pieces in redo piles
 * @param scrapped pieces lost
 * @param toCut further blanks so that enough come good with the wished chance; empty if no number
 *     is enough
 * @param canCut further blanks that the wire on hand gives
 * @param loss what is believed of the share lost, by the usual loss and by what was lost so far
 * @param ahead the same of the pieces that are in work and of those still to cut, each with the
 *     stages that it has before it
 * @param sizes the same of each size, where the chain has links of several; none makes up for
 *     another
 */
public record StillToDo(
    int wanted,
    int good,
    int inWork,
    int redo,
    int scrapped,
    OptionalInt toCut,
    int canCut,
    Rate loss,
    Rate ahead,
    List<SizeLeft> sizes) {

  /** The stage at which a piece is judged; what came through it is good. */
  public static final Stage JUDGED = Stage.CHECKED;

  /** A spare is begun ahead from so many reckoned lost; our own choice. */
  private static final double SPARE_FROM = 0.5;

  /**
   * Counts what is still to do.
   *
   * <p>Blanks still to cut are those that {@link OnTheWay} asks for: a piece in work has proved
   * itself as far as it came.
   *
   * @param wanted pieces the chain takes, 0 or more
   * @param pile where the pieces stand
   * @param usualLoss the share usually lost, 0 to 1
   * @param confidence the wished chance, above 0, at most 1
   * @param canCut blanks that the wire on hand still gives, 0 or more
   */
  public static StillToDo of(
      int wanted, Pile pile, double usualLoss, double confidence, int canCut) {
    return of(wanted, List::of, pile, usualLoss, confidence, canCut);
  }

  /** The same of links of several sizes, each counted by itself. */
  StillToDo bySize(List<SizeLeft> each) {
    boolean known = each.stream().allMatch(size -> size.toCut().isPresent());
    OptionalInt cut =
        known
            ? OptionalInt.of(each.stream().mapToInt(SizeLeft::toCutOrAsMany).sum())
            : OptionalInt.empty();
    return new StillToDo(
        wanted, good, inWork, redo, scrapped, cut, canCut, loss, ahead, List.copyOf(each));
  }

  /** What is still to do for links of that size; for all where they are alike. */
  public StillToDo of(String size) {
    return sizes.stream()
        .filter(each -> each.name().equals(size))
        .findFirst()
        .map(
            each ->
                new StillToDo(
                    each.wanted(),
                    each.good(),
                    each.inWork(),
                    redo,
                    scrapped,
                    each.toCut(),
                    each.canCut(),
                    loss,
                    ahead,
                    List.of()))
        .orElse(this);
  }

  /** Further blanks of each size; of one where all are alike. */
  public List<Integer> toCutBySize() {
    return sizes.isEmpty()
        ? List.of(toCutOrAsMany())
        : sizes.stream().map(SizeLeft::toCutOrAsMany).toList();
  }

  /** The same if none were lost. */
  public List<Integer> leastBySize() {
    return sizes.isEmpty()
        ? List.of(Math.max(0, more() - inWork))
        : sizes.stream().map(SizeLeft::least).toList();
  }

  private static int sum(List<Integer> counts) {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * The same of pieces of several sizes, each of which needs spares of its own.
   *
   * @param bySize pieces still lacking → how many of them of each size
   */
  static StillToDo of(
      int wanted,
      IntFunction<List<Integer>> bySize,
      Pile pile,
      double usualLoss,
      double confidence,
      int canCut) {
    int good = good(pile);
    int inWork = pile.alive() - good;
    int more = Math.max(0, wanted - good);
    Rate loss = loss(pile, usualLoss);
    OnTheWay.Further further =
        onTheWay(pile, usualLoss, inWork)
            .map(way -> way.further(bySize.apply(more), confidence))
            .orElseGet(
                () ->
                    new OnTheWay.Further(
                        blanks(bySize.apply(more), loss, confidence, inWork), loss));
    return new StillToDo(
        wanted,
        good,
        inWork,
        pile.inRedo(),
        pile.scrapped(),
        further.further(),
        canCut,
        loss,
        further.loss(),
        List.of());
  }

  /**
   * What is believed of the share lost: the habit that was typed, and what this run showed. A piece
   * half way has proved itself as far as it came, as a scrapped one failed where it was; what is
   * scrapped after it was judged is told with the judging.
   */
  public static Rate loss(Pile pile, double usualLoss) {
    int judged = judged(pile);
    return judged < 1
        ? Rate.usual(usualLoss).seen(good(pile), pile.scrapped())
        : LossOnTheWay.seen(usualLoss, passed(pile, judged));
  }

  /** Where a piece is judged, of its stages; none before the first that one can be lost at. */
  static int judged(Pile pile) {
    List<Stage> stages = pile.stages();
    return stages.contains(JUDGED) ? stages.indexOf(JUDGED) : stages.size() - 1;
  }

  private static List<StagePassed> passed(Pile pile, int judged) {
    List<Stage> stages = pile.stages();
    int[] lost = new int[judged + 1];
    pile.lost()
        .forEach(
            (stage, count) -> {
              int at = stages.indexOf(stage);
              lost[at < 0 ? judged : Math.max(1, Math.min(at, judged))] += count;
            });
    Deque<StagePassed> passed = new ArrayDeque<>();
    int lostLater = 0;
    for (int i = judged; i >= 1; i--) {
      passed.addFirst(new StagePassed(pile.cameThrough(stages.get(i)) + lostLater, lost[i]));
      lostLater += lost[i];
    }
    return List.copyOf(passed);
  }

  /** Where the pieces in work are; empty where they are not judged on the way. */
  static Optional<OnTheWay> onTheWay(Pile pile, double usualLoss, int inWork) {
    int judged = judged(pile);
    if (judged < 1) {
      return Optional.empty();
    }
    int[] waiting = new int[judged];
    int told = 0;
    for (int i = 1; i < pile.stages().size() && told < inWork; i++) {
      Stage stage = pile.stages().get(i);
      // What goes back to a stage after the judging has only that to fail at once more.
      int here = pile.redoAt(stage) + (i > judged ? 0 : pile.waitingFor(stage));
      waiting[Math.min(i, judged) - 1] += Math.min(here, inWork - told);
      told += Math.min(here, inWork - told);
    }
    waiting[0] += inWork - told;
    return Optional.of(
        new OnTheWay(usualLoss, passed(pile, judged), Arrays.stream(waiting).boxed().toList()));
  }

  static int good(Pile pile) {
    return pile.stages().contains(JUDGED) ? pile.atOrPast(JUDGED) : pile.finished();
  }

  private static OptionalInt blanks(
      List<Integer> lacking, Rate loss, double confidence, int inWork) {
    int blanks = 0;
    for (int more : lacking) {
      if (!(Yield.cut(more, loss, confidence) instanceof BlanksToCut.Blanks enough)) {
        return OptionalInt.empty();
      }
      blanks += enough.blanks();
    }
    return OptionalInt.of(Math.max(0, blanks - inWork));
  }

  /** Further blanks to cut; where no number is enough, as many as still lack. */
  public int toCutOrAsMany() {
    return toCut.orElseGet(() -> sum(leastBySize()));
  }

  /** How many of the blanks still to cut are spare: more than would do if none were lost. */
  public int spares() {
    return Math.max(0, toCutOrAsMany() - sum(leastBySize()));
  }

  /**
   * The same of pieces that are made by themselves, as a clasp is: where less than half of one is
   * reckoned lost, no spare is begun ahead, for what fails is made anew.
   */
  StillToDo madeAnew() {
    return more() * lossShare() >= SPARE_FROM
        ? this
        : new StillToDo(
            wanted,
            good,
            inWork,
            redo,
            scrapped,
            OptionalInt.of(Math.max(0, more() - inWork)),
            canCut,
            loss,
            ahead,
            sizes);
  }

  /** The same of a job that is closed: no more is cut for it. */
  StillToDo closed() {
    return new StillToDo(
        wanted, good, inWork, redo, scrapped, OptionalInt.of(0), canCut, loss, ahead, sizes);
  }

  /** The share believed to be lost, 0 to 1. */
  public double lossShare() {
    return loss.mean();
  }

  /** Good pieces that the chain takes; a spare that came good is none of them. */
  public int goodForChain() {
    return wanted - more();
  }

  /** Good pieces beyond those that the chain takes. */
  public int over() {
    return good - goodForChain();
  }

  /** Good pieces still wanted. */
  public int more() {
    return sizes.isEmpty()
        ? Math.max(0, wanted - good)
        : sizes.stream().mapToInt(SizeLeft::more).sum();
  }
}
