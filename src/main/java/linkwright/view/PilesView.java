package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.AtBench;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.job.TimerRun;
import linkwright.routine.Wait;
import linkwright.standing.StillToDo;

/** The count in big figures, and beside it the piles of this stage in words. */
final class PilesView {
  private PilesView() {}

  static void draw(Canvas area, Model model, Screen.Bench screen, AtBench at) {
    String count = count(model, at);
    boolean rings = own(model, at).map(timer -> timer.rings(model.now())).orElse(false);
    int room = Math.max(10, area.width() / 2);
    int high = BigFigures.high(count, room, area.height() - 1, area.glyphs());
    // Turned round, figures that fill their room are hard to read: the title line carries the
    // alarm.
    BigFigures.draw(area.area(0, 0, room, high), count, Tone.ACCENT);
    area.text(0, high, room, caption(model, at), rings ? Tone.STRONG : Tone.FAINT);
    List<String> lines = new ArrayList<>(lines(model, screen, at));
    if (lines.size() > area.height()) {
      String last = lines.remove(lines.size() - 1);
      lines.set(lines.size() - 1, lines.get(lines.size() - 1) + ", " + last.replaceAll(" +", " "));
    }
    int x = room + 2;
    for (int i = 0; i < lines.size(); i++) {
      Tone tone = i == 0 ? Tone.STRONG : Tone.PLAIN;
      area.text(x, i, Math.max(0, area.width() - x), lines.get(i), tone);
    }
  }

  private static String count(Model model, AtBench at) {
    Optional<TimerRun> own = own(model, at);
    if (own.isPresent()) {
      return Clock.running(own.get().left(model.now()).toSeconds());
    }
    return at.through() + "/" + wanted(model, at);
  }

  /** The timer of a wait of this step, running or due. */
  private static Optional<TimerRun> own(Model model, AtBench at) {
    List<String> waits = at.step().waits().stream().map(Wait::name).toList();
    return model.job().orElseThrow().state().timers().running().stream()
        .filter(timer -> waits.contains(timer.name()))
        .findFirst();
  }

  private static int wanted(Model model, AtBench at) {
    StillToDo left = model.job().orElseThrow().standing().left().get(at.piece());
    int wanted = left == null ? 0 : left.wanted();
    if (at.begins() && left != null) {
      wanted = at.through() + left.toCut().orElse(0);
    }
    return Math.max(wanted, at.through());
  }

  private static String caption(Model model, AtBench at) {
    Optional<TimerRun> own = own(model, at);
    if (own.isPresent()) {
      return own.get().name() + (own.get().rings(model.now()) ? ": due" : "");
    }
    return at.piece() + "s " + at.stage();
  }

  private static List<String> lines(Model model, Screen.Bench screen, AtBench at) {
    List<String> lines = new ArrayList<>();
    if (!screen.digits().isEmpty()) {
      lines.add("how many: " + screen.digits());
    } else if (at.begins()) {
      lines.add(cutLength(model, at));
    } else if (at.inHand() > 0) {
      lines.add("in hand " + at.inHand() + (at.fromRedo() ? ", from redo" : ", new"));
    } else {
      lines.add(at.available() == 0 ? "nothing waits here" : "all go together");
    }
    if (!at.begins()) {
      lines.add("waiting " + at.waiting());
      lines.add("redo    " + at.redo() + reasons(at));
    }
    lines.add("through " + at.through());
    StillToDo left = model.job().orElseThrow().standing().left().get(at.piece());
    if (left != null) {
      boolean spares = left.good() > left.wanted();
      lines.add("good    " + left.good() + (spares ? ", wanted " : " of ") + left.wanted());
    }
    lines.add("scrap   " + at.pile().scrapped());
    return lines;
  }

  private static String cutLength(Model model, AtBench at) {
    double each = model.job().orElseThrow().standing().eachMm().getOrDefault(at.piece(), 0.0);
    if (!(each > 0)) {
      return "";
    }
    String kerf = model.job().orElseThrow().makesChain() ? " with its kerf" : " of wire";
    return "each " + model.settings().units().length(each) + kerf;
  }

  private static String reasons(AtBench at) {
    return at.redo() == 0 || at.pile().redoReasons().isEmpty()
        ? ""
        : "  ("
            + String.join(", ", at.pile().redoReasons().keySet().stream().sorted().toList())
            + ")";
  }
}
