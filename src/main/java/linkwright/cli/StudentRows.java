package linkwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.lesson.Learner;
import linkwright.lesson.StudentReport;

/** A student's report as values, for other programs. */
final class StudentRows {
  private StudentRows() {}

  /** In CSV one row for each thing that is told, under one head; else grouped by what it is. */
  static String written(
      OutForm as, String who, StudentReport report, Learner learner, boolean seeds) {
    Map<String, List<Map<String, Object>>> groups = groups(report);
    if (seeds) {
      List<Map<String, Object>> asked = new ArrayList<>();
      asked(learner).forEach(row -> asked.add(new LinkedHashMap<>(row)));
      groups.put("asked", asked);
    }
    if (as == OutForm.CSV) {
      List<Map<String, Object>> rows = new ArrayList<>();
      groups.forEach(
          (group, lines) ->
              lines.forEach(
                  line ->
                      line.forEach(
                          (key, value) -> rows.add(row(who, group, lines.indexOf(line), key, value)))));
      return as.written("student", rows);
    }
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("student", who);
    all.putAll(groups);
    return as.written(all);
  }

  private static Map<String, Object> row(
      String who, String group, int line, String key, Object value) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("student", who);
    row.put("of", group);
    row.put("line", line + 1);
    row.put("what", key);
    row.put("value", value);
    return row;
  }

  private static Map<String, List<Map<String, Object>>> groups(StudentReport report) {
    Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
    List<Map<String, Object>> steps = new ArrayList<>();
    report
        .steps()
        .forEach(
            step ->
                steps.add(
                    values(
                        "step", step.routine() + "/" + step.step(),
                        "title", step.title(),
                        "known", step.known(),
                        "asked", step.met(),
                        "all", step.all(),
                        "signed", step.signed())));
    groups.put("steps", steps);
    List<Map<String, Object>> topics = new ArrayList<>();
    report
        .topics()
        .forEach(
            each ->
                topics.add(
                    values(
                        "topic", each.topic().words(),
                        "known", each.known(),
                        "asked", each.met(),
                        "wrong-last", each.wrong())));
    groups.put("topics", topics);
    List<Map<String, Object>> cautions = new ArrayList<>();
    report
        .cautions()
        .forEach(
            card ->
                cautions.add(
                    values(
                        "caution", card.caution(),
                        "known", card.known(),
                        "asked", card.met(),
                        "missed-last", card.missedLast())));
    groups.put("cautions", cautions);
    List<Map<String, Object>> made = new ArrayList<>();
    report
        .made()
        .forEach(
            each ->
                made.add(
                    values(
                        "step", each.routine() + "/" + each.step(),
                        "through", each.through(),
                        "redo", each.back(),
                        "scrapped", each.scrapped(),
                        "rate", each.rate(),
                        "usual", each.usualRedo())));
    groups.put("made", made);
    List<Map<String, Object>> weeks = new ArrayList<>();
    report
        .weeks()
        .forEach(
            week ->
                weeks.add(
                    values(
                        "week", week.monday().toString(),
                        "redo", week.back(),
                        "through", week.through())));
    groups.put("weeks", weeks);
    List<Map<String, Object>> practice = new ArrayList<>();
    report
        .practice()
        .forEach(
            each ->
                practice.add(
                    values(
                        "step", each.routine() + "/" + each.step(),
                        "reason", each.reason(),
                        "pieces", each.pieces(),
                        "in-days", each.days())));
    groups.put("practice", practice);
    List<Map<String, Object>> metal = new ArrayList<>();
    report
        .metal()
        .forEach(
            each ->
                metal.add(
                    values(
                        "job", each.job(),
                        "out-g", each.outG(),
                        "back-g", each.backG(),
                        "to-pay-g", each.outG() - each.backG())));
    groups.put("metal", metal);
    return groups;
  }

  private static Map<String, Object> values(Object... pairs) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      values.put(String.valueOf(pairs[i]), pairs[i + 1]);
    }
    return values;
  }

  /** What she was asked, with the seed that shuffled it. */
  static List<Map<String, String>> asked(Learner learner) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Learner.QuestionPut asking : learner.askings()) {
      Map<String, String> row = new LinkedHashMap<>();
      row.put("day", asking.day().toString());
      row.put("item", asking.item());
      row.put("seed", Long.toString(asking.seed()));
      row.put("right", asking.given().map(given -> given.right() ? "yes" : "no").orElse("open"));
      rows.add(row);
    }
    return rows;
  }
}
