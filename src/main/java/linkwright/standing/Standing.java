package linkwright.standing;

import java.time.Instant;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import linkwright.hands.Fineness;
import linkwright.hands.Hands;
import linkwright.job.ChainMade;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.job.Sourced;
import linkwright.plan.NamedFormers;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.UsualFigures;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.standing.stock.StockLeft;

/**
 * What follows from a job's state: its plan counted anew from what was measured, what is still to
 * do, the wire, the hours, the chance. Reckoned once after each entry; whoever shows a figure reads
 * it here.
 *
 * @param counted the plan, counted anew; with what is wrong if there is none
 * @param left kind of piece → what is still to do
 * @param eachMm kind of piece → wire that one takes, kerf included, mm
 * @param stockLeft wire on hand now
 * @param wire how the wire stands; empty without the plan of a chain
 * @param chance the chance that links and rings both come good with the wire on hand, cut as {@code
 *     wire} says, 0 to 1; empty where nothing was said of wire
 * @param hours hours still to go
 * @param spentSeconds seconds at the bench so far
 * @param redos how often a joint is still expected to be done again; empty where no routine says
 * @param taken key of the wish → what was taken where nothing was typed, and where it comes from
 * @param since key → what would be taken today, where a kept plan holds another value
 * @param walked the routine as it is walked here: see {@link Handbook#walked}
 * @param traits what a caution may be tied to
 * @param quote what the chain takes and costs, the first and again; empty without a plan of one
 * @param made what is known once it is made
 */
public record Standing(
    CountedPlan counted,
    Map<PieceKind, StillToDo> left,
    Map<PieceKind, Double> eachMm,
    StockLeft stockLeft,
    Optional<WireStand> wire,
    OptionalDouble chance,
    Forecast hours,
    double spentSeconds,
    OptionalDouble redos,
    Map<String, Sourced> taken,
    Map<String, String> since,
    Optional<Routine> walked,
    CardTraits traits,
    Optional<Quote> quote,
    ChainMade made) {
  /** More pieces than anybody cuts: wire is no limit where it is not counted. */
  private static final int NO_LIMIT = 100_000;

  public Standing {
    left = Collections.unmodifiableMap(new LinkedHashMap<>(left));
    eachMm = Map.copyOf(eachMm);
  }

  /** What follows from a state. */
  public static Standing of(JobState state, Handbook handbook) {
    return of(
        CountedPlan.of(state, handbook),
        state,
        handbook,
        Optional.empty(),
        state.course().reckonedWith());
  }

  /** What would follow if a wish were kept that is still being typed. */
  public static Standing ofTyped(Map<String, String> texts, JobState state, Handbook handbook) {
    return of(
        CountedPlan.ofTyped(texts, state, handbook),
        state.wished(NamedFormers.sized(texts, handbook.own().formersMm())),
        handbook,
        Optional.empty(),
        PlanDefaults.of(texts, state, handbook));
  }

  /** What follows from a wish alone: see {@link #newJob}. */
  public static Standing ofWish(Map<String, String> texts, Handbook handbook) {
    return of(newJob(texts, handbook), handbook);
  }

  /** A job with that plan and nothing done, by the routine that is made for its pattern. */
  public static JobState newJob(Map<String, String> texts, Handbook handbook) {
    return newJob(texts, handbook, routineFor(texts, handbook).map(Routine::id).orElse(""));
  }

  /** A job with that plan and nothing done, by that routine. */
  public static JobState newJob(Map<String, String> texts, Handbook handbook, String routine) {
    List<Entry> book =
        List.of(
            new Entry(1, Instant.EPOCH, "plan", new Fact.JobOpened("", routine)),
            new Entry(
                2,
                Instant.EPOCH,
                "plan",
                new Fact.PlanSet(
                    texts, PlanDefaults.of(texts, handbook.routine(routine), handbook))));
    return JobState.replay(book, handbook.stages());
  }

  /** The routine that is taken for a wish that names none: see {@link RoutineForWish}. */
  public static Optional<Routine> routineFor(Map<String, String> texts, Handbook handbook) {
    return RoutineForWish.of(texts, handbook);
  }

  /** The plan is counted anew only when something it rests on has changed. */
  public Standing after(JobState before, JobState now, Handbook handbook) {
    boolean same =
        before.course().wish().equals(now.course().wish())
            && before.trials().equals(now.trials())
            && before.course().routine().equals(now.course().routine())
            && before.course().reckonedWith().equals(now.course().reckonedWith())
            && before.accounts().figures().equals(now.accounts().figures());
    return same ? of(counted, now, handbook, sameWire(before, now), taken) : of(now, handbook);
  }

  private Optional<Standing> sameWire(JobState before, JobState now) {
    return before.wire().equals(now.wire()) ? Optional.of(this) : Optional.empty();
  }

  private static Standing of(
      CountedPlan counted,
      JobState state,
      Handbook handbook,
      Optional<Standing> before,
      Map<String, Sourced> taken) {
    StockLeft stock = StockLeft.of(counted.plan(), state.wire());
    Map<PieceKind, StillToDo> left = new LinkedHashMap<>();
    Map<PieceKind, Double> each = new HashMap<>();
    counted
        .plan()
        .ifPresent(
            plan -> {
              each.put(PieceKind.LINK, plan.linkEachMm());
              each.put(PieceKind.RING, plan.ringTurnMm());
              left.put(
                  PieceKind.LINK,
                  still(
                      plan,
                      state,
                      PieceKind.LINK,
                      plan.links(),
                      List::of,
                      stock,
                      plan.linkEachMm()));
              if (plan.rings() > 0) {
                left.put(
                    PieceKind.RING,
                    still(
                        plan,
                        state,
                        PieceKind.RING,
                        plan.allRings(),
                        plan::ringsLacking,
                        stock,
                        plan.ringTurnMm()));
              }
              if (plan.sized()) {
                StillToDo links = left.get(PieceKind.LINK);
                StillToDo sized =
                    links.bySize(SizeLeft.of(plan, state.piles(), links.ahead(), stock));
                left.put(PieceKind.LINK, sized);
                each.put(PieceKind.LINK, plan.next(sized.toCutBySize()).eachMm(plan.wish()));
              }
            });
    counted.part().ifPresent(part -> pieces(left, each, part, state, handbook));
    ChainMade made = ChainMade.of(state);
    Map<PieceKind, StillToDo> told = new LinkedHashMap<>(left);
    if (made.closed()) {
      told.replaceAll((piece, todo) -> todo.closed());
    }
    Optional<WireStand> wire = counted.plan().map(plan -> wire(plan, told, state, before));
    OptionalDouble chance =
        !made.closed() && wire.filter(WireStand::known).isPresent()
            ? OptionalDouble.of(
                FinishChance.of(counted.plan().orElseThrow(), left, wire.orElseThrow()))
            : OptionalDouble.empty();
    Optional<Routine> routine = handbook.walked(state);
    Redos redos = Redos.of(routine, state, left, handbook);
    Forecast toDo =
        hours(WorkAhead.of(left, state), state, routine, redos, handbook.hands(), counted);
    Forecast forecast = made.closed() ? Forecast.NOTHING : toDo;
    return new Standing(
        counted,
        told,
        each,
        stock,
        wire,
        chance,
        forecast,
        state.times().totalSeconds(),
        made.closed() ? redos.none() : redos.expected(),
        JobPrices.beside(HeldFormers.used(taken, counted), state, handbook),
        PlanDefaults.since(state.course().wish(), state, handbook),
        routine,
        CardTraits.of(state.course().wish(), handbook),
        counted
            .plan()
            .filter(any -> redos.expected().isPresent())
            .map(
                plan ->
                    made.closed()
                        ? Quote.ofClosed(
                            plan,
                            left,
                            Optional.ofNullable(left.get(PieceKind.LINK))
                                .map(StillToDo::lossShare)
                                .orElse(plan.wish().usualLoss()),
                            routine.orElseThrow(),
                            state,
                            handbook)
                        : Quote.of(
                            plan,
                            toDo,
                            state.times().totalSeconds(),
                            redos.perJoint(),
                            routine.orElseThrow(),
                            state,
                            handbook)),
        made);
  }

  /** The best cutting is sought anew only when what is on hand or to be cut has changed. */
  private static WireStand wire(
      Plan plan, Map<PieceKind, StillToDo> left, JobState state, Optional<Standing> before) {
    return before
        .filter(then -> then.counted().plan().filter(plan::equals).isPresent())
        .filter(then -> toCut(then.left()).equals(toCut(left)))
        .flatMap(Standing::wire)
        .orElseGet(() -> WireStand.of(plan, left, state.wire()));
  }

  private static Map<PieceKind, List<Integer>> toCut(Map<PieceKind, StillToDo> left) {
    Map<PieceKind, List<Integer>> toCut = new HashMap<>();
    left.forEach((piece, todo) -> toCut.put(piece, todo.toCutBySize()));
    return toCut;
  }

  /** What is no chain: as many are wanted of each kind. Its wire is not counted. */
  private static void pieces(
      Map<PieceKind, StillToDo> left,
      Map<PieceKind, Double> each,
      PartPlan part,
      JobState state,
      Handbook handbook) {
    handbook
        .routine(state.course().routine())
        .ifPresent(
            routine -> {
              for (PieceKind kind : routine.pieces().keySet()) {
                Pile pile = state.piles().of(kind);
                left.put(
                    kind,
                    StillToDo.of(
                            part.pieces(), pile, part.usualLoss(), UsualFigures.CHANCE, NO_LIMIT)
                        .madeAnew());
              }
              // The blank is that of the piece named first, unless rings are all it makes.
              PieceKind first = routine.pieces().keySet().iterator().next();
              OptionalDouble wire =
                  PieceKind.RING.equals(first) ? part.ringBlankMm() : part.blankMm();
              wire.ifPresent(mm -> each.put(first, mm));
            });
  }

  private static StillToDo still(
      Plan plan,
      JobState state,
      PieceKind piece,
      int wanted,
      IntFunction<List<Integer>> bySize,
      StockLeft stock,
      double eachMm) {
    return StillToDo.of(
        wanted,
        bySize,
        state.piles().of(piece),
        plan.wish().usualLoss(),
        plan.wish().confidence(),
        stock.canCut(piece, eachMm, plan.wish()));
  }

  private static Forecast hours(
      Map<PieceKind, WorkAhead> ahead,
      JobState state,
      Optional<Routine> routine,
      Redos redos,
      Hands hands,
      CountedPlan counted) {
    return Forecast.of(
        routine
            .map(
                known ->
                    Forecast.workLeft(
                        known, state, ahead, redos.perJoint(), hands, Fineness.of(counted.wish())))
            .orElse(List.of()),
        state.times());
  }

  /** Hours at the bench and to go; empty where no routine says how long its steps take. */
  public Optional<JobHours> jobHours() {
    return redos.isEmpty() ? Optional.empty() : Optional.of(new JobHours(spentSeconds, hours));
  }

  /** Kind of piece → how many cannot be cut from the wire on hand; none where all can. */
  public Map<PieceKind, Integer> missing() {
    Map<PieceKind, Integer> missing = new LinkedHashMap<>();
    wire.filter(WireStand::known)
        .map(WireStand::missing)
        .ifPresent(
            pieces -> {
              missing.put(PieceKind.LINK, pieces.links());
              missing.put(PieceKind.RING, pieces.rings());
            });
    missing.values().removeIf(count -> count == 0);
    return missing;
  }

  /** Wire that one of a kind and size takes, kerf included, mm; of any size where none is said. */
  public double takesMm(PieceKind piece, String size) {
    return counted.plan().stream()
        .filter(plan -> piece.equals(PieceKind.LINK) && plan.sized())
        .flatMap(plan -> plan.sizes().stream().map(one -> Map.entry(one, plan.wish())))
        .filter(one -> one.getKey().name().equals(size))
        .mapToDouble(one -> one.getKey().eachMm(one.getValue()))
        .findFirst()
        .orElseGet(() -> eachMm.getOrDefault(piece, 0.0));
  }

  /** Whether anything was said of wire on hand, so that some can be missed. */
  public boolean wireKnown() {
    return wire.filter(WireStand::known).isPresent();
  }
}
