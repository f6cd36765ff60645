package linkwright.view;

import java.util.List;
import java.util.Optional;
import linkwright.coach.bench.Bench;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.JobWords;
import linkwright.coach.kernel.Model;
import linkwright.routine.Caution;
import linkwright.routine.Remedy;
import linkwright.text.Text;

/** The bench at arm's length: the count or the timer in big figures, then do, look for, mind. */
final class BenchView {
  private BenchView() {}

  static void draw(Canvas body, Model model, BenchHeld screen) {
    Optional<AtBench> found = Bench.target(model);
    if (found.isEmpty()) {
      body.wrapped(
          0,
          0,
          body.width(),
          4,
          "The routine of this job is not among the files at hand.",
          Tone.WARNING);
      return;
    }
    AtBench at = found.get();
    if (Bench.away(model)) {
      away(body, model);
      return;
    }
    Optional<Caution> card = Bench.caution(model);
    if (card.isPresent()) {
      String before = "before “" + at.step().title() + "”";
      CardView.draw(body, model, card.get(), before, screen.cardPage());
      return;
    }
    if (screen.ask() instanceof BenchAsk.Why why) {
      why(body, model, at, why);
      return;
    }
    if (screen.ask() instanceof BenchAsk.Away away) {
      leaving(body, away);
      return;
    }
    step(body, model, screen, at);
  }

  private static void step(Canvas body, Model model, BenchHeld screen, AtBench at) {
    String title = JobWords.fill(at.step().title(), model);
    body.text(0, 0, body.width(), title, Tone.ACCENT);
    int row = 1;
    if (at.counts()) {
      int high = Math.max(3, Math.min(9, body.height() / 3));
      PilesView.draw(body.area(0, 1, body.width(), high), model, screen, at);
      row += high;
    } else {
      int high =
          BigTimer.draw(body.area(0, 1, body.width(), Math.max(0, body.height() / 3)), model);
      row += high;
    }
    if (screen.remedy().isPresent()) {
      row = remedy(body, row, model, screen.remedy().get());
    }
    StepTexts.draw(
        body.area(0, row, body.width(), Math.max(0, body.height() - row)),
        model,
        at,
        screen.part());
  }

  private static int remedy(Canvas body, int from, Model model, Remedy remedy) {
    int row = labelled(body, from, model, "remedy", remedy.remedy(), Tone.ACCENT);
    if (!remedy.backTo().isEmpty()) {
      row =
          labelled(
              body,
              row,
              model,
              "",
              "Back to “"
                  + remedy.backTo()
                  + "”. Failed twice at one joint: saw it out or scrap it.",
              Tone.FAINT);
    }
    return row;
  }

  /** A word in the margin and the text beside it; returns the row after it. */
  static int labelled(Canvas body, int row, Model model, String label, String text, Tone tone) {
    if (text.isBlank()) {
      return row;
    }
    int indent = 9;
    List<String> lines = Text.wrap(JobWords.fill(text, model), Math.max(1, body.width() - indent));
    body.text(0, row, indent - 1, label, Tone.FAINT);
    for (int i = 0; i < lines.size(); i++) {
      body.text(indent, row + i, lines.get(i), tone);
    }
    return row + lines.size();
  }

  private static void why(Canvas body, Model model, AtBench at, BenchAsk.Why why) {
    String what = why.scrap() ? "scrapped" : "to do again";
    body.text(
        0,
        0,
        why.count()
            + " "
            + at.piece()
            + (why.count() == 1 ? "" : "s")
            + " "
            + what
            + ": what do you see?",
        Tone.ACCENT);
    int row = 2;
    for (int i = 0; i < why.choices().size(); i++) {
      Remedy choice = why.choices().get(i);
      body.text(0, row, (i + 1) + "  " + choice.sees(), Tone.STRONG);
      row++;
      // Every choice keeps a row, whatever the ones before it have to say.
      int others = why.choices().size() - 1 - i;
      int room = Math.min(2, body.height() - row - others);
      String means = JobWords.fill(choice.means(), model);
      row += means.isBlank() ? 0 : body.wrapped(3, row, body.width() - 3, room, means, Tone.FAINT);
    }
  }

  private static void away(Canvas body, Model model) {
    body.text(0, 0, "Away from the bench", Tone.ACCENT);
    body.wrapped(0, 2, body.width(), 3, "The hours stand still; timers go on.", Tone.PLAIN);
    body.text(0, 4, "space: back at the bench", Tone.STRONG);
    BigTimer.draw(body.area(0, 6, body.width(), Math.max(0, body.height() - 6)), model);
  }

  private static void leaving(Canvas body, BenchAsk.Away away) {
    body.text(0, 0, "Before you step away", Tone.ACCENT);
    box(body, 2, "1", away.torchOut(), "the torch is out");
    box(body, 3, "2", away.gasShut(), "the gas is shut at the bottle");
    box(
        body,
        4,
        "3",
        away.hotWorkSafe(),
        "nothing glows or smoulders, the pickle is covered and off");
    body.wrapped(
        0,
        6,
        body.width(),
        4,
        "A number ticks it; space steps away and stops the hours. After hot work look round again"
            + " half an hour later (29 CFR 1910.252 asks a fire watch of at least 30 min; local"
            + " rules come first).",
        Tone.PLAIN);
  }

  private static void box(Canvas body, int row, String key, boolean ticked, String what) {
    body.text(
        0,
        row,
        key + "  " + (ticked ? "yes  " : "no   ") + what,
        ticked ? Tone.PLAIN : Tone.STRONG);
  }
}
