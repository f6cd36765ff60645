package linkwright.coach;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.reckon.Reckoning;
import linkwright.routine.Remedy;
import linkwright.standing.CountedPlan;
import linkwright.standing.TestPieces;
import linkwright.standing.TrialLength;
import linkwright.standing.WireStand;

/** The screen that is shown, with what belongs to it alone. */
public sealed interface Screen {
  /** The form that is being filled in on this screen, if one is. */
  default Optional<Form> form() {
    return Optional.empty();
  }

  /** The jobs at hand. */
  record Tray(int at, Optional<Form> form) implements Screen {}

  /** The way round: every place of the job, with how it stands there. */
  record Round(Screen from) implements Screen {}

  /**
   * The plan while it is typed; the preview is what it comes to, and part counts on through what of
   * it has no room at once.
   */
  record Plan(Form open, CountedPlan preview, int part) implements Screen {
    Plan(Form open, CountedPlan preview) {
      this(open, preview, 0);
    }

    @Override
    public Optional<Form> form() {
      return Optional.of(open);
    }
  }

  /** Test pieces and what they teach; empty where the link has no pattern. */
  record Tests(int at, Optional<TestPieces> taught, Optional<Form> form) implements Screen {}

  /** Trial lengths; the rows are what each would make of the chain. */
  record Trial(int at, List<TrialLength> rows, Optional<Form> form) implements Screen {}

  /**
   * The bench.
   *
   * @param digits the number typed for "how many"
   * @param ask what the bench asks before it goes on
   * @param opening the step that opens once its cautions are seen; empty if one is open
   * @param part which part of the step's texts is shown; counts on, the drawing goes round
   * @param remedy the remedy of the last redo, shown until the next piece
   * @param cardPage the page of the caution that is to be seen
   */
  record Bench(
      String digits,
      BenchAsk ask,
      Optional<String> opening,
      int part,
      Optional<Remedy> remedy,
      int cardPage)
      implements Screen {
    static final Bench PLAIN =
        new Bench("", new BenchAsk.Nothing(), Optional.empty(), 0, Optional.empty(), 0);
  }

  /**
   * Wire on hand.
   *
   * @param stand how it stands; empty without a plan
   * @param drawn what drawing down from thicker wire comes to, as far as it was typed
   * @param form the form that is open
   */
  record Wire(Optional<WireStand> stand, List<String> drawn, Optional<Form> form)
      implements Screen {
    public Wire {
      drawn = List.copyOf(drawn);
    }

    Wire with(Optional<Form> other) {
      return new Wire(stand, drawn, other);
    }

    Wire drawn(List<String> lines) {
      return new Wire(stand, lines, form);
    }
  }

  /**
   * The book.
   *
   * @param at which row is chosen: the doubtful lines first, then the entries found
   * @param search what is searched for; empty: all entries are shown
   * @param found places in the book of the entries found, the newest first
   * @param form the form that is open
   */
  record Book(int at, String search, List<Integer> found, Optional<Form> form) implements Screen {
    Book with(int row) {
      return new Book(row, search, found, form);
    }

    Book with(Optional<Form> other) {
      return new Book(at, search, found, other);
    }
  }

  /**
   * The cautions, one open at a time.
   *
   * @param at which one is chosen, from 0
   * @param open whether it is shown whole
   * @param page which part of it, where the window is too low for all of it; goes round
   */
  record Cautions(int at, boolean open, int page) implements Screen {}

  /** The timers. */
  record TimerList(int at, Optional<Form> form) implements Screen {}

  /**
   * The reckoner.
   *
   * @param at which sum is chosen
   * @param form what it is reckoned from, while it is typed
   * @param result what that comes to, if the form is open
   * @param typed sum → what was typed for it on this visit
   */
  record Reckoner(
      int at,
      Optional<Form> form,
      Optional<Reckoning> result,
      Map<String, Map<String, String>> typed)
      implements Screen {
    public Reckoner {
      typed = Map.copyOf(typed);
    }
  }

  /** Weighing in and the price; part counts on through what has no room at once. */
  record WeighIn(Optional<Form> form, int part) implements Screen {
    WeighIn(Optional<Form> form) {
      this(form, 0);
    }
  }

  /** All keys of the screen it was asked on. */
  record Help(Screen from) implements Screen {}
}
