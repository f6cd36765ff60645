package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.JobWords;
import linkwright.coach.Model;
import linkwright.routine.Caution;

/** A caution whole: what can happen, do, do not, if it goes wrong, what to wear. */
final class CardView {
  private CardView() {}

  static void draw(Canvas body, Model model, Caution card, String before) {
    body.text(0, 0, body.width(), before, Tone.FAINT);
    body.text(0, 1, body.width(), body.glyphs().pick("▲ ", "! ") + card.title(), Tone.WARNING);
    int row = 2;
    row = BenchView.labelled(body, row, model, "", card.canHappen(), Tone.PLAIN);
    row = list(body, row, model, "do", card.doList());
    row = list(body, row, model, "do not", card.doNot());
    row = list(body, row, model, "if it", card.ifItGoesWrong());
    row = BenchView.labelled(body, row, model, "wear", wear(card), Tone.PLAIN);
    row = BenchView.labelled(body, row, model, "source", card.source(), Tone.FAINT);
    BenchView.labelled(body, row, model, "", card.defers(), Tone.STRONG);
    if (row + 1 > body.height()) {
      body.fill(0, body.height() - 1, body.width(), 1, " ", Tone.PLAIN);
      body.text(
          0,
          body.height() - 1,
          body.width() - 10,
          JobWords.fill(card.defers(), model),
          Tone.STRONG);
    }
  }

  private static int list(Canvas body, int from, Model model, String label, List<String> items) {
    int row = from;
    String word = label;
    for (String item : items) {
      row = BenchView.labelled(body, row, model, word, item, Tone.PLAIN);
      word = "";
    }
    return row;
  }

  private static String wear(Caution card) {
    List<String> gear = new ArrayList<>();
    card.wear().forEach(each -> gear.add(each.says() + " (" + each.sign() + ")"));
    return String.join(", ", gear);
  }
}
