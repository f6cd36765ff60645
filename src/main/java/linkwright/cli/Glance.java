package linkwright.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.cli.console.PlanText;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.keys.Act;
import linkwright.coach.plan.PlanContent;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;
import linkwright.quantity.Read;
import linkwright.shell.Demo;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;

/**
 * A job as text, for a place without a screen: its plan and the step it is at. That of the job last
 * worked on; in an empty folder the demo's. Nothing is written.
 */
final class Glance {
  private static final int ANY = 80;

  private Glance() {}

  /** The lines, or a sentence where the jobs or the book of the one last worked on are hidden. */
  static Read<List<String>> of(Home home, Library library, Settings settings, Instant now) {
    Optional<String> trouble = home.jobsTrouble();
    if (trouble.isPresent()) {
      return Read.bad(trouble.get());
    }
    Handbook handbook = Start.handbook(library, home);
    Model blank = Coach.begin(handbook, settings, Paging.WHOLE, now, ANY, ANY);
    List<TrayJob> tray = TrayReading.of(home, handbook, now);
    return tray.isEmpty()
        ? Read.good(lines(opened(blank, "demo", entries(Demo.facts(library), now))))
        : BookFile.look(home.jobs().resolve(tray.get(0).slug() + ".yaml"))
            .map(book -> EntryLines.entries(book.lines()))
            .map(entries -> lines(opened(blank, tray.get(0).slug(), entries)));
  }

  private static List<String> lines(Model model) {
    List<String> lines = new ArrayList<>(plan(model));
    lines.add("");
    BenchAnswers.step(model).ifPresent(step -> lines.addAll(new PlainLines(Act::words).of(step)));
    String still = Pages.of(model).still();
    if (!still.isEmpty()) {
      lines.add(still + ".");
    }
    lines.add("");
    lines.add(
        "There is no terminal here to work in. In one, the same command opens the coach;"
            + " linkwright walk --plain goes line by line.");
    return lines;
  }

  private static Model opened(Model blank, String slug, List<Entry> entries) {
    Message opened = new Message.JobOpened(slug, "", entries, true, List.of(), Map.of());
    return Coach.update(blank, opened).model();
  }

  private static List<Entry> entries(List<Fact> facts, Instant now) {
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : facts) {
      entries.add(new Entry(entries.size() + 1, now, "demo", fact));
    }
    return entries;
  }

  private static List<String> plan(Model model) {
    Optional<OpenJob> job = model.job();
    String name = job.map(open -> open.state().course().name()).orElse("");
    return job.map(OpenJob::standing)
        .filter(standing -> standing.counted().holds())
        .map(standing -> PlanText.of(name, PlanContent.comesTo(standing, model)))
        .orElseGet(() -> List.of(name, "There is no plan yet."));
  }
}
