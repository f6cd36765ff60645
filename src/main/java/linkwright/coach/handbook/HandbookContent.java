package linkwright.coach.handbook;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;

/** What can be looked up, a line each, and below it all that is said of the chosen one. */
final class HandbookContent {
  private HandbookContent() {}

  static List<HandbookEntry> entries(Model model) {
    List<HandbookEntry> all = new ArrayList<>(GlossaryContent.of(model));
    all.addAll(ReferenceContent.of(model.handbook().reference(), model.settings().units()));
    return all;
  }

  static Content of(Model model, HandbookHeld held) {
    List<HandbookEntry> entries = entries(model);
    if (entries.isEmpty()) {
      return Content.of("handbook", Prose.stop("Nothing to look up is among the files at hand."));
    }
    int at = Math.min(held.at(), entries.size() - 1);
    int here = GlossaryContent.here(model);
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    List<Table.Line> lines = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      HandbookEntry entry = entries.get(i);
      lines.add(
          Table.Line.of(entry.title(), entry.kind().word() + (i < here ? " of this step" : ""))
              .with(i < here ? Emphasis.NOW : Emphasis.PLAIN));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(new Table(columns, lines, at));
    parts.add(new Prose(Prose.Kind.HEAD, entries.get(at).title()));
    parts.addAll(entries.get(at).parts());
    return new Content("handbook", parts);
  }
}
