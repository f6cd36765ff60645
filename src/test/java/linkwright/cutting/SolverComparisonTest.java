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
 * The plan beside a general integer solver (ojAlgo), which knows nothing of how we search. On one
 * seed, and some past these, the solver stops short of what can plainly be cut; {@link
 * ExhaustiveComparisonTest} stands beside it for that.
 */
class SolverComparisonTest {
  /**
   * Here the solver lets 6 repeats go. By hand 3 are enough: 126 mm give a coil of 8 rings (8 × 11
   * + 10) and the one blank of 28 mm with its kerf, 127.5 mm with the last kerf that need not be
   * there.
   */
  private static final int SOLVER_STOPS_SHORT = 54;

  /** The solver's own simplifications call some orders infeasible that plainly are not. */
  @BeforeAll
  static void asWritten() {
    ExpressionsBasedModel.clearPresolvers();
  }

  static List<Integer> seeds() {
    List<Integer> seeds = new ArrayList<>();
    for (int seed = 1; seed <= 120; seed++) {
      if (seed != SOLVER_STOPS_SHORT) {
        seeds.add(seed);
      }
    }
    return seeds;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theMostChainFromTheFewestLengthsIsThatOfTheSolver(int seed) {
    CutOrder order = order(new Random(seed));
    CutPlan plan = Cutting.plan(order);

    assertThat(plan.proved()).as("seed %d %s", seed, order).isTrue();
    assertThat(PlanCounts.lacking(plan))
        .as("lacking, seed %d %s", seed, order)
        .isEqualTo((int) fewestLacking(order));
    assertThat(PlanCounts.opened(plan))
        .as("opened, seed %d %s", seed, order)
        .isEqualTo((int) fewest(order, plan, false));
    assertThat(PlanCounts.coils(plan))
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
    List<BlanksWanted> blanks = new ArrayList<>();
    int wanted = 0;
    for (int i = 0; i < sizes; i++) {
      BlanksWanted blank =
          new BlanksWanted(
              14 + random.nextInt(30), 1 + random.nextInt(4), 1 + random.nextInt(2), 0);
      blanks.add(blank);
      wanted += blank.wanted();
    }
    Optional<RingsWanted> rings =
        random.nextInt(3) == 0
            ? Optional.empty()
            : Optional.of(
                new RingsWanted(
                    7 + random.nextInt(6),
                    random.nextInt(11),
                    wanted + 1,
                    1 + random.nextInt(3),
                    0));
    return CutOrder.of(stock, blanks, rings, random.nextInt(4) * 0.5);
  }

  private static long fewestLacking(CutOrder order) {
    Model model = new Model(order);
    model.opened.forEach(open -> open.level(1)); // which are opened is no question here
    Variable lacking = model.solver.addVariable("lacking").lower(0).weight(1);
    for (int k = 0; k < order.blanks().size(); k++) {
      BlanksWanted blank = order.blanks().get(k);
      model
          .made("made " + k, model.blanksOf.get(k), blank.wanted())
          .set(lacking, blank.perRepeat());
    }
    order
        .rings()
        .ifPresent(
            rings ->
                model
                    .made("rings made", model.rings, rings.wanted())
                    .set(lacking, rings.perRepeat()));
    Optimisation.Result result = model.solver.minimise();
    assertThat(result.getState().isFeasible()).as("the solver itself").isTrue();
    return (long) Math.ceil(result.getValue() - 1e-6); // parts of a repeat, as the solver sees it
  }

  private static long fewest(CutOrder order, CutPlan plan, boolean coils) {
    Model model = new Model(order);
    for (int k = 0; k < order.blanks().size(); k++) {
      model.made("made " + k, model.blanksOf.get(k), plan.blanks().get(k));
    }
    if (!model.rings.isEmpty()) {
      model.made("rings made", model.rings, plan.rings());
    }
    if (coils) {
      Expression opened = model.solver.addExpression("opened").upper(PlanCounts.opened(plan));
      model.opened.forEach(one -> opened.set(one, 1));
    }
    (coils ? model.coils : model.opened).forEach(one -> one.weight(1));
    return Math.round(model.solver.minimise().getValue());
  }

  /** Counts for each length, and that they come out of it. */
  private static final class Model {
    final ExpressionsBasedModel solver = new ExpressionsBasedModel();
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

    /** That no fewer are made, with what the caller adds. */
    Expression made(String name, List<Variable> pieces, int least) {
      Expression made = solver.addExpression(name).lower(least);
      pieces.forEach(piece -> made.set(piece, 1));
      return made;
    }

    private void length(CutOrder order, int j) {
      double stock = order.stockMm().get(j);
      Variable open = solver.addVariable("open " + j).binary();
      opened.add(open);
      Expression room = solver.addExpression("room " + j).upper(0);
      room.set(open, -2 * (stock + order.kerfMm())); // doubled: whole numbers suit the solver
      for (int k = 0; k < order.blanks().size(); k++) {
        BlanksWanted wish = order.blanks().get(k);
        Variable blank =
            solver.addVariable("blank " + k + " " + j).integer().lower(0).upper(wish.wanted());
        room.set(blank, 2 * (wish.mm() + order.kerfMm()));
        blanksOf.get(k).add(blank);
      }
      if (order.rings().isPresent()) {
        RingsWanted wish = order.rings().get();
        double most = Math.max(0, Math.floor((stock - wish.tailMm()) / wish.turnMm()));
        Variable ring = solver.addVariable("rings " + j).integer().lower(0).upper(wish.wanted());
        Variable coil = solver.addVariable("coil " + j).binary();
        room.set(ring, 2 * wish.turnMm());
        room.set(coil, 2 * Math.max(wish.tailMm(), order.kerfMm()));
        rings.add(ring);
        coils.add(coil);
        solver.addExpression("one coil " + j).upper(0).set(ring, 1).set(coil, -most);
      }
    }
  }
}
