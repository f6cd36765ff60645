package linkwright.routine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import linkwright.quantity.Read;
import linkwright.reference.Picture;
import linkwright.reference.Tool;

/** What a step shows and lays out is among the files at hand. */
final class ShownChecks {
  private ShownChecks() {}

  static List<Finding> everyPictureIsThere(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (String name : routine.detail().pictures()) {
      if (known.reference().picture(name).isEmpty()) {
        findings.add(Finding.ofFile("pictures", noDrawing(name), nearest(name, known)));
      }
    }
    for (Step step : routine.steps()) {
      for (String name : step.detail().pictures()) {
        if (known.reference().picture(name).isEmpty()) {
          findings.add(Finding.at(step, "pictures", noDrawing(name), nearest(name, known)));
        }
      }
    }
    return findings;
  }

  private static String noDrawing(String name) {
    return "There is no drawing \"%s\".".formatted(name);
  }

  private static String nearest(String name, Known known) {
    return Known.nearest(
        name, known.reference().pictures().stream().map(Picture::id).sorted().toList());
  }

  static List<Finding> everyToolIsKnown(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    Predicate<String> isKnown = known.reference().toolNames();
    for (Step step : routine.steps()) {
      for (String name : step.detail().tools()) {
        if (isKnown.test(name)) {
          continue;
        }
        Read<Tool> tool = known.reference().tool(name);
        tool.problem()
            .ifPresent(
                wrong ->
                    findings.add(
                        Finding.at(
                            step,
                            "tools",
                            "Step %s lays out what no list of tools has: %s"
                                .formatted(step.id(), wrong),
                            "Add it under tools in a file of your own in shared: - tool: %s."
                                .formatted(name))));
      }
    }
    return findings;
  }
}
