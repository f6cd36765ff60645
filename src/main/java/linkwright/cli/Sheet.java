package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import linkwright.text.Text;

/** Lines of text under headings, a label in the margin of each, wrapped to a page's width. */
final class Sheet {
  private static final int WIDTH = 78;
  private static final int MARGIN = 20;

  private final List<String> lines = new ArrayList<>();

  void heading(String text) {
    if (!lines.isEmpty()) {
      lines.add("");
    }
    lines.add(text);
  }

  /** A label and what stands beside it. */
  void line(String label, String value) {
    List<String> parts = Text.wrap(value, WIDTH - MARGIN);
    for (int i = 0; i < parts.size(); i++) {
      lines.add(Text.pad(i == 0 ? "  " + label : "", MARGIN) + parts.get(i));
    }
  }

  /** A sentence, under the heading. */
  void sentence(String text) {
    List<String> parts = Text.wrap(text, WIDTH - 4);
    for (int i = 0; i < parts.size(); i++) {
      lines.add((i == 0 ? "  - " : "    ") + parts.get(i));
    }
  }

  List<String> lines() {
    return List.copyOf(lines);
  }
}
