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
import linkwright.coach.content.Wait;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.DraftWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;

/** What is to be shown of a model: what its place says, and what is said everywhere. */
public final class Pages {
  private Pages() {}

  /** The page of a model. */
  public static Page of(Model model) {
    Optional<Writing.Failed> failed =
        model.writing() instanceof Writing.Failed not ? Optional.of(not) : Optional.empty();
    Place place = Places.of(model);
    Content body = failed.map(Failing::content).orElseGet(() -> place.content(model));
    return new Page(
        model.job().map(open -> open.state().course().name()).orElse("Linkwright"),
        body,
        failed.isPresent() ? 0 : model.held().turned(),
        model.held().form().isPresent() ? Act.TURN : Act.MORE,
        wait(model),
        HotWorkWords.head(model),
        model.job().flatMap(Pages::chain),
        model.job().map(job -> StillToDoWords.line(model, job)).orElse(""),
        model.notice().text(),
        model.notice().trouble(),
        failed.isPresent() ? open(Failing.ACTS) : open(model, place, inBody(body)),
        away(model, place),
        failed.isPresent() ? Optional.empty() : AcrossRoom.of(model, place, body));
  }

  /** What only the places of the job lead to. */
  private static Set<Act> away(Model model, Place place) {
    if (model.job().isEmpty()) {
      return Set.of();
    }
    Set<Act> away = new HashSet<>(Places.of(PlaceId.ROUND).acts(model));
    away.removeAll(place.acts(model));
    away.removeAll(EverywhereActs.ALL);
    return away;
  }

  private static Optional<Wait> wait(Model model) {
    return model.waits().stream()
        .findFirst()
        .map(
            wait ->
                new Wait(
                    wait.run().name(),
                    wait.job(),
                    Clock.running(wait.run().left(model.steady()).toSeconds()),
                    wait.run().rings(model.steady()),
                    ""));
  }

  /** The chain across the top: links that have come furthest first. */
  private static Optional<Pieces> chain(OpenJob job) {
    return ChainPieces.of(job);
  }

  private static List<Page.Open> open(List<Act> acts) {
    return acts.stream().map(act -> new Page.Open(Optional.of(act), act.words())).toList();
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

  private static List<Page.Open> open(Model model, Place place, Set<Act> shown) {
    if (model.held().form().isPresent()) {
      return ofForm(model.held().form().get());
    }
    if (place.takesEveryKey()) {
      return place.keyWords().stream()
          .map(words -> Page.Open.always(Optional.empty(), words))
          .toList();
    }
    List<Page.Open> open = new ArrayList<>();
    if (DueWaits.next(model).isPresent()) {
      open.add(new Page.Open(Optional.of(Act.TO_DUE), Act.TO_DUE.words()));
    }
    for (Act act : place.acts(model)) {
      if (shown.contains(act) || act == Act.UNDO || act == Act.LESS || act == Act.LEAVE) {
        continue;
      }
      if (saidAlready(open, place.says(model, act)) || behindACard(place, model, act)) {
        continue;
      }
      if (act == Act.UP) {
        open.add(new Page.Open(Optional.empty(), "up down another"));
      } else if (act != Act.DOWN) {
        open.add(new Page.Open(Optional.of(act), place.says(model, act)));
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
    if (model.job().filter(job -> !job.lookOnly()).isPresent()) {
      open.add(Page.Open.always(Optional.of(Act.UNDO), Act.UNDO.words()));
    }
    open.add(Page.Open.always(Optional.of(Act.HELP), Act.HELP.words()));
    return open;
  }

  /** What the common key does needs no second key in the line. */
  private static boolean saidAlready(List<Page.Open> open, String says) {
    return open.stream().anyMatch(other -> other.says().equals(says));
  }

  /** A card is turned before a later step is gone to. */
  private static boolean behindACard(Place place, Model model, Act act) {
    return act == Act.NEXT_STEP && place.acts(model).contains(Act.SEEN);
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
    open.add(Page.Open.always(Optional.of(Act.ROUND), "back, kept typed"));
    if (!DraftWords.of(form.purpose()).isEmpty()) {
      open.add(new Page.Open(Optional.of(Act.THROW_AWAY), "throw away"));
    }
    open.add(Page.Open.always(Optional.of(Act.HELP), "what is it"));
    return open;
  }
}
