package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows at one bench, each with a job of its own: the flame is one, the waits are all. */
class OtherWindowTest {
  private static final String DEVICE = "window-a2b3c4d5";

  @TempDir private Path folder;
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");
  private Home home;
  private Handbook handbook;
  private Window anklet;
  private Window hook;

  private final class Window {
    private final Performer performer = new Performer(home, DEVICE, () -> now, () -> {});
    private Model model =
        performer.begin(
            Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, now, 80, 24),
            List.of(new Fact.JobOpened("x", "byzantine")),
            Optional.empty());

    Window(String job) {
      model = performer.open(model, job);
      press("esc", "b");
    }

    void press(String... keys) {
      for (String key : keys) {
        pass(Duration.ofSeconds(1));
        take(new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
      }
    }

    void take(Message message) {
      model = performer.take(model, message);
    }

    /** The common key, till that is what it does. */
    void until(Act act) {
      for (int i = 0; i < 80 && common() != act; i++) {
        press(AtBench.of(model).isPresent() && skips(act) ? "n" : "space");
      }
      assertThat(common()).isEqualTo(act);
    }

    private boolean skips(Act act) {
      return !BenchAnswers.away(model) && common() != Act.SEEN && common() != act;
    }

    int entries() {
      return model.job().orElseThrow().entries().size();
    }

    Act common() {
      return Pages.of(model).open().get(0).act().orElseThrow();
    }
  }

  @BeforeEach
  void two_jobs() {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    for (String name : List.of("anklet", "hook")) {
      List<Fact> facts = new ArrayList<>(Demo.facts(Library.load(home)));
      facts.set(0, new Fact.JobOpened(name, "round-cable"));
      Books books =
          new Books(
              home, DEVICE, () -> now, new DraftStore(home.drafts()), ReadingProgress.ENDLESS);
      books.begin(name, facts, handbook);
      books.shut();
    }
    anklet = new Window("anklet");
    hook = new Window("hook");
  }

  @AfterEach
  void both_are_shut() {
    anklet.performer.shut();
    hook.performer.shut();
  }

  private void pass(Duration time) {
    now = now.plus(time);
    for (Window window :
        List.of(Optional.ofNullable(anklet), Optional.ofNullable(hook)).stream()
            .flatMap(Optional::stream)
            .toList()) {
      window.take(new Message.Ticked(now, now, Optional.empty()));
    }
  }

  @Test
  void a_flame_that_was_lit_in_one_is_put_out_in_the_other_and_both_know() {
    anklet.until(Act.LIT);
    anklet.press("space");
    pass(Duration.ofSeconds(20));
    assertThat(hook.model.hotWork().lit()).isPresent();
    hook.press("!", "space");
    assertThat(hook.model.hotWork().open()).isFalse();
    pass(Duration.ofSeconds(20));
    assertThat(anklet.model.hotWork().open()).isFalse();
    assertThat(anklet.model.watch()).isPresent();
    // Whoever begins anew knows it too.
    hook.performer.shut();
    hook = new Window("hook");
    assertThat(hook.model.hotWork().open()).isFalse();
  }

  @Test
  void the_press_that_follows_what_the_other_said_tells_it_and_lights_nothing() {
    anklet.until(Act.LIT);
    hook.until(Act.LIT);
    anklet.press("space");
    assertThat(anklet.common()).isNotEqualTo(Act.LIT);
    pass(Duration.ofSeconds(4));
    hook.press("!", "space");
    int entries = anklet.entries();
    pass(Duration.ofSeconds(4));
    assertThat(anklet.model.hotWork().open()).as("looked by itself").isFalse();
    assertThat(anklet.model.notice().text()).contains("every flame out");
    anklet.press("space");
    assertThat(anklet.model.hotWork().open()).as("she never said that").isFalse();
    assertThat(anklet.entries()).isEqualTo(entries);
    assertThat(anklet.model.notice().text()).contains("entered nothing");
    anklet.press("space");
    assertThat(anklet.model.hotWork().lit()).isPresent();
  }

  @Test
  void what_was_lit_in_the_other_a_moment_ago_is_told_by_the_key_that_would_light_it() {
    anklet.until(Act.LIT);
    hook.until(Act.LIT);
    pass(Duration.ofSeconds(4));
    now = now.plusMillis(1500);
    hook.take(new Message.Ticked(now, now, Optional.empty()));
    hook.take(new Message.KeyPressed(KeyNames.read("space").orElseThrow()));
    int entries = anklet.entries();
    anklet.take(new Message.Ticked(now, now, Optional.empty()));
    assertThat(anklet.common()).as("not looked yet").isEqualTo(Act.LIT);
    anklet.take(new Message.KeyPressed(KeyNames.read("space").orElseThrow()));
    assertThat(anklet.entries()).isEqualTo(entries);
    assertThat(anklet.model.notice().text()).contains("lit ", "(hook)", "entered nothing");
    assertThat(anklet.common()).isNotEqualTo(Act.LIT);
  }

  @Test
  void what_stood_on_the_screen_long_enough_takes_no_press() {
    anklet.until(Act.LIT);
    hook.until(Act.LIT);
    hook.press("space");
    pass(Duration.ofSeconds(4));
    hook.press("!", "space");
    pass(Duration.ofSeconds(4));
    Instant shown = now;
    now = now.plusSeconds(2);
    anklet.take(new Message.Ticked(now, now, Optional.of(shown)));
    anklet.take(new Message.KeyPressed(KeyNames.read("space").orElseThrow()));
    assertThat(anklet.model.hotWork().lit()).isPresent();
  }

  @Test
  void a_wait_of_a_job_that_the_other_writes_is_told_and_takes_no_key() {
    anklet.until(Act.LIT);
    anklet.press("space");
    anklet.until(Act.WAIT_FIRST);
    anklet.press("space");
    hook.press("space");
    pass(Duration.ofMinutes(20));
    assertThat(hook.model.due()).extracting(wait -> wait.held()).containsExactly(true);
    pass(Duration.ofSeconds(11));
    assertThat(anklet.common()).isNotEqualTo(Act.TO_DUE);
    assertThat(hook.model.job().orElseThrow().slug()).isEqualTo("hook");
    hook.press("space");
    assertThat(hook.model.job().orElseThrow().slug()).as("its key is its own").isEqualTo("hook");
    hook.press("esc", "m");
    assertThat(Pages.of(hook.model).body().toString()).contains("it is quieted there");
    // Once the other window has gone, the key leads there.
    anklet.performer.shut();
    pass(Duration.ofSeconds(20));
    hook.press("esc", "b", "space");
    assertThat(hook.model.job().orElseThrow().slug()).isEqualTo("anklet");
  }

  @Test
  void where_the_only_open_job_is_the_others_it_is_said_in_a_closed_book() {
    hook.press("esc", "i", "c", "ctrl-k", "ctrl-k");
    assertThat(hook.model.job().orElseThrow().state().course().closed()).isTrue();
    anklet.until(Act.LIT);
    anklet.press("space");
    pass(Duration.ofSeconds(4));
    assertThat(hook.model.hotWork().lit()).isPresent();
    hook.press("!", "space");
    assertThat(hook.model.hotWork().open()).isFalse();
    pass(Duration.ofSeconds(4));
    assertThat(anklet.model.hotWork().open()).isFalse();
    assertThat(anklet.model.watch()).isPresent();
  }

  @Test
  void where_its_book_is_looked_at_a_wait_ends_with_the_job_and_comes_again_with_it() {
    anklet.until(Act.LIT);
    anklet.press("space");
    anklet.until(Act.WAIT_FIRST);
    anklet.press("space", "!", "space");
    hook.model = hook.performer.open(hook.model, "anklet");
    assertThat(hook.model.job().orElseThrow().lookOnly()).isTrue();
    assertThat(waits(hook)).isNotEmpty().isEqualTo(waits(anklet));
    List<EntryId> waited = waits(anklet);
    anklet.press("esc", "i", "c", "ctrl-k", "ctrl-k");
    assertThat(anklet.model.job().orElseThrow().state().course().closed()).isTrue();
    pass(Duration.ofSeconds(4));
    assertThat(waits(anklet)).isEmpty();
    assertThat(waits(hook)).as("closed meanwhile").isEmpty();
    hook.model = hook.performer.open(hook.model, "anklet");
    anklet.press("g");
    pass(Duration.ofSeconds(4));
    assertThat(waits(anklet)).isEqualTo(waited);
    assertThat(waits(hook)).as("opened again meanwhile").isEqualTo(waited);
  }

  @Test
  void a_watch_whose_end_cannot_be_entered_in_the_others_book_is_not_a_minute_shorter() {
    anklet.until(Act.LIT);
    hook.until(Act.LIT);
    hook.press("space");
    hook.until(Act.WAIT_FIRST);
    hook.press("space");
    pass(Duration.ofMinutes(5));
    // The first press tells of the flame.
    anklet.press("space");
    anklet.until(Act.WAIT_FIRST);
    anklet.press("space", "!", "space");
    Instant end = anklet.model.watch().orElseThrow().end();
    assertThat(anklet.model.bench().watch().orElseThrow().from().book()).isEqualTo("anklet");
    endWatch();
    assertThat(anklet.common()).as("hook's book is written there").isEqualTo(Act.TRY_AGAIN);
    assertThat(anklet.model.watch().orElseThrow().end()).isEqualTo(end);
    hook.performer.shut();
    anklet.press("esc");
    endWatch();
    assertThat(anklet.model.watch()).isEmpty();
  }

  private void endWatch() {
    anklet.press("esc", "m");
    for (int i = 0; i < 9; i++) {
      anklet.press("enter");
      if (anklet.model.held().form().filter(why -> why.fields().size() == 1).isPresent()) {
        anklet.take(new Message.Pasted("a colleague watches"));
        anklet.press("ctrl-k");
        return;
      }
      if (anklet.model.held().form().isPresent()) {
        anklet.press("esc");
      }
      anklet.press("down");
    }
  }

  private static List<EntryId> waits(Window window) {
    return window.model.waits().stream()
        .filter(wait -> !wait.isWatch())
        .map(wait -> wait.run().id())
        .toList();
  }
}
