package linkwright.coach.testpieces;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.fit.Verdict;
import linkwright.hands.Verdicts;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.standing.TestPieces;
import linkwright.standing.asked.Questions;

/** Test pieces: logged, compared with the wish, the next proposed, one made the sample link. */
public final class TestsPlace implements Place {
  @Override
  public Content content(Model model) {
    return TestsContent.of((TestsHeld) model.held(), model);
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.DRAWN,
        Act.LOG,
        Act.SAMPLE,
        Act.UP,
        Act.DOWN,
        Act.TO_TRIAL,
        Act.TO_BENCH,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    TestsHeld held = (TestsHeld) model.held();
    List<Act> acts = new ArrayList<>(List.of(Act.LOG, Act.SAMPLE, Act.UP, Act.DOWN));
    if (!TestsContent.bends(held, model).isEmpty()) {
      acts.add(held.drawn() ? 0 : acts.size(), Act.DRAWN);
    }
    acts.addAll(List.of(Act.TO_TRIAL, Act.TO_BENCH, Act.UNDO));
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    TestsHeld screen = (TestsHeld) model.held();
    return switch (act) {
      case LOG ->
          Turn.to(model.with(screen.with(Optional.of(TestPieceForm.resumed(model, screen)))));
      case UP -> row(model, screen.at() - 1);
      case DOWN -> row(model, screen.at() + 1);
      case MORE, LESS -> Turn.to(model.with(screen.turned(act)));
      case SAMPLE -> sample(model, screen);
      case DRAWN -> Turn.to(model.with(screen.turnedOver()));
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  /** Opens the screen at the last piece made. */
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(at(model, Integer.MAX_VALUE)));
  }

  private static TestsHeld at(Model model, int wanted) {
    OpenJob job = model.job().orElseThrow();
    int last = Math.max(0, pieces(model).size() - 1);
    return new TestsHeld(
        Math.max(0, Math.min(last, wanted)),
        TestPieces.of(job.standing(), job.state(), ""),
        others(job),
        Optional.empty(),
        0,
        false);
  }

  @Override
  public String says(Model model, Act act) {
    return act != Act.DRAWN
        ? act.words()
        : ((TestsHeld) model.held()).drawn() ? "back to the list" : "bend by bend";
  }

  private static Map<String, TestPieces> others(OpenJob job) {
    Map<String, TestPieces> others = new LinkedHashMap<>();
    for (String size : sizes(job)) {
      TestPieces.of(job.standing(), job.state(), size).ifPresent(one -> others.put(size, one));
    }
    return others;
  }

  /** Names of the chain's links beside the planned one. */
  static List<String> sizes(OpenJob job) {
    return job.standing().counted().wish().map(wish -> wish.others()).orElse(List.of());
  }

  @Override
  public Turn row(Model model, int row) {
    int last = Math.max(0, pieces(model).size() - 1);
    TestsHeld screen = (TestsHeld) model.held();
    return Turn.to(model.with(screen.at(Math.max(0, Math.min(last, row)))));
  }

  private static Map<EntryId, Fact.TestPieceTried> pieces(Model model) {
    return model.job().orElseThrow().state().trials().pieces();
  }

  /** Of several links each has formers of its own. */
  private static Map<String, Double> formers(TestsHeld screen, Form form) {
    Map<String, Double> formers = new LinkedHashMap<>(new Amounts(form).byName("former."));
    if (!screen.others().isEmpty()) {
      screen
          .of(form.text("size"))
          .ifPresent(one -> formers.keySet().retainAll(one.pattern().formersMm().keySet()));
    }
    return formers;
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    if (!textChanged) {
      return Turn.to(model.with(((TestsHeld) model.held()).with(Optional.of(form))));
    }
    TestsHeld screen = (TestsHeld) model.held();
    String before = screen.form().map(open -> open.text("size")).orElse("");
    Form typed = TestPieceForm.turned(model, screen, form, before);
    return Drafting.keep(model.with(screen.with(Optional.of(checked(typed)))), typed);
  }

  private static Form checked(Form form) {
    return form.withTroubles(
        new Amounts(form).troubles(List.of("blank", "length", "width", "inside"), "former."));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> troubles =
        new LinkedHashMap<>(
            new Amounts(form).troubles(List.of("blank", "length", "width", "inside"), "former."));
    if (form.text("blank").isEmpty()) {
      troubles.put("blank", "Give the blank that was cut, such as 38 mm.");
    }
    List<String> verdicts = verdicts(form, troubles);
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(((TestsHeld) model.held()).with(Optional.of(told))));
    }
    Amounts amounts = new Amounts(form);
    OptionalDouble length = amounts.mm("length");
    OptionalDouble width = amounts.mm("width");
    if (verdicts.isEmpty() && length.isPresent() && width.isPresent()) {
      verdicts =
          measured(
              (TestsHeld) model.held(),
              form.text("size"),
              length.getAsDouble(),
              width.getAsDouble());
    }
    Fact.TestPieceTried fact =
        new Fact.TestPieceTried(
            job.standing().counted().wish().map(wish -> wish.wireMm()).orElse(0.0),
            amounts.mm("blank").orElseThrow(),
            formers((TestsHeld) model.held(), form),
            length,
            width,
            amounts.mm("inside"),
            verdicts,
            form.text("note"),
            "",
            false,
            form.text("size"));
    Map<String, String> questions =
        Questions.ofTestPiece(
            fact,
            ((TestsHeld) model.held()).of(fact.size()),
            job.standing(),
            model.settings().units());
    Optional<Form> asking =
        Asking.first(form, questions)
            .map(asked -> questions.containsKey("size") ? asked.atFirstTrouble() : asked);
    return asking.isPresent()
        ? Turn.to(
            model.with(((TestsHeld) model.held()).with(asking)).trouble(Asking.sentence(questions)))
        : Turn.keep(model, fact);
  }

  private static List<String> measured(
      TestsHeld screen, String size, double lengthMm, double widthMm) {
    return screen
        .of(size)
        .map(tests -> tests.verdictOf(lengthMm, widthMm).stream().map(Verdicts::word).toList())
        .orElse(List.of());
  }

  private static List<String> verdicts(Form form, Map<String, String> troubles) {
    List<String> verdicts = new ArrayList<>();
    for (String id : List.of("verdict", "verdict2")) {
      String text = form.text(id);
      Optional<Verdict> read = Verdicts.read(text);
      if (read.isPresent() && !verdicts.contains(Verdicts.word(read.get()))) {
        verdicts.add(Verdicts.word(read.get()));
      } else if (!text.isEmpty() && read.isEmpty()) {
        troubles.put(
            id,
            "“" + text + "” is no direction: one of " + String.join(", ", Verdicts.words()) + ".");
      }
    }
    return verdicts;
  }

  private static Turn sample(Model model, TestsHeld screen) {
    List<EntryId> ids = new ArrayList<>(pieces(model).keySet());
    if (ids.isEmpty()) {
      return Turn.to(
          model.trouble("No test piece is logged yet: " + ActMention.of(Act.LOG) + " logs one."));
    }
    EntryId chosen = ids.get(screen.at());
    Fact.TestPieceTried piece = pieces(model).get(chosen);
    JobState state = model.job().orElseThrow().state();
    boolean already =
        state.trials().isSample(chosen)
            && state.trials().wishAtSample().equals(state.course().wish());
    if (already) {
      return Turn.to(model.told("This is the sample link already: nothing is entered."));
    }
    boolean right = piece.verdicts().contains(Verdicts.word(Verdict.RIGHT));
    String told =
        right
            ? "This is the sample link, and link 1 of the chain. Keep it in the job's envelope"
                + " until the end."
            : "This is the sample link; it was not called right, so it is not counted as link 1.";
    return Turn.keep(model.told(told), new Fact.SampleChosen(chosen, right, size(model, piece)));
  }

  /** Which of several sizes of link the piece is; the planned one goes by its name, too. */
  private static String size(Model model, Fact.TestPieceTried piece) {
    return piece.size().isEmpty()
        ? model
            .job()
            .flatMap(job -> job.standing().counted().plan())
            .map(plan -> plan.sizes().get(0).name())
            .orElse("")
        : piece.size();
  }

  @Override
  public Turn settled(Model model) {
    TestsHeld screen = (TestsHeld) model.held();
    // A piece just logged is the one that is looked at.
    boolean logged = screen.form().isPresent();
    Model next = model.with(at(model, logged ? Integer.MAX_VALUE : screen.at()));
    return screen.form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(at(model, ((TestsHeld) model.held()).at())));
  }
}
