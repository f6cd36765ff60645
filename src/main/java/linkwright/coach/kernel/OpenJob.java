package linkwright.coach.kernel;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.CautionsMet;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sittings;
import linkwright.job.Timers;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;

/**
 * The job on the bench.
 *
 * @param slug its book's name
 * @param device this machine's name in the book
 * @param entries its book, struck entries too
 * @param state what they add up to
 * @param lookOnly whether another program writes the book
 * @param told what was wrong with the book when it was opened; last, why it may only be looked at
 * @param drafts form → what was typed in it and not entered yet
 * @param standing what follows from the state: plan, still to do, hours
 * @param doubtful lines of the book that are kept and not used
 * @param words the entries in words, to be searched
 * @param earlier which cautions were met in any of the books when this one was opened
 */
public record OpenJob(
    String slug,
    String device,
    List<Entry> entries,
    JobState state,
    boolean lookOnly,
    List<String> told,
    Map<String, Map<String, String>> drafts,
    Standing standing,
    List<DoubtfulLine> doubtful,
    BookWords words,
    CautionsMet earlier) {
  public OpenJob {
    doubtful = List.copyOf(doubtful);
    told = List.copyOf(told);
    drafts = Map.copyOf(drafts);
  }

  public static OpenJob of(Message.JobOpened opened, Handbook handbook, Settings settings) {
    JobState state = JobState.replay(opened.entries(), handbook.stages());
    return new OpenJob(
        opened.slug(),
        opened.device(),
        List.copyOf(opened.entries()),
        state,
        opened.lookOnly(),
        opened.told(),
        opened.drafts(),
        Standing.of(state, handbook),
        opened.doubtful(),
        BookWords.of(
            opened.entries(),
            new BookTitles(handbook, state.course().routine(), StudentsAtHand.NOBODY),
            settings),
        opened.met());
  }

  public OpenJob after(List<Entry> more, Handbook handbook, Settings settings) {
    List<Entry> all = new ArrayList<>(entries.size() + more.size());
    all.addAll(entries);
    all.addAll(more);
    boolean replayAll = more.stream().anyMatch(entry -> entry.fact() instanceof Fact.Struck);
    JobState next = state;
    if (replayAll) {
      next = JobState.replay(all, handbook.stages());
    } else {
      for (Entry entry : more) {
        next = next.after(entry, handbook.stages());
      }
    }
    return new OpenJob(
        slug,
        device,
        List.copyOf(all),
        next,
        // What was kept was written here: the other program has gone, and what told of it.
        false,
        lookOnly ? told.subList(0, Math.max(0, told.size() - 1)) : told,
        drafts,
        standing.after(state, next, handbook),
        doubtful,
        words.and(
            more,
            new BookTitles(handbook, next.course().routine(), StudentsAtHand.NOBODY),
            settings),
        earlier);
  }

  /** The same with what follows from another handbook. */
  public OpenJob seenWith(Handbook handbook) {
    return with(state, drafts, Standing.of(state, handbook), words);
  }

  /** How it will stand once that is entered. */
  public Standing standingWith(Fact fact, Instant now, Handbook handbook) {
    Entry entry = new Entry(entries.size() + 1, now, device, fact);
    JobState next = state.after(entry, handbook.stages());
    return standing.after(state, next, handbook);
  }

  /** The same with its entries in other words. */
  OpenJob in(Settings settings, Handbook handbook) {
    BookTitles titles = new BookTitles(handbook, state.course().routine(), StudentsAtHand.NOBODY);
    return with(state, drafts, standing, BookWords.of(entries, titles, settings));
  }

  /** The same with its timers by the steady clock; those that ran before go on as they did. */
  public OpenJob steadied(Timers ran, Model model) {
    Timers steadied =
        state.timers().steadied(ran, model.bench().mind().moves(), model.now(), model.steady());
    return with(state.with(steadied), drafts, standing, words);
  }

  /** Which cautions were met, in this book and in all others. */
  public CautionsMet cautionsMet() {
    return state.cautions().and(earlier);
  }

  /** Whose sitting it is, as this machine entered it last; empty where nobody said. */
  public String person() {
    return Optional.ofNullable(state.sittings().last().get(device))
        .map(Sittings.Sat::person)
        .orElse("");
  }

  /** Whether links are counted along a length; false for a clasp, rings for stock, wire. */
  public boolean makesChain() {
    return standing.counted().part().isEmpty();
  }

  public OpenJob withDraft(String form, Map<String, String> texts) {
    Map<String, Map<String, String>> kept = new HashMap<>(drafts);
    if (texts.isEmpty()) {
      kept.remove(form);
    } else {
      kept.put(form, texts);
    }
    return with(state, kept, standing, words);
  }

  /** The same book, with what is known or typed of it otherwise. */
  private OpenJob with(
      JobState known, Map<String, Map<String, String>> typed, Standing figures, BookWords said) {
    return new OpenJob(
        slug, device, entries, known, lookOnly, told, typed, figures, doubtful, said, earlier);
  }
}
