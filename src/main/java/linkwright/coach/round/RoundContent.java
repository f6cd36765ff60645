package linkwright.coach.round;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.ForecastWords;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.TypedBefore;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.keys.Act;
import linkwright.job.JobState;

/** How a job stands at each place of the way round: the places in the order of the work. */
final class RoundContent {
  private static final Set<Form.Purpose> FILES =
      EnumSet.of(Form.Purpose.WRITE_OUT, Form.Purpose.TAKE_ROWS);

  private RoundContent() {}

  static Content of(Model model) {
    OpenJob job = model.job().orElseThrow();
    List<Acts.Choice> choices = new ArrayList<>();
    for (RoundLines.Line line : RoundLines.ALL) {
      Act act = line.act();
      boolean groupEnds = act == Act.TO_WEIGH_IN;
      String stands = line.stands().apply(model, job) + typed(act, model, job);
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

  private static String typed(Act act, Model model, OpenJob job) {
    Stream<Form.Purpose> waits =
        switch (act) {
          case TO_TRAY -> jobless(model, job, false);
          case TO_EXCHANGE -> jobless(model, job, true);
          default -> DraftWords.waiting(job.drafts()).stream().filter(form -> placeOf(form) == act);
        };
    return waits.findAny().isPresent() ? "; typed, not entered" : "";
  }

  /** Forms that are kept with no job: those of files out of and into this one, or all others. */
  private static Stream<Form.Purpose> jobless(Model model, OpenJob job, boolean filesOfThis) {
    return DraftWords.waiting(DraftWords.jobless(model)).stream()
        .filter(
            form ->
                DraftWords.abouts(Drafting.jobless(model, form)).stream()
                    .anyMatch(
                        about ->
                            filesOfThis == (FILES.contains(form) && about.equals(job.slug()))));
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
      case JOINTS, PERSON -> Act.TO_BENCH;
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
}
