package linkwright.coach.student;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.standing.Handbook;

/** Steps of all routines by their titles, each with its routine: no id of a step is shown. */
final class TitledSteps {
  private TitledSteps() {}

  /**
   * All steps there are, each once. What is found beside its title is its id, {@code
   * scroll-and-ring/anneal}, which is kept, and the bare title.
   *
   * @param words in which they are titled
   * @param first the ids of those that stand first
   */
  static List<Offered> of(Handbook handbook, TradeWords words, List<String> first) {
    Map<String, Offered> all = new LinkedHashMap<>();
    for (Routine routine : handbook.routines()) {
      routine
          .steps()
          .forEach(
              step -> {
                String id = routine.id() + "/" + step.id();
                String bare = words.show(step.title());
                String title = bare + " (" + words.show(routine.id().replace('-', ' ')) + ")";
                boolean twice = all.values().stream().anyMatch(one -> one.id().equals(title));
                String told =
                    twice ? title + ", step " + (routine.steps().indexOf(step) + 1) : title;
                all.put(id, new Offered(told, "", List.of(id, bare, step.title())));
              });
    }
    List<Offered> ordered = new ArrayList<>();
    Stream.concat(first.stream(), all.keySet().stream())
        .distinct()
        .flatMap(id -> Optional.ofNullable(all.get(id)).stream())
        .forEach(ordered::add);
    return ordered;
  }

  /** The form's field for a step. */
  static Optional<Field> field(Form form) {
    return form.fields().stream().filter(field -> field.id().equals("step")).findFirst();
  }

  /** The id of the step that stands in the form; empty where none does. */
  static String id(Form form) {
    return field(form).stream()
        .flatMap(field -> field.choices().stream())
        .filter(step -> step.id().equals(form.text("step")))
        .map(step -> step.words().get(0))
        .findFirst()
        .orElse("");
  }

  /** The one step that is called so, by its title or its id, that of the routine before others. */
  static Optional<Offered> called(Field field, String routine) {
    String typed = field.text().strip();
    List<Offered> all =
        field.choices().stream()
            .filter(
                step ->
                    step.id().equalsIgnoreCase(typed)
                        || step.words().stream().anyMatch(typed::equalsIgnoreCase))
            .toList();
    List<Offered> here =
        all.stream().filter(step -> step.words().get(0).startsWith(routine + "/")).toList();
    List<Offered> fits = here.isEmpty() ? all : here;
    return fits.size() == 1 ? Optional.of(fits.get(0)) : Optional.empty();
  }
}
