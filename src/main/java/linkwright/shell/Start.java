package linkwright.shell;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.Problem;
import linkwright.shell.remembered.RememberedHands;
import linkwright.standing.Handbook;
import linkwright.terminal.Display;
import linkwright.view.Screens;

/** Starts the coach: the user's folder, what can be looked up, a display, and the loop. */
public final class Start {
  private Start() {}

  /** What can be looked up, for the coach. */
  public static Handbook handbook(Library library) {
    return new Handbook(
        library.reference(),
        new ArrayList<>(library.patterns().values()),
        new ArrayList<>(library.routines().values()),
        new ArrayList<>(library.cautions().values()),
        Stream.concat(library.problems().stream(), library.bench().problems().stream())
            .map(Problem::sentence)
            .toList(),
        library.bench().bench());
  }

  /** Whether what the books taught is remembered there, in a sentence. */
  public static String remembered(Home home) {
    return RememberedHands.told(home);
  }

  /** The same, with what all books in the user's folder taught. */
  public static Handbook handbook(Library library, Home home) {
    return handbook(library, home, new ArrayList<>());
  }

  /**
   * The same; which books could not be read, so that they taught nothing, is added to what is told.
   */
  public static Handbook handbook(Library library, Home home, List<String> told) {
    Handbook shipped = handbook(library);
    Tray tray = new Tray(home, RememberedHands.of(home, RememberedHands.madeBy(home)));
    Handbook taught = shipped.with(tray.handsAlone(shipped)).with(tray.drawer(shipped));
    told.addAll(TrayReading.problems(home));
    told.addAll(tray.unreadable());
    return taught;
  }

  /**
   * Runs the text UI on a display until the user leaves; closes the display whatever happens.
   * Answers what is to be said then, empty for nothing.
   *
   * @param home the user's folder
   * @param settings the user's choices
   * @param device the name of this machine in the books
   * @param shown where to show it
   * @param job the book to open at once, if any
   * @param led the place to come to at once, if any
   * @param told what was found wrong before, told on the first screen
   * @param notes how this machine's clock went
   */
  public static String run(
      Home home,
      Settings settings,
      String device,
      Display shown,
      Optional<String> job,
      Optional<Message.Led> led,
      List<String> told,
      ClockNotes notes) {
    InstantSource clock = InstantSource.system();
    ReadingDisplay display = new ReadingDisplay(shown, clock);
    Performer performer =
        new Performer(home, device, clock, display::bell, display, display::copy).noting(notes);
    try (display) {
      Display.GridSize size = display.size();
      // Reading takes a moment on a slow machine; the screen says so meanwhile.
      display.show(Screens.reading(size.columns(), size.rows(), display.glyphs()));
      Library library = Library.load(home);
      Handbook handbook = handbook(library);
      Model model =
          Coach.begin(
              handbook,
              settings.in(ZoneId.systemDefault()).on(display.screen()),
              Screens::parts,
              clock.instant(),
              size.columns(),
              size.rows());
      Optional<String> worked = led.isPresent() ? Optional.empty() : job;
      model =
          performer.begin(
              performer.reminded(performer.clocked(model)), Demo.facts(library), worked);
      if (led.isPresent()) {
        // Whoever is led to a place beside the work looks at a job and enters nothing in it.
        model = job.isPresent() ? performer.look(model, job.get()) : model;
        model = performer.take(model, led.get());
      }
      List<String> wrong = new ArrayList<>(told);
      wrong.addAll(handbook.told());
      wrong.addAll(TrayReading.problems(home));
      wrong.addAll(DrawerBook.problems(home));
      if (!wrong.isEmpty()) {
        model = performer.take(model, new Message.Troubled(inOne(wrong)));
      }
      BenchLoop.run(model, display, performer, clock);
    } finally {
      performer.shut();
    }
    return performer.parting();
  }

  private static String inOne(List<String> wrong) {
    return wrong.get(0)
        + (wrong.size() == 1
            ? ""
            : " And " + (wrong.size() - 1) + " more; linkwright check tells them all.");
  }
}
