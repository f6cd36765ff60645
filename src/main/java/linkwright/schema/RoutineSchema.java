package linkwright.schema;

import static linkwright.schema.KeyGroup.flag;
import static linkwright.schema.KeyGroup.id;
import static linkwright.schema.KeyGroup.list;
import static linkwright.schema.KeyGroup.named;
import static linkwright.schema.KeyGroup.number;
import static linkwright.schema.KeyGroup.oneOrMore;
import static linkwright.schema.KeyGroup.text;
import static linkwright.schema.KeyGroup.whole;
import static linkwright.schema.KeyGroup.word;

import java.util.Map;
import linkwright.routine.AfterFault;
import linkwright.routine.ChainEnds;
import linkwright.routine.Hazard;
import linkwright.routine.Level;
import linkwright.routine.Makes;
import linkwright.routine.RoutinePart;
import linkwright.routine.StepCounting;
import linkwright.routine.WaitEnds;
import linkwright.routine.When;

/** What may stand in a routine's and a caution's file. */
final class RoutineSchema {
  private RoutineSchema() {}

  static Map<String, Object> routine() {
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .needed("routine", id())
        .needed("title", text())
        .needed("says", text())
        .needed("makes", word(Makes.words()))
        .some("plan", text())
        .some("patterns", list(text()))
        .some("ends", word(ChainEnds.words()))
        .some("usual-pieces", whole())
        .some("usual-loss", text("A share: 6 %."))
        .some("usual-redo", text("A share: 6 %."))
        .some("pieces", named(list(id())))
        .some("level", word(Level.words()))
        .some(
            "kinds",
            named(new KeyGroup().some("pattern", text()).some("per-repeat", whole()).group()))
        .some("questions", questions())
        .some("pictures", list(id()))
        .some("suits", conditions().needed("otherwise", text()).group())
        .some(
            "link-adds",
            new KeyGroup()
                .some("inside", number())
                .some("wire", number())
                .needed("doubt", text("A share: 10 %."))
                .group())
        .needed("steps", list(step()))
        .file("routine", "A routine: the ordered steps for a kind of chain");
  }

  static Map<String, Object> caution() {
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .needed("caution", id())
        .needed("title", text())
        .some("covers", list(word(Hazard.words())))
        .some("short", text("The line that stands above do once the card was seen."))
        .some("can-happen", text())
        .some("do", list(text()))
        .some("do-not", list(text()))
        .some("if-it-goes-wrong", list(text()))
        .some("wear", list(new KeyGroup().needed("sign", text()).needed("says", text()).group()))
        .some("source", text())
        .some("defers", text())
        .some("when", when())
        .some("questions", questions())
        .some("only-at-its-steps", flag())
        .file("caution", "A caution: a safety card tied to what a step does");
  }

  private static Map<String, Object> step() {
    return new KeyGroup()
        .needed("step", id())
        .needed("title", text())
        .needed("part", word(RoutinePart.words()))
        .some("stage", named(id()))
        .some("counts", word(StepCounting.words()))
        .some("does", list(word(Hazard.words())))
        .some("rinse", flag())
        .needed("do", text())
        .some("look-for", text())
        .some("why", text())
        .some("mind", text())
        .some("usual-time", text("A time: 5 min."))
        .some(
            "waits",
            list(
                new KeyGroup()
                    .some("id", id())
                    .needed("name", text())
                    .some("ends", word(WaitEnds.words()))
                    .needed("for", text("A time: 8 min."))
                    .group()))
        .some("measure", text())
        .some("cautions", list(text()))
        .some(
            "wrong",
            list(
                new KeyGroup()
                    .needed("sees", text())
                    .needed("means", text())
                    .needed("remedy", text())
                    .needed("then", word(AfterFault.words()))
                    .some("back-to", text())
                    .some("reason", text())
                    .group()))
        .some("was", list(id()))
        .some("when", when())
        .some("solder", named(text()))
        .some("loop", new KeyGroup().needed("back-to", id()).needed("until", text()).group())
        .some("needs", named(id()))
        .some("tools", list(text()))
        .some("pictures", list(id()))
        .some("questions", questions())
        .group();
  }

  private static Map<String, Object> questions() {
    return list(
        new KeyGroup()
            .needed("asks", text())
            .some("answers", list(text()))
            .some("why", text())
            .group());
  }

  private static Map<String, Object> when() {
    return conditions().group();
  }

  private static KeyGroup conditions() {
    KeyGroup conditions = new KeyGroup();
    When.TRAITS.forEach(trait -> conditions.some(trait, oneOrMore(text())));
    return conditions
        .some("thicker-than", text("A thickness: 1.2 mm."))
        .some("thinner-than", text("A thickness: 1.2 mm."));
  }
}
