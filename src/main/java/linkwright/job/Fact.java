package linkwright.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What can be entered in a job book. Each is a thing that has happened, so its name is in the past
 * tense; in the book its kind is the name in small letters with hyphens ({@code pieces-through}).
 *
 * <p>Lengths are mm, masses g, times s. A field that was not measured is empty and absent from the
 * book. {@link FactFields} writes and reads them.
 */
public sealed interface Fact {

  /** The job was begun, to be made by that routine. */
  record JobOpened(String name, String routine) implements Fact {}

  /** The plan was set or changed: the plan file's keys with what was typed for each. */
  record PlanSet(Map<String, String> wish) implements Fact {
    public PlanSet {
      wish = copy(wish);
    }
  }

  /** Metal was weighed out of the safe for this job. */
  record MetalWeighedOut(double massG, String what) implements Fact {}

  /** A test piece was formed and judged; verdicts say what the next one should be. */
  record TestPieceTried(
      double wireMm,
      double blankMm,
      Map<String, Double> formersMm,
      OptionalDouble lengthMm,
      OptionalDouble widthMm,
      OptionalDouble insideMm,
      List<String> verdicts,
      String note)
      implements Fact {
    public TestPieceTried {
      formersMm = copy(formersMm);
      verdicts = List.copyOf(verdicts);
    }
  }

  /** A test piece was made the sample link; it may be link 1 of the chain. */
  record SampleChosen(EntryId piece, boolean firstLink) implements Fact {}

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

  /** A trial length was chosen: the chain is counted anew from what it measured. */
  record TrialChosen(EntryId trial) implements Fact {}

  /** A step of the routine was opened at the bench. */
  record StepOpened(String step) implements Fact {}

  /** A step that counts nothing was done. */
  record StepDone(String step) implements Fact {}

  /** A caution was shown whole and answered. */
  record CautionSeen(String caution) implements Fact {}

  /** Pieces were taken in hand for a stage; redo: from the redo pile. */
  record PiecesTaken(Map<String, Integer> pieces, String stage, boolean redo) implements Fact {
    public PiecesTaken {
      pieces = copy(pieces);
    }
  }

  /** Pieces came through a stage; at a check that means good. */
  record PiecesThrough(Map<String, Integer> pieces, String stage, boolean redo, String step)
      implements Fact {
    public PiecesThrough {
      pieces = copy(pieces);
    }
  }

  /** Pieces failed at a stage and go back to be done again; redo: they came from its redo pile. */
  record PiecesSentBack(
      String piece, int count, String from, String to, boolean redo, String reason)
      implements Fact {}

  /** Pieces were scrapped while waiting for a stage; redo: out of the redo pile. */
  record PiecesScrapped(String piece, int count, String stage, boolean redo, String reason)
      implements Fact {}

  /** Blanks or rings were cut from wire on hand; the length is what each took, kerf included. */
  record WireCut(String piece, int count, double eachMm) implements Fact {}

  /** Wire came to hand; for says which piece it serves: link or ring. */
  record WireAdded(String piece, double wireMm, double lengthMm, String temper, String batch)
      implements Fact {}

  /** Wire was lost or put to scrap uncut. */
  record WireDiscarded(String piece, double lengthMm, String why) implements Fact {}

  /** Work at the bench began or went on. */
  record SittingStarted() implements Fact {}

  /** The bench was left; each says whether it was looked to. */
  record SteppedAway(boolean torchOut, boolean gasShut, boolean hotWorkSafe) implements Fact {}

  /** A timer was set: the wait of a step, or one of her own where step is empty. */
  record TimerStarted(String name, long seconds, Optional<String> step) implements Fact {
    /** One of her own. */
    public TimerStarted(String name, long seconds) {
      this(name, seconds, Optional.empty());
    }
  }

  /** A timer was answered, after it rang or before; why says why a wait was ended before it was. */
  record TimerAnswered(EntryId timer, Optional<String> why) implements Fact {
    /** Answered because it was over, or looked to. */
    public TimerAnswered(EntryId timer) {
      this(timer, Optional.empty());
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

  /** The user's own prices, by the names of {@link Prices}. */
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

  /** The job was closed; what to do differently next time. */
  record JobClosed(String nextTime) implements Fact {}

  /** The job was opened again after closing. */
  record JobReopened(String why) implements Fact {}

  /** An entry of a kind this version does not know: kept, shown, and passed over. */
  record Unread(String kind, Map<String, Object> fields) implements Fact {
    public Unread {
      fields = copy(fields);
    }
  }

  /** The kind as it stands in the book, {@code pieces-through} for {@link PiecesThrough}. */
  default String kind() {
    return this instanceof Unread unread ? unread.kind() : FactFields.kindOf(getClass());
  }

  /** A copy that keeps its order and never changes. */
  private static <T> Map<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
