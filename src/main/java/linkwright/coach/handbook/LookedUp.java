package linkwright.coach.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.quantity.Nearest;

/** What the handbook says to a word typed, or of the words of the open step. */
public final class LookedUp {
  private LookedUp() {}

  /** The words of the open step, a sentence each; how to ask for another. */
  public static List<Part> ofStep(Model model) {
    List<Part> parts =
        new ArrayList<>(
            HandbookContent.entries(model).stream()
                .limit(GlossaryContent.here(model))
                .flatMap(LookedUp::said)
                .toList());
    parts.add(Prose.aside("words and a name tells more: words sterling, words easy-silver."));
    return parts;
  }

  /** What goes by that name, whole; else the nearest. */
  public static List<Part> of(String name, Model model) {
    List<HandbookEntry> entries = HandbookContent.entries(model);
    String wanted = plain(name);
    List<HandbookEntry> exact =
        entries.stream().filter(entry -> plain(entry.title()).equals(wanted)).toList();
    List<HandbookEntry> found =
        exact.isEmpty()
            ? entries.stream().filter(entry -> plain(entry.title()).contains(wanted)).toList()
            : exact;
    if (!found.isEmpty()) {
      return found.stream().limit(MOST).flatMap(LookedUp::said).toList();
    }
    String near =
        Nearest.of(name, entries.stream().map(HandbookEntry::title).toList())
            .map(title -> " Did you mean “" + title + "”?")
            .orElse("");
    return List.of(Prose.says("Nothing in the handbook goes by “" + name + "”." + near));
  }

  /** More that answer to a name than this would only be skipped. */
  private static final int MOST = 4;

  private static Stream<Part> said(HandbookEntry entry) {
    return Stream.concat(
        Stream.of(new Prose(Prose.Kind.HEAD, entry.title())), entry.parts().stream());
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
  }
}
