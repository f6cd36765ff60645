package linkwright.coach.bench;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepCounting;
import linkwright.standing.StillToDo;

/** What is joined one by one needs something to be joined to: a ring alone joins no links. */
final class Partners {
  private Partners() {}

  /**
   * A kind of piece that the counted one is joined with.
   *
   * @param kind the kind
   * @param there how many have come so far
   * @param carry how many of the counted ones they carry
   */
  private record Partner(PieceKind kind, int there, int carry) {
    String carries(AtBench at) {
      return kind.counted(there)
          + (there == 1 ? " carries " : " carry ")
          + carry
          + " "
          + at.piece().word(carry);
    }
  }

  /** The kind of which too few have come for so many to be joined; empty where all are there. */
  private static Optional<Partner> lacking(Model model, AtBench at, int joined) {
    if (at.step().counts() != StepCounting.EACH || at.begins() || at.fromRedo()) {
      return Optional.empty();
    }
    OpenJob job = model.job().orElseThrow();
    return at.step().stage().entrySet().stream()
        .filter(each -> !each.getKey().equals(at.piece()))
        .map(each -> partner(job, at, each))
        .filter(partner -> joined > partner.carry())
        .findFirst();
  }

  private static Partner partner(OpenJob job, AtBench at, Map.Entry<PieceKind, Stage> each) {
    Pile pile = job.state().piles().of(each.getKey());
    int there = pile.waitingFor(each.getValue()) + pile.atOrPast(each.getValue());
    return new Partner(each.getKey(), there, there == 0 ? 0 : carry(job, at, each.getKey(), there));
  }

  /** As many go with each of them as in the whole chain, and those at its ends. */
  private static int carry(OpenJob job, AtBench at, PieceKind kind, int there) {
    Map<PieceKind, StillToDo> left = job.standing().left();
    StillToDo counted = left.get(at.piece());
    StillToDo others = left.get(kind);
    if (counted == null || others == null || others.wanted() == 0) {
      return Integer.MAX_VALUE;
    }
    int ends = counted.wanted() - others.wanted();
    boolean oneEach = Math.abs(ends) <= 1;
    int each = oneEach ? 1 : Math.round((float) counted.wanted() / others.wanted());
    return each * there + counted.wanted() - each * others.wanted();
  }

  /** That it is so, where the step is shown; empty if nothing lacks or none of its own waits. */
  static String says(Model model, AtBench at) {
    return lacking(model, at, at.through() + 1)
        .filter(partner -> at.available() > 0 && !at.enough())
        .map(
            partner ->
                partner.there() == 0
                    ? "No "
                        + partner.kind()
                        + " is here yet for a "
                        + at.piece()
                        + " to be joined to."
                    : "The "
                        + partner.carries(at)
                        + ", and so many are joined: one more has nothing to be joined to.")
        .orElse("");
  }

  /** The same as so many are counted all the same. */
  static Model counted(Model model, AtBench at, int count) {
    return lacking(model, at, at.through() + count)
        .map(
            partner ->
                model.trouble(
                    partner.there() == 0
                        ? "Counted, and no " + partner.kind() + " is here for it: {do:undo}?"
                        : "Counted, and the " + partner.carries(at) + ": {do:undo}?"))
        .orElse(model);
  }

  /** Rings are not joined while links that the chain takes are still in the pickle. */
  static boolean othersAreThere(OpenJob job, AtBench at) {
    return at.step().stage().entrySet().stream()
        .filter(other -> !other.getKey().equals(at.piece()))
        .allMatch(
            other -> {
              Pile pile = job.state().piles().of(other.getKey());
              StillToDo left = job.standing().left().get(other.getKey());
              int there = pile.waitingFor(other.getValue()) + pile.atOrPast(other.getValue());
              int wanted = left == null ? 1 : left.wanted();
              return pile.begins(other.getValue()) || there >= wanted;
            });
  }

  /** What is fitted to another kind of piece waits for one of these that is not taken yet. */
  static boolean neededAreThere(OpenJob job, AtBench at) {
    return at.step().detail().needs().entrySet().stream()
        .allMatch(
            needed ->
                job.state().piles().of(needed.getKey()).atOrPast(needed.getValue())
                    > (at.redo() > 0 ? 0 : at.through()));
  }
}
