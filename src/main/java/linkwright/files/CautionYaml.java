package linkwright.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.routine.Caution;
import linkwright.routine.Gear;
import linkwright.routine.Hazard;
import linkwright.routine.StudyQuestion;
import linkwright.routine.When;

/** A safety card from its file. What it must say is for the routine room's checks. */
final class CautionYaml {
  private CautionYaml() {}

  static void read(YamlFields from, DataRead shelves) {
    List<Gear> wear = new ArrayList<>();
    String id = from.value("caution", Values::id, "");
    String title = from.text("title");
    List<Hazard> covers = from.list("covers", Values.word(Hazard::of, Hazard.words()));
    String shortLine = from.textOrEmpty("short");
    String canHappen = from.textOrEmpty("can-happen");
    List<String> doList = from.texts("do");
    List<String> doNot = from.texts("do-not");
    List<String> ifItGoesWrong = from.texts("if-it-goes-wrong");
    for (YamlFields one : from.groups("wear", "something to wear")) {
      Gear gear = new Gear(one.text("sign"), one.text("says"));
      if (one.sound()) {
        wear.add(gear);
      }
    }
    String source = from.textOrEmpty("source");
    String defers = from.textOrEmpty("defers");
    When when = DetailYaml.when(from);
    List<StudyQuestion> questions = DetailYaml.questions(from);
    boolean onlyThere = from.flag("only-at-its-steps");
    if (from.sound()) {
      Caution caution =
          new Caution(
              id,
              title,
              new HashSet<>(covers),
              shortLine,
              canHappen,
              doList,
              doNot,
              ifItGoesWrong,
              wear,
              source,
              defers,
              when,
              questions,
              onlyThere);
      shelves.cautions().put(id, caution, from, "caution");
    }
  }
}
