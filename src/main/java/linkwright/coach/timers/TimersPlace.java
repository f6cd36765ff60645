package linkwright.coach.timers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.BenchNow;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWork;
import linkwright.job.TimerRun;
import linkwright.job.WaitEnd;
import linkwright.quantity.Read;
import linkwright.quantity.Span;

/** The timers: set, answered, stopped; several run at once. */
public final class TimersPlace implements Place {
  private static final String WAITS_AGAIN = "it waits again";
  private static final String OVER = "the wait is over";
  private static final String WHY_HINT = "left and right, or your own words";
  private static final String TAKEN_OVER = "taken over by a colleague";
  private static final String MISTAKE = "begun by mistake";

  /** What a fire watch may be ended for: never that nothing has happened so far. */
  private static final List<String> STAYS = List.of(TAKEN_OVER);

  /**
   * What work does sooner than its time: steel shot brightens, metal cools, a bath comes to heat.
   */
  private static final List<String> SOONER =
      List.of(
          "done sooner: bright all over",
          "done sooner: cold",
          "done sooner: at heat",
          MISTAKE,
          TAKEN_OVER);

  @Override
  public Content content(Model model) {
    return TimersContent.of(model, (TimersHeld) model.held());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.STOP_TIMER, Act.SET_TIMER, Act.UP, Act.DOWN, Act.TO_BENCH, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    if (!TimerWords.inOrder(model).isEmpty()) {
      acts.add(Act.STOP_TIMER);
    }
    acts.addAll(List.of(Act.SET_TIMER, Act.UP, Act.DOWN, Act.TO_BENCH));
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    TimersHeld screen = (TimersHeld) model.held();
    return switch (act) {
      case SET_TIMER -> Turn.to(model.with(new TimersHeld(screen.at(), Optional.of(form(model)))));
      case UP -> Turn.to(model.with(at(model, screen.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, screen.at() + 1)));
      case STOP_TIMER -> stop(model, screen);
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new TimersHeld(screen.at(), Optional.empty(), Turning.to(screen.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(at(model, 0)));
  }

  private static TimersHeld at(Model model, int wanted) {
    int last = Math.max(0, TimerWords.inOrder(model).size() - 1);
    return new TimersHeld(Math.max(0, Math.min(last, wanted)), Optional.empty());
  }

  private static Turn stop(Model model, TimersHeld screen) {
    List<JobWait> timers = TimerWords.inOrder(model);
    if (timers.isEmpty()) {
      return Turn.to(model.told("No timer runs."));
    }
    JobWait wait = timers.get(Math.min(screen.at(), timers.size() - 1));
    if (wait.elsewhere()) {
      return Turn.to(
          model.told(
              "It belongs to “"
                  + wait.job()
                  + (wait.held()
                      ? "”, which another window has open: it is ended there."
                      : "”: open that job to end it.")));
    }
    TimerRun timer = wait.run();
    boolean rings = timer.rings(model.steady());
    if (wait.isWatch() || (!rings && timer.step().isPresent())) {
      return Turn.to(model.with(new TimersHeld(screen.at(), Optional.of(why(model, wait)))));
    }
    String told =
        rings
            ? timer.named() + ": quiet."
            : timer.named() + ": stopped with " + TimerWords.left(timer, model.steady()) + ".";
    return Turn.keep(model.told(told), new Fact.TimerAnswered(timer.id()));
  }

  /**
   * The wait of a step ends by its time or by a look at the bench; before that only for a reason.
   */
  private static Form why(Model model, JobWait wait) {
    TimerRun timer = wait.run();
    Field reason =
        Field.choice("why", "why", "", WHY_HINT, wait.isWatch() ? STAYS : SOONER)
            .whole()
            .helped("Why it ends before its time. It stands in the book beside the wait.");
    return Drafting.resumed(
        model,
        Form.of(
            Form.Purpose.END_WAIT,
            timer.named() + ": runs till " + TimerWords.ends(timer, model) + ", ended sooner",
            "end it",
            wait.isWatch()
                ? List.of(reason)
                : List.of(
                    reason,
                    Field.choice(
                            "then",
                            "then",
                            "",
                            WAITS_AGAIN + ", or " + OVER,
                            List.of(WAITS_AGAIN, OVER))
                        .helped(
                            "What was begun by mistake waits again, as if it had not been in;"
                                + " what is done goes on."))));
  }

  /**
   * It is entered in the book that holds what the watch began with, before that in those of
   * whatever it would run from else: another machine, or this one started anew, may take that to be
   * later. Where one of them takes no entry, the watch runs on as long as it would have.
   */
  private static Turn endWatch(Model model, TimersHeld screen, String why) {
    Optional<HotWork.From> from =
        model
            .bench()
            .watch()
            .filter(watch -> !watch.run().rings(model.steady()))
            .map(BenchNow.Watch::first);
    Model ending = model.with(new TimersHeld(screen.at(), screen.form(), screen.turned(), why));
    return from.map(
            began -> Turn.keepIn(ending, began.book(), new BenchFact.WatchEnded(began.id(), why)))
        .orElseGet(() -> Turn.to(model.told("No fire watch runs any more.")));
  }

  private static Turn endWait(Model model, Form form, int at) {
    String why = form.text("why");
    if (why.isBlank()) {
      return told(model, form, at, "why", "Say why it ends before its time.");
    }
    List<JobWait> timers = TimerWords.inOrder(model);
    if (at < timers.size() && timers.get(at).isWatch()) {
      return endWatch(model, (TimersHeld) model.held(), why);
    }
    if (at >= timers.size()) {
      return Turn.to(model.with(at(model, at)).told("That timer does not run any more."));
    }
    EntryId timer = timers.get(at).run().id();
    return switch (form.text("then")) {
      case OVER -> Turn.keep(model, new Fact.TimerAnswered(timer, WaitEnd.REASON, why));
      // Struck, it was never begun: what went in is back among what waits.
      case WAITS_AGAIN -> Turn.keep(model, new Fact.Struck(timer, why));
      default -> told(model, form, at, "then", "Say whether it waits again or the wait is over.");
    };
  }

  private static Turn told(Model model, Form form, int at, String field, String sentence) {
    Form told = form.withTroubles(Map.of(field, sentence)).atFirstTrouble();
    return Turn.to(model.with(new TimersHeld(at, Optional.of(told))));
  }

  private static Form form(Model model) {
    return Drafting.resumed(
        model,
        Form.of(
            Form.Purpose.TIMER,
            "A timer",
            "set it",
            List.of(
                Field.of("name", "what for", "", "pickle, kettle, glue")
                    .helped("What the timer is called when it is due."),
                Field.of("time", "how long", "", "8 min, 45 s or 1 h 30 min")
                    .takes(Measure.TIME, model.settings().units())
                    .helped("How long until it rings; a number alone is minutes."))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    int at = ((TimersHeld) model.held()).at();
    boolean sets = form.purpose() == Form.Purpose.TIMER;
    Map<String, String> wrong = sets ? troubles(form, false) : Map.of();
    Form shown = textChanged ? withUsualEnd(model, form).withTroubles(wrong) : form;
    Model next = model.with(new TimersHeld(at, Optional.of(shown)));
    return textChanged ? Drafting.keep(next, shown) : Turn.to(next);
  }

  /**
   * A reason that was offered says by itself what follows; in the field below it may be changed.
   */
  private static Form withUsualEnd(Model model, Form form) {
    String why = form.text("why");
    String before = model.held().form().map(open -> open.text("why")).orElse("");
    return form.purpose() == Form.Purpose.END_WAIT && SOONER.contains(why) && !why.equals(before)
        ? form.withTexts(Map.of("then", why.equals(MISTAKE) ? WAITS_AGAIN : OVER))
        : form;
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    int at = ((TimersHeld) model.held()).at();
    if (form.purpose() == Form.Purpose.END_WAIT) {
      return endWait(model, form, at);
    }
    Map<String, String> troubles = troubles(form, true);
    Form shown = form.withTroubles(troubles).atFirstTrouble();
    Model next = model.with(new TimersHeld(at, Optional.of(shown)));
    if (!troubles.isEmpty()) {
      return Turn.to(next);
    }
    long seconds = Span.read(form.text("time")).orThrow().seconds();
    return Turn.keep(next, new Fact.TimerStarted(form.text("name"), seconds));
  }

  /** What is wrong with what is typed; an empty field only once the form is to be kept. */
  private static Map<String, String> troubles(Form form, boolean atTheEnd) {
    Map<String, String> troubles = new LinkedHashMap<>();
    if (atTheEnd && form.text("name").isEmpty()) {
      troubles.put("name", "Say what it is for, such as pickle.");
    }
    String time = form.text("time");
    if (atTheEnd || !time.isEmpty()) {
      Read<Span> read = time.isEmpty() ? Read.bad("Give a time, such as 8 min.") : Span.read(time);
      read.problem().ifPresent(sentence -> troubles.put("time", sentence));
      if (read.map(span -> span.seconds() == 0).found().orElse(false)) {
        troubles.put("time", "That is no time at all. Give 1 s or more.");
      }
    }
    return troubles;
  }

  @Override
  public Turn settled(Model model) {
    TimersHeld screen = (TimersHeld) model.held();
    if (!screen.watchEnds().isEmpty() && model.watch().isPresent()) {
      return endWatch(model, screen, screen.watchEnds());
    }
    Model next = model.with(at(model, screen.at()));
    return screen.form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(at(model, ((TimersHeld) model.held()).at())));
  }
}
