package linkwright.walker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Pages;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.plain.PlainLines;
import linkwright.view.Glyphs;
import linkwright.view.Grid;
import linkwright.view.Screens;

/**
 * What must hold of every screen: each word that a place says stands there whole, on one of its
 * parts, or a mark tells that the text was cut. A line drawn over another fails it, for the words
 * below are gone and no mark tells so.
 */
final class ScreenChecks {
  private static final int LONG = 20;

  private ScreenChecks() {}

  /** What is wrong with the page of a model in a room of that size; empty if nothing is. */
  static Optional<String> check(Model model, int width, int height) {
    Page page = Pages.of(model);
    List<String> lines = new PlainLines(Act::words).of(page.body());
    if (lines.isEmpty()) {
      return Optional.of("the plain walk says nothing at " + page.body().title());
    }
    StringBuilder shown = new StringBuilder();
    int most = Screens.parts(page.body(), width, height, page.chain().isPresent());
    for (int turned = 0; turned < most; turned++) {
      Grid grid =
          Screens.draw(turned(page, turned), width, height, Glyphs.FULL, model.settings().keys());
      shown.append(grid.text()).append('\n');
    }
    String all = " " + shown.toString().replaceAll("\\s+", " ") + " ";
    List<String> missing = new ArrayList<>();
    for (String text : texts(page.body(), model)) {
      for (String word : text.split("\\s+")) {
        if (!word.isBlank() && word.length() < LONG && !all.contains(word)) {
          missing.add(word);
        }
      }
    }
    boolean cut = all.contains("…");
    return missing.isEmpty() || cut
        ? Optional.empty()
        : Optional.of(
            "not on the screen at %d x %d: %s%n%s".formatted(width, height, missing, shown));
  }

  private static Page turned(Page page, int turned) {
    return new Page(
        page.job(),
        page.body(),
        turned,
        page.turns(),
        page.nextWait(),
        page.hotWork(),
        page.chain(),
        page.still(),
        page.told(),
        page.trouble(),
        page.open());
  }

  private static List<String> texts(Content content, Model model) {
    List<String> texts = new ArrayList<>();
    for (Part part : content.parts()) {
      if (part instanceof Prose prose) {
        texts.add(filled(prose.text(), model));
      } else if (part instanceof Question question) {
        texts.add(filled(question.asks(), model));
        question.answers().forEach(answer -> texts.add(filled(answer.says(), model)));
      }
    }
    return texts;
  }

  private static String filled(String text, Model model) {
    return ActMention.fill(text, model.settings().keys()::spokenOf);
  }
}
