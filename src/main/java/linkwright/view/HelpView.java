package linkwright.view;

import java.util.List;
import linkwright.coach.KeyWords;
import linkwright.coach.help.HelpHeld;
import linkwright.coach.kernel.Model;

/** All keys of the screen it was asked on. */
final class HelpView {
  private HelpView() {}

  static void draw(Canvas body, Model model, HelpHeld help) {
    List<String> lines = KeyWords.all(model, help.from());
    int columns = lines.size() > body.height() && body.width() >= 76 ? 2 : 1;
    int rows = (lines.size() + columns - 1) / columns;
    int wide = body.width() / columns;
    for (int i = 0; i < lines.size(); i++) {
      body.text(i / rows * wide, i % rows, wide - 1, lines.get(i), Tone.PLAIN);
    }
  }
}
