package linkwright.coach;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.TimerRun;

/**
 * The coach's one function: a model and a message give the next model and effects. Keys go to the
 * form that is open, then to the acts of the screen, then to those that every screen has.
 */
public final class Update {
  /** While a timer rings, the bell is rung anew after so long. */
  static final Duration BELL_EVERY = Duration.ofSeconds(10);

  /** Control characters, and those that only turn the direction of what follows. */
  private static final String UNSEEN =
      "[\\p{Cc}\\x{200e}\\x{200f}\\x{202a}-\\x{202e}\\x{2066}-\\x{2069}]";

  private Update() {}

  /** What follows from a message. */
  public static Turn update(Model model, Message message) {
    if (message instanceof Message.KeyPressed pressed) {
      return key(model.quiet(), pressed.key());
    }
    if (message instanceof Message.Pasted pasted) {
      return pasted(model, pasted.text());
    }
    if (message instanceof Message.PointedAt pointed) {
      return Pointing.at(model.quiet(), pointed.spot());
    }
    if (message instanceof Message.Ticked ticked) {
      return tick(model.at(ticked.now()));
    }
    if (message instanceof Message.Resized size) {
      return Turn.to(model.sized(size.width(), size.height()));
    }
    if (message instanceof Message.TrayRead read) {
      Model ready = model.withTray(read.jobs());
      return Turn.to(read.unread() == 0 ? ready : ready.told(unread(read.unread())));
    }
    if (message instanceof Message.JobOpened opened) {
      return opened(model, opened);
    }
    if (message instanceof Message.JobNotOpened not) {
      return Turn.to(model.trouble(not.why()));
    }
    if (message instanceof Message.Kept kept) {
      return kept(model, kept.entries());
    }
    if (message instanceof Message.Troubled troubled) {
      return Turn.to(model.trouble(troubled.sentence()));
    }
    if (message instanceof Message.NotKept not) {
      return Turn.to(model.trouble(notKept(not.why())));
    }
    return Turn.with(model, new Effect.ShutJob(), new Effect.Leave());
  }

  /** Where it is not known whether an entry was kept, nobody says that it was not. */
  private static String notKept(String why) {
    return why.startsWith("It is not known") ? why : "Not written, and not counted: " + why;
  }

  private static String unread(int jobs) {
    return jobs
        + (jobs == 1 ? " job is" : " jobs are")
        + " not read yet: that goes on when you come back to the tray.";
  }

  static Turn key(Model model, Key key) {
    if (key.equals(Key.ctrl("c"))) {
      return Turn.with(model, new Effect.ShutJob(), new Effect.Leave());
    }
    if (model.screen() instanceof Screen.Help help) {
      return Turn.to(model.with(help.from()));
    }
    Place place = Places.of(model);
    if (model.screen().form().isPresent()) {
      Form.Outcome outcome = model.screen().form().get().key(key);
      if (outcome instanceof Form.Outcome.Edited edited) {
        return place.edited(model, edited.form(), edited.textChanged());
      }
      if (outcome instanceof Form.Outcome.Confirmed confirmed) {
        return place.confirmed(model, confirmed.form());
      }
      return key.is(Key.Kind.ESCAPE) ? place.formLeft(model) : place.typed(model, key);
    }
    Optional<Act> act = model.settings().keys().find(key, place.acts(model));
    if (act.isPresent()) {
      return place.act(model, act.get());
    }
    Optional<Act> common = model.settings().keys().find(key, Places.COMMON);
    return common.map(found -> common(model, found)).orElseGet(() -> place.typed(model, key));
  }

  /**
   * Pasted text goes into a field as if typed, line breaks as spaces; elsewhere it is passed over.
   */
  private static Turn pasted(Model model, String text) {
    Turn turn = Turn.to(model);
    if (model.screen().form().isPresent()) {
      String oneLine = text.replaceAll("[\\r\\n\\t]+", " ").replaceAll(UNSEEN, "");
      return key(model, Key.of(oneLine));
    }
    return turn;
  }

  private static Turn common(Model model, Act act) {
    return switch (act) {
      case ROUND ->
          model.job().isPresent()
              ? Turn.to(model.with(new Screen.Round(model.screen())))
              : Turn.to(model.with(new Screen.Tray(0, Optional.empty())));
      case HELP -> Turn.to(model.with(new Screen.Help(model.screen())));
      case UNDO -> Undo.last(model);
      case BRING_BACK -> Undo.bringBack(model);
      case ANSWER -> answer(model);
      default -> Turn.to(model);
    };
  }

  static Turn answer(Model model) {
    Optional<TimerRun> ringing =
        model.job().flatMap(job -> job.state().timers().ringing(model.now()).stream().findFirst());
    return ringing
        .map(
            timer ->
                Turn.keep(
                    model.told(timer.name() + ": answered."), new Fact.TimerAnswered(timer.id())))
        .orElseGet(() -> Turn.to(model.told("No timer rings.")));
  }

  private static Turn tick(Model model) {
    boolean rings =
        model.job().map(job -> !job.state().timers().ringing(model.now()).isEmpty()).orElse(false);
    if (!rings) {
      return Turn.to(model.rangAtNothing());
    }
    long second = model.now().getEpochSecond();
    // A clock that was set back must not silence it until the time comes round again.
    if (Math.abs(second - model.rungAt()) < BELL_EVERY.toSeconds()) {
      return Turn.to(model);
    }
    // When one comes due, what was told before it, such as that it runs, holds no more.
    Model heard = model.rungAt() == 0 ? model.quiet() : model;
    return Turn.with(heard.rung(second), new Effect.RingBell());
  }

  private static Turn opened(Model model, Message.JobOpened opened) {
    boolean readAnew =
        model.screen() instanceof Screen.Book
            && model.job().map(open -> open.slug().equals(opened.slug())).orElse(false);
    OpenJob job = OpenJob.of(opened, model.handbook(), model.settings());
    if (readAnew) {
      return BookPlace.readAnew(model.with(job));
    }
    Model next = model.with(job).with(new Screen.Round(new Screen.Tray(0, Optional.empty())));
    if (opened.lookOnly()) {
      next = next.trouble(whyToLook(opened.told()));
    } else if (!opened.told().isEmpty()) {
      next = next.trouble(opened.told().get(0));
    }
    return Places.arrive(next, job);
  }

  /** What stands in the way is told last, after what is wrong with the book itself. */
  private static String whyToLook(List<String> told) {
    return told.isEmpty() ? "This book is open to look at only." : told.get(told.size() - 1);
  }

  private static Turn kept(Model model, List<Entry> entries) {
    if (model.job().isEmpty()) {
      return Turn.to(model);
    }
    Model next = model.with(model.job().get().after(entries, model.handbook(), model.settings()));
    return Places.of(next).settled(next);
  }
}
