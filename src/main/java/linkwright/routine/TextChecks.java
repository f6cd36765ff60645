package linkwright.routine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/** The texts can be shown: nothing needed is missing, and every placeholder is known. */
final class TextChecks {
  private TextChecks() {}

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

  /** A former that is named is one of a pattern that this routine suits. */
  static List<Finding> everyFormerIsOfAPattern(Routine routine, Known known) {
    Set<String> formers = new TreeSet<>();
    Stream.concat(
            routine.patterns().stream(),
            routine.detail().kinds().values().stream().map(PieceDetail::pattern))
        .forEach(pattern -> formers.addAll(known.formers().getOrDefault(pattern, Set.of())));
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      of(step)
          .flatMap(text -> Placeholder.IN_TEXT.matcher(text).results())
          .flatMap(found -> Placeholder.former(found.group(1).strip()).stream())
          .filter(former -> !formers.contains(former))
          .distinct()
          .forEach(
              former ->
                  findings.add(
                      Finding.at(
                          step,
                          "do",
                          "Step %s speaks of {former %s}, and no pattern of this routine has it."
                              .formatted(step.id(), former),
                          Known.nearest(former, formers))));
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
