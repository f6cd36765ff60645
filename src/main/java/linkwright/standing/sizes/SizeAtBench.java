package linkwright.standing.sizes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import linkwright.job.InHand;
import linkwright.job.JobState;
import linkwright.job.LinkSizes;
import linkwright.job.Pile;
import linkwright.job.Piles;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.standing.SizeLeft;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/**
 * Which size of link is counted at a step, where a chain has several: the one that was chosen, else
 * the one counted there last, else the first that has something to do. From the joining on the
 * sizes follow each other as in the chain.
 */
public final class SizeAtBench {
  private final Piles piles;
  private final Stage stage;
  private final Optional<StillToDo> left;

  private SizeAtBench(JobState state, Standing standing, Stage stage) {
    piles = state.piles();
    this.stage = stage;
    left = Optional.ofNullable(standing.left().get(PieceKind.LINK));
  }

  /** The size; empty where links are alike, or all go together. */
  public static String of(JobState state, Standing standing, PieceKind piece, Stage stage) {
    return piece.equals(PieceKind.LINK)
        ? new SizeAtBench(state, standing, stage).size()
        : LinkSizes.UNSAID;
  }

  /**
   * The sizes that can be counted at a stage, in their order; none where there is nothing to
   * choose.
   */
  public static List<String> choices(
      JobState state, Standing standing, PieceKind piece, Stage stage) {
    return piece.equals(PieceKind.LINK)
        ? new SizeAtBench(state, standing, stage).choices()
        : List.of();
  }

  private List<SizeLeft> sizes() {
    return left.map(StillToDo::sizes).orElse(List.of());
  }

  private boolean begins() {
    return piles.of(PieceKind.LINK).begins(stage);
  }

  private Pile pile(String size) {
    return piles.of(PieceKind.LINK, size);
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(sizes().stream().map(SizeLeft::name).toList());
    piles.sizes().piles().keySet().stream()
        .filter(size -> !names.contains(size) && pile(size).alive() > 0)
        .forEach(names::add);
    return names;
  }

  private List<String> choices() {
    if (sizes().isEmpty()) {
      return List.of();
    }
    return begins()
        ? sizes().stream().map(SizeLeft::name).toList()
        : piles.sizes().piles().isEmpty()
            ? List.of()
            : names().stream().filter(this::waits).toList();
  }

  private boolean waits(String size) {
    return pile(size).waitingFor(stage) + pile(size).redoAt(stage) > 0;
  }

  private String size() {
    List<String> choices = choices();
    InHand hand = piles.hand();
    if (hand.stage().equals(stage) && choices.contains(hand.size())) {
      return hand.size();
    }
    if (choices.isEmpty() || followsTheChain()) {
      return LinkSizes.UNSAID;
    }
    String last = piles.lastSize().getOrDefault(stage, LinkSizes.UNSAID);
    List<String> order = new ArrayList<>(choices);
    if (order.remove(last)) {
      order.add(0, last);
    }
    return begins()
        ? first(order, this::toCut).orElse(choices.get(choices.size() - 1))
        : first(order, this::fresh).orElse(order.get(0));
  }

  private boolean followsTheChain() {
    List<Stage> stages = piles.of(PieceKind.LINK).stages();
    int joined = stages.indexOf(Stage.JOINED);
    return joined > 0 && stages.indexOf(stage) >= joined;
  }

  private static Optional<String> first(List<String> order, Predicate<String> which) {
    return order.stream().filter(which).findFirst();
  }

  private boolean toCut(String size) {
    return left.orElseThrow().of(size).toCutOrAsMany() > 0;
  }

  private boolean fresh(String size) {
    return pile(size).waitingFor(stage) > 0;
  }

  /**
   * Of which sizes so many links are that go on in the order of the chain; empty where no size was
   * said.
   */
  public static Map<String, Integer> inOrder(
      JobState state, Standing standing, Stage stage, int count) {
    Optional<Plan> plan = standing.counted().plan().filter(Plan::sized);
    Piles piles = state.piles();
    Map<String, Integer> going = new LinkedHashMap<>();
    for (int i = 0; i < count && plan.isPresent() && !piles.sizes().piles().isEmpty(); i++) {
      Optional<LinksOfSize> next =
          plan.get().sizes().stream()
              .filter(size -> left(piles, stage, size, going) > 0)
              .min(Comparator.comparingDouble(size -> share(piles, stage, size, going)));
      next.ifPresent(size -> going.merge(size.name(), 1, Integer::sum));
    }
    return going;
  }

  private static int left(Piles piles, Stage stage, LinksOfSize size, Map<String, Integer> going) {
    return piles.of(PieceKind.LINK, size.name()).waitingFor(stage)
        - going.getOrDefault(size.name(), 0);
  }

  private static double share(
      Piles piles, Stage stage, LinksOfSize size, Map<String, Integer> going) {
    int there = piles.of(PieceKind.LINK, size.name()).atOrPast(stage);
    return (double) (there + going.getOrDefault(size.name(), 0)) / size.perRepeat();
  }
}
