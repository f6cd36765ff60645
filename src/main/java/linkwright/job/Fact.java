package linkwright.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;

/**
 * What can be entered in a job book. Each is a thing that has happened, so its name is in the past
 * tense. What stands on the disk for it is the codecs' of the files' room: a field may be renamed
 * here and nothing changes there.
 *
 * <p>Lengths are mm, masses g, times s. A field that was not measured, said or known is empty, and
 * so is one that the first release did not have yet; it is then absent from the book.
 */
public sealed interface Fact
    permits Fact.JobOpened,
        Fact.PlanSet,
        Fact.MetalWeighedOut,
        Fact.TestPieceTried,
        Fact.SampleChosen,
        Fact.TrialMeasured,
        Fact.TrialChosen,
        Fact.StepOpened,
        Fact.StepDone,
        Fact.CautionSeen,
        Fact.PiecesTaken,
        Fact.PiecesThrough,
        Fact.PiecesSentBack,
        Fact.PiecesScrapped,
        Fact.WireCut,
        Fact.WireAdded,
        Fact.WireDiscarded,
        Fact.SittingStarted,
        Fact.SteppedAway,
        Fact.TimerStarted,
        Fact.TimerAnswered,
        Fact.WeighedIn,
        Fact.PricesSet,
        Fact.Noted,
        Fact.Struck,
        Fact.LineAccepted,
        Fact.JobClosed,
        Fact.JobReopened,
        Fact.Unread,
        BenchFact,
        LotFact,
        LessonFact {

  /**
   * The job was begun, to be made by that routine; again says when the job was begun that it is
   * made anew from (older books: what its book is called), empty if from none.
   */
  record JobOpened(String name, String routine, String again) implements Fact {
    public JobOpened(String name, String routine) {
      this(name, routine, "");
    }
  }

  /**
   * The plan was set or changed: the plan file's keys with what was typed for each, and what was
   * reckoned with where nothing was typed.
   */
  record PlanSet(Map<String, String> wish, Map<String, Sourced> reckonedWith) implements Fact {
    public PlanSet {
      wish = copy(wish);
      reckonedWith = copy(reckonedWith);
    }

    public PlanSet(Map<String, String> wish) {
      this(wish, Map.of());
    }
  }

  /** Metal was weighed out of the safe for this job. */
  record MetalWeighedOut(double massG, String what) implements Fact {}

  /**
   * A test piece was formed and judged; verdicts say what the next one should be. The lot is the
   * wire's in the drawer; confirmed: what was measured was asked about, and stands. The size names
   * another link of the chain than the planned one.
   */
  record TestPieceTried(
      double wireMm,
      double blankMm,
      Map<String, Double> formersMm,
      OptionalDouble lengthMm,
      OptionalDouble widthMm,
      OptionalDouble insideMm,
      List<String> verdicts,
      String note,
      String lot,
      boolean confirmed,
      String size)
      implements Fact {
    public TestPieceTried {
      formersMm = copy(formersMm);
      verdicts = List.copyOf(verdicts);
    }

    public TestPieceTried(
        double wireMm,
        double blankMm,
        Map<String, Double> formersMm,
        OptionalDouble lengthMm,
        OptionalDouble widthMm,
        OptionalDouble insideMm,
        List<String> verdicts,
        String note) {
      this(wireMm, blankMm, formersMm, lengthMm, widthMm, insideMm, verdicts, note, "", false, "");
    }
  }

  /**
   * A test piece was made the sample link; it may be link 1 of the chain. The size says which of
   * several it is.
   */
  record SampleChosen(EntryId piece, boolean firstLink, String size) implements Fact {
    public SampleChosen(EntryId piece, boolean firstLink) {
      this(piece, firstLink, "");
    }
  }

  /** A short length was hung and measured, from inside end to inside end. */
  record TrialMeasured(
      int links,
      int rings,
      double ringInsideMm,
      OptionalDouble ovalInsideMm,
      double hungMm,
      double claspMm,
      String note)
      implements Fact {}

  /**
   * A trial length was chosen: the chain is counted anew from what it measured. Size → how many of
   * its links.
   */
  record TrialChosen(EntryId trial, Map<String, Integer> sizes) implements Fact {
    public TrialChosen {
      sizes = copy(sizes);
    }

    public TrialChosen(EntryId trial) {
      this(trial, Map.of());
    }
  }

  /** A step of the routine was opened at the bench. */
  record StepOpened(StepId step) implements Fact {}

  /** A step that counts nothing was done. */
  record StepDone(StepId step) implements Fact {}

  /**
   * A caution was met. The digest is of its text and of the reason for which it was shown, so that
   * it comes whole again when either changes.
   */
  record CautionSeen(String caution, CautionMet how, String digest, StepId step) implements Fact {
    public CautionSeen(String caution) {
      this(caution, CautionMet.WHOLE, "", StepId.NONE);
    }
  }

  /**
   * Pieces were taken in hand for a stage; redo: from the redo pile. The size says which links,
   * here and below, where the chain has several.
   */
  record PiecesTaken(Map<PieceKind, Integer> pieces, Stage stage, boolean redo, String size)
      implements Fact {
    public PiecesTaken {
      pieces = copy(pieces);
    }

    public PiecesTaken(Map<PieceKind, Integer> pieces, Stage stage, boolean redo) {
      this(pieces, stage, redo, "");
    }
  }

  /** Pieces came through a stage; at a check that means good. Size → how many of the links. */
  record PiecesThrough(
      Map<PieceKind, Integer> pieces,
      Stage stage,
      boolean redo,
      StepId step,
      Map<String, Integer> sizes)
      implements Fact {
    public PiecesThrough {
      pieces = copy(pieces);
      sizes = copy(sizes);
    }

    public PiecesThrough(Map<PieceKind, Integer> pieces, Stage stage, boolean redo, StepId step) {
      this(pieces, stage, redo, step, Map.of());
    }
  }

  /** Pieces failed at a stage and go back to be redone; redo: they came from its redo pile. */
  record PiecesSentBack(
      PieceKind piece,
      int count,
      Stage from,
      Stage to,
      boolean redo,
      String reason,
      Again again,
      String size)
      implements Fact {
    public PiecesSentBack(
        PieceKind piece, int count, Stage from, Stage to, boolean redo, String reason) {
      this(piece, count, from, to, redo, reason, Again.NOT_SAID, "");
    }
  }

  /** Pieces were scrapped while waiting for a stage; redo: out of the redo pile. */
  record PiecesScrapped(
      PieceKind piece, int count, Stage stage, boolean redo, String reason, String size)
      implements Fact {
    public PiecesScrapped(PieceKind piece, int count, Stage stage, boolean redo, String reason) {
      this(piece, count, stage, redo, reason, "");
    }
  }

  /** Blanks or rings were cut from wire on hand; the length is what each took, kerf included. */
  record WireCut(PieceKind piece, int count, double eachMm, String size) implements Fact {
    public WireCut(PieceKind piece, int count, double eachMm) {
      this(piece, count, eachMm, "");
    }
  }

  /** Wire came to hand for a kind of piece, from outside or out of a lot of the drawer. */
  record WireAdded(
      PieceKind piece, double wireMm, double lengthMm, String temper, String batch, String lot)
      implements Fact {
    public WireAdded(PieceKind piece, double wireMm, double lengthMm, String temper, String batch) {
      this(piece, wireMm, lengthMm, temper, batch, "");
    }
  }

  /** Wire was lost or put to scrap uncut. */
  record WireDiscarded(PieceKind piece, double lengthMm, String why) implements Fact {}

  /** Work at the bench began or went on; a sitting is one person's. */
  record SittingStarted(String person) implements Fact {}

  /** The bench was left; each says whether it was looked to. */
  record SteppedAway(boolean torchOut, boolean gasShut, boolean hotWorkSafe) implements Fact {}

  /**
   * A timer was set: a wait of a step, known by its id, or one of the user's own without. The name
   * is what is shown.
   *
   * @param pieces kind → how many go into the wait, those to be done again apart; none for all that
   *     is there
   * @param redo kind → how many go in that are to be done again
   * @param stages kind → the stage that it reaches at the step
   * @param sizes size → how many of these links
   * @param redoSizes size → how many of the links to be done again
   */
  record TimerStarted(
      String name,
      long seconds,
      WaitId waitId,
      StepId step,
      Map<PieceKind, Integer> pieces,
      Map<PieceKind, Integer> redo,
      Map<PieceKind, Stage> stages,
      Map<String, Integer> sizes,
      Map<String, Integer> redoSizes)
      implements Fact {
    public TimerStarted {
      pieces = copy(pieces);
      redo = copy(redo);
      stages = copy(stages);
      sizes = copy(sizes);
      redoSizes = copy(redoSizes);
    }

    public TimerStarted(String name, long seconds) {
      this(name, seconds, WaitId.NONE, StepId.NONE, Map.of());
    }

    /** A wait of a step with what goes into it, by the stage that it is on its way to. */
    public TimerStarted(
        String name, long seconds, WaitId waitId, StepId step, Map<OnWay, Integer> goesIn) {
      this(
          name,
          seconds,
          waitId,
          step,
          OnWay.counts(goesIn, false),
          OnWay.counts(goesIn, true),
          OnWay.stages(goesIn),
          LinkSizes.of(goesIn, false),
          LinkSizes.of(goesIn, true));
    }

    /** What is on its way → how many of it go in; empty for all that is there. */
    public Map<OnWay, Integer> goesIn() {
      Map<OnWay, Integer> all = new LinkedHashMap<>();
      stages.forEach(
          (piece, stage) -> {
            LinkSizes.of(piece, pieces.getOrDefault(piece, 0), sizes)
                .forEach((size, count) -> all.put(new OnWay(piece, stage, false, size), count));
            LinkSizes.of(piece, redo.getOrDefault(piece, 0), redoSizes)
                .forEach((size, count) -> all.put(new OnWay(piece, stage, true, size), count));
          });
      all.values().removeIf(count -> count == 0);
      return all;
    }

    /** Kind → how many go in, those to be done again among them. */
    public Map<PieceKind, Integer> wentIn() {
      Map<PieceKind, Integer> all = new LinkedHashMap<>(pieces);
      redo.forEach((piece, count) -> all.merge(piece, count, Integer::sum));
      return all;
    }
  }

  /** A timer was answered, after it rang or before, and how its wait ended. */
  record TimerAnswered(EntryId timer, WaitEnd how, String reason) implements Fact {
    public TimerAnswered(EntryId timer) {
      this(timer, WaitEnd.NOT_SAID, "");
    }
  }

  /** The finished chain and what is left were weighed and measured. */
  record WeighedIn(
      OptionalDouble chainG,
      OptionalDouble lengthMm,
      OptionalDouble wireReturnedG,
      OptionalDouble cleanScrapG,
      OptionalDouble solderedScrapG,
      OptionalDouble filingsG,
      OptionalDouble sweepsG)
      implements Fact {}

  /** The user's own prices, by the names of {@link PriceList}. */
  record PricesSet(Map<String, Double> prices, String currency) implements Fact {
    public PricesSet {
      prices = copy(prices);
    }
  }

  /** A remark. */
  record Noted(String text) implements Fact {}

  /** An earlier entry was struck: it counts no more, and stays to be read. */
  record Struck(EntryId entry, String why) implements Fact {}

  /** A line whose check sum failed was looked at and accepted as it stands. */
  record LineAccepted(String lineCrc) implements Fact {}

  /** The job was closed; what to do differently next time, and its figures as they stay. */
  record JobClosed(String nextTime, Map<String, Double> figures) implements Fact {
    public JobClosed {
      figures = copy(figures);
    }

    public JobClosed(String nextTime) {
      this(nextTime, Map.of());
    }
  }

  /** The job was opened again after closing. */
  record JobReopened(String why) implements Fact {}

  /** An entry that this version cannot use: kept, shown, and passed over. */
  record Unread(String kind, Map<String, Object> fields) implements Fact {
    public Unread {
      fields = copy(fields);
    }
  }

  /** A copy that keeps its order and never changes; for the families of facts. */
  static <K, T> Map<K, T> copy(Map<K, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
