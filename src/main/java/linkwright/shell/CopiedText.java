package linkwright.shell;

import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.keys.Act;
import linkwright.plain.PlainLines;

/**
 * What a page says, to be pasted elsewhere: its one number where it has one, else all of it, the
 * parts that had no room too.
 *
 * @param name what it is, in a few words
 * @param text the text
 */
record CopiedText(String name, String text) {
  static CopiedText of(Page page) {
    PlainLines plain = new PlainLines(Act::words);
    Optional<Figure> figure =
        Outward.figure(page.body().parts()).filter(one -> !one.word().contains("{"));
    if (figure.isPresent()) {
      String words = figure.get().number().replace("/", " of ") + " " + figure.get().word();
      return new CopiedText(words, words);
    }
    List<String> lines = plain.of(page.body());
    return new CopiedText("all of “" + page.body().title() + "”", String.join("\n", lines) + "\n");
  }
}
