package linkwright.coach.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.link.Pattern;
import linkwright.reference.Metal;
import linkwright.routine.Routine;

/** What metals, patterns and routines are found by when one of them is to be chosen. */
public final class Choosing {
  private Choosing() {}

  /** Metals, by id, name, what they are also called and fineness. */
  public static List<Offered> metals(List<Metal> metals) {
    return metals.stream().map(Choosing::of).toList();
  }

  /** Patterns, by id and what they look like. */
  public static List<Offered> patterns(List<Pattern> patterns) {
    return patterns.stream().map(each -> new Offered(each.id(), each.says(), List.of())).toList();
  }

  /** Routines, by id, title and how much they ask of whoever makes them. */
  public static List<Offered> routines(List<Routine> routines) {
    return routines.stream()
        .map(each -> new Offered(each.id(), titled(each), List.of(each.says())))
        .toList();
  }

  private static String titled(Routine routine) {
    return routine.title() + routine.detail().level().map(level -> "; " + level.word()).orElse("");
  }

  /**
   * What is found by its id alone, with what the metals and patterns say of it where one is meant.
   */
  public static List<Offered> known(List<String> ids, List<Metal> metals, List<Pattern> patterns) {
    List<Offered> choices = new ArrayList<>();
    for (String id : ids) {
      Optional<Offered> metal =
          metals.stream().filter(m -> m.id().equals(id)).findFirst().map(Choosing::of);
      Optional<Offered> pattern =
          patterns.stream()
              .filter(p -> p.id().equals(id))
              .findFirst()
              .map(each -> new Offered(each.id(), each.says(), List.of()));
      choices.add(metal.or(() -> pattern).orElseGet(() -> Offered.of(id)));
    }
    return choices;
  }

  private static Offered of(Metal metal) {
    List<String> words = new ArrayList<>(metal.alsoCalled());
    metal.finenessPermille().ifPresent(permille -> words.add(Integer.toString(permille)));
    String fineness =
        metal.finenessPermille().isPresent() ? ", " + metal.finenessPermille().getAsInt() : "";
    return new Offered(metal.id(), metal.name() + fineness, words);
  }
}
