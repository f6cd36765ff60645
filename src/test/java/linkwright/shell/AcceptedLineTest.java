package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Coach;
import linkwright.coach.book.BookHeld;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line changed by hand: kept, not used, shown, accepted with one key, and then used. */
class AcceptedLineTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;

  @Test
  void countsFromThenOnAndAfterTheNextStart() throws IOException {
    Home home = Home.find(Optional.of(folder.toString()), Map.of(), folder);
    Model begin =
        Coach.begin(Start.handbook(Library.load(home)), Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    Performer first = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    first.begin(begin, facts(), Optional.empty());
    first.shut();
    Path book = home.jobs().resolve("gate-chain.yaml");
    Files.writeString(book, Files.readString(book).replace("count: 5", "count: 6"));

    Performer second = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    Model model = second.begin(begin, facts(), Optional.of("gate-chain"));
    assertThat(used(model)).isZero();
    model = press(second, press(second, model, "k"), "g");
    assertThat(model.held()).isInstanceOf(BookHeld.class);
    assertThat(used(model)).isEqualTo(6 * 40.0);
    assertThat(job(model).doubtful()).isEmpty();
    second.shut();

    Performer third = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    assertThat(used(third.begin(begin, facts(), Optional.of("gate-chain")))).isEqualTo(6 * 40.0);
    third.shut();
  }

  private static List<Fact> facts() {
    return List.of(
        new Fact.JobOpened("Gate chain", "scroll-and-ring"),
        new Fact.PlanSet(Map.of("metal", "sterling")),
        new Fact.WireCut(PieceKind.LINK, 5, 40.0));
  }

  private static Model press(Performer performer, Model model, String key) {
    return performer.take(model, new Message.KeyPressed(Key.of(key)));
  }

  private static OpenJob job(Model model) {
    return model.job().orElseThrow();
  }

  private static double used(Model model) {
    return job(model).state().wire().usedMm(PieceKind.LINK);
  }
}
