package linkwright.coach;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Content;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Pieces;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.StillToDoWords;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.kernel.safety.OtherJobs;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.round.RoundPlace;

/** What is to be shown of a model: what its place says, and what is said everywhere. */
public final class Pages {
  private Pages() {}

  /** The page of a model. */
  public static Page of(Model model) {
    Optional<Writing.Failed> failed =
        model.writing() instanceof Writing.Failed not ? Optional.of(not) : Optional.empty();
    Place place = Places.of(model);
    InTradeWords words = new InTradeWords(JobWords.tradeWords(model), model.settings().units());
    Content body =
        words.of(failed.map(FailedWrite::content).orElseGet(() -> AskedOnce.content(place, model)));
    List<Act> acts = AskedOnce.acts(place, model);
    return new Page(
        model.job().map(Pages::name).orElse("Linkwright"),
        body,
        failed.isPresent() ? 0 : model.held().turned(),
        model.held().form().isPresent() ? Act.TURN : Act.MORE,
        waits(model),
        HotWorkWords.head(model),
        model.job().flatMap(Pages::chain),
        // Where letters are typed no key turns it over.
        model.held() instanceof FindHeld ? "" : StillToDoWords.of(model),
        words.said(model.notice().text()),
        model.notice().trouble(),
        words.of(failed.isPresent() ? open(FailedWrite.ACTS) : open(model, place, acts, body)),
        away(model, acts),
        failed.isPresent()
            ? Optional.empty()
            : AcrossRoom.of(model, place, acts, body).map(words::of));
  }

  /** The job's name, and at every place of it whether anything can be entered. */
  private static String name(OpenJob open) {
    String name = open.state().course().name();
    return (name.isBlank() ? open.slug() : name) + (open.lookOnly() ? ", looked at only" : "");
  }

  /** What only the places of the job lead to. */
  private static Set<Act> away(Model model, List<Act> acts) {
    if (model.job().isEmpty()) {
      return Set.of();
    }
    Set<Act> away = new HashSet<>(RoundPlace.places(model));
    acts.forEach(away::remove);
    away.removeAll(EverywhereActs.ALL);
    return away;
  }

  private static List<WaitShown> waits(Model model) {
    return model.waits().stream()
        .map(wait -> OtherJobs.told(model, wait))
        .map(
            wait ->
                new WaitShown(
                    wait.slug() + "/" + wait.run().id().written(),
                    wait.run().name(),
                    wait.job(),
                    Clock.running(wait.run().left(model.steady()).toSeconds()),
                    wait.run().rings(model.steady()),
                    !model.settings().isOn("flash") || model.steady().getEpochSecond() % 2 == 0,
                    "",
                    wait.isWatch()))
        .toList();
  }

  /** The chain across the top: links that have come furthest first. */
  private static Optional<Pieces> chain(OpenJob job) {
    return ChainPieces.of(job);
  }

  private static List<Page.Open> open(List<Act> acts) {
    return acts.stream()
        .map(act -> new Page.Open(Optional.of(act), act.words(), act == Act.GIVE_UP))
        .toList();
  }

  /** What stands in the body with its key needs no room below it; where the work is, it does. */
  private static Set<Act> inBody(Content body) {
    Set<Act> acts = new HashSet<>();
    for (Part part : body.parts()) {
      if (part instanceof Acts list) {
        list.choices().stream()
            .filter(choice -> !choice.now())
            .forEach(choice -> acts.add(choice.act()));
      }
    }
    return acts;
  }

  /** Columns in which a line of keys has room for more than leads on. */
  private static final int WIDE = 80;

  /** What is about one line of a list. */
  private static final Set<Act> OF_A_LINE =
      Set.of(
          Act.CHOOSE,
          Act.LEAVE_OUT,
          Act.SAMPLE,
          Act.CHOOSE_TRIAL,
          Act.SAY_WHERE,
          Act.PUT_AWAY,
          Act.SEARCH);

  /** How many lines the place's list has; as many as you like where it shows one of them whole. */
  private static int lines(List<Act> acts, Content body) {
    if (acts.contains(Act.OPEN_CARD)) {
      return Integer.MAX_VALUE;
    }
    int lines = 0;
    for (Part part : body.parts()) {
      if (part instanceof Table table && table.chosen() >= 0) {
        lines = Math.max(lines, table.all());
      }
    }
    return lines;
  }

  /** Whether a key leads somewhere here: one that is about a line needs one. */
  private static boolean leads(Act act, boolean list, int lines) {
    return act == Act.UP ? lines > 1 : !list || lines > 0 || !OF_A_LINE.contains(act);
  }

  private static List<Page.Open> open(Model model, Place place, List<Act> acts, Content body) {
    Set<Act> shown = inBody(body);
    if (model.held().form().isPresent()) {
      return ofForm(model.held().form().get());
    }
    if (place.takesEveryKey()) {
      return place.keyWords().stream()
          .map(words -> new Page.Open(Optional.empty(), words, !words.startsWith("up ")))
          .toList();
    }
    List<Page.Open> open = new ArrayList<>();
    if (DueWaits.next(model).isPresent()) {
      open.add(new Page.Open(Optional.of(Act.TO_DUE), Act.TO_DUE.words()));
    }
    boolean list = acts.contains(Act.UP);
    int lines = lines(acts, body);
    for (Act act : acts) {
      if (!leads(act, list, lines)) {
        continue;
      }
      boolean taken = act == acts.get(0) && !open.isEmpty() && hasKeyOf(act, open, model);
      if (taken || shown.contains(act) || act == Act.UNDO || act == Act.LESS || act == Act.LEAVE) {
        continue;
      }
      if (saidAlready(open, place.says(model, act)) || behindACard(acts, act)) {
        continue;
      }
      if (act == Act.UP) {
        open.add(new Page.Open(Optional.empty(), "up down another"));
      } else if (act != Act.DOWN) {
        // The whole of it stands in the question.
        String says = act == Act.STILL_LIT ? "no" : place.says(model, act);
        open.add(new Page.Open(Optional.of(act), says, isWayOut(act, model)));
      }
    }
    if (model.held() instanceof HotWorkHeld) {
      // What is asked here is answered here: no other key does anything.
      open.add(Page.Open.always(Optional.of(Act.HELP), Act.HELP.words()));
      return open;
    }
    open.add(new Page.Open(Optional.of(Act.FIND), Act.FIND.words()));
    KeyMap keys = model.settings().keys();
    back(model).filter(way -> !hasKeyOf(way, open, keys)).ifPresent(open::add);
    // In front of the bench it reaches nothing and says why: it is named where there is room.
    boolean inFront = model.held().place() == PlaceId.BENCH && model.width() >= WIDE;
    if ((place.undoes(model) || inFront)
        && model.job().filter(job -> !job.lookOnly()).isPresent()) {
      open.add(Page.Open.always(Optional.of(Act.UNDO), Act.UNDO.words()));
    }
    open.add(Page.Open.always(Optional.of(Act.HELP), Act.HELP.words()));
    return open;
  }

  /** Whether it is what leads back here: where that key has another sense, and where flames are. */
  private static boolean isWayOut(Act act, Model model) {
    KeyMap keys = model.settings().keys();
    return act == Act.STILL_LIT || keys.firstOf(act).equals(keys.firstOf(Act.ROUND));
  }

  /** What the common key does needs no second key in the line. */
  private static boolean saidAlready(List<Page.Open> open, String says) {
    return open.stream().anyMatch(other -> other.says().equals(says));
  }

  /** A card is turned before a later step is gone to. */
  private static boolean behindACard(List<Act> acts, Act act) {
    return act == Act.NEXT_STEP && acts.contains(Act.SEEN);
  }

  /** The common key goes to the wait that is over, and nowhere else. */
  private static boolean hasKeyOf(Act act, List<Page.Open> open, Model model) {
    Page.Open again = new Page.Open(Optional.of(act), act.words());
    return hasKeyOf(again, open, model.settings().keys());
  }

  private static boolean hasKeyOf(Page.Open way, List<Page.Open> open, KeyMap keys) {
    String key = way.act().map(keys::firstOf).orElse("");
    return open.stream()
        .flatMap(other -> other.act().stream())
        .anyMatch(act -> keys.firstOf(act).equals(key));
  }

  /** Where one comes to by going back: from a place to the job, from the job to the tray. */
  private static Optional<Page.Open> back(Model model) {
    return switch (model.held().place()) {
      case TRAY -> Optional.of(Page.Open.always(Optional.of(Act.LEAVE), Act.LEAVE.words()));
      case ROUND -> Optional.of(Page.Open.always(Optional.of(Act.TO_TRAY), Act.TO_TRAY.words()));
      default -> Optional.of(Page.Open.always(Optional.of(Act.ROUND), "back"));
    };
  }

  private static List<Page.Open> ofForm(Form form) {
    List<Page.Open> open = new ArrayList<>();
    open.add(new Page.Open(Optional.of(Act.KEEP), form.keepWords()));
    open.add(new Page.Open(Optional.empty(), "enter next field"));
    boolean choices =
        form.at() < form.fields().size() && !form.fields().get(form.at()).choices().isEmpty();
    if (choices) {
      open.add(new Page.Open(Optional.empty(), "left right choose"));
    }
    open.add(new Page.Open(Optional.empty(), "ctrl-u empty it"));
    boolean waits = !DraftWords.of(form.purpose()).isEmpty();
    boolean stays =
        waits
            || form.purpose() == Form.Purpose.VARIANTS
            || form.purpose() == Form.Purpose.WHAT_THERE_IS;
    open.add(Page.Open.always(Optional.of(Act.ROUND), stays ? "back, text stays" : "back"));
    if (waits) {
      open.add(new Page.Open(Optional.of(Act.THROW_AWAY), "throw away"));
    }
    // In words that have begun the key is a sign like any other: the line says where it helps.
    String help = form.asksHelp() ? "what is it" : "help if empty";
    open.add(Page.Open.always(Optional.of(Act.HELP), help));
    return open;
  }
}
