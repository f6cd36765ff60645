package linkwright.walker;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import linkwright.coach.Pages;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.OtherPage;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
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
  /** A word that fills half the narrowest window may be broken. */
  private static final int LONG = 18;

  private static final int MOST_PARTS = 40;

  private ScreenChecks() {}

  /** What is wrong with the page of a model in a room of that size; empty if nothing is. */
  static Optional<String> check(Model model, int width, int height, UnaryOperator<String> picture) {
    Page page = Pages.of(model);
    List<String> lines = new PlainLines(Act::words).of(page.body());
    if (lines.isEmpty()) {
      return Optional.of("the plain walk says nothing at " + page.body().title());
    }
    if (page.across().isPresent()) {
      // Read across the room, one number stands in place of everything.
      return Optional.empty();
    }
    StringBuilder shown = new StringBuilder();
    Set<String> missing = words(page, model);
    // A long sentence takes rows of the place, so there may be more parts than without it.
    for (int turned = 0; turned < MOST_PARTS && (turned == 0 || !missing.isEmpty()); turned++) {
      Grid grid =
          Screens.draw(
              OtherPage.turned(page, turned),
              width,
              height,
              Glyphs.FULL,
              model.settings().keys(),
              OptionalDouble.empty());
      String text = picture.apply(grid.text());
      shown.append(text).append('\n');
      String all = " " + text.replaceAll("\\s+", " ") + " ";
      missing.removeIf(all::contains);
    }
    boolean cut = shown.indexOf("…") >= 0;
    return missing.isEmpty() || cut
        ? Optional.empty()
        : Optional.of(
            "not on the screen at %d x %d: %s%n%s".formatted(width, height, missing, shown));
  }

  private static Set<String> words(Page page, Model model) {
    Set<String> words = new LinkedHashSet<>();
    for (String text : texts(page.body(), model.settings().keys().away(page.away()))) {
      for (String word : text.split("\\s+", 0)) {
        if (!word.isBlank() && word.length() < LONG) {
          words.add(word);
        }
      }
    }
    return words;
  }

  private static List<String> texts(Content content, KeyMap keys) {
    List<String> texts = new ArrayList<>();
    for (Part part : content.parts()) {
      // What is spare stands where there is room for it, and is said in the plain walk.
      if (part instanceof Prose prose && prose.kind() != Prose.Kind.SPARE) {
        texts.add(filled(prose.text(), keys));
      } else if (part instanceof Question question) {
        texts.add(filled(question.asks(), keys));
        question.answers().forEach(answer -> texts.add(filled(answer.says(), keys)));
      }
    }
    return texts;
  }

  private static String filled(String text, KeyMap keys) {
    return ActMention.fill(text, keys::spokenOf);
  }
}
