package linkwright.standing.asked;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.fit.Expected;
import linkwright.fit.Fit;
import linkwright.fit.Misfit;
import linkwright.job.Fact;
import linkwright.job.Fact.TestPieceTried;
import linkwright.job.WireLedger;
import linkwright.plan.Plan;
import linkwright.plan.RingLength;
import linkwright.plan.WishKeys;
import linkwright.plan.WishedRing;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;
import linkwright.standing.TestPieces;
import linkwright.standing.stock.StockLeft;

/**
 * What is out of reason is asked before it is kept: field → the question. Nothing is refused by it;
 * whoever puts the question keeps what was typed when it is said again.
 */
public final class Questions {
  /** More blanks than this are not cut for one chain by hand. Common practice, no source. */
  private static final int MANY_PIECES = 2_000;

  /** More wire than this is a coil, not what one job takes, mm. Common practice, no source. */
  private static final double MUCH_WIRE_MM = 50_000;

  private static final double FAR_WIRE = 10;
  private static final double MM_PER_M = 1000;

  /** No saw of a jeweller's takes more, mm. Common practice, no source. */
  private static final double MUCH_KERF_MM = 1.0;

  /** A saw's usual kerf from the finest blade to a coarse one, mm. Common practice, no source. */
  private static final List<Double> SAW_KERF_MM = List.of(0.2, 0.5);

  /** Half of all pieces lost is no habit. Common practice, no source. */
  private static final double MUCH_LOSS = 0.5;

  /** A chain further from its plan than this share is another chain, or a slip. Our own choice. */
  private static final double FAR_MASS = 0.3;

  /** The same of its length. Our own choice. */
  private static final double FAR_LENGTH = 0.15;

  /**
   * A trial whose link differs by more than this share from the one counted is hung otherwise. Our
   * own choice.
   */
  private static final double FAR_LINK = 0.25;

  /**
   * Rings that are more than so many times as wide as those wished, or as narrow. Our own choice.
   */
  private static final double FAR_RING = 2;

  /** So many times the pieces that a chain takes are not cut at once. Our own choice. */
  private static final int FAR_COUNT = 10;

  private final UnitStyle units;
  private final Map<String, String> asked = new LinkedHashMap<>();

  private Questions(UnitStyle units) {
    this.units = units;
  }

  /** What is asked of a plan before it is kept, by key of the wish. */
  public static Map<String, String> ofPlan(
      Standing typed, Optional<Routine> routine, JobTraits traits, UnitStyle units) {
    Questions questions = new Questions(units);
    routine
        .flatMap(known -> known.detail().suits())
        .filter(suits -> !traits.meet(suits.when()))
        .ifPresent(suits -> questions.ask(true, WishKeys.METAL, suits.otherwise()));
    typed
        .counted()
        .plan()
        .ifPresent(
            plan -> {
              routine.ifPresent(known -> questions.repeat(plan, known));
              questions.plan(plan);
            });
    typed.counted().part().ifPresent(part -> questions.loss(part.usualLoss(), "pieces"));
    return questions.asked;
  }

  private void loss(double usual, String pieces) {
    ask(
        usual >= MUCH_LOSS,
        WishKeys.USUAL_LOSS,
        Decimals.ofHundred(usual, 0) + " of a hundred " + pieces + " scrapped as a rule?");
  }

  /** A routine may say how many of the links that are closed first come again. */
  private void repeat(Plan plan, Routine routine) {
    int here = plan.wish().repeat().links();
    Optional.ofNullable(routine.detail().kinds().get(PieceKind.LINK))
        .ifPresent(
            links ->
                ask(
                    links.perRepeat() != here,
                    WishKeys.LINK_REPEAT,
                    "One repeat has "
                        + here
                        + (here == 1 ? " link" : " links")
                        + ": is that what you want? By this routine it has "
                        + links.perRepeat()
                        + ", closed first; its words on the plan say how they are typed."));
  }

  private void plan(Plan plan) {
    double onHand =
        sum(plan.wish().stockMm()) + plan.wish().ringStockMm().map(Questions::sum).orElse(0.0);
    ask(
        onHand > MUCH_WIRE_MM,
        WishKeys.STOCK,
        units.length(onHand) + " of wire on hand for one chain?");
    loss(plan.wish().usualLoss(), "links");
    ask(
        plan.wish().kerfMm() > MUCH_KERF_MM,
        WishKeys.KERF,
        "A cut that takes "
            + units.length(plan.wish().kerfMm())
            + "? Usual are 0 for cutters and "
            + units.length(SAW_KERF_MM.get(0))
            + " to "
            + units.length(SAW_KERF_MM.get(1))
            + " for a saw.");
    ask(
        plan.blanksToCut() > MANY_PIECES,
        WishKeys.FINISHED,
        plan.blanksToCut() + " blanks for " + plan.links() + " links?");
    ask(
        plan.wish().finishedMm() < plan.lengthMm() / (1 + FAR_LENGTH),
        WishKeys.FINISHED,
        "The nearest chain is "
            + units.roundedBy(plan.lengthMm(), plan.plusMinusMm())
            + ": is that what you want?");
  }

  private static double sum(List<Double> lengthsMm) {
    return lengthsMm.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** What is asked of a test piece before it is logged. */
  public static Map<String, String> ofTestPiece(
      TestPieceTried piece, Optional<TestPieces> taught, Standing standing, UnitStyle units) {
    Questions questions = new Questions(units);
    standing
        .counted()
        .plan()
        .flatMap(plan -> WhichLink.asked(piece, plan.sizes(), units))
        .ifPresent(question -> questions.ask(true, "size", question));
    questions.testPiece(piece, taught);
    return questions.asked;
  }

  private void testPiece(TestPieceTried piece, Optional<TestPieces> taught) {
    boolean nothing =
        piece.lengthMm().isEmpty()
            && piece.widthMm().isEmpty()
            && piece.insideMm().isEmpty()
            && piece.verdicts().isEmpty();
    ask(nothing, "length", "Nothing measured and nothing said of it: log the piece all the same?");
    Optional<Expected> expected =
        taught.flatMap(
            known ->
                Fit.expect(
                        known.pattern(),
                        known.wireMm(),
                        known.maker(),
                        piece.blankMm(),
                        piece.formersMm())
                    .found());
    expected.ifPresent(
        size -> {
          far("length", piece.lengthMm(), size.misfitOfLength(piece.lengthMm()), piece.blankMm());
          far("width", piece.widthMm(), size.misfitOfWidth(piece.widthMm()), piece.blankMm());
        });
    boolean tooLong = piece.lengthMm().orElse(0) > piece.blankMm();
    ask(expected.isEmpty() && tooLong, "length", from(piece.lengthMm().orElse(0), piece.blankMm()));
  }

  private String from(double mm, double blankMm) {
    return units.length(mm) + " from a blank of " + units.length(blankMm) + "?";
  }

  private void far(String field, OptionalDouble measured, Optional<Misfit> misfit, double blankMm) {
    misfit.ifPresent(
        far ->
            ask(
                true,
                field,
                from(measured.orElse(0), blankMm)
                    + (far.meantMm().isPresent()
                        ? " Did you mean " + units.length(far.meantMm().getAsDouble()) + "?"
                        : " About "
                            + units.about(far.expectedMm(), far.spreadMm())
                            + " was expected.")));
  }

  /** What is asked of a trial length before it is logged. */
  public static Map<String, String> ofTrial(
      Fact.TrialMeasured trial, Standing standing, UnitStyle units) {
    Questions questions = new Questions(units);
    standing.counted().plan().ifPresent(plan -> questions.trial(trial, plan));
    return questions.asked;
  }

  private void trial(Fact.TrialMeasured trial, Plan plan) {
    double wished = plan.wish().ring().map(WishedRing::insideMm).orElse(0.0);
    boolean ringed = trial.rings() > 0 && wished > 0;
    ask(
        ringed
            && (trial.ringInsideMm() > FAR_RING * wished
                || trial.ringInsideMm() < wished / FAR_RING),
        "ring",
        "Rings of "
            + units.length(trial.ringInsideMm())
            + " inside? "
            + units.length(wished)
            + " was wished.");
    double rings =
        trial.rings() == 0
            ? 0
            : trial.rings()
                * RingLength.insideLengthMm(
                    new WishedRing(
                        trial.ringInsideMm(),
                        plan.wish().ring().map(WishedRing::wireMm).orElse(plan.wish().wireMm()),
                        trial.ovalInsideMm()));
    double each = (trial.hungMm() - trial.claspMm() - rings) / trial.links();
    ask(
        Math.abs(each - plan.meanInsideMm()) > FAR_LINK * plan.meanInsideMm(),
        "hung",
        each > 0
            ? "Each link would add "
                + units.length(each)
                + ", where "
                + units.length(plan.meanInsideMm())
                + " is counted: is it hung and measured so?"
            : "Rings and clasp alone are longer than that: is it hung and measured so?");
  }

  /** What is asked of wire before it is entered as come. */
  public static Map<String, String> ofWire(
      List<Double> lengthsMm, Standing standing, UnitStyle units) {
    Questions questions = new Questions(units);
    double came = sum(lengthsMm);
    double takes = standing.counted().plan().map(Plan::wireTotalMm).orElse(MUCH_WIRE_MM);
    double most = Math.min(MUCH_WIRE_MM, FAR_WIRE * Math.max(MM_PER_M, takes));
    questions.ask(came > most, "lengths", units.length(came) + " of wire for one chain?");
    return questions.asked;
  }

  /**
   * What is asked of so many pieces that are cut after others of the same table.
   *
   * @param before pieces of the kind in the rows before
   * @param ledger the wire as those rows leave it
   */
  public static Map<String, String> ofCut(
      Fact.WireCut cut, int before, Standing standing, WireLedger ledger, UnitStyle units) {
    Questions questions = new Questions(units);
    standing
        .counted()
        .plan()
        .ifPresent(
            plan ->
                questions.cut(
                    cut.count(),
                    before,
                    cut.piece(),
                    standing,
                    StockLeft.of(Optional.of(plan), ledger)
                        .canCut(cut.piece(), cut.eachMm(), plan.wish())));
    return questions.asked;
  }

  private void cut(int count, int before, PieceKind piece, Standing standing, int canCut) {
    StillToDo left = standing.left().get(piece);
    int wanted = left == null ? MANY_PIECES : Math.max(1, left.wanted());
    int most = FAR_COUNT * wanted;
    ask(
        standing.wireKnown() && left != null && count > canCut,
        "count",
        count
            + (before > 0 ? " more" : "")
            + ", where the wire on hand "
            + (before > 0 ? "then gives " : "gives ")
            + canCut
            + "?");
    ask(
        before <= most && before + count > most,
        "count",
        before + count + " " + piece.many() + " cut, where the chain takes " + wanted + "?");
  }

  /** What is asked of so many pieces before they are entered as cut. */
  public static Map<String, String> ofCut(
      int count, PieceKind piece, Standing standing, UnitStyle units) {
    Questions questions = new Questions(units);
    StillToDo left = standing.left().get(piece);
    questions.cut(count, 0, piece, standing, left == null ? 0 : left.canCut());
    return questions.asked;
  }

  /** What is asked of what was weighed and measured before it is weighed in. */
  public static Map<String, String> ofWeighing(
      Fact.WeighedIn in, Standing standing, UnitStyle units) {
    Questions questions = new Questions(units);
    standing
        .counted()
        .plan()
        .ifPresent(
            plan -> {
              double mass = in.chainG().orElse(plan.massChainG());
              questions.ask(
                  Math.abs(mass - plan.massChainG()) > FAR_MASS * plan.massChainG(),
                  "chain",
                  units.mass(mass)
                      + ", where "
                      + units.mass(plan.massChainG())
                      + " was reckoned: is that the chain's weight?");
              double length = in.lengthMm().orElse(plan.lengthMm());
              questions.ask(
                  Math.abs(length - plan.lengthMm()) > FAR_LENGTH * plan.lengthMm(),
                  "length",
                  units.length(length)
                      + ", where "
                      + units.roundedBy(plan.lengthMm(), plan.plusMinusMm())
                      + " was reckoned: is that the chain's length?");
            });
    return questions.asked;
  }

  private void ask(boolean wonder, String field, String question) {
    if (wonder) {
      asked.putIfAbsent(field, question);
    }
  }
}
