package linkwright.cli.walk;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.safety.CardContent;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.lookup.LookedUp;
import linkwright.coach.rehearsal.RehearsalPlace;
import linkwright.routine.Caution;
import linkwright.routine.Step;

/** What is told of the step in front, open or rehearsed, when it is asked for. */
final class WalkStep {
  private final WalkLines lines;
  private final WalkCoach coach;
  private final WalkBench bench;

  WalkStep(WalkLines lines, WalkCoach coach, WalkBench bench) {
    this.lines = lines;
    this.coach = coach;
    this.bench = bench;
  }

  /** Its reasons; of a rehearsed step whatever side of it is shown. */
  void why() {
    if (bench.saysFirst()) {
      return;
    }
    Model model = coach.model();
    WalkPage page = new WalkPage(model);
    List<String> later =
        coach.place() == PlaceId.REHEARSAL
            ? page.plain().of(RehearsalPlace.reasons(model))
            : page.later();
    lines.sayAll(later.isEmpty() ? List.of("There is no more to say here.") : later);
  }

  /** Its trade words, or the one that is named. */
  void words(String rest) {
    if (!rest.isEmpty()) {
      new WalkHelp(lines, coach).look(rest);
    } else if (!bench.saysFirst()) {
      Model model = coach.model();
      Optional<Step> step =
          coach.place() == PlaceId.REHEARSAL
              ? RehearsalPlace.step(model)
              : AtBench.of(model).map(AtBench::step);
      lines.sayAll(new WalkPage(model).plain().of(LookedUp.of(step, model)));
    }
  }

  /** Its cautions whole. */
  void cards() {
    if (bench.saysFirst()) {
      return;
    }
    Model model = coach.model();
    WalkPage page = new WalkPage(model);
    List<Caution> cautions =
        coach.place() == PlaceId.REHEARSAL
            ? RehearsalPlace.cautions(model)
            : AtBench.of(model).map(at -> Cards.of(model, at).cautions()).orElse(List.of());
    if (cautions.isEmpty()) {
      lines.say("No caution belongs to this step.");
    }
    cautions.forEach(card -> lines.sayAll(page.plain().of(CardContent.of(model, card, ""))));
  }
}
