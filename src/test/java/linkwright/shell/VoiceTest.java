package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import linkwright.coach.Apprentice;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.content.Prose;
import linkwright.coach.content.WaitShown;
import linkwright.coach.kernel.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said aloud, and in which order: a script writes down what a speech program would say. */
class VoiceTest {
  @TempDir private Path folder;
  private Path said;
  private Voice voice;

  @BeforeEach
  void begin() throws IOException {
    said = folder.resolve("said");
    Path script = folder.resolve("say");
    Path gate = folder.resolve("gate");
    Files.writeString(
        script,
        "#!/bin/sh\nwhile [ ! -e "
            + gate
            + " ]; do sleep 0.05; done\necho \"$1\" >> "
            + said
            + "\n");
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
    voice = Voice.of(script.toString(), "");
  }

  @AfterEach
  void end() {
    voice.close();
  }

  @Test
  void a_wait_is_heard_at_its_set_points_only_and_once() {
    Bencher bench = Bencher.withTheDemo();
    List<String> heard = new ArrayList<>();
    Page before = left(Pages.of(bench.model()), 400);
    for (int seconds = 399; seconds > 0; seconds--) {
      Page now = left(before, seconds);
      Utterances.between(before, now).forEach(each -> heard.add(each.text()));
      before = now;
    }
    assertThat(heard).containsExactly("pickle, five minutes.", "pickle, one minute.");
  }

  /** Nobody looks at a crucible whose wait is drowned by one that was never answered. */
  @Test
  void every_wait_is_heard_also_while_another_is_due() {
    Bencher bench = Bencher.withTheDemo();
    List<String> heard = new ArrayList<>();
    Page before = waiting(Pages.of(bench.model()), 1, 61, 62);
    for (int gone = 1; gone <= 70; gone++) {
      Page now = waiting(before, 1 - gone, 61 - gone, 62 - gone);
      Utterances.between(before, now).forEach(each -> heard.add(each.text()));
      before = now;
    }
    assertThat(heard)
        .containsExactly(
            "tea is due.",
            "tea, one minute.",
            "tea, Ada's chain, one minute.",
            "tea is due.",
            "tea, Ada's chain is due.");
    Page later = waiting(before, -80, 61, 1);
    assertThat(Utterances.between(later, waiting(later, -81, 60, 0)))
        .extracting(Utterance::text)
        .as("what is due comes first")
        .containsExactly("tea, Ada's chain is due.", "tea, one minute.");
  }

  /** In the timers place a wait that was due was told every second until it was answered. */
  @Test
  void a_wait_that_is_due_is_heard_once_in_the_timers_place() {
    Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "m");
    apprentice.press("n").type("tea").press("enter").type("1 h 1 min").press("ctrl-k");
    List<String> heard = new ArrayList<>();
    Page before = Pages.of(apprentice.model());
    for (int seconds = 0; seconds < 3800; seconds++) {
      apprentice.wait(1);
      Page now = Pages.of(apprentice.model());
      Utterances.between(before, now).forEach(each -> heard.add(each.text()));
      before = now;
    }
    assertThat(heard)
        .containsExactly(
            "tea, ten minutes.", "tea, five minutes.", "tea, one minute.", "tea is due.");
  }

  /** What became due during a long caution was put out by the next wait's minute. */
  @Test
  void of_waits_none_makes_another_unheard() throws Exception {
    voice.say(List.of(count("first")));
    Thread.sleep(300);
    voice.say(List.of(new Utterance(Utterance.Kind.WAIT, "tea is due.")));
    voice.say(List.of(new Utterance(Utterance.Kind.WAIT, "pickle, one minute."), count("2 of 9")));
    open();
    assertThat(lines(3)).containsExactly("first", "tea is due. pickle, one minute.", "2 of 9");
  }

  /** Who leaves a question and comes back to it hears it again. */
  @Test
  void what_was_said_to_its_end_is_said_again_when_it_comes_again() throws Exception {
    open();
    Utterance question = new Utterance(Utterance.Kind.STEP, "Which comes next? 1: Anneal.");
    voice.say(List.of(question));
    assertThat(lines(1)).hasSize(1);
    Thread.sleep(300);
    voice.say(List.of(question));
    assertThat(lines(2)).containsExactly(question.text(), question.text());
  }

  private static Page waiting(Page page, int first, int second, int third) {
    return with(
        page,
        page.body(),
        List.of(wait("1", "", first), wait("2", "", second), wait("3", "Ada's chain", third)));
  }

  private static WaitShown wait(String id, String job, int seconds) {
    return new WaitShown(id, "tea", job, Clock.running(seconds), seconds <= 0, false, "", false);
  }

  private static Page left(Page page, int seconds) {
    String clock = Clock.running(seconds);
    return with(
        page,
        Content.of("bench", new Figure(clock, "Pickle the wire", Emphasis.NOW)),
        List.of(new WaitShown("1", "pickle", "", clock, false, false, "", false)));
  }

  private static Page with(Page page, Content body, List<WaitShown> waits) {
    return new Page(
        page.job(),
        body,
        page.turned(),
        page.turns(),
        waits,
        page.hotWork(),
        page.chain(),
        page.still(),
        page.told(),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }

  @Test
  void a_flame_is_heard_when_it_is_lit_and_with_each_step_until_it_is_out() {
    Bencher bench = Bencher.withTheDemo();
    Page dark = Pages.of(bench.model());
    Page lit = lit(dark, "lit 14:02");
    assertThat(Utterances.between(dark, lit))
        .containsExactly(new Utterance(Utterance.Kind.WAIT, "Mind: lit 14:02."));
    assertThat(Utterances.between(lit, dark))
        .containsExactly(new Utterance(Utterance.Kind.WAIT, "Every flame out, gas shut."));
  }

  private static Page lit(Page page, String head) {
    return new Page(
        page.job(),
        page.body(),
        page.turned(),
        page.turns(),
        page.waits(),
        head,
        page.chain(),
        page.still(),
        page.told(),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }

  private void open() throws IOException {
    Files.writeString(folder.resolve("gate"), "");
  }

  private List<String> lines(int wanted) throws IOException, InterruptedException {
    for (int i = 0; i < 200; i++) {
      if (Files.exists(said) && Files.readAllLines(said).size() >= wanted) {
        return Files.readAllLines(said);
      }
      Thread.sleep(50);
    }
    return Files.exists(said) ? Files.readAllLines(said) : List.of();
  }

  private static Utterance count(String text) {
    return new Utterance(Utterance.Kind.COUNT, text);
  }

  @Test
  void cautions_come_before_counts_and_of_counts_the_newest() throws Exception {
    voice.say(List.of(count("first")));
    Thread.sleep(300);
    voice.say(List.of(count("1 of 9"), count("2 of 9")));
    voice.say(List.of(new Utterance(Utterance.Kind.CAUTION, "Caution. Pickle."), count("3 of 9")));
    open();
    assertThat(lines(3)).containsExactly("first", "Caution. Pickle.", "3 of 9");
  }

  /** What to do at the second step was heard after the card of the third. */
  @Test
  void what_belongs_to_a_step_that_was_left_is_dropped() throws Exception {
    Bencher bench = Bencher.withTheDemo();
    bench.goTo("lay-out");
    Page first = Pages.of(bench.model());
    bench.goTo("cut-blanks");
    Page second = Pages.of(bench.model());
    bench.goTo("solder-links");
    Page third = Pages.of(bench.model());
    voice.say(List.of(count("first")));
    Thread.sleep(300);
    voice.say(List.of(new Utterance(Utterance.Kind.WAIT, "tea is due.")));
    voice.say(Utterances.left(first, second), Utterances.between(first, second));
    voice.say(Utterances.left(second, third), List.of(new Utterance(Utterance.Kind.STILL, "end")));
    open();
    assertThat(lines(3)).containsExactly("first", "tea is due.", "end");
  }

  /** Whoever passes a card before it was heard hears it before the step, not never. */
  @Test
  void a_card_that_was_passed_by_unheard_is_heard_before_its_step() {
    Bencher bench = Bencher.withTheDemo();
    bench.goTo("lay-out");
    Page step = Pages.of(bench.model());
    Page card =
        with(
            step,
            Content.of("caution", new Prose(Prose.Kind.CAUTION_TITLE, "Pickle is hot")),
            List.of());
    assertThat(Utterances.left(step, card)).contains(Utterance.Kind.CAUTION);
    assertThat(Utterances.left(card, step))
        .contains(Utterance.Kind.STEP)
        .doesNotContain(Utterance.Kind.CAUTION, Utterance.Kind.WAIT);
    assertThat(Utterances.left(step, step)).isEmpty();
  }

  @Test
  void what_is_being_said_is_not_said_once_more() throws Exception {
    Utterance caution = new Utterance(Utterance.Kind.CAUTION, "Caution. Lid on.");
    voice.say(List.of(caution));
    Thread.sleep(300);
    voice.say(List.of(caution, count("2 of 9")));
    open();
    assertThat(lines(2)).containsExactly("Caution. Lid on.", "2 of 9");
  }

  /** Where the machine is set to no language at all, a degree was heard as a question mark. */
  @Test
  void signs_that_do_not_reach_the_program_are_words() {
    String text = "Heat to 600 °C, bend by 30°, ± 5 mm.";
    assertThat(Voice.inSignsOf(StandardCharsets.UTF_8, text)).isEqualTo(text);
    assertThat(Voice.inSignsOf(StandardCharsets.US_ASCII, text))
        .isEqualTo("Heat to 600 degrees C, bend by 30 degrees, plus or minus 5 mm.");
  }

  @Test
  void it_never_makes_anybody_wait() {
    long begun = System.nanoTime();
    for (int i = 0; i < 1000; i++) {
      voice.say(List.of(count(i + " of 1000")));
    }
    assertThat(System.nanoTime() - begun).isLessThan(2_000_000_000L);
  }

  @Test
  void without_a_command_nothing_is_said() {
    try (Voice silent = Voice.of("", "")) {
      silent.say(List.of(count("1")));
    }
    assertThat(said).doesNotExist();
  }

  @Test
  void a_kind_that_was_not_chosen_is_not_said() throws Exception {
    try (Voice counts = Voice.of(folder.resolve("say").toString(), "counts")) {
      open();
      counts.say(List.of(new Utterance(Utterance.Kind.STEP, "A step."), count("4 of 9")));
      assertThat(lines(1)).containsExactly("4 of 9");
    }
  }

  @Test
  void a_step_is_said_with_what_is_to_be_done_a_count_by_its_number() {
    Bencher bench = Bencher.withTheDemo();
    bench.goTo("lay-out");
    Page before = Pages.of(bench.model());
    bench.goTo("cut-blanks");
    Page step = Pages.of(bench.model());
    assertThat(Utterances.between(before, step))
        .anySatisfy(
            each -> {
              assertThat(each.kind()).isEqualTo(Utterance.Kind.STEP);
              assertThat(each.text()).contains("Cut");
            });
    bench.press("space");
    assertThat(Utterances.between(step, Pages.of(bench.model())))
        .extracting(Utterance::kind)
        .contains(Utterance.Kind.COUNT);
  }

  @Test
  void what_is_still_to_do_is_said_with_a_new_step_and_can_be_left_out() throws Exception {
    try (Voice counts = Voice.of(folder.resolve("say").toString(), "counts, still-to-do")) {
      open();
      counts.say(
          List.of(
              new Utterance(Utterance.Kind.STEP, "A step."),
              new Utterance(Utterance.Kind.STILL, "Still to do: 9 links.")));
      assertThat(lines(1)).containsExactly("Still to do: 9 links.");
    }
  }

  /**
   * With a real speech program where there is one: what it speaks lies in files, by their order.
   */
  @Test
  void a_speech_program_speaks_cautions_first_and_counts_briefly() throws Exception {
    Assumptions.assumeTrue(
        Stream.of(System.getenv().getOrDefault("PATH", "").split(":", -1))
            .anyMatch(bin -> Files.isExecutable(Path.of(bin, "espeak-ng"))),
        "espeak-ng is not here");
    Path spoken = Files.createDirectory(folder.resolve("spoken"));
    Path script = folder.resolve("say");
    String text = Files.readString(script);
    Files.writeString(
        script,
        text.replace(
            "echo", "espeak-ng -w " + spoken + "/$(ls " + spoken + " | wc -l) \"$1\"\necho"));
    voice.say(List.of(count("first")));
    Thread.sleep(300);
    voice.say(
        List.of(
            count("5 of 9 links soldered"),
            new Utterance(Utterance.Kind.CAUTION, "Caution. Pickle. " + "Lid on. ".repeat(20))));
    open();
    assertThat(lines(3)).hasSize(3).element(2).isEqualTo("5 of 9 links soldered");
    assertThat(seconds(spoken.resolve("1"))).as("the caution, whole").isGreaterThan(8);
    assertThat(seconds(spoken.resolve("2"))).as("a count").isBetween(0.5, 3.0);
  }

  private static double seconds(Path wav) throws Exception {
    try (AudioInputStream in = AudioSystem.getAudioInputStream(wav.toFile())) {
      return in.getFrameLength() / in.getFormat().getFrameRate();
    }
  }

  @Test
  void a_click_is_short_and_a_tone_has_its_pitch() {
    byte[] tone = Sounds.samples(660, 0.6);
    assertThat(tone).hasSize(2 * Math.round(0.6f * Sounds.RATE));
    int crossings = 0;
    for (int i = 2; i + 1 < tone.length; i += 2) {
      crossings += tone[i - 1] < 0 != tone[i + 1] < 0 ? 1 : 0;
    }
    assertThat(crossings / 2.0 / 0.6).isBetween(640.0, 680.0);
    try (Sounds silent = Sounds.of("cautions, counts")) {
      silent.click();
      silent.tone();
    }
  }
}
