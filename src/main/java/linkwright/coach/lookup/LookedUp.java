package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;

/** The words of the open step, told one after the other. */
public final class LookedUp {
  private LookedUp() {}

  /** The words of the open step, a sentence each; how to ask for another. */
  public static List<Part> ofStep(Model model) {
    List<Part> parts =
        new ArrayList<>(
            GlossaryContent.of(model).stream()
                .limit(GlossaryContent.here(model))
                .flatMap(LookedUp::said)
                .toList());
    parts.add(Prose.aside("words and a name tells more: words sterling, words easy-silver."));
    return parts;
  }

  private static Stream<Part> said(LookUpItem item) {
    return Stream.concat(Stream.of(new Prose(Prose.Kind.HEAD, item.name())), item.says().stream());
  }
}
