package linkwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * The plan beside a general integer solver (ojAlgo), which knows nothing of how we search. On some
 * other seeds the solver stops short of what can plainly be cut; {@link ExhaustiveComparisonTest}
 * stands beside it for that.
 */
class SolverComparisonTest {
  /** The solver's own simplifications call some orders infeasible that plainly are not. */
  @BeforeAll
  static void asWritten() {
    ExpressionsBasedModel.clearPresolvers();
  }

  static List<Integer> seeds() {
    List<Integer> seeds = new ArrayList<>();
    for (int seed = 1; seed <= 120; seed++) {
      seeds.add(seed);
    }
    return seeds;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theMostLinksAndTheFewestLengthsAreThoseOfTheSolver(int seed) {
    CutOrder order = order(new Random(seed));
    CutPlan plan = Cutting.plan(order);

    assertThat(plan.proved()).as("seed %d %s", seed, order).isTrue();
    assertThat(plan.coilsProved()).as("coils, seed %d %s", seed, order).isTrue();
    long links = mostLinks(order);
    assertThat(plan.links()).as("links, seed %d %s", seed, order).isEqualTo((int) links);
    assertThat(plan.opened())
        .as("opened, seed %d %s", seed, order)
        .isEqualTo((int) fewest(order, plan, false));
    assertThat(plan.coils())
        .as("coils, seed %d %s", seed, order)
        .isEqualTo((int) fewest(order, plan, true));
  }

  private static CutOrder order(Random random) {
    int lengths = 1 + random.nextInt(4);
    List<Double> stock = new ArrayList<>();
    for (int i = 0; i < lengths; i++) {
      stock.add(20.0 + random.nextInt(131));
    }
    int sizes = 1 + random.nextInt(3);
    List<BlankWish> blanks = new ArrayList<>();
    int wanted = 0;
    for (int i = 0; i < sizes; i++) {
      BlankWish blank = new BlankWish(14 + random.nextInt(30), 1 + random.nextInt(4));
      blanks.add(blank);
      wanted += blank.wanted();
    }
    Optional<RingWish> ring =
        random.nextInt(3) == 0
            ? Optional.empty()
            : Optional.of(
                RingWish.atBothEnds(7 + random.nextInt(6), random.nextInt(11), wanted + 1));
    return CutOrder.of(stock, blanks, ring, random.nextInt(4) * 0.5);
  }

  private static long mostLinks(CutOrder order) {
    Model model = new Model(order);
    Expression chain = model.solver.addExpression("rings for the links").lower(1);
    boolean rings = order.ring().isPresent();
    for (Variable blank : model.allBlanks) {
      blank.weight(1);
      chain.set(blank, -1);
    }
    if (!rings) {
      model.solver.removeExpression("rings for the links");
    }
    model.rings.forEach(ring -> chain.set(ring, 1));
    Optimisation.Result result = model.solver.maximise();
    // no link at all is the one case without its rings; without rings there is always a way
    assertThat(rings || result.getState().isFeasible()).as("the solver itself").isTrue();
    return result.getState().isFeasible() ? Math.round(result.getValue()) : 0;
  }

  private static long fewest(CutOrder order, CutPlan plan, boolean coils) {
    Model model = new Model(order);
    for (int k = 0; k < order.blanks().size(); k++) {
      Expression made = model.solver.addExpression("made " + k).lower(plan.blanks().get(k));
      model.blanksOf.get(k).forEach(blank -> made.set(blank, 1));
    }
    Expression made = model.solver.addExpression("rings made").lower(plan.rings());
    model.rings.forEach(ring -> made.set(ring, 1));
    if (model.rings.isEmpty()) {
      model.solver.removeExpression("rings made");
    }
    if (coils) {
      Expression opened = model.solver.addExpression("opened").upper(plan.opened());
      model.opened.forEach(one -> opened.set(one, 1));
    }
    (coils ? model.coils : model.opened).forEach(one -> one.weight(1));
    return Math.round(model.solver.minimise().getValue());
  }

  /** Counts for each length, and that they come out of it. */
  private static final class Model {
    final ExpressionsBasedModel solver = new ExpressionsBasedModel();
    final List<Variable> allBlanks = new ArrayList<>();
    final List<List<Variable>> blanksOf = new ArrayList<>();
    final List<Variable> rings = new ArrayList<>();
    final List<Variable> coils = new ArrayList<>();
    final List<Variable> opened = new ArrayList<>();

    Model(CutOrder order) {
      // With several workers its answer differs from run to run, and is now and then too low.
      solver.options.integer(IntegerStrategy.newConfigurable().withParallelism(() -> 1));
      for (int k = 0; k < order.blanks().size(); k++) {
        blanksOf.add(new ArrayList<>());
      }
      for (int j = 0; j < order.stockMm().size(); j++) {
        length(order, j);
      }
      for (int k = 0; k < blanksOf.size(); k++) {
        Expression most = solver.addExpression("wanted " + k).upper(order.blanks().get(k).wanted());
        blanksOf.get(k).forEach(blank -> most.set(blank, 1));
      }
    }

    private void length(CutOrder order, int j) {
      double stock = order.stockMm().get(j);
      Variable open = solver.addVariable("open " + j).binary();
      opened.add(open);
      Expression room = solver.addExpression("room " + j).upper(0);
      room.set(open, -2 * (stock + order.kerfMm())); // doubled: whole numbers suit the solver
      for (int k = 0; k < order.blanks().size(); k++) {
        BlankWish wish = order.blanks().get(k);
        Variable blank =
            solver.addVariable("blank " + k + " " + j).integer().lower(0).upper(wish.wanted());
        room.set(blank, 2 * (wish.mm() + order.kerfMm()));
        blanksOf.get(k).add(blank);
        allBlanks.add(blank);
      }
      if (order.ring().isPresent()) {
        RingWish wish = order.ring().get();
        double most = Math.max(0, Math.floor((stock - wish.tailMm()) / wish.turnMm()));
        Variable ring = solver.addVariable("rings " + j).integer().lower(0).upper(wish.wanted());
        Variable coil = solver.addVariable("coil " + j).binary();
        room.set(ring, 2 * wish.turnMm());
        room.set(coil, 2 * wish.tailMm());
        rings.add(ring);
        coils.add(coil);
        solver.addExpression("one coil " + j).upper(0).set(ring, 1).set(coil, -most);
      }
    }
  }
}
