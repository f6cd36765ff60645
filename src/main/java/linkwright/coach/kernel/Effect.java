package linkwright.coach.kernel;

import java.util.List;
import java.util.Map;
import linkwright.job.Fact;

/** What the coach asks the shell to do. */
public sealed interface Effect {
  /** Writes facts to the open book and syncs it; answers {@link Message.Kept}. */
  record KeepFacts(List<Fact> facts) implements Effect {}

  /** Begins a book with these facts and opens it; answers {@link Message.JobOpened}. */
  record BeginJob(String name, List<Fact> facts) implements Effect {}

  /** Opens a book; answers {@link Message.JobOpened}. */
  record OpenJob(String slug) implements Effect {}

  /** Closes the open book and lets go of its lock. */
  record ShutJob() implements Effect {}

  /** Reads the jobs at hand; answers {@link Message.TrayRead}. */
  record ReadTray() implements Effect {}

  /** Keeps what is typed and not entered yet, so that a crash does not lose it. */
  record KeepDraft(String slug, String form, Map<String, String> texts) implements Effect {}

  /** Forgets a draft that was entered or given up. */
  record DropDraft(String slug, String form) implements Effect {}

  /**
   * Accepts the line of the open book that has this check now; answers {@link Message.JobOpened}
   * with the book read anew.
   */
  record AcceptLine(String check) implements Effect {}

  /** Rings the bell once. */
  record RingBell() implements Effect {}

  /** Ends the program. */
  record Leave() implements Effect {}
}
