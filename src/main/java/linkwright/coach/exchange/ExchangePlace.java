package linkwright.coach.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.exchange.CsvTable;
import linkwright.exchange.TakenIn;
import linkwright.job.Fact;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * Files out for other programs, and rows in from theirs. What would be written over is asked about,
 * and rows are told before they are entered: the same form kept once more is yes.
 */
public final class ExchangePlace implements Place {
  private static final String TITLE = "out and in";
  private static final int MOST_TOLD = 3;

  @Override
  public Turn enter(Model model) {
    return shown(model, "");
  }

  private static Turn shown(Model model, String said) {
    return Turn.to(model.with(ExchangeHeld.of(Optional.empty(), said)));
  }

  private static ExchangeHeld held(Model model) {
    return (ExchangeHeld) model.held();
  }

  @Override
  public Content content(Model model) {
    ExchangeHeld held = held(model);
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    boolean job = model.job().isPresent();
    List<Part> parts =
        new ArrayList<>(DraftWords.here(model, here(model, OutForms.form(model)), Act.WRITE_OUT));
    parts.addAll(DraftWords.here(model, here(model, rowsForm(model)), Act.TAKE_ROWS));
    if (!held.said().isEmpty()) {
      parts.add(new Prose(Prose.Kind.MAIN, held.said()));
    }
    parts.add(
        Prose.says(
            job
                ? "{do:write-out}: writes this job, its plan or the drawer into a file for other"
                    + " programs."
                : "{do:write-out}: writes the drawer or your hands into a file for other programs;"
                    + " a job and its plan are written from the places of the job."));
    parts.add(
        Prose.says(
            job
                ? "{do:take-rows}: reads test pieces or tallies of this job, or lots of the drawer,"
                    + " from a CSV file."
                : "{do:take-rows}: reads lots of the drawer from a CSV file; test pieces and"
                    + " tallies are read from the places of their job."));
    parts.add(
        Prose.aside(
            "A bare name lies in the folder “exchange” of your Linkwright folder. What is written"
                + " of a job holds nothing of another customer's."));
    return new Content(TITLE, parts);
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.WRITE_OUT, Act.TAKE_ROWS, Act.TO_BENCH, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.WRITE_OUT, Act.TAKE_ROWS));
    acts.add(model.job().isPresent() ? Act.TO_BENCH : Act.TO_TRAY);
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    ExchangeHeld held = held(model);
    return switch (act) {
      case WRITE_OUT -> open(model, resumed(held, OutForms.form(model)));
      case TAKE_ROWS -> open(model, resumed(held, rowsForm(model)));
      case MORE, LESS -> Turn.to(model.with(held.turned(Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  /** What was typed before esc stands there again. */
  private static Form resumed(ExchangeHeld held, Form form) {
    return held.left().filter(left -> left.purpose() == form.purpose()).orElse(form);
  }

  /** What is typed in one job is not brought into another. */
  private static Turn open(Model model, Form form) {
    return Turn.to(model.with(ExchangeHeld.of(Optional.of(here(model, form)), held(model).said())));
  }

  private static Form here(Model model, Form form) {
    return form.about(model.job().map(OpenJob::slug).orElse(""));
  }

  private static Form rowsForm(Model model) {
    boolean job = model.job().isPresent();
    List<String> into = job ? List.of(OutForms.JOB, OutForms.DRAWER) : List.of(OutForms.DRAWER);
    return Form.of(
        Form.Purpose.TAKE_ROWS,
        "Rows out of a CSV file",
        "read it",
        List.of(
            Field.choice(OutForms.WHAT, "into", into.get(0), "left and right: where to", into)
                .helped(
                    "Into this job: test pieces (blank, wire, length, width, inside, former tip,"
                        + " verdict, note, lot) or tallies (piece, stage, what, count, reason)."
                        + " Into the drawer: lots (lot, what, metal, wire, length, mass, temper,"
                        + " batch, note)."),
            Field.of(OutForms.FILE, "file", "", "pieces.csv in “exchange”, or a whole path")
                .helped(
                    "Units stand in the headings, blank (mm), or in the cells; a decimal comma is"
                        + " heeded. All rows are entered, or none.")));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    ExchangeHeld held = held(model);
    Form fitted = form.purpose() == Form.Purpose.WRITE_OUT ? OutForms.fitted(form) : form;
    return textChanged
        ? open(model, fitted.withTroubles(Map.of()))
        : Turn.to(
            model.with(
                new ExchangeHeld(
                    Optional.of(fitted), held.said(), held.asked(), held.rows(), held.left(), 0)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = unknown(form);
    if (!troubles.isEmpty()) {
      return open(model, form.withTroubles(troubles).atFirstTrouble());
    }
    boolean meant = form.texts().equals(held(model).asked());
    if (form.purpose() == Form.Purpose.TAKE_ROWS) {
      return meant ? enter(model, form, held(model).rows()) : read(model, form);
    }
    Read<String> text = OutForms.text(model, form);
    if (text instanceof Read.Bad<String> bad) {
      return told(model, form, OutForms.culprit(form), bad.sentence());
    }
    return Turn.with(
        model.with(held(model).asking(form, List.of())),
        new Effect.WriteOut(
            OutForms.folder(form), OutForms.file(model, form), text.orThrow(), meant));
  }

  /** Words that are none of a field's choices, told beside it. */
  private static Map<String, String> unknown(Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (Field field : form.fields()) {
      List<String> words = field.choices().stream().map(Offered::id).toList();
      if (!words.isEmpty() && !words.contains(form.text(field.id()))) {
        troubles.put(field.id(), "Choose one of these: " + String.join(", ", words) + ".");
      }
    }
    return troubles;
  }

  private static Turn told(Model model, Form form, String field, String sentence) {
    return open(model, form.withTroubles(Map.of(field, sentence)).atFirstTrouble());
  }

  @Override
  public Turn writtenOut(Model model, Message.WrittenOut written) {
    Optional<Form> open = held(model).form();
    if (open.isEmpty()) {
      return Turn.to(model);
    }
    return switch (written.fate()) {
      case WRITTEN -> shown(model, "Written: " + written.says());
      case REFUSED -> told(model, open.get(), OutForms.FILE, written.says());
      case THERE ->
          ask(
              model,
              open.get(),
              "There is already " + written.says() + ". Keep once more to write over it.",
              List.of());
    };
  }

  private static Turn ask(Model model, Form form, String question, List<Fact> rows) {
    Form asking = form.withTroubles(Map.of(OutForms.FILE, question)).atFirstTrouble();
    return Turn.to(model.with(held(model).asking(asking, rows)));
  }

  private static Turn read(Model model, Form form) {
    if (form.text(OutForms.FILE).isEmpty()) {
      return told(model, form, OutForms.FILE, "Name the file, such as pieces.csv.");
    }
    boolean closed = model.job().filter(job -> job.state().course().closed()).isPresent();
    return closed && form.text(OutForms.WHAT).equals(OutForms.JOB)
        ? told(model, form, OutForms.WHAT, TakenIn.CLOSED)
        : Turn.with(
            model.with(ExchangeHeld.of(Optional.of(form), held(model).said())),
            new Effect.ReadRows(OutForms.FOLDER, form.text(OutForms.FILE)));
  }

  @Override
  public Turn rowsRead(Model model, Message.RowsRead rows) {
    Optional<Form> open = held(model).form();
    if (open.isEmpty()) {
      return Turn.to(model);
    }
    Form form = open.get();
    if (rows.text() instanceof Read.Bad<String> bad) {
      return told(model, form, OutForms.FILE, bad.sentence());
    }
    TakenIn taken = taken(model, form, CsvTable.read(rows.file(), rows.text().orThrow()));
    if (!taken.problems().isEmpty()) {
      return told(model, form, OutForms.FILE, problems(taken));
    }
    return taken.facts().isEmpty()
        ? told(model, form, OutForms.FILE, taken.leftOut() + " Nothing is entered.")
        : ask(model, form, question(taken), taken.facts());
  }

  private static String question(TakenIn taken) {
    List<String> told =
        new ArrayList<>(taken.asked().subList(0, Math.min(MOST_TOLD, taken.asked().size())));
    int more = taken.asked().size() - told.size();
    if (more > 0) {
      told.add("And " + more + " more questions.");
    }
    if (taken.known() > 0) {
      told.add(taken.leftOut());
    }
    told.add(taken.count() + " can be entered. Keep once more to enter them.");
    return String.join(" ", told);
  }

  private static TakenIn taken(Model model, Form form, CsvTable table) {
    String file = form.text(OutForms.FILE);
    if (form.text(OutForms.WHAT).equals(OutForms.DRAWER)) {
      return TakenIn.stock(
          file,
          table,
          model.handbook().drawer(),
          model.handbook().reference(),
          model.settings().units());
    }
    OpenJob job = model.job().orElseThrow();
    return TakenIn.job(
        file,
        table,
        job.entries(),
        job.state(),
        job.standing(),
        model.handbook(),
        model.settings().units());
  }

  private static String problems(TakenIn taken) {
    List<Problem> problems = taken.problems();
    StringBuilder told = new StringBuilder("Nothing is entered.");
    problems.stream().limit(MOST_TOLD).forEach(each -> told.append(' ').append(each.sentence()));
    int more = problems.stream().skip(MOST_TOLD).mapToInt(Problem::stands).sum();
    taken.asked().forEach(each -> told.append(' ').append(each));
    return told + (more > 0 ? " And " + more + " more." : "");
  }

  private static Turn enter(Model model, Form form, List<Fact> rows) {
    if (form.text(OutForms.WHAT).equals(OutForms.DRAWER)) {
      return Turn.with(model, new Effect.KeepInDrawer(rows));
    }
    String said = "Entered: " + TakenIn.count(rows.size()) + " of " + form.text(OutForms.FILE);
    return Turn.keep(model.with(ExchangeHeld.of(Optional.empty(), said)), rows);
  }

  @Override
  public Turn settled(Model model) {
    ExchangeHeld held = held(model);
    return held.form().isPresent() && !held.rows().isEmpty()
        ? shown(model, "Entered in the drawer: " + TakenIn.count(held.rows().size()))
        : Turn.to(model);
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(held(model).shut()));
  }
}
