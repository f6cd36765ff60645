package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.disk.FailPoint;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A program that dies on the spot while a form is entered: started again, either the entry stands
 * and nothing waits to be entered a second time, or there is none and what was typed waits.
 */
@Timeout(300)
class EnteredOnceTest {
  private static final int DEAD = 137;
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;

  @BeforeEach
  void aJob() {
    Home home = new Home(folder);
    Performer performer = performer(home);
    started(home, performer);
    performer.shut();
  }

  private static Performer performer(Home home) {
    return new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
  }

  private static Model started(Home home, Performer performer) {
    Library library = Library.load(home);
    Model start = Coach.begin(Start.handbook(library), Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    return performer.begin(performer.reminded(start), Demo.facts(library), Optional.empty());
  }

  private static String slug(Home home) {
    return TrayReading.slug(home.books().get(0));
  }

  private static Model formOpen(Home home, Performer performer, String what) {
    Model tray = started(home, performer);
    if (what.equals("lot")) {
      Model drawer = performer.take(tray, new Message.ActChosen(Act.TO_DRAWER));
      return performer.take(drawer, new Message.ActChosen(Act.LOT_CAME));
    }
    Model open = performer.open(tray, slug(home));
    if (what.equals("note")) {
      Model book = performer.take(open, new Message.ActChosen(Act.TO_BOOK));
      return performer.take(book, new Message.ActChosen(Act.NOTE));
    }
    Model wire = performer.take(open, new Message.ActChosen(Act.TO_WIRE));
    return performer.take(wire, new Message.ActChosen(Act.ADD_WIRE));
  }

  private static Model typed(Home home, Performer performer, String what) {
    Model form = formOpen(home, performer, what);
    assertThat(form.held().form()).as(what).isPresent();
    return switch (what) {
      case "wire" -> typed(performer, form, "lengths", "200 mm");
      case "lot" -> typed(performer, typed(performer, form, "lot", "march"), "mass", "20 g");
      default -> performer.take(form, new Message.Pasted("lies flat"));
    };
  }

  private static Model typed(Performer performer, Model form, String field, String text) {
    Model at = form;
    while (!fieldAt(at).equals(field)) {
      at = performer.take(at, new Message.KeyPressed(Key.of(Key.Kind.TAB)));
    }
    return performer.take(at, new Message.Pasted(text));
  }

  private static String fieldAt(Model model) {
    Form form = model.held().form().orElseThrow();
    return form.at() < form.fields().size() ? form.fields().get(form.at()).id() : "";
  }

  /** The second program: the folder, the form, where it dies. */
  public static void main(String[] arguments) {
    Home home = new Home(Path.of(arguments[0]));
    Performer performer = performer(home);
    Model typed = typed(home, performer, arguments[1]);
    FailPoint.during(
        name -> {
          if (name.equals(arguments[2])) {
            Runtime.getRuntime().halt(DEAD);
          }
        },
        () -> performer.take(typed, new Message.KeyPressed(Key.ctrl("k"))));
    System.exit(1);
  }

  private long entries(String what) {
    Home home = new Home(folder);
    Path book = what.equals("lot") ? home.drawer() : home.books().get(0);
    return BookFile.look(book).map(read -> EntryLines.entries(read.lines())).found().stream()
        .flatMap(List::stream)
        .filter(
            entry ->
                switch (what) {
                  case "wire" -> entry.fact() instanceof Fact.WireAdded;
                  case "lot" -> entry.fact() instanceof LotFact.LotArrived;
                  default -> entry.fact() instanceof Fact.Noted;
                })
        .count();
  }

  private Map<String, Map<String, String>> waiting(String what) {
    Home home = new Home(folder);
    Performer performer = performer(home);
    Model tray = started(home, performer);
    if (what.equals("lot")) {
      return DraftWords.jobless(tray);
    }
    boolean told =
        tray.tray().get(0).waits().stream().anyMatch(line -> line.startsWith("typed, not entered"));
    Model open = performer.open(tray, slug(home));
    performer.shut();
    assertThat(told)
        .as("at the tray as in the job")
        .isEqualTo(!open.job().get().drafts().isEmpty());
    return open.job().orElseThrow().drafts();
  }

  @ParameterizedTest
  @CsvSource({
    "wire, before-write",
    "wire, after-write",
    "wire, after-sync",
    "wire, before-show",
    "note, before-write",
    "note, before-show",
    "lot, before-write",
    "lot, before-show"
  })
  void or_waits(String what, String point) throws Exception {
    assertThat(run(what, point)).isEqualTo(DEAD);
    boolean stands = !point.equals("before-write");
    assertThat(entries(what)).isEqualTo(stands ? 1 : 0);
    assertThat(waiting(what).isEmpty()).as("nothing waits").isEqualTo(stands);
    assertThat(waiting(what).isEmpty()).as("nor once more").isEqualTo(stands);
  }

  @Test
  void what_waits_goes_on_waiting_while_other_things_are_entered() {
    Home home = new Home(folder);
    Performer performer = performer(home);
    Model typed = typed(home, performer, "wire");
    FailPoint.during(
        name -> {
          if (name.equals("before-write")) {
            throw new IOException("no space left");
          }
        },
        () -> performer.take(typed, new Message.KeyPressed(Key.ctrl("k"))));
    performer.shut();
    Performer next = performer(home);
    Model note = typed(home, next, "note");
    next.take(note, new Message.KeyPressed(Key.ctrl("k")));
    next.shut();
    assertThat(entries("note")).isOne();
    assertThat(entries("wire")).isZero();
    assertThat(waiting("wire")).containsKey("add-wire");
  }

  private int run(String what, String point) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                EnteredOnceTest.class.getName(),
                folder.toString(),
                what,
                point)
            .inheritIO()
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("It neither did its work nor died: " + what + " " + point);
    }
    return process.exitValue();
  }
}
