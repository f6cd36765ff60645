package linkwright.coach;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Pieces;
import linkwright.coach.content.Pieces.Portion;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.LinkSizes;
import linkwright.job.Pile;
import linkwright.job.Piles;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.standing.StillToDo;

/** The job's chain as its progress: every wanted link, with how far it has come. */
final class ChainPieces {
  private ChainPieces() {}

  static Optional<Pieces> of(OpenJob job) {
    Piles piles = job.state().piles();
    Pile links = piles.of(PieceKind.LINK);
    StillToDo left = job.standing().left().get(PieceKind.LINK);
    if (left == null || left.wanted() == 0 || links.stages().isEmpty()) {
      return Optional.of(new Pieces("links", List.of(), 1));
    }
    List<Portion> portions =
        job.standing()
            .counted()
            .plan()
            .filter(plan -> plan.sized() && !piles.sizes().piles().isEmpty())
            .map(plan -> inOrder(plan, piles, left.wanted()))
            .orElseGet(() -> filled(portions(links), left.wanted()));
    return Optional.of(new Pieces("links", portions, links.stages().size()));
  }

  /** The links of a pile, those that have come furthest first. */
  private static List<Portion> portions(Pile links) {
    List<Portion> portions = new ArrayList<>();
    for (int i = links.stages().size() - 1; i >= 0; i--) {
      Stage stage = links.stages().get(i);
      int here = links.standing().getOrDefault(stage, 0);
      int redo = i + 1 < links.stages().size() ? links.redoAt(links.stages().get(i + 1)) : 0;
      portions.add(new Portion(stage.id(), here, i + 1, false));
      portions.add(new Portion(stage.id(), redo, i + 1, true));
    }
    return portions;
  }

  private static Portion one(Portion portion) {
    return new Portion(portion.stage(), 1, portion.reached(), portion.redo());
  }

  private static Portion toMake(int count) {
    return new Portion("to make", count, 0, false);
  }

  /** As many as the chain takes: more are spares and not drawn, those that lack are to be made. */
  private static List<Portion> filled(List<Portion> all, int wanted) {
    List<Portion> portions = new ArrayList<>();
    int room = wanted;
    for (Portion each : all) {
      int drawn = Math.min(room, each.count());
      if (drawn > 0) {
        portions.add(new Portion(each.stage(), drawn, each.reached(), each.redo()));
      }
      room -= drawn;
    }
    portions.add(toMake(room));
    return portions;
  }

  /** Link by link as the sizes follow each other in the chain; of no size said: where one lacks. */
  private static List<Portion> inOrder(Plan plan, Piles piles, int wanted) {
    Map<String, Deque<Portion>> bySize = new HashMap<>();
    piles.sizes().piles().forEach((size, pile) -> bySize.put(size, oneByOne(pile)));
    Deque<Portion> unsaid = bySize.getOrDefault(LinkSizes.UNSAID, new ArrayDeque<>());
    List<Portion> portions = new ArrayList<>();
    for (int i = 0; i < wanted; i++) {
      Deque<Portion> ofSize = bySize.getOrDefault(plan.sizeAt(i).name(), unsaid);
      Portion next = ofSize.isEmpty() ? unsaid.poll() : ofSize.poll();
      add(portions, next == null ? toMake(1) : next);
    }
    return portions;
  }

  private static Deque<Portion> oneByOne(Pile pile) {
    Deque<Portion> all = new ArrayDeque<>();
    for (Portion portion : portions(pile)) {
      for (int i = 0; i < portion.count(); i++) {
        all.add(one(portion));
      }
    }
    return all;
  }

  private static void add(List<Portion> portions, Portion next) {
    int last = portions.size() - 1;
    if (last >= 0 && one(portions.get(last)).equals(one(next))) {
      int count = portions.get(last).count() + 1;
      portions.set(last, new Portion(next.stage(), count, next.reached(), next.redo()));
    } else {
      portions.add(next);
    }
  }
}
