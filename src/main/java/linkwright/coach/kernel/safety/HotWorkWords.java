package linkwright.coach.kernel.safety;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.kernel.BenchNow;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.FlameWord;
import linkwright.job.HotWork;
import linkwright.job.TimerRun;

/** Hot work and its fire watch in words. */
public final class HotWorkWords {
  private static final DateTimeFormatter TODAY =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter BEFORE =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  private HotWorkWords() {}

  /** The statement by which it is shut, for what is open. */
  public static String statement(HotWork open) {
    String flames = open.lit().isPresent() ? "every flame out, gas shut" : "";
    String hot = open.hot().isPresent() ? "kiln and hotplate off" : "";
    return flames.isEmpty() || hot.isEmpty() ? flames + hot : flames + ", " + hot;
  }

  /** The question: {@code Lit at 14:02: every flame out, gas shut?}. */
  public static String asks(Model model) {
    HotWork open = model.hotWork();
    String since =
        open.lit()
            .map(word -> "Lit at " + at(model, word))
            .or(() -> open.hot().map(word -> "On since " + at(model, word)))
            .orElse("");
    return since + ": " + statement(open) + "?";
  }

  /** Who said it, and in which job. */
  public static String who(Model model, FlameWord word) {
    String name = model.learning().roster().name(word.person());
    return (word.person().isEmpty() ? "" : "Said by " + name + " in ")
        + (word.person().isEmpty() ? "Said in " : "")
        + word.job()
        + ".";
  }

  /** That a flame may be lit, for the head of every page; empty if none is. */
  public static String head(Model model) {
    HotWork now = model.hotWork();
    return now.lit()
        .map(word -> "lit " + at(model, word))
        .or(() -> now.hot().map(word -> "hot " + at(model, word)))
        .orElse("");
  }

  /**
   * The same in a whole sentence, with what to do, for whoever hears a page and sees no head; empty
   * if no flame may be lit.
   */
  public static Optional<String> told(Model model) {
    HotWork now = model.hotWork();
    return now.lit()
        .or(now::hot)
        .map(
            word ->
                (now.lit().isPresent() ? "A flame is lit since " : "Kiln or hotplate is on since ")
                    + at(model, word)
                    + (word.job().isEmpty() ? "" : " (" + OtherJobs.called(model, word) + ")")
                    + ". {do:to-hot-work} says: "
                    + statement(now)
                    + ".");
  }

  /** What is said last of all when the program is left: of the flame, else of the watch. */
  public static String parting(Model model) {
    if (!model.hotWork().open()) {
      return watch(model).orElse("");
    }
    boolean looks = model.job().filter(OpenJob::lookOnly).isPresent();
    return asks(model) + (looks ? " It is answered where " + jobs(model) + " is open." : "");
  }

  /** The jobs in whose books something is lit, as they are called. */
  public static String jobs(Model model) {
    return model.hotWork().stand().stream()
        .map(FlameWord::job)
        .distinct()
        .collect(Collectors.joining("”, “", "“", "”"));
  }

  private static String at(Model model, FlameWord word) {
    return at(model, word.at());
  }

  /** A moment as it is told: the time of day, with the day if it is not today. */
  public static String at(Model model, Instant moment) {
    ZoneId zone = model.settings().zone();
    ZonedDateTime said = moment.atZone(zone);
    LocalDate today = model.now().atZone(zone).toLocalDate();
    return (said.toLocalDate().equals(today) ? TODAY : BEFORE).format(said);
  }

  /** How long the fire watch still is; empty where none runs. */
  public static Optional<String> watch(Model model) {
    return model
        .watch()
        .map(
            run ->
                "Fire watch: "
                    + left(run, model)
                    + " to go"
                    + from(model, run)
                    + ". Filing beside the block is watching; going home is not.");
  }

  /** From when it runs: whoever shut the gas later than she heated looks for that hour. */
  private static String from(Model model, TimerRun run) {
    Duration ago = Duration.between(run.startedAt(), model.steady());
    boolean heat = model.bench().watch().filter(BenchNow.Watch::heat).isPresent();
    return (heat ? ", from the last heat at " : ", from all flames out at ")
        + at(model, model.now().minus(ago));
  }

  /** Minutes are told up: nobody is told that none is left while it runs. */
  private static String left(TimerRun run, Model model) {
    long seconds = Math.max(1, run.left(model.steady()).toSeconds());
    return Clock.spoken((double) ((seconds + 59) / 60 * 60));
  }
}
