package linkwright.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;

/**
 * What is in the waits of a job's steps: pieces that went in later have a wait of their own.
 *
 * @param all in the order in which they went in
 */
public record InWaits(List<InWait> all) {
  static final InWaits NONE = new InWaits(List.of());

  public InWaits {
    all = List.copyOf(all);
  }

  /** What is in the waits of a step. */
  public List<InWait> at(StepId step) {
    return all.stream().filter(each -> each.step().equals(step)).toList();
  }

  InWaits after(Entry entry) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.TimerStarted started && !started.step().isEmpty()) {
      return started(started, entry.id());
    }
    if (fact instanceof Fact.TimerAnswered answered) {
      return new InWaits(all.stream().map(each -> each.answered(answered.timer())).toList());
    }
    if (fact instanceof Fact.StepDone done) {
      return new InWaits(all.stream().filter(each -> !each.step().equals(done.step())).toList());
    }
    return fact instanceof Fact.PiecesThrough through ? through(through) : this;
  }

  /** Named pieces went in; else a wait goes on with the next one, or begins anew. */
  private InWaits started(Fact.TimerStarted started, EntryId timer) {
    List<InWait> more = new ArrayList<>(all);
    for (int i = 0; i < more.size() && started.goesIn().isEmpty(); i++) {
      InWait each = more.get(i);
      if (each.step().equals(started.step()) && each.running().isEmpty()) {
        more.set(i, each.again(started, timer));
        return new InWaits(more);
      }
    }
    more.add(InWait.of(started, timer));
    return new InWaits(more);
  }

  /** What comes out is what was in longest; of what runs still nothing came out. */
  private InWaits through(Fact.PiecesThrough through) {
    InWaits left =
        new InWaits(
            all.stream()
                .filter(each -> !(each.isAll() && each.step().equals(through.step())))
                .toList());
    for (Map.Entry<PieceKind, Integer> piece : through.pieces().entrySet()) {
      PieceKind kind = piece.getKey();
      for (Map.Entry<String, Integer> size :
          LinkSizes.of(kind, piece.getValue(), through.sizes()).entrySet()) {
        OnWay way = new OnWay(kind, through.stage(), through.redo(), size.getKey());
        left = left.less(way, size.getValue(), through.step());
      }
    }
    return left;
  }

  private InWaits less(OnWay way, int count, StepId step) {
    List<InWait> left = new ArrayList<>(all);
    int gone = count;
    for (boolean running : List.of(false, true)) {
      for (int i = 0; i < left.size() && gone > 0; i++) {
        InWait each = left.get(i);
        if (each.step().equals(step) && each.of(way) > 0 && each.running().isEmpty() != running) {
          int out = Math.min(gone, each.of(way));
          left.set(i, each.less(way, out));
          gone -= out;
        }
      }
    }
    return withoutEmpty(left);
  }

  /** Something that went in whole and has come out whole is in no wait any more. */
  private InWaits withoutEmpty(List<InWait> left) {
    List<InWait> kept = new ArrayList<>();
    for (int i = 0; i < left.size(); i++) {
      if (all.get(i).isAll() || !left.get(i).isAll()) {
        kept.add(left.get(i));
      }
    }
    return new InWaits(kept);
  }

  /**
   * The same with no more in them than there is: what was scrapped or taken back from there is in
   * no wait. Which it was is not known; those that went in first are taken as gone, so that none
   * that is left comes out too early.
   */
  InWaits within(Piles piles) {
    InWaits left = this;
    Map<StepId, Map<OnWay, Integer>> sums = new HashMap<>();
    for (InWait each : all) {
      Map<OnWay, Integer> sum = sums.computeIfAbsent(each.step(), step -> new HashMap<>());
      each.pieces().forEach((way, count) -> sum.merge(way, count, Integer::sum));
    }
    for (Map.Entry<StepId, Map<OnWay, Integer>> step : sums.entrySet()) {
      for (Map.Entry<OnWay, Integer> sum : step.getValue().entrySet()) {
        int over = sum.getValue() - there(piles, sum.getKey());
        if (over > 0) {
          left = left.less(sum.getKey(), over, step.getKey());
        }
      }
    }
    return left;
  }

  private static int there(Piles piles, OnWay way) {
    Pile pile = piles.of(way.piece(), way.size());
    Stage stage = way.to();
    return way.redo() ? pile.redoAt(stage) : pile.waitingFor(stage);
  }
}
