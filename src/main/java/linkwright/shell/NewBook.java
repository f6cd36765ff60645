package linkwright.shell;

import java.time.InstantSource;
import java.util.List;
import linkwright.coach.kernel.Message;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.job.Fact;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;

/** Begins a job's book without a coach, for a command. */
public final class NewBook {
  private NewBook() {}

  /**
   * Begins a book with these facts and lets go of it.
   *
   * @param device the name of this machine in the books
   * @return the book's name, or a sentence that says why there is none
   */
  public static Read<String> begin(
      Home home,
      String device,
      InstantSource clock,
      String name,
      List<Fact> facts,
      Handbook handbook) {
    Books books =
        new Books(home, device, clock, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
    Message begun = books.begin(name, facts, handbook);
    books.shut();
    return begun instanceof Message.JobOpened opened
        ? Read.good(opened.slug())
        : Read.bad(begun instanceof Message.JobNotOpened not ? not.why() : "Nothing was begun.");
  }
}
