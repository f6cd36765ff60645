package linkwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookLine;
import linkwright.books.BookMerge;
import linkwright.books.EntryLines;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.quantity.UnitStyle;
import linkwright.standing.CountedPlan;
import linkwright.standing.Handbook;

/**
 * What chain each book says and what chain they say together, so that nobody learns at the bench
 * that another plan holds.
 *
 * @param units how lengths are shown
 * @param handbook what is known whatever the job
 */
record MergedChain(UnitStyle units, Handbook handbook) {
  /** A sentence for each book, then that of the new one; none where no job was begun. */
  List<String> told(BookMerge union) {
    List<String> told = new ArrayList<>();
    String slug = slug(union.before().keySet().iterator().next());
    union
        .before()
        .forEach((path, lines) -> chain(slug, lines, path + " by itself").ifPresent(told::add));
    chain(slug, union.lines(), "United").ifPresent(told::add);
    return told;
  }

  private static String slug(Path book) {
    return String.valueOf(book.getFileName()).replaceFirst("\\.yaml$", "");
  }

  private Optional<String> chain(String slug, List<BookLine> lines, String of) {
    List<Entry> entries = EntryLines.entries(lines);
    if (entries.stream().noneMatch(entry -> entry.fact() instanceof Fact.JobOpened)) {
      return Optional.empty();
    }
    Handbook own = handbook.forJob(slug, entries);
    CountedPlan counted = CountedPlan.of(JobState.replay(entries, own.stages()), own);
    return Optional.of(of + ": " + chain(counted.saidIn(units)));
  }

  private String chain(CountedPlan counted) {
    return counted
        .plan()
        .map(
            plan ->
                (plan.links() == 1 ? "1 link" : plan.links() + " links")
                    + ", finished length "
                    + units.about(plan.lengthMm(), plan.plusMinusMm())
                    + ".")
        .or(() -> counted.part().map(part -> "it makes no chain."))
        .or(() -> counted.troubles().values().stream().findFirst().map(why -> "no count: " + why))
        .or(
            () ->
                Optional.of(counted.sentence())
                    .filter(s -> !s.isEmpty())
                    .map(w -> "no count: " + w))
        .orElse("no chain is planned.");
  }
}
