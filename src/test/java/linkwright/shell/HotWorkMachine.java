package linkwright.shell;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.Hazard;
import linkwright.standing.Handbook;

/** A machine at the bench: the program on it may be killed and started again. */
final class HotWorkMachine {
  /** What counts or begins a wait, if the step burns gas. */
  private static final Set<Act> HEATS =
      Set.of(Act.THROUGH, Act.TOGETHER, Act.DONE, Act.WAIT_FIRST, Act.CUT_ONE, Act.BEGIN_ONE);

  private final String device;
  private final Home home;
  private final Handbook handbook;
  private final HotWorkTime time;
  private final Supplier<String> anyJob;
  Performer performer;
  Model model;
  private Duration ahead = Duration.ZERO;
  Instant startedAt = HotWorkOracle.BEGIN;

  /** When the watch was ended here since it was started. */
  private Instant endedAt = Instant.MIN;

  HotWorkMachine(
      String device, Home home, Handbook handbook, HotWorkTime time, Supplier<String> anyJob) {
    this.device = device;
    this.home = home;
    this.handbook = handbook;
    this.time = time;
    this.anyJob = anyJob;
    start();
  }

  void start() {
    performer = new Performer(home, device, () -> time.now, () -> {});
    // A program that starts has a clock of its own, which begins with the computer's.
    ahead = Duration.between(time.real, time.now);
    startedAt = time.real;
    endedAt = Instant.MIN;
    model = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, time.now, 80, 24);
    model =
        performer.begin(
            model, List.of(new Fact.JobOpened("x", "byzantine")), Optional.of(anyJob.get()));
    look();
  }

  /** The program is gone at once, whatever was up on it. */
  void kill() {
    performer.shut();
  }

  /** Time goes by for it, so that it looks at the other books too. */
  void look() {
    take(new Message.Ticked(time.now, time.real.plus(ahead), Optional.empty()));
  }

  void take(Message message) {
    model = performer.take(model, message);
  }

  void press(String key) {
    take(new Message.KeyPressed(KeyNames.read(key).orElse(Key.of(key))));
  }

  Act common() {
    return Pages.of(model).open().stream()
        .flatMap(open -> open.act().stream())
        .findFirst()
        .orElse(Act.HELP);
  }

  /** Whether what was just pressed is in the book: not what another machine wrote meanwhile. */
  boolean entered(int before) {
    List<Entry> entries = model.job().map(job -> job.entries()).orElse(List.of());
    return entries.size() > before
        && entries.get(entries.size() - 1).device().equals(device)
        && entries.get(entries.size() - 1).at().equals(time.now);
  }

  int entries() {
    return model.job().map(job -> job.entries().size()).orElse(0);
  }

  /** The common key, and what an observer beside her would write down. */
  void pressCommon(HotWorkOracle oracle) {
    Act act = common();
    int before = entries();
    boolean atGas =
        model.held().place() == PlaceId.BENCH
            && AtBench.of(model)
                .filter(at -> at.step().does().contains(Hazard.BURNS_GAS))
                .isPresent();
    boolean open = oracle.open();
    // What comes out of the pickle was heated before it went in.
    boolean waited =
        (act == Act.TOGETHER || act == Act.DONE)
            && AtBench.of(model).filter(at -> isInAWait(at)).isPresent();
    press("space");
    boolean entered = entered(before);
    if (act == Act.LIT && entered) {
      oracle.heard('l', time.real);
    } else if (act == Act.FLAMES_OUT && open && !model.hotWork().open()) {
      oracle.heard('s', time.real);
    } else if (atGas && entered && HEATS.contains(act) && !waited) {
      oracle.heard('h', time.real);
    }
  }

  /** At the timers: the watch has one field, a wait of a step two. */
  String endWatch(HotWorkOracle oracle) {
    press("esc");
    press("m");
    for (int i = 0; i < 9 && model.held().place() == PlaceId.TIMERS; i++) {
      press("enter");
      Optional<Form> form = model.held().form();
      if (form.filter(why -> why.fields().size() == 1).isPresent()) {
        take(new Message.Pasted("a colleague watches"));
        boolean ran = model.watch().isPresent();
        press("ctrl-k");
        if (ran && model.watch().isEmpty()) {
          oracle.heard('e', time.real);
          endedAt = time.real;
          return "watch ended for a reason";
        }
      }
      if (model.held().form().isPresent()) {
        press("esc");
      }
      press("down");
    }
    return "no watch to end";
  }

  /** An unfinished job is asked about once, and an open flame after that. */
  String closeOrOpenAgain() {
    press("esc");
    press("i");
    if (closed()) {
      press("g");
      return closed() ? "stays closed" : "opened again";
    }
    press("c");
    for (int i = 0; i < 3 && model.held().form().isPresent(); i++) {
      press("ctrl-k");
    }
    return closed() ? "closed" : "closing asked";
  }

  private boolean closed() {
    return model.job().filter(job -> job.state().course().closed()).isPresent();
  }

  /** Whether it ran when a flame was lit last, so that it knows what came after what. */
  boolean knows(HotWorkOracle oracle) {
    return !oracle.lit().isBefore(startedAt);
  }

  /** Whether the watch that ran last was ended at it. */
  boolean endedIt(HotWorkOracle oracle) {
    return endedAt.isAfter(oracle.shut());
  }

  private boolean isInAWait(AtBench at) {
    return !model.job().orElseThrow().state().course().waits().at(at.step().id()).isEmpty();
  }
}
