package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import linkwright.coach.AtBench;
import linkwright.coach.BenchAsk;
import linkwright.coach.Clock;
import linkwright.coach.JobWords;
import linkwright.coach.Model;
import linkwright.routine.Caution;
import linkwright.routine.Gear;
import linkwright.routine.Remedy;
import linkwright.routine.Step;
import linkwright.routine.Wait;
import linkwright.standing.StillToDo;
import linkwright.view.StillLine;

/** A step of the routine in lines of text: what to do, the piles, what is asked. */
public final class StepLines {
  private StepLines() {}

  /** The whole step with its counts. */
  public static List<String> of(Model model, AtBench at) {
    return of(model, at, Set.of());
  }

  /** The same, without the short lines of cautions that were just read whole. */
  static List<String> of(Model model, AtBench at, Set<String> readWhole) {
    Step step = at.step();
    List<String> lines = new ArrayList<>();
    int all = at.routine().steps().size();
    lines.add("Step " + at.number() + " of " + all + ": " + fill(step.title(), model));
    add(lines, "Do", step.doText(), model);
    add(lines, "Look for", step.lookFor(), model);
    add(lines, "Mind", step.mind(), model);
    add(lines, "Measure", step.measure(), model);
    for (Caution card : at.cautions(model.handbook())) {
      if (!readWhole.contains(card.id())) {
        add(lines, "Caution", card.shortLine(), model);
      }
    }
    for (Wait wait : step.waits()) {
      lines.add(
          "Timer: "
              + wait.name()
              + ", "
              + Clock.spoken((double) wait.seconds())
              + "; timer starts it.");
    }
    lines.addAll(counts(model, at));
    return lines;
  }

  private static void add(List<String> lines, String label, String text, Model model) {
    if (!text.isBlank()) {
      lines.add(label + ": " + fill(text, model));
    }
  }

  private static String fill(String text, Model model) {
    return JobWords.fill(text, model).strip();
  }

  /** The piles of the piece that is counted here, and what is still to do for the whole chain. */
  static List<String> counts(Model model, AtBench at) {
    List<String> lines = new ArrayList<>();
    if (at.counts()) {
      lines.add(piles(at));
    } else {
      boolean done =
          model
              .job()
              .map(job -> job.state().course().stepsDone().contains(at.step().id()))
              .orElse(false);
      lines.add(
          done ? "This step is done." : "Nothing is counted here; an empty line: it is done.");
    }
    String still = model.job().isPresent() ? StillLine.of(model) : "";
    if (!still.isBlank()) {
      lines.add(still + ".");
    }
    return lines;
  }

  private static String piles(AtBench at) {
    String many = capital(at.piece()) + "s " + at.stage();
    if (at.begins()) {
      return many + ": " + at.through() + " so far, " + at.pile().scrapped() + " scrapped.";
    }
    String hand =
        at.inHand() == 0
            ? "none in hand"
            : at.inHand() + " in hand (" + (at.fromRedo() ? "redo" : "new") + ")";
    return many
        + ": "
        + at.waiting()
        + " waiting, "
        + hand
        + ", "
        + at.through()
        + " through, "
        + at.redo()
        + " redo; "
        + at.pile().atOrPast(StillToDo.JUDGED)
        + " checked good, "
        + at.pile().scrapped()
        + " scrapped.";
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /** A caution whole. */
  static List<String> card(Model model, Caution card, String before) {
    List<String> lines = new ArrayList<>();
    lines.add("Before “" + fill(before, model) + "”, caution: " + fill(card.title(), model));
    add(lines, "What can happen", card.canHappen(), model);
    card.doList().forEach(each -> add(lines, "Do", each, model));
    card.doNot().forEach(each -> lines.add(fill(each, model)));
    card.ifItGoesWrong().forEach(each -> add(lines, "If it goes wrong", each, model));
    for (Gear gear : card.wear()) {
      lines.add("Sign " + gear.sign() + ": " + fill(gear.says(), model));
    }
    add(lines, "Source", card.source(), model);
    lines.add(fill(card.defers(), model));
    lines.add("An empty line: seen.");
    return lines;
  }

  /** Why, and what may go wrong. */
  static List<String> detail(Model model, AtBench at) {
    List<String> lines = new ArrayList<>();
    add(lines, "Why", at.step().why(), model);
    for (Remedy remedy : at.step().wrong()) {
      add(lines, "You see", remedy.sees(), model);
      add(lines, "  It means", remedy.means(), model);
      add(lines, "  Remedy", remedy.remedy(), model);
    }
    return lines.isEmpty() ? List.of("There is no more to say of this step.") : lines;
  }

  /** The reasons to choose from. */
  static List<String> why(Model model, AtBench at, BenchAsk.Why why) {
    List<String> lines = new ArrayList<>();
    String pieces = why.count() + " " + at.piece() + (why.count() == 1 ? "" : "s");
    lines.add(pieces + (why.scrap() ? " to scrap" : " to do again") + ": what do you see?");
    int number = 1;
    for (Remedy choice : why.choices()) {
      lines.add(number + " " + fill(choice.sees() + ". " + choice.means(), model));
      number++;
    }
    lines.add("The number of the reason; an empty line: none of them, nothing is counted.");
    return lines;
  }

  /** What to do about a fault that was just entered. */
  static List<String> remedy(Model model, Remedy remedy) {
    List<String> lines = new ArrayList<>();
    add(lines, "Remedy", remedy.remedy(), model);
    if (!remedy.backTo().isEmpty()) {
      lines.add(
          "Back to “" + remedy.backTo() + "”. Failed twice at one joint: saw it out or scrap it.");
    }
    return lines;
  }
}
