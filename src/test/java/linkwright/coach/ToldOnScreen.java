package linkwright.coach;

import linkwright.coach.content.ActMention;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Writing;

/** What is told of a model as the screen shows it: acts by their keys. */
final class ToldOnScreen {
  private ToldOnScreen() {}

  static String of(Model model) {
    String text =
        model.writing() instanceof Writing.Failed failed
            ? "Not written, and not counted: " + failed.why()
            : model.notice().text();
    return ActMention.fill(text, model.settings().keys()::firstOf);
  }
}
