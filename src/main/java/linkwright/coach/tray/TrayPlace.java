package linkwright.coach.tray;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.form.Choosing;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.SearchForm;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;

/** The tray: the jobs at hand; one is opened, or a new one begun. */
public final class TrayPlace implements Place {
  /** Lines of the screen that hold no job. */
  private static final int AROUND = 10;

  private static final int LINES_EACH = 3;

  @Override
  public Content content(Model model) {
    return TrayContent.of(model, (TrayHeld) model.held());
  }

  /** Comes to the tray: a job that was open is shut, and the jobs are read anew. */
  @Override
  public Turn enter(Model model) {
    // Without a job none is left out of what the hands are judged by because it is being made.
    Model there =
        model
            .with(model.handbook().forJob("", List.of()))
            .withJob(Optional.empty())
            .with(new TrayHeld(0, Optional.empty()));
    return model.job().isEmpty()
        ? Turn.to(there)
        : Turn.with(there, new Effect.ShutBook(), new Effect.ReadTray());
  }

  /** The same with the jobs as they stand now; where one is chosen, it stays the one. */
  public static Model listed(Model model, List<TrayJob> jobs) {
    Model now = model.withTray(jobs);
    if (!(model.held() instanceof TrayHeld held)) {
      return now;
    }
    List<String> slugs = shown(now).stream().map(TrayJob::slug).toList();
    return chosen(model)
        .map(job -> slugs.indexOf(job.slug()))
        .filter(line -> line >= 0)
        .map(line -> now.with(held.at(line, held.form())))
        .orElse(now);
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.CHOOSE,
        Act.UP,
        Act.DOWN,
        Act.NEW_JOB,
        Act.MAKE_AGAIN,
        Act.SEARCH,
        Act.PUT_AWAY,
        Act.SHOW_ALL,
        Act.THROW_AWAY,
        Act.TO_RECKONER,
        Act.TO_CAUTIONS,
        Act.TO_HANDS,
        Act.TO_OWN_BENCH,
        Act.TO_DRAWER,
        Act.TO_EXCHANGE,
        Act.TO_LESSON,
        Act.TO_REHEARSAL,
        Act.MORE,
        Act.LESS,
        Act.NEWEST,
        Act.OLDEST);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.NEW_JOB));
    if (chosen(model).filter(TrayJob::closed).isPresent()) {
      acts.add(Act.MAKE_AGAIN);
    }
    if (chosen(model).isPresent()) {
      acts.add(Act.PUT_AWAY);
    }
    if (model.tray().stream().anyMatch(TrayJob::away)) {
      acts.add(Act.SHOW_ALL);
    }
    if (Drafting.first(model).isPresent()) {
      acts.add(Act.THROW_AWAY);
    }
    acts.addAll(
        List.of(
            Act.SEARCH,
            Act.TO_RECKONER,
            Act.TO_CAUTIONS,
            Act.TO_HANDS,
            Act.TO_OWN_BENCH,
            Act.TO_DRAWER,
            Act.TO_EXCHANGE,
            Act.TO_LOOKUP,
            Act.TO_LESSON,
            Act.TO_REHEARSAL,
            Act.TO_SETTINGS,
            Act.LEAVE));
    if (model.held().form().isEmpty() && shown(model).size() > page(model)) {
      acts.addAll(List.of(Act.MORE, Act.LESS, Act.NEWEST, Act.OLDEST));
      return List.copyOf(acts);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    TrayHeld tray = (TrayHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, tray.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, tray.at() + 1)));
      case CHOOSE ->
          shown(model).isEmpty()
              ? Turn.to(model.told("The tray is empty: {do:new-job} begins a new job."))
              : Turn.with(
                  model, new Effect.OpenBook(shown(model).get(at(model, tray.at()).at()).slug()));
      case NEW_JOB -> Turn.to(model.with(tray.at(tray.at(), Optional.of(begun(model)))));
      case SEARCH ->
          Turn.to(
              model.with(tray.narrowed(tray.search(), Optional.of(SearchForm.of(tray.search())))));
      case SHOW_ALL ->
          Turn.to(model.with(new TrayHeld(0, "", Optional.empty(), !tray.all(), false, 0)));
      case PUT_AWAY -> chosen(model).map(job -> put(model, job)).orElse(Turn.to(model));
      case MAKE_AGAIN ->
          Turn.with(
              model.with(
                  new TrayHeld(tray.at(), tray.search(), Optional.empty(), tray.all(), true, 0)),
              new Effect.OpenBook(chosen(model).orElseThrow().slug()));
      case THROW_AWAY ->
          Drafting.first(model)
              .map(form -> Drafting.thrownAway(model, form))
              .orElse(Turn.to(model));
      case MORE, LESS -> paged(model, tray, act);
      case NEWEST -> Turn.to(model.with(at(model, 0)));
      case OLDEST -> Turn.to(model.with(at(model, shown(model).size())));
      case LEAVE -> Turn.with(model, new Effect.Leave());
      default -> Turn.goTo(model, act);
    };
  }

  /** Where the list is longer than the window, a page is so many jobs further. */
  private static Turn paged(Model model, TrayHeld tray, Act act) {
    boolean list = shown(model).size() > page(model);
    int step = act == Act.MORE ? page(model) : -page(model);
    return Turn.to(
        model.with(
            list ? at(model, tray.at() + step) : tray.turned(Turning.to(tray.turned(), act))));
  }

  /** Jobs that the window shows at least: one takes up to three lines. */
  private static int page(Model model) {
    return Math.max(2, (model.height() - AROUND) / LINES_EACH);
  }

  private static TrayHeld held(Model model, Form form) {
    TrayHeld held = (TrayHeld) model.held();
    return held.at(held.at(), Optional.of(form));
  }

  /** Out of the tray or back into it: an entry of the job's own book. */
  private static Turn put(Model model, TrayJob job) {
    boolean away = !job.away();
    String told =
        job.name() + (away ? " is put away: {do:show-all} shows it." : " is back in the tray.");
    return Turn.keepIn(model.told(told), job.slug(), new BenchFact.JobPutAway(away));
  }

  @Override
  public Turn settled(Model model) {
    return Turn.with(model, new Effect.ReadTray());
  }

  @Override
  public String says(Model model, Act act) {
    return switch (act) {
      case PUT_AWAY ->
          chosen(model).filter(TrayJob::away).isPresent() ? "back into the tray" : act.words();
      case SHOW_ALL ->
          ((TrayHeld) model.held()).all() ? "hide what is put away" : "show what is put away";
      case THROW_AWAY -> "throw away what is typed";
      default -> act.words();
    };
  }

  private static Optional<TrayJob> chosen(Model model) {
    int at = at(model, ((TrayHeld) model.held()).at()).at();
    return at < shown(model).size() ? Optional.of(shown(model).get(at)) : Optional.empty();
  }

  private static TrayHeld at(Model model, int wanted) {
    int last = Math.max(0, shown(model).size() - 1);
    int at = Math.max(0, Math.min(last, wanted));
    return ((TrayHeld) model.held()).at(at, Optional.empty());
  }

  private static List<TrayJob> shown(Model model) {
    return TrayContent.shown(model, (TrayHeld) model.held());
  }

  /** The routine that is offered before one is chosen. */
  private static String proposed(Model model) {
    List<String> routines = model.handbook().routines().stream().map(r -> r.id()).toList();
    return routines.contains("scroll-and-ring")
        ? "scroll-and-ring"
        : routines.isEmpty() ? "" : routines.get(0);
  }

  private static Form form(Model model) {
    String first = proposed(model);
    return Form.of(
        Form.Purpose.NEW_JOB,
        "A new job",
        "begin it",
        List.of(
            Field.of("name", "Name", "", "what you will look for it by")
                .helped("The job's name in the tray; its book's file is called after it."),
            told(
                model,
                Field.choiceOf(
                        "routine",
                        "Routine",
                        first,
                        "",
                        Choosing.routines(model.handbook().routines()))
                    .helped("Which steps are walked, and what is counted at them.")),
            Field.of("plan", "Plan file", "", "its path, or its name in plans; empty: none")
                .helped(
                    "A plan that was saved: linkwright plan JOB --into FILE writes one. Its"
                        + " pattern says which routine unless you choose another. Empty: the"
                        + " plan is set here.")));
  }

  /** The form with what was typed in it before it was left. */
  private static Form begun(Model model) {
    return form(model)
        .mapFields(field -> field.id().equals("routine") ? told(model, field) : field);
  }

  /** The routine's field says what the routine makes: its name alone tells a beginner little. */
  private static Field told(Model model, Field field) {
    String says =
        model
            .handbook()
            .routine(field.value().strip())
            .map(routine -> JobWords.fill(routine.title() + ". " + routine.says(), model))
            .orElse("left and right go through them");
    return field.hinted(says);
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    if (form.purpose() == Form.Purpose.SEARCH) {
      Optional<Form> open = form.at() == 0 ? Optional.of(form) : Optional.empty();
      return Turn.to(model.with(((TrayHeld) model.held()).narrowed(SearchForm.text(form), open)));
    }
    Form shown =
        form.withTroubles(Map.of())
            .mapFields(field -> field.id().equals("routine") ? told(model, field) : field);
    return Turn.to(model.with(held(model, shown)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    if (form.purpose() == Form.Purpose.SEARCH) {
      TrayHeld held = (TrayHeld) model.held();
      return Turn.to(model.with(held.narrowed(SearchForm.text(form), Optional.empty())));
    }
    Map<String, String> troubles = new HashMap<>();
    if (form.text("name").isEmpty()) {
      troubles.put("name", "Give the job a name, such as “Anna's bracelet”.");
    }
    if (model.handbook().routine(form.text("routine")).isEmpty()) {
      troubles.put(
          "routine",
          "No routine is called “"
              + form.text("routine")
              + "”: left and right go through those there are.");
    }
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(held(model, told)));
    }
    // The plan file's pattern says which routine, unless another was chosen by hand.
    boolean byPlan = !form.text("plan").isEmpty() && form.text("routine").equals(proposed(model));
    return Turn.with(
        model.with(held(model, form)),
        new Effect.BeginJob(
            form.text("name"),
            List.of(new Fact.JobOpened(form.text("name"), byPlan ? "" : form.text("routine"))),
            form.text("plan")));
  }

  @Override
  public Turn formLeft(Model model) {
    TrayHeld held = (TrayHeld) model.held();
    boolean narrowing =
        held.form().filter(form -> form.purpose() == Form.Purpose.SEARCH).isPresent();
    return Turn.to(
        narrowing
            ? model.with(held.narrowed("", Optional.empty()))
            : model.with(at(model, held.at())));
  }

  @Override
  public Turn row(Model model, int row) {
    Model there = model.with(at(model, row));
    return row == ((TrayHeld) model.held()).at() ? act(there, Act.CHOOSE) : Turn.to(there);
  }
}
