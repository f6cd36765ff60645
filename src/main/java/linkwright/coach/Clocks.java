package linkwright.coach;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Entry;
import linkwright.job.EntryId;

/** The computer's clock can be set, and sleeps; timers follow one that does neither. */
final class Clocks {
  /** Clocks that are mended a little now and then are not worth a word. */
  private static final Duration SLIGHT = Duration.ofMinutes(1);

  private static final String MOVED =
      "The computer's clock moved, or it slept. Timers go on from where they were: look at the"
          + " pieces.";

  private static final String SET_BACK =
      "The computer's clock went back since a timer was set. It begins anew: look at the pieces.";

  private static final String SET_FORWARD =
      "The computer's clock was set forward since a timer was set. It runs by how long it really"
          + " was: look at the pieces.";

  private Clocks() {}

  /** Both clocks went on; if not by the same time while a timer runs, it is told. */
  static Model moved(Model model, Message.Ticked ticked) {
    Duration by =
        Duration.between(model.now(), ticked.now())
            .minus(Duration.between(model.steady(), ticked.steady()));
    Model next = model.at(ticked.now(), ticked.steady());
    boolean runs = !model.timers().running().isEmpty();
    return runs && by.abs().compareTo(SLIGHT) > 0 ? next.trouble(MOVED) : next;
  }

  /** The model with that told, if the clock was set since a timer of that job was. */
  static Model told(Model model, List<Entry> entries, OpenJob job) {
    if (wentBack(entries, job, model.now())) {
      return model.trouble(SET_BACK);
    }
    return wentOn(entries, job, model) ? model.trouble(SET_FORWARD) : model;
  }

  /** Whether the clock is known to have been set forward since a timer that runs was set. */
  private static boolean wentOn(List<Entry> entries, OpenJob job, Model model) {
    List<EntryId> running =
        job.state().timers().running().stream().map(timer -> timer.id()).toList();
    return entries.stream()
        .filter(entry -> running.contains(entry.id()))
        .anyMatch(
            entry ->
                !model
                    .bench()
                    .mind()
                    .moves()
                    .age(entry.at(), model.now())
                    .equals(Duration.between(entry.at(), model.now())));
  }

  /** Whether a timer that runs was set later than it is now. */
  private static boolean wentBack(List<Entry> entries, OpenJob job, Instant now) {
    List<EntryId> running =
        job.state().timers().running().stream().map(timer -> timer.id()).toList();
    return entries.stream()
        .filter(entry -> running.contains(entry.id()))
        .anyMatch(entry -> entry.at().isAfter(now.plus(SLIGHT)));
  }
}
