package linkwright.coach;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.MessageCases;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.StudentsAtHand;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.tray.TrayHeld;
import linkwright.coach.tray.TrayPlace;
import linkwright.lesson.Learner;
import linkwright.standing.Handbook;

/**
 * The coach's one function: a model and a message give the next model and effects. Keys go to the
 * form that is open, then to the acts of the place, then to those that every place has.
 *
 * <p>Committed, then shown: where something is to be written, the model stays as it was until it is
 * on the disk; keys pressed meanwhile wait and are read against the model after it. What could not
 * be written is told until it is tried again or given up; nothing else counts before.
 */
public final class Coach implements MessageCases<Turn> {
  private static final String UNSEEN =
      "[\\p{Cc}\\x{200e}\\x{200f}\\x{202a}-\\x{202e}\\x{2066}-\\x{2069}]";

  private final Model model;

  private Coach(Model model) {
    this.model = model;
  }

  /** The tray, before anything was read. */
  public static Model begin(
      Handbook handbook, Settings settings, Paging paging, Instant now, int width, int height) {
    TrayHeld tray = new TrayHeld(0, Optional.empty());
    return Model.begin(handbook, settings, paging, now, width, height, tray);
  }

  /** What follows from a message. */
  public static Turn update(Model model, Message message) {
    if (model.writing() instanceof Writing.Pending pending && UserMessages.is(message)) {
      return Turn.to(model.with(pending.and(message)));
    }
    if (model.writing() instanceof Writing.Failed failed && UserMessages.is(message)) {
      return arrived(model, FailedWrite.answered(model, failed, message));
    }
    Turn answer = message.answer(new Coach(model));
    Turn turn = ClosedGate.held(model, DryGate.held(model, answer));
    return JoblessDrafts.after(model, message, StudentGate.after(arrived(model, turn)));
  }

  /** Goes where the turn leads, then waits for what is to be written. */
  static Turn arrived(Model before, Turn turn) {
    if (turn.model().writing() instanceof Writing.Pending) {
      return turn;
    }
    Turn at = turn;
    while (at.next().isPresent()) {
      Turn there = Places.of(at.next().get()).enter(at.model());
      List<Effect> effects = new ArrayList<>(at.effects());
      effects.addAll(there.effects());
      at = new Turn(there.model(), effects, there.next());
    }
    Optional<Effect> write = at.effects().stream().filter(Effect::writes).findFirst();
    if (write.isEmpty()) {
      return at;
    }
    Writing pending =
        new Writing.Pending(write.get(), at.model().held(), at.model().notice(), List.of());
    Model waits = at.model().with(before.held()).with(before.notice()).with(pending);
    return new Turn(waits, at.effects(), Optional.empty());
  }

  @Override
  public Turn keyPressed(Message.KeyPressed message) {
    Key key = message.key();
    return message
        .at()
        .map(when -> Bounce.key(model, key, when))
        .orElseGet(() -> Bounce.untimed(model, key));
  }

  @Override
  public Turn actChosen(Message.ActChosen message) {
    return act(Turning.ACTS.contains(message.act()) ? model : model.quiet(), message.act());
  }

  /** Pasted text goes into a field as if typed, line breaks as spaces; elsewhere it is dropped. */
  @Override
  public Turn pasted(Message.Pasted message) {
    boolean finds = model.held() instanceof FindHeld;
    if (model.held().form().isEmpty() && !finds) {
      return Turn.to(model.told("What was pasted is dropped: only a field takes it."));
    }
    String oneLine = message.text().replaceAll("[\\r\\n\\t]+", " ").replaceAll(UNSEEN, "");
    return key(model, Key.of(oneLine));
  }

  @Override
  public Turn rowChosen(Message.RowChosen message) {
    return Places.of(model).row(model.quiet(), message.row());
  }

  @Override
  public Turn fieldChosen(Message.FieldChosen message) {
    return model
        .held()
        .form()
        .map(form -> OpenForm.field(model.quiet(), form, message.field()))
        .orElseGet(() -> Turn.to(model));
  }

  @Override
  public Turn ticked(Message.Ticked message) {
    Model moved = HotWorkGate.drawn(Clocks.moved(model, message), message.drawn());
    return LookRound.here(LookRound.tick(Bell.tick(FlamesElsewhere.drawn(moved, message.drawn()))));
  }

  @Override
  public Turn resized(Message.Resized message) {
    return Turn.to(model.sized(message.width(), message.height()));
  }

  @Override
  public Turn trayRead(Message.TrayRead message) {
    Model ready =
        message
            .hands()
            .map(hands -> model.with(model.handbook().with(hands)))
            .orElse(model)
            .withTray(message.jobs());
    if (message.drawer().isPresent()) {
      ready = ready.with(ready.handbook().with(message.drawer().get()));
    }
    return LookRound.now(LookRound.told(ready, message.unread(), message.problems()));
  }

  @Override
  public Turn trayGoesOn(Message.TrayGoesOn message) {
    return Turn.to(TrayPlace.listed(model, message.jobs()));
  }

  @Override
  public Turn jobOpened(Message.JobOpened message) {
    Optional<OpenJob> open = model.job();
    boolean readAnew = open.map(job -> job.slug().equals(message.slug())).orElse(false);
    // The handbook of the job before it knows nothing of what was learnt after that was closed.
    Handbook all =
        message.hands().map(hands -> model.handbook().with(hands)).orElse(model.handbook());
    Handbook handbook = all.forJob(message.slug(), message.entries());
    OpenJob job =
        OpenJob.of(message, handbook, model.settings()).steadied(model.ran(message.slug()), model);
    Model next = model.with(handbook).with(job).with(new Writing.Nothing());
    if (readAnew) {
      Optional<Turn> overtaken = FailedWrite.overtaken(model, next);
      return overtaken.isPresent() ? overtaken.get() : Places.of(model).readAnew(next);
    }
    if (message.lookOnly()) {
      next = next.trouble(LookRound.whyToLook(message.told()));
    } else if (!message.told().isEmpty()) {
      next = next.trouble(message.told().get(0));
    } else {
      next = Clocks.told(next, message.entries(), job);
    }
    return LookRound.opened(model, next, job);
  }

  @Override
  public Turn jobNotOpened(Message.JobNotOpened message) {
    return Turn.to(
        model.toward(Optional.empty()).with(new Writing.Nothing()).trouble(message.why()));
  }

  @Override
  public Turn kept(Message.Kept message) {
    if (model.job().isEmpty()) {
      return Turn.to(model.with(new Writing.Nothing()));
    }
    OpenJob job =
        model
            .job()
            .get()
            .after(message.entries(), model.handbook(), model.settings())
            .steadied(model.job().get().state().timers(), model);
    Model next = model.with(job).with(new Writing.Nothing());
    if (model.writing() instanceof Writing.Pending pending) {
      next = next.with(pending.held()).with(pending.notice());
      Turn settled = arrived(next, Places.of(next).settled(next));
      return UserMessages.read(
          OneSitting.here(HotWorkGate.nothingLeft(settled, message.entries())), pending.waiting());
    }
    if (message.entries().isEmpty()) {
      return Turn.to(next.told("The other program has gone: what you enter here is written."));
    }
    return Places.of(next).settled(next);
  }

  @Override
  public Turn othersRead(Message.OthersRead message) {
    Model read = Clocks.read(model, message);
    return FlamesElsewhere.isAsked(model)
        ? FlamesElsewhere.answered(model, read)
        : OneSitting.here(Turn.to(HotWorkGate.first(FlamesElsewhere.noted(model, read))));
  }

  /** What the place was to hold then, it holds now. */
  @Override
  public Turn keptElsewhere(Message.KeptElsewhere message) {
    Model read = model.withBench(message.bench().device(), message.bench().books());
    if (read.writing() instanceof Writing.Pending pending && OneSitting.isEnding(pending.asked())) {
      return OneSitting.ended(read, pending);
    }
    Model next = read.with(new Writing.Nothing());
    if (model.writing() instanceof Writing.Pending pending) {
      next = next.with(pending.held()).with(pending.notice());
      return UserMessages.read(arrived(next, Places.of(next).settled(next)), pending.waiting());
    }
    return Places.of(next).settled(next);
  }

  @Override
  public Turn notKept(Message.NotKept message) {
    if (model.writing() instanceof Writing.Pending pending
        && OneSitting.isEnding(pending.asked())) {
      return OneSitting.ended(model, pending);
    }
    return model.writing() instanceof Writing.Pending pending
        ? OtherBook.says(model, pending)
            .orElseGet(() -> Turn.to(FailedWrite.told(model, pending, message.why())))
        : Turn.to(model.trouble("Not written, and not counted: " + message.why()));
  }

  @Override
  public Turn benchRead(Message.BenchRead message) {
    return LookRound.benchRead(model, message);
  }

  @Override
  public Turn drawerRead(Message.DrawerRead message) {
    return LookRound.drawerRead(model, message);
  }

  @Override
  public Turn led(Message.Led message) {
    return model.held() instanceof HotWorkHeld
        ? Turn.to(model.told("First the flames; what was asked for has its key then."))
        : Places.of(message.place()).enterAt(model, message.id());
  }

  /** What the place was to hold then, it holds now. */
  @Override
  public Turn studentRead(Message.StudentRead message) {
    StudentsAtHand known = model.learning().with(message.roster());
    if (!message.id().isEmpty()) {
      known =
          known.with(
              Learner.of(
                  message.id(),
                  message.entries(),
                  model.settings().zone(),
                  message.roster().gapDays()));
    }
    Model next = model.with(known).with(new Writing.Nothing());
    if (model.writing() instanceof Writing.Pending pending) {
      next = next.with(pending.held()).with(pending.notice());
      return UserMessages.read(arrived(next, Places.of(next).settled(next)), pending.waiting());
    }
    // Elsewhere it is only known from now on: nothing that is open there was asked for it.
    return Places.of(next).isDry() ? Places.of(next).settled(next) : Turn.to(next);
  }

  @Override
  public Turn classRead(Message.ClassRead message) {
    return Turn.to(model.with(model.learning().with(message.roster()).with(message.room())));
  }

  @Override
  public Turn troubled(Message.Troubled message) {
    return Turn.to(model.trouble(message.sentence()));
  }

  @Override
  public Turn settingsKept(Message.SettingsKept message) {
    if (message.trouble().isPresent()) {
      return Turn.to(model.trouble(message.trouble().get()));
    }
    Model next = model.with(message.settings()).told("The settings are kept.");
    return Places.of(next).settled(next);
  }

  @Override
  public Turn copied(Message.Copied message) {
    return Turn.to(
        message.taken()
            ? model.told("Copied: " + message.what() + ".")
            : model.trouble(
                "Nothing was copied: this terminal does not say that it takes copies. The command"
                    + " line tells a plan too: linkwright plan, and the name of the job's book."));
  }

  @Override
  public Turn writtenOut(Message.WrittenOut message) {
    return Places.of(model).writtenOut(model, message);
  }

  @Override
  public Turn rowsRead(Message.RowsRead message) {
    return Places.of(model).rowsRead(model, message);
  }

  @Override
  public Turn ended(Message.Ended message) {
    return Turn.with(model, new Effect.ShutBook(), HotWorkGate.leave(model));
  }

  /** What a key means now; nothing in a form, and where any key is taken. */
  static Optional<Act> meant(Model model, Key key) {
    Place place = Places.of(model);
    if (model.held().form().isPresent() || place.takesEveryKey()) {
      return Optional.empty();
    }
    if (DueWaits.goes(model, key)) {
      return Optional.of(Act.TO_DUE);
    }
    if (AcrossRoom.ends(model, key)) {
      return Optional.of(Act.ACROSS);
    }
    KeyMap keys = model.settings().keys();
    return keys.find(key, AskedOnce.acts(place, model))
        .or(() -> keys.find(key, EverywhereActs.ALL));
  }

  static Turn key(Model model, Key key) {
    if (key.equals(Key.ctrl("c"))) {
      return Turn.with(model, new Effect.ShutBook(), HotWorkGate.leave(model));
    }
    Place place = Places.of(model);
    Optional<Form> form = model.held().form();
    if (key.ctrl() && model.settings().keys().find(key, List.of(Act.COPY)).isPresent()) {
      return EverywhereActs.act(model, Act.COPY);
    }
    if (form.isPresent()) {
      return OpenForm.key(model, form.get(), key);
    }
    if (DueWaits.goes(model, key)) {
      return DueWaits.go(model);
    }
    if (AcrossRoom.ends(model, key)) {
      return EverywhereActs.act(model, Act.ACROSS);
    }
    Optional<Act> act = model.settings().keys().find(key, AskedOnce.acts(place, model));
    if (act.isEmpty() && place.takesEveryKey()) {
      return place.typed(model, key);
    }
    return act.or(() -> model.settings().keys().find(key, EverywhereActs.ALL))
        .map(found -> HotWorkGate.act(model, place, found))
        .orElseGet(() -> typed(model, place, key));
  }

  /** What a key does that no act has; one that does nothing is told why. */
  private static Turn typed(Model model, Place place, Key key) {
    Turn turn = place.typed(model, key);
    boolean nothing = turn.effects().isEmpty() && turn.next().isEmpty();
    return nothing && turn.model().equals(model)
        ? NotNow.turn(model, place, key).orElse(turn)
        : turn;
  }

  /** An act by itself, whatever key it has: a click, or a word of the plain walk. */
  private static Turn act(Model model, Act act) {
    Place place = Places.of(model);
    if (model.held().form().isPresent()) {
      return OpenForm.act(model, model.held().form().get(), act);
    }
    if (act == Act.TO_DUE && DueWaits.next(model).isPresent()) {
      return DueWaits.go(model);
    }
    if (AskedOnce.acts(place, model).contains(act)) {
      return HotWorkGate.act(model, place, act);
    }
    return EverywhereActs.ALL.contains(act)
        ? HotWorkGate.act(model, place, act)
        : Turn.to(model.told(NotNow.sentence(model, act)));
  }
}
