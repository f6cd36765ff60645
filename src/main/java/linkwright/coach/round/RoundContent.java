package linkwright.coach.round;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.CardWords;
import linkwright.coach.form.ForecastWords;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.DraftWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.ShortageWords;
import linkwright.coach.kernel.TypedBefore;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Act;
import linkwright.job.JobState;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.StockLeft;

/** How a job stands at each place of the way round: the places in the order of the work. */
final class RoundContent {
  private RoundContent() {}

  static Content of(Model model) {
    OpenJob job = model.job().orElseThrow();
    List<Acts.Choice> choices = new ArrayList<>();
    for (Act act : RoundPlace.PLACES) {
      boolean groupEnds = act == Act.TO_WEIGH_IN;
      String stands = stands(act, model, job) + typed(act, job);
      choices.add(new Acts.Choice(act, stands, act == now(job), groupEnds));
    }
    List<Part> parts = new ArrayList<>(List.of(new Acts(choices)));
    String away = "; " + ActMention.of(Act.THROW_AWAY) + " throws away, one by one";
    DraftWords.badge(job.drafts())
        .forEach(badge -> parts.add(new Prose(Prose.Kind.ELSEWHERE, badge + away)));
    if (!job.state().course().closed() && job.standing().counted().plan().isPresent()) {
      ForecastWords.of(job.standing()).ifPresent(words -> parts.add(Prose.aside(words)));
    }
    TypedBefore.offer(model).ifPresent(parts::add);
    job.told().stream()
        .filter(sentence -> !sentence.equals(model.notice().text()))
        .forEach(sentence -> parts.add(Prose.stop(sentence)));
    return new Content("places of the job", parts);
  }

  private static String typed(Act act, OpenJob job) {
    boolean waits =
        DraftWords.waiting(job.drafts()).stream().anyMatch(form -> placeOf(form) == act);
    return waits ? "; typed, not entered" : "";
  }

  /** Where such a form is opened. */
  private static Act placeOf(Form.Purpose form) {
    return switch (form) {
      case TEST_PIECE -> Act.TO_TESTS;
      case TRIAL_LENGTH -> Act.TO_TRIAL;
      case ADD_WIRE, CUT_WIRE, DISCARD_WIRE, RETURN_WIRE, TAKE_SOLDER -> Act.TO_WIRE;
      case CARD -> Act.TO_CARD;
      case PILE -> Act.TO_PILES;
      case NOTE, STRIKE -> Act.TO_BOOK;
      case JOINTS -> Act.TO_BENCH;
      case TIMER, END_WAIT -> Act.TO_TIMERS;
      case WEIGH_IN, WEIGH_OUT, PRICES, CLOSE -> Act.TO_WEIGH_IN;
      default -> Act.TO_PLAN;
    };
  }

  private static Act now(OpenJob job) {
    JobState state = job.state();
    if (state.course().wish().isEmpty() && job.standing().counted().part().isEmpty()) {
      return Act.TO_PLAN;
    }
    if (state.accounts().weighedIn().chainG().isPresent()) {
      return Act.TO_WEIGH_IN;
    }
    return Act.TO_BENCH;
  }

  private static String stands(Act act, Model model, OpenJob job) {
    JobState state = job.state();
    return switch (act) {
      case TO_PLAN -> plan(model, job);
      case TO_NEAREST -> nearest(model, job);
      case TO_TESTS ->
          state.trials().pieces().isEmpty()
              ? "none made yet"
              : state.trials().pieces().size()
                  + " made, "
                  + (state.trials().sample().isPresent()
                      ? "the sample link is chosen"
                      : "no sample link yet");
      case TO_TRIAL ->
          !job.makesChain()
              ? "none: this makes no chain"
              : state.trials().lengths().isEmpty()
                  ? "none hung yet"
                  : state.trials().lengths().size()
                      + " hung, "
                      + (state.trials().chosenLength().isPresent()
                          ? "one is followed"
                          : "none is followed yet");
      case TO_BENCH ->
          AtBench.of(model)
              .map(at -> "step " + at.number() + ": " + at.step().title())
              .orElse("its routine is missing");
      case TO_WEIGH_IN ->
          state.course().closed()
              ? "closed"
              : state.accounts().weighedIn().chainG().isPresent() ? "weighed" : "not yet";
      case TO_CARD -> CardWords.line(state.card(), model.today());
      case TO_EXCHANGE -> "files for other programs, rows out of theirs";
      case TO_BOOK -> job.entries().size() == 1 ? "1 entry" : job.entries().size() + " entries";
      case TO_TIMERS ->
          model.waits().isEmpty()
              ? "none is running"
              : model.waits().size() + " running, " + model.due().size() + " due";
      case TO_PILES -> piles(model);
      case TO_WIRE -> wire(model, job);
      case TO_CAUTIONS -> cautions(model, job);
      case TO_RECKONER -> "sums on wire, rings, blanks and solder";
      case TO_LOOKUP -> "words, metals, solders, clasps, marks";
      case TO_REHEARSAL -> "the steps dry, nothing is entered";
      case TO_LESSON -> "be asked before the step is shown";
      case TO_TRAY -> "all jobs";
      default -> "";
    };
  }

  /** How many of the routine's cautions she has still to see whole, each before its step. */
  private static String cautions(Model model, OpenJob job) {
    List<Cards.Card> cards = Cards.ofRoutine(model, job);
    long whole = cards.stream().filter(Cards.Card::whole).count();
    return cards.size()
        + (cards.size() == 1 ? " applies, " : " apply, ")
        + (whole == 0 ? "all seen" : whole + " to be seen");
  }

  /** What waits anywhere, with the steps where it is taken up. */
  private static String piles(Model model) {
    String line = WaitingWords.line(WaitingWords.waiting(model));
    return line.isEmpty() ? "nothing waits" : line;
  }

  private static String plan(Model model, OpenJob job) {
    boolean blank = job.state().course().wish().isEmpty();
    if (!job.makesChain()) {
      return blank
          ? "not set: not needed here"
          : job.standing().left().entrySet().stream()
              .map(each -> each.getValue().wanted() + " " + each.getKey())
              .collect(Collectors.joining(", "));
    }
    UnitStyle units = model.settings().units();
    return job.standing()
        .counted()
        .plan()
        .map(plan -> plan.links() + " links, " + units.about(plan.lengthMm(), plan.plusMinusMm()))
        .orElse(blank ? "not set yet" : "set, but it does not come out");
  }

  private static String nearest(Model model, OpenJob job) {
    UnitStyle units = model.settings().units();
    return job.standing()
        .counted()
        .plan()
        .map(plan -> off(plan.offMm(), plan.plusMinusMm(), units))
        .orElse(job.makesChain() ? "once there is a plan" : "none: this makes no chain");
  }

  private static String off(double mm, double doubtMm, UnitStyle units) {
    String by = units.roundedBy(Math.abs(mm), doubtMm);
    return by.matches("0(\\.0+)? .*")
        ? "as long as wished, as far as can be told: other chains"
        : by + (mm < 0 ? " shorter" : " longer") + " than wished: other chains";
  }

  private static String wire(Model model, OpenJob job) {
    if (!job.makesChain()) {
      return "not counted here";
    }
    if (job.standing().counted().plan().isEmpty()) {
      return "once there is a plan";
    }
    List<String> shortages = ShortageWords.of(job.standing());
    StockLeft stock = job.standing().stockLeft();
    String left = model.settings().units().length(stock.leftMm(PieceKind.LINK)) + " left";
    // What lacks is read whole; what is left stands at the wire's own place.
    return shortages.isEmpty() ? left : "lacks " + String.join(", ", shortages);
  }
}
