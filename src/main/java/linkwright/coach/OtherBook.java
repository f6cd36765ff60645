package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.BenchBook;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;

/**
 * That every flame is out is said in the book that says one is lit. Where another window writes
 * that one, it is said in the first book that can be written, by the other book's name: hot work is
 * the bench's and no job's.
 */
final class OtherBook {
  private OtherBook() {}

  /** The same statement for the next book, when it could not be written; empty for all else. */
  static Optional<Turn> says(Model model, Writing.Pending pending) {
    Optional<String> tried = book(model, pending.asked());
    return tried
        .flatMap(slug -> statement(pending.asked()).flatMap(said -> next(model, slug, said)))
        .map(
            effect ->
                new Turn(
                    model.with(
                        new Writing.Pending(
                            effect, pending.held(), pending.notice(), pending.waiting())),
                    List.of(effect),
                    Optional.empty()));
  }

  private static Optional<String> book(Model model, Effect asked) {
    return asked instanceof Effect.KeepElsewhere keep
        ? Optional.of(keep.slug())
        : model.job().map(OpenJob::slug);
  }

  private static Optional<BenchFact.HotWorkSaid> statement(Effect asked) {
    List<Fact> facts = List.of();
    if (asked instanceof Effect.KeepElsewhere keep) {
      facts = keep.facts();
    } else if (asked instanceof Effect.KeepFacts keep) {
      facts = keep.facts();
    }
    return facts.size() == 1
            && facts.get(0) instanceof BenchFact.HotWorkSaid said
            && said.state() == HotWorkState.SHUT
        ? Optional.of(said)
        : Optional.empty();
  }

  private static Optional<Effect> next(Model model, String tried, BenchFact.HotWorkSaid said) {
    String of = said.of().isEmpty() ? tried : said.of();
    List<String> books = new ArrayList<>();
    Optional<OpenJob> own = model.job().filter(job -> !job.lookOnly());
    // A closed book takes it too where no other can: hot work is no figure of its job.
    for (boolean closed : List.of(false, true)) {
      own.filter(job -> job.state().course().closed() == closed)
          .ifPresent(job -> books.add(job.slug()));
      model.bench().others().stream()
          .filter(book -> book.closed() == closed && !book.heldElsewhere())
          .map(BenchBook::slug)
          .forEach(books::add);
    }
    books.remove(of);
    // What was tried before is not in front of what was tried last.
    List<String> left = books.subList(books.indexOf(tried) + 1, books.size());
    List<Fact> facts =
        List.of(
            new BenchFact.HotWorkSaid(
                said.state(), said.step(), said.statement(), said.answers(), of));
    return left.stream()
        .findFirst()
        .map(
            slug ->
                own.filter(job -> job.slug().equals(slug)).isPresent()
                    ? new Effect.KeepFacts(facts)
                    : new Effect.KeepElsewhere(slug, facts));
  }
}
