package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.AtBench;
import linkwright.coach.JobWords;
import linkwright.coach.Model;
import linkwright.routine.Caution;
import linkwright.routine.Remedy;
import linkwright.routine.Step;
import linkwright.text.Text;

/** A step's texts: do, look for, mind first; in parts where all of it has no room at once. */
final class StepTexts {
  private static final int INDENT = 9;

  /** Longer lines are lost on the way back to the left. */
  private static final int MOST_WIDE = 100;

  private StepTexts() {}

  private record Row(String label, String text, Tone tone) {}

  /** Draws one part; parts beyond the last begin again at the first. */
  static void draw(Canvas area, Model model, AtBench at, int part) {
    if (area.height() < 1) {
      return;
    }
    int wide = Math.min(MOST_WIDE, area.width());
    List<Row> first = first(model, at, wide);
    List<Row> all = new ArrayList<>(first);
    all.addAll(second(model, at.step(), wide));
    boolean whole = all.size() <= area.height();
    int onePart = whole ? area.height() : Math.max(1, area.height() - 1);
    List<List<Row>> parts = new ArrayList<>();
    // What is to be done stands by itself where it fits; why and what may go wrong come after.
    if (!whole && first.size() <= onePart) {
      parts.add(first);
      cut(parts, all.subList(first.size(), all.size()), onePart);
    } else {
      cut(parts, all, onePart);
    }
    int shown = Math.floorMod(part, parts.size());
    int y = 0;
    for (Row row : parts.get(shown)) {
      area.text(0, y, INDENT - 1, row.label(), Tone.FAINT);
      area.text(INDENT, y, row.text(), row.tone());
      y++;
    }
    if (parts.size() > 1) {
      boolean why = shown == 0 && parts.get(0).size() == first.size();
      String more = why ? "v: why, and what may go wrong" : "v goes on";
      area.right(
          area.height() - 1,
          "part " + (shown + 1) + " of " + parts.size() + "  " + more,
          Tone.FAINT);
    }
  }

  private static void cut(List<List<Row>> parts, List<Row> rows, int onePart) {
    for (int from = 0; from < rows.size(); from += onePart) {
      parts.add(rows.subList(from, Math.min(rows.size(), from + onePart)));
    }
  }

  private static List<Row> first(Model model, AtBench at, int width) {
    Step step = at.step();
    List<Row> rows = new ArrayList<>();
    add(rows, model, width, "do", step.doText(), Tone.PLAIN);
    add(rows, model, width, "look for", step.lookFor(), Tone.PLAIN);
    add(rows, model, width, "mind", step.mind(), Tone.PLAIN);
    add(rows, model, width, "measure", step.measure(), Tone.PLAIN);
    for (Caution card : at.cautions(model.handbook())) {
      add(rows, model, width, "caution", card.shortLine(), Tone.WARNING);
    }
    return rows;
  }

  private static List<Row> second(Model model, Step step, int width) {
    List<Row> rows = new ArrayList<>();
    add(rows, model, width, "why", step.why(), Tone.PLAIN);
    for (Remedy remedy : step.wrong()) {
      String text = remedy.sees() + ": " + remedy.means() + " " + remedy.remedy();
      add(rows, model, width, "wrong", text, Tone.PLAIN);
    }
    return rows;
  }

  private static void add(
      List<Row> rows, Model model, int width, String label, String text, Tone tone) {
    if (text.isBlank()) {
      return;
    }
    String word = label;
    for (String line : Text.wrap(JobWords.fill(text, model), Math.max(2, width - INDENT))) {
      rows.add(new Row(word, line, tone));
      word = "";
    }
  }
}
