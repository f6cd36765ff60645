package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.standing.Handbook;

/**
 * Looks at the other books of the bench, for others may write them: now and then, and on coming.
 */
final class LookRound {
  /** So often, s: what another window says of a flame is to stand here before it is worked by. */
  private static final long EVERY = 3;

  private LookRound() {}

  /** What is not in the tray, though it should be: what cannot be read before what is not yet. */
  static Model told(Model model, int unread, List<String> problems) {
    if (!problems.isEmpty()) {
      int more = problems.size() - 1;
      return model.trouble(
          problems.get(0) + (more == 0 ? "" : " And " + more + " more: linkwright check tells."));
    }
    return unread == 0
        ? model
        : model.told(
            unread
                + (unread == 1 ? " job is" : " jobs are")
                + " not read yet: that goes on when you come back to the tray.");
  }

  /** Her bench is another than it was: plans and prices follow it from here on. */
  static Turn benchRead(Model model, Message.BenchRead message) {
    Handbook handbook = model.handbook().with(message.bench());
    Model read = model.with(handbook);
    if (message.from() == Message.From.HERE) {
      Model next = read.told("Your bench is kept.");
      return Places.of(next).settled(next);
    }
    Model next = model.job().map(job -> read.with(job.seenWith(handbook))).orElse(read);
    String changed = "bench.yaml was changed by another program and is read anew.";
    return Turn.to(
        message.problems().stream()
            .findFirst()
            .map(problem -> next.trouble(changed + " " + problem))
            .orElseGet(() -> next.told(changed)));
  }

  /** What lies in the drawer now; a form that is open offers the lots that are there. */
  static Turn drawerRead(Model model, Message.DrawerRead message) {
    Model read = model.with(model.handbook().with(message.drawer()));
    Model next = model.job().map(read::with).orElse(read);
    if (message.from() == Message.From.HERE) {
      Model told = next.told("It is entered.");
      return Places.of(told).settled(told);
    }
    return next.held()
        .form()
        .map(form -> Places.of(next).edited(next, form, false))
        .orElse(Turn.to(next));
  }

  /** What stands in the way is told last, after what is wrong with the book itself. */
  static String whyToLook(List<String> told) {
    return told.isEmpty() ? "This book is open to look at only." : told.get(told.size() - 1);
  }

  static Turn now(Model model) {
    return Turn.with(model.lookingRound(), new Effect.ReadBench());
  }

  static Turn tick(Turn turn) {
    Model model = turn.model();
    long second = model.steady().getEpochSecond();
    boolean known = model.bench().lookedAt() > 0;
    if (!known || second - model.bench().lookedAt() < EVERY) {
      return turn;
    }
    List<Effect> effects = new ArrayList<>(turn.effects());
    effects.add(new Effect.ReadBench());
    return new Turn(model.lookingRound(), effects, turn.next());
  }

  /** What the place at hand wants looked at besides. */
  static Turn here(Turn turn) {
    Turn there = Places.of(turn.model()).passing(turn.model());
    List<Effect> effects = new ArrayList<>(turn.effects());
    effects.addAll(there.effects());
    return new Turn(there.model(), effects, turn.next());
  }

  /** A job was opened: at the wait that she came for, else where its work is. */
  static Turn opened(Model before, Model next, OpenJob job) {
    boolean toWait = before.bench().mind().toward().filter(job.slug()::equals).isPresent();
    PlaceId place =
        toWait
            ? DueWaits.placeOf(next, job)
            : before.held().opensAt().orElseGet(() -> Places.firstOf(job));
    Turn there = Turn.goTo(next, place);
    if (before.held() instanceof HotWorkHeld asked && asked.then().isEmpty()) {
      // What is asked first stays in front of where the job begins.
      Turn arrived = Coach.arrived(before, there);
      there =
          new Turn(
              arrived.model().with(HotWorkHeld.before(arrived.model().held())),
              arrived.effects(),
              Optional.empty());
    }
    List<Effect> effects = new ArrayList<>(there.effects());
    effects.add(new Effect.ReadBench());
    effects.add(new Effect.OpenStudent("", ""));
    if (before.held().place() == PlaceId.MADE_AGAIN) {
      // What was typed for it has become the new job's book only now.
      before
          .held()
          .form()
          .ifPresent(form -> effects.addAll(Drafting.entered(before, form).effects()));
    }
    return new Turn(there.model(), effects, there.next());
  }
}
