package linkwright.cli.walk;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Device;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.Coach;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.shell.Demo;
import linkwright.shell.Performer;
import linkwright.shell.Start;
import linkwright.terminal.LineWidth;

/** A walk through a job, line by line, until the user quits or the lines end. */
public final class Walk {
  private static final int ANY = 80;

  private final Surroundings here;
  private final Library library;
  private final WalkCoach coach;
  private final WalkLines lines;

  /** Whether it is a rehearsal from beginning to end. */
  private boolean dry;

  private Walk(Surroundings here, Library library, WalkCoach coach) {
    this.here = here;
    this.library = library;
    this.coach = coach;
    this.lines =
        new WalkLines(
            here.out(),
            () -> LineWidth.of(here.environment()),
            LineSource.of(here.in()),
            here.clock(),
            here.steady(),
            coach);
  }

  /** Walks; answers with the exit code. Every entry is on the disk before it is told. */
  public static int run(
      Surroundings here, Home home, Choices choices, Library library, Opening opening) {
    Runnable bell = here.environment().terminal() ? here.out()::bell : () -> {};
    String device = choices.device(here, home);
    Performer performer =
        new Performer(home, device, here.clock(), bell).noting(Device.clock(here));
    Model model =
        Coach.begin(
            Start.handbook(library, home),
            choices.withUsualKeys().in(ZoneId.systemDefault()),
            Paging.WHOLE,
            here.clock().instant(),
            ANY,
            ANY);
    // Words of the command that begins a job are no draft, and one that waits goes on waiting.
    Model known = performer.clocked(model);
    WalkCoach coach =
        new WalkCoach(
            performer,
            opening.begun().isPresent()
                ? known.typed(Optional.empty())
                : performer.reminded(known));
    try {
      return new Walk(here, library, coach).run(opening);
    } finally {
      coach.shut();
    }
  }

  /** Walks from a place to which one is led at once, with a job's book opened or without. */
  public static int led(
      Surroundings here,
      Home home,
      Choices choices,
      Library library,
      Optional<String> job,
      Message.Led place) {
    Performer performer = new Performer(home, choices.device(here, home), here.clock(), () -> {});
    Model model =
        Coach.begin(
            Start.handbook(library, home),
            choices.withUsualKeys().in(ZoneId.systemDefault()),
            Paging.WHOLE,
            here.clock().instant(),
            ANY,
            ANY);
    WalkCoach coach = new WalkCoach(performer, performer.reminded(model));
    try {
      job.ifPresent(coach::look);
      coach.lead(place);
      Walk walk = new Walk(here, library, coach);
      walk.dry = place.place() == PlaceId.REHEARSAL;
      walk.goOn(new WalkTelling(walk.lines, coach));
      return Exit.GOOD;
    } finally {
      coach.shut();
    }
  }

  /** Line by line, until the user quits or the lines end. */
  private void goOn(WalkTelling telling) {
    TypedLine typed = new TypedLine(lines, coach, telling);
    boolean goesOn = true;
    boolean unwritten = false;
    while (goesOn && !coach.left()) {
      telling.tell();
      Optional<String> line = lines.next();
      unwritten = coach.failing();
      goesOn = line.isPresent() && typed.obey(line.get());
    }
    telling.tell();
    end(unwritten || coach.failing());
  }

  private void end(boolean unwritten) {
    boolean atWork = coach.model().job().filter(job -> !job.lookOnly()).isPresent();
    if (dry && !atWork) {
      lines.say("Left. It was a rehearsal: nothing was entered.");
    } else if (unwritten) {
      lines.say(
          "Left. What was asked last could not be written and is not counted; all before it is in"
              + " the book.");
    } else {
      lines.say("Left. Everything entered is in the book.");
    }
    // Last of all, for it is what must not be forgotten on the way out.
    lines.say(coach.parting());
  }

  /** Begins a job and lets go of it: its book's name; empty if it could not be, which is told. */
  public static Optional<String> begun(
      Surroundings here, Home home, Choices choices, Library library, Opening.Begun begun) {
    Performer performer = new Performer(home, choices.device(here, home), here.clock(), () -> {});
    Model model =
        Coach.begin(
            Start.handbook(library),
            choices.withUsualKeys(),
            Paging.WHOLE,
            here.clock().instant(),
            ANY,
            ANY);
    WalkCoach coach = new WalkCoach(performer, model.typed(Optional.empty()));
    try {
      new Walk(here, library, coach).begin(begun);
      if (coach.model().job().isEmpty()) {
        here.err().sayAll(coach.takeTold());
      }
      return coach.model().job().map(job -> job.slug());
    } finally {
      coach.shut();
    }
  }

  private int run(Opening opening) {
    opening
        .begun()
        .ifPresentOrElse(
            this::begin,
            () ->
                opening
                    .slug()
                    .ifPresentOrElse(coach::open, () -> coach.openFirst(Demo.facts(library))));
    if (coach.model().job().isEmpty()) {
      here.err().sayAll(coach.takeTold());
      return Exit.PROBLEMS;
    }
    WalkTelling telling = new WalkTelling(lines, coach);
    telling.tell();
    if (askForPlan()) {
      goOn(telling);
    } else {
      telling.tell();
      end(coach.failing());
    }
    return Exit.GOOD;
  }

  /** A job without a plan opens with its form. */
  private boolean askForPlan() {
    return coach.model().held().form().isEmpty() || new FormTalk(lines, coach).ask();
  }

  private void begin(Opening.Begun begun) {
    coach.choose(Act.NEW_JOB);
    Map<String, String> job = new LinkedHashMap<>();
    job.put("name", begun.name());
    job.put("routine", begun.routine());
    FormTalk talk = new FormTalk(lines, coach);
    talk.fill(job);
    // A job that could not be begun leaves its own form open, which takes no plan.
    boolean planned =
        coach.model().job().isPresent()
            && coach.model().held().form().map(Form::purpose).isPresent();
    if (planned && !begun.plan().isEmpty()) {
      talk.fillAlone(begun.plan());
    }
  }
}
