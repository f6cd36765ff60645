package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Part;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.lesson.Learner;
import linkwright.quantity.UnitStyle;
import linkwright.view.Screens;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A student, Mara, and the demo's job on a bench with a disk. */
abstract class StudentBench {
  static final Instant NOW = Instant.parse("2026-03-02T17:00:00Z");

  @TempDir Path folder;
  Home home;
  Performer performer;
  Model model;
  Instant now = NOW;
  String mara;

  @BeforeEach
  void begin() {
    home = new Home(folder);
    mara = StudentBooks.named(home, "Mara Quill").orThrow();
    Library library = Library.load(home);
    performer = new Performer(home, "bench", clock(), () -> {});
    model = Coach.begin(Start.handbook(library), Settings.USUAL, Screens::parts, now, 80, 24);
    model = performer.begin(model, Demo.facts(library), Optional.empty());
    model =
        performer.open(model, home.books().get(0).getFileName().toString().replace(".yaml", ""));
  }

  InstantSource clock() {
    return () -> {
      now = now.plusSeconds(1);
      return now;
    };
  }

  void press(String... names) {
    for (String name : names) {
      now = now.plusSeconds(1);
      model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
      model = performer.take(model, new Message.KeyPressed(KeyNames.read(name).orElseThrow()));
    }
  }

  void maraWorks() {
    press("@");
    model = performer.take(model, new Message.Pasted("mara quill"));
    press("ctrl-k");
  }

  List<Part> parts() {
    return Pages.of(model).body().parts();
  }

  Optional<Question> question() {
    return parts().stream()
        .filter(Question.class::isInstance)
        .map(Question.class::cast)
        .findFirst();
  }

  List<Entry> jobEntries() {
    return EntryLines.entries(BookFile.look(home.books().get(0)).orThrow().lines());
  }

  Learner learner() {
    return Learner.of(
        mara, StudentBooks.entries(StudentBooks.path(home, mara)).orThrow(), ZoneOffset.UTC, 7);
  }

  /** The key of the right answer to the question that stands. */
  String rightKey() {
    Learner.QuestionPut put = learner().open().orElseThrow();
    int right =
        Banks.of(model, "scroll-and-ring").stream()
            .filter(item -> item.id().equals(put.item()))
            .findFirst()
            .orElseThrow()
            .draw(put.seed(), UnitStyle.METRIC)
            .right();
    return Integer.toString(right + 1);
  }

  void lead(PlaceId place, String id) {
    model = performer.take(model, new Message.Led(place, id));
  }

  String slug() {
    return home.books().get(0).getFileName().toString().replace(".yaml", "");
  }

  static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException trouble) {
      throw new java.io.UncheckedIOException(trouble);
    }
  }
}
