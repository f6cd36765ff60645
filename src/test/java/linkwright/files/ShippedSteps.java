package linkwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linkwright.routine.Routine;
import linkwright.routine.Step;

/** The shipped routines, to be asked about by the tests. */
final class ShippedSteps {
  static final Library LIBRARY = Library.load(new Home(Path.of("no-such-folder")));

  private ShippedSteps() {}

  /** Where a step is as wanted: {@code routine: step}. */
  static List<String> in(Predicate<Step> wanted) {
    List<String> places = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      routine.steps().stream()
          .filter(wanted)
          .forEach(step -> places.add(routine.id() + ": " + step.id()));
    }
    return places;
  }

  static Stream<Step> steps() {
    return LIBRARY.routines().values().stream().flatMap(routine -> routine.steps().stream());
  }

  /** All texts of a step that a person reads. */
  static Stream<String> texts(Step step) {
    return Stream.concat(
        Stream.of(
            step.title(), step.doText(), step.lookFor(), step.why(), step.mind(), step.measure()),
        step.wrong().stream()
            .flatMap(remedy -> Stream.of(remedy.sees(), remedy.means(), remedy.remedy())));
  }
}
