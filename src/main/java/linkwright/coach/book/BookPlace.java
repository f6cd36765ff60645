package linkwright.coach.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import linkwright.coach.content.Content;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.SearchForm;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.Fact;

/** The book: read, searched, entries struck and brought back, notes, doubtful lines accepted. */
public final class BookPlace implements Place {
  @Override
  public Content content(Model model) {
    return BookContent.of(model, shown(model));
  }

  /** Rows of the screen that are not entries. */
  private static final int AROUND = 11;

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.NOTE,
        Act.STRIKE,
        Act.SEARCH,
        Act.ACCEPT,
        Act.SHOW_ALL,
        Act.UP,
        Act.DOWN,
        Act.NEWEST,
        Act.OLDEST,
        Act.TO_BENCH,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.NOTE));
    if (!model.job().map(OpenJob::doubtful).orElse(List.of()).isEmpty()) {
      acts.add(Act.ACCEPT);
    }
    acts.addAll(List.of(Act.STRIKE, Act.SEARCH));
    if (!shown(model).search().isEmpty()) {
      acts.add(Act.SHOW_ALL);
    }
    acts.addAll(
        List.of(
            Act.UP, Act.DOWN, Act.MORE, Act.LESS, Act.NEWEST, Act.OLDEST, Act.TO_BENCH, Act.UNDO));
    return acts;
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(screen(model, 0, "")));
  }

  /** The book was read anew: the chosen row stays where it was. */
  @Override
  public Turn readAnew(Model model) {
    BookHeld before = shown(model);
    Model next = model.with(screen(model, before.at(), before.search()));
    return Turn.to(next.told("The line is accepted and counts from now on."));
  }

  private static BookHeld shown(Model model) {
    return (BookHeld) model.held();
  }

  private static BookHeld screen(Model model, int row, String search) {
    OpenJob job = model.job().orElseThrow();
    List<Integer> found = search.isBlank() ? all(job) : job.words().holding(search);
    int rows = job.doubtful().size() + found.size();
    return new BookHeld(within(row, rows), search, found, Optional.empty(), 0);
  }

  private static List<Integer> all(OpenJob job) {
    int last = job.entries().size() - 1;
    return IntStream.rangeClosed(0, last).mapToObj(i -> last - i).toList();
  }

  private static int within(int row, int rows) {
    return Math.max(0, Math.min(rows - 1, row));
  }

  @Override
  public Turn act(Model model, Act act) {
    BookHeld screen = shown(model);
    int page = Math.max(3, model.height() - AROUND);
    return switch (act) {
      case UP -> moved(model, screen.at() - 1);
      case DOWN -> moved(model, screen.at() + 1);
      case LESS, MORE ->
          model.parts(AskedOnce.content(this, model)) > 1
              ? Turn.to(model.with(screen.turned(Turning.to(screen.turned(), act))))
              : moved(model, screen.at() + (act == Act.MORE ? page : -page));
      case NEWEST -> moved(model, 0);
      case OLDEST -> moved(model, Integer.MAX_VALUE);
      case SHOW_ALL -> Turn.to(model.with(screen(model, 0, "")));
      case SEARCH -> Turn.to(model.with(screen.with(Optional.of(search(screen.search())))));
      case NOTE -> open(model, note());
      case STRIKE -> strike(model, screen);
      case ACCEPT -> accept(model, screen);
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn moved(Model model, int row) {
    BookHeld screen = shown(model);
    return Turn.to(model.with(screen.with(within(row, BookRows.of(model, screen).size()))));
  }

  private static Form search(String text) {
    return SearchForm.of(text);
  }

  private static Form note() {
    return Form.of(
        Form.Purpose.NOTE,
        "A note",
        "write it into the book",
        List.of(
            Field.of("text", "note", "", "what to remember of this job")
                .helped("It stands in the book with its time, and goes along with the job.")));
  }

  private static Turn open(Model model, Form form) {
    Form resumed = Drafting.resumed(model, form);
    return Turn.to(model.with(shown(model).with(Optional.of(resumed))));
  }

  private static Turn strike(Model model, BookHeld screen) {
    BookRows rows = BookRows.of(model, screen);
    if (rows.doubtful(screen.at()).isPresent()) {
      return Turn.to(model.told("This line is not used, so there is nothing to strike."));
    }
    Optional<Entry> entry = rows.entry(screen.at());
    if (entry.isEmpty()) {
      return Turn.to(model.told("No entry is chosen."));
    }
    Fact fact = entry.get().fact();
    if (fact instanceof Fact.JobOpened || fact instanceof Fact.LineAccepted) {
      return Turn.to(
          model.trouble(
              fact instanceof Fact.JobOpened
                  ? "The job's first entry holds the rest together and cannot be struck."
                  : "A line that was accepted is struck itself, not its acceptance."));
    }
    boolean back = fact instanceof Fact.Struck || rows.struck(entry.get());
    String words = rows.words(entry.get());
    return open(
        model,
        Form.of(
            Form.Purpose.STRIKE,
            (back ? "Bring back what was struck: " : "Strike: ") + words,
            back ? "bring it back" : "strike it",
            List.of(
                Field.of("why", "why", "", "miscounted, entered twice")
                    .helped("The entry stays in the book, struck, with this beside it."))));
  }

  private static Turn accept(Model model, BookHeld screen) {
    Optional<DoubtfulLine> line = BookRows.of(model, screen).doubtful(screen.at());
    if (line.isEmpty()) {
      return Turn.to(
          model
              .with(screen.with(0))
              .told("Read this line; if it is right, the same key accepts it."));
    }
    if (line.get().reading().isEmpty()) {
      return Turn.to(
          model.trouble(
              "Line "
                  + line.get().line()
                  + " cannot be read as an entry, so it cannot be accepted. Mend it in an editor,"
                  + " or leave it: it does no harm."));
    }
    return model.job().orElseThrow().lookOnly()
        ? Turn.keep(model, new Fact.LineAccepted(line.get().check()))
        : Turn.with(model, new Effect.AcceptLine(line.get().check()));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    if (form.purpose() == Form.Purpose.SEARCH) {
      return searched(model, form, textChanged);
    }
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    Model next = model.with(shown(model).with(Optional.of(shown)));
    return textChanged ? Drafting.keep(next, shown) : Turn.to(next);
  }

  /** Every letter filters; any key that leaves the field leaves the search as it is. */
  private static Turn searched(Model model, Form form, boolean textChanged) {
    if (textChanged) {
      BookHeld filtered = screen(model, 0, SearchForm.text(form));
      return Turn.to(model.with(filtered.with(Optional.of(form))));
    }
    Optional<Form> open = form.at() == 0 ? Optional.of(form) : Optional.empty();
    return Turn.to(model.with(shown(model).with(open)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    if (form.purpose() == Form.Purpose.SEARCH) {
      return Turn.to(model.with(shown(model).with(Optional.empty())));
    }
    boolean note = form.purpose() == Form.Purpose.NOTE;
    String id = note ? "text" : "why";
    if (form.text(id).isEmpty()) {
      String sentence = note ? "Write the note." : "Say why, in a few words.";
      Form told = form.withTroubles(Map.of(id, sentence)).atFirstTrouble();
      return Turn.to(model.with(shown(model).with(Optional.of(told))));
    }
    return note
        ? Turn.keep(model, new Fact.Noted(form.text(id)))
        : Turn.keep(model, strikes(model, form.text(id)));
  }

  /** A struck entry comes back when every strike on it is struck. */
  private static List<Fact> strikes(Model model, String why) {
    BookHeld screen = shown(model);
    BookRows rows = BookRows.of(model, screen);
    Entry entry = rows.entry(screen.at()).orElseThrow();
    List<Entry> targets = rows.struck(entry) ? rows.struckBy(entry) : List.of(entry);
    return targets.stream().map(each -> (Fact) new Fact.Struck(each.id(), why)).toList();
  }

  /** New entries stand at the top; the entry that was chosen stays chosen. */
  @Override
  public Turn settled(Model model) {
    BookHeld before = shown(model);
    int doubtful = model.job().orElseThrow().doubtful().size();
    int place = before.at() - doubtful;
    BookHeld after = screen(model, before.at(), before.search());
    if (place > 0 && place < before.found().size()) {
      after = after.with(doubtful + after.found().indexOf(before.found().get(place)));
    }
    Model next = model.with(after);
    return before.form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(shown(model).with(Optional.empty())));
  }
}
