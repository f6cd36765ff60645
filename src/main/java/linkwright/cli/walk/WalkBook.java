package linkwright.cli.walk;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Predicate;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.quantity.Count;

/** Tells, searches and strikes what is in the book. */
final class WalkBook {
  private static final int LAST_ENTRIES = 10;

  private final WalkLines lines;
  private final WalkCoach coach;
  private final ShortVisits visits;
  private final WalkChoice choice;
  private final Predicate<String> form;

  WalkBook(
      WalkLines lines,
      WalkCoach coach,
      ShortVisits visits,
      WalkChoice choice,
      Predicate<String> form) {
    this.lines = lines;
    this.coach = coach;
    this.visits = visits;
    this.choice = choice;
    this.form = form;
  }

  void search(String words) {
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    List<Integer> found = model.job().map(job -> job.words().holding(words)).orElse(List.of());
    lines.say(found.size() + " of " + all.size() + " entries say so.");
    found.stream().limit(2L * LAST_ENTRIES).forEach(at -> lines.say(told(all.get(at), model)));
  }

  /** Strikes the entry of that number of this machine, for a reason. */
  boolean strike(String rest) {
    String[] parts = rest.split("\\s+", 2);
    List<Entry> all = coach.model().job().map(job -> job.entries()).orElse(List.of());
    int at = -1;
    for (int i = 0; i < all.size(); i++) {
      String id = all.get(i).id().toString();
      if (id.equals(parts[0]) || id.endsWith("-" + parts[0])) {
        at = i;
      }
    }
    if (parts[0].isEmpty() || at < 0) {
      lines.say("Write the entry's number, as book tells it, and why: strike 12 miscounted.");
      return true;
    }
    int row = all.size() - 1 - at;
    return visits.to(
        Act.TO_BOOK,
        () -> {
          choice.chosen(Act.STRIKE, Integer.toString(row + 1));
          return form.test(parts.length > 1 ? "why: " + parts[1].replace(';', ',') : "");
        });
  }

  void tell(String rest) {
    int wanted = Count.inDigits(rest, 4).orElse(LAST_ENTRIES);
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    for (Entry entry : all.subList(Math.max(0, all.size() - wanted), all.size())) {
      lines.say(told(entry, model));
    }
  }

  private static String told(Entry entry, Model model) {
    return entry.id()
        + ", "
        + entry.at().truncatedTo(ChronoUnit.SECONDS)
        + ": "
        + EntryWords.of(entry.fact(), model.settings());
  }
}
