package linkwright.cli.console;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.keys.Act;
import linkwright.plain.PlainLines;
import linkwright.text.Text;

/** What a plan comes to, for reading: the lines of the plan's own content, groups apart. */
public final class PlanText {
  private static final int WIDTH = 78;

  private PlanText() {}

  /**
   * The lines.
   *
   * @param name what the job is called; empty if it has no name
   * @param parts what its plan comes to
   */
  public static List<String> of(String name, List<Part> parts) {
    PlainLines plain = new PlainLines(Act::words);
    List<String> lines = new ArrayList<>(List.of(name.isBlank() ? "A chain" : name, ""));
    for (Part part : parts) {
      if (part instanceof Prose prose && prose.kind() == Prose.Kind.MAIN) {
        lines.add("");
      }
      part.answer(plain).forEach(line -> lines.addAll(Text.wrap(line, WIDTH)));
    }
    return lines;
  }
}
