package linkwright.cli.walk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.cli.Choices;
import linkwright.cli.Exit;
import linkwright.cli.Surroundings;
import linkwright.coach.Act;
import linkwright.coach.Form;
import linkwright.coach.Model;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.shell.Demo;
import linkwright.shell.Performer;
import linkwright.shell.Start;

/** A walk through a job, line by line, until the user quits or the lines end. */
public final class Walk {
  private static final int ANY = 80;

  private final Surroundings here;
  private final Library library;
  private final Hands hands;
  private final Desk desk;

  private Walk(Surroundings here, Library library, Hands hands) {
    this.here = here;
    this.library = library;
    this.hands = hands;
    this.desk = new Desk(here.out(), LineSource.of(here.in()), here.clock(), hands);
  }

  /** Walks; answers with the exit code. Every entry is on the disk before it is told. */
  public static int run(
      Surroundings here, Home home, Choices choices, Library library, Opening opening) {
    Runnable bell = here.environment().terminal() ? here.out()::bell : () -> {};
    String device = choices.device(here, home);
    Performer performer = new Performer(home, device, here.clock(), bell);
    Model model =
        Model.begin(
            Start.handbook(library), choices.withUsualKeys(), here.clock().instant(), ANY, ANY);
    Hands hands = new Hands(performer, model);
    try {
      return new Walk(here, library, hands).run(opening);
    } finally {
      hands.shut();
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
                    .ifPresentOrElse(hands::open, () -> hands.openFirst(Demo.facts(library))));
    if (hands.model().job().isEmpty()) {
      here.err().sayAll(hands.takeTold());
      return Exit.PROBLEMS;
    }
    Told told = new Told(desk, hands);
    told.tell();
    boolean goesOn = askForPlan();
    Obeying obeying = new Obeying(desk, hands, told);
    while (goesOn && !hands.left()) {
      told.tell();
      Optional<String> line = desk.next();
      goesOn = line.isPresent() && obeying.obey(line.get());
    }
    told.tell();
    desk.say("Left. Everything entered is in the book.");
    return Exit.GOOD;
  }

  /** A job without a plan opens with its form. */
  private boolean askForPlan() {
    return hands.model().screen().form().isEmpty() || new FormTalk(desk, hands).ask();
  }

  private void begin(Opening.Begun begun) {
    hands.press(Act.NEW_JOB);
    Map<String, String> job = new LinkedHashMap<>();
    job.put("name", begun.name());
    job.put("routine", begun.routine());
    FormTalk talk = new FormTalk(desk, hands);
    talk.fill(job);
    boolean planned = hands.model().screen().form().map(Form::purpose).isPresent();
    if (planned && !begun.plan().isEmpty()) {
      talk.fill(begun.plan());
    }
  }
}
