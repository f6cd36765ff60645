package linkwright.coach;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.kernel.BenchBook;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.TimerRun;

/** The computer's clock can be set, and sleeps; timers follow one that does neither. */
final class Clocks {
  /** Clocks that are mended a little now and then are not worth a word. */
  private static final Duration SLIGHT = Duration.ofMinutes(1);

  private static final String MOVED =
      "The computer's clock moved, or it slept. Timers go on from where they were: look at the"
          + " pieces.";

  private static final String SET_BACK =
      "The computer's clock went back since a timer was set%s. It begins anew: look at the pieces.";

  private static final String SET_FORWARD =
      "The computer's clock was set forward since a timer was set%s. It runs by how long it really"
          + " was: look at the pieces.";

  private Clocks() {}

  /** Both clocks went on; if not by the same time while a timer runs, it is told. */
  static Model moved(Model model, Message.Ticked ticked) {
    Duration by =
        Duration.between(model.now(), ticked.now())
            .minus(Duration.between(model.steady(), ticked.steady()));
    Model next = Bounce.drawn(model.at(ticked.now(), ticked.steady()), ticked.drawn());
    boolean runs = model.waits().stream().anyMatch(wait -> !wait.isWatch());
    return runs && by.abs().compareTo(SLIGHT) > 0 ? next.trouble(MOVED) : next;
  }

  /** The model with that told, if the clock was set since a timer of that job was. */
  static Model told(Model model, List<Entry> entries, OpenJob job) {
    Set<EntryId> running =
        job.state().timers().running().stream().map(TimerRun::id).collect(Collectors.toSet());
    return told(
        model,
        entries.stream().filter(entry -> running.contains(entry.id())).map(Entry::at).toList(),
        "");
  }

  /** With the other books as they were read now, the same told of each that is new. */
  static Model read(Model model, Message.OthersRead message) {
    Model next = model.withBench(message.device(), message.books());
    for (BenchBook book : message.books()) {
      boolean here = model.job().filter(open -> open.slug().equals(book.slug())).isPresent();
      if (!here && !book.closed() && model.bench().book(book.slug()).isEmpty()) {
        next =
            told(
                next,
                book.timers().running().stream().map(TimerRun::startedAt).toList(),
                " in “" + book.job() + "”");
      }
    }
    return next;
  }

  private static Model told(Model model, List<Instant> set, String where) {
    if (set.stream().anyMatch(at -> at.isAfter(model.now().plus(SLIGHT)))) {
      return model.trouble(SET_BACK.formatted(where));
    }
    ClockMoves moves = model.bench().mind().moves();
    boolean wentOn =
        set.stream()
            .anyMatch(at -> !moves.age(at, model.now()).equals(Duration.between(at, model.now())));
    return wentOn ? model.trouble(SET_FORWARD.formatted(where)) : model;
  }
}
