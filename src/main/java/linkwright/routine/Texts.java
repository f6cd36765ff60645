package linkwright.routine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/** The texts can be shown: nothing needed is missing, and every placeholder is known. */
final class Texts {
  private Texts() {}

  static List<Finding> everyStepSaysWhatToDo(Routine routine, Known known) {
    return routine.steps().stream()
        .filter(step -> step.doText().isBlank() || step.title().isBlank())
        .map(
            step ->
                Finding.at(
                    step,
                    step.doText().isBlank() ? "do" : "title",
                    "Step %s does not say what to do.".formatted(step.id()),
                    "Write a title and a do text."))
        .toList();
  }

  static List<Finding> everyPlaceholderIsKnown(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    placeholders(
        (wrong, expected) -> Finding.ofFile("plan", "The plan text " + wrong, expected),
        routine.plan(),
        findings);
    for (Step step : routine.steps()) {
      of(step)
          .forEach(
              text ->
                  placeholders(
                      (wrong, expected) ->
                          Finding.at(step, "do", "Step " + step.id() + " " + wrong, expected),
                      text,
                      findings));
    }
    return findings;
  }

  private static void placeholders(
      BiFunction<String, String, Finding> told, String text, List<Finding> findings) {
    Matcher braces = Placeholder.IN_TEXT.matcher(text);
    while (braces.find()) {
      String name = braces.group(1).strip();
      if (!Placeholder.isKnown(name)) {
        findings.add(
            told.apply(
                "has {%s} in a text, and nothing is known by that name.".formatted(name),
                Known.nearest(name, Placeholder.names())));
      }
    }
    String rest = braces.replaceAll("");
    if (rest.contains("{") || rest.contains("}")) {
      findings.add(
          told.apply(
              "has a brace in a text without its other half.", "A placeholder is written {wire}."));
    }
  }

  /** All texts of a step that are filled before they are shown. */
  static Stream<String> of(Step step) {
    return Stream.concat(
        Stream.of(
            step.title(), step.doText(), step.lookFor(), step.why(), step.mind(), step.measure()),
        step.wrong().stream()
            .flatMap(remedy -> Stream.of(remedy.sees(), remedy.means(), remedy.remedy())));
  }
}
