package linkwright.cli.walk;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.coach.book.BookRows;
import linkwright.coach.kernel.BookTitles;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.EntryLabels;
import linkwright.job.Fact;
import linkwright.job.Strikes;
import linkwright.plain.PlainLines;
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
    found.stream().limit(2L * LAST_ENTRIES).forEach(at -> lines.say(told(all.get(at), all, model)));
  }

  /** Strikes the entry of that number of this machine, for a reason. */
  boolean strike(String rest) {
    List<Entry> all = coach.model().job().map(job -> job.entries()).orElse(List.of());
    EntryLabels labels = EntryLabels.of(all);
    String[] parts = parts(rest, all.stream().map(entry -> labels.of(entry.id())).toList());
    List<Entry> meant = meant(parts[0], all, labels);
    if (meant.size() > 1) {
      List<String> told = meant.stream().map(entry -> labels.of(entry.id())).toList();
      lines.say("Which one? There are " + String.join(", ", told) + ".");
      return true;
    }
    if (meant.isEmpty() && !parts[0].isEmpty()) {
      lines.say(
          "There is no entry " + parts[0] + " to strike. book tells the last with their numbers.");
      return true;
    }
    if (meant.isEmpty()) {
      lines.say("Write the entry's number, as book tells it, and why: strike 12 miscounted.");
      return true;
    }
    Entry entry = meant.get(0);
    Strikes strikes = Strikes.in(all);
    if (strikes.has(entry)) {
      String by =
          strikes.on(entry, all).stream()
              .map(strike -> labels.of(strike.id()))
              .collect(Collectors.joining(", "));
      lines.say(
          "Entry "
              + labels.of(entry.id())
              + " is struck already, by entry "
              + by
              + ". Nothing was entered. To bring it back: strike "
              + by
              + " and why.");
      return true;
    }
    int row = all.size() - 1 - all.indexOf(entry);
    return visits.to(
        Act.TO_BOOK,
        () -> {
          choice.chosen(Act.STRIKE, Integer.toString(row + 1));
          boolean goesOn = form.test(parts.length > 1 ? "why: " + parts[1].replace(';', ',') : "");
          tellStruck(entry);
          return goesOn;
        });
  }

  /** What was struck, once that stands in the book, and what brings it back. */
  private void tellStruck(Entry entry) {
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    EntryLabels labels = EntryLabels.of(all);
    String words = EntryWords.of(entry.fact(), BookTitles.of(model), model.settings(), labels::of);
    Fact last = all.get(all.size() - 1).fact();
    if (last instanceof Fact.Struck strike && strike.entry().equals(entry.id())) {
      boolean back = entry.fact() instanceof Fact.Struck;
      lines.say(
          (back ? "Brought back by striking entry " : "Struck: entry ")
              + labels.of(entry.id())
              + ", "
              + words
              + "; undo book takes that back.");
    }
  }

  /** The label that the line begins with, else its first word, and what stands after it. */
  private static String[] parts(String rest, List<String> labels) {
    String lower = rest.toLowerCase(Locale.ROOT) + " ";
    return labels.stream()
        .filter(label -> lower.startsWith(label.toLowerCase(Locale.ROOT) + " "))
        .max(Comparator.comparingInt(String::length))
        .map(label -> new String[] {label, rest.substring(label.length()).strip()})
        .orElseGet(() -> rest.split("\\s+", 2));
  }

  /** By its whole label any entry; by a number none that strikes: that would bring back. */
  private static List<Entry> meant(String typed, List<Entry> all, EntryLabels labels) {
    List<Entry> whole = all.stream().filter(entry -> labels.of(entry.id()).equals(typed)).toList();
    return whole.isEmpty() && !typed.isEmpty()
        ? all.stream()
            .filter(
                entry ->
                    entry.id().toString().equals(typed)
                        || entry.id().toString().endsWith("-" + typed))
            .filter(entry -> !(entry.fact() instanceof Fact.Struck))
            .toList()
        : whole;
  }

  void tell(String rest) {
    int wanted = Count.inDigits(rest, 4).orElse(LAST_ENTRIES);
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    for (Entry entry : all.subList(Math.max(0, all.size() - wanted), all.size())) {
      lines.say(told(entry, all, model));
    }
  }

  private static String told(Entry entry, List<Entry> all, Model model) {
    EntryLabels labels = EntryLabels.of(all);
    return labels.of(entry.id())
        + " ("
        + BookRows.when(entry, model.settings())
        + "): "
        + PlainLines.sentence(
            EntryWords.of(entry.fact(), BookTitles.of(model), model.settings(), labels::of));
  }
}
