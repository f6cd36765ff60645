package linkwright.view;

import linkwright.coach.content.ActMention;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** One number on all of the screen, its word above, one key below; turned round when it is due. */
final class AcrossView {
  private AcrossView() {}

  static void draw(Canvas canvas, Page.Across across, KeyMap keys) {
    Tone words = across.due() ? Tone.REVERSED : Tone.STRONG;
    if (across.due()) {
      canvas.fill(0, 0, canvas.width(), canvas.height(), " ", Tone.REVERSED);
    }
    int width = canvas.width() - 2;
    String word = ActMention.fill(across.word(), keys::spokenOf);
    int above = canvas.area(1, 0, width, 3).wrapped(0, 0, width, 3, word, words);
    int high = canvas.height() - above - 2;
    Tone tone = across.due() ? Tone.REVERSED : Tone.ACCENT;
    BigFigures.draw(canvas.area(1, above, width, Math.max(1, high)), across.number(), tone);
    String key = keys.firstOf(across.act()) + " " + across.says();
    canvas.text(1, canvas.height() - 1, width, key, words);
    String ends = keys.firstOf(Act.ACROSS) + " ends it";
    if (Text.width(key) + Text.width(ends) + 2 <= width) {
      canvas.right(canvas.width() - 1, canvas.height() - 1, width, ends, words);
    }
    canvas.spot(0, canvas.height() - 1, canvas.width(), 1, new Spot.ToAct(across.act()));
  }
}
