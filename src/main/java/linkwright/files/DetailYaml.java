package linkwright.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.quantity.Length;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.routine.Level;
import linkwright.routine.LinkAdds;
import linkwright.routine.Loop;
import linkwright.routine.PieceDetail;
import linkwright.routine.PieceKind;
import linkwright.routine.RoutineDetail;
import linkwright.routine.Stage;
import linkwright.routine.StepDetail;
import linkwright.routine.StepId;
import linkwright.routine.StudyQuestion;
import linkwright.routine.Suits;
import linkwright.routine.When;

/** What routines, steps and cautions may say besides; each key may be missing. */
final class DetailYaml {
  private DetailYaml() {}

  static RoutineDetail ofRoutine(YamlFields from) {
    Map<PieceKind, PieceDetail> kinds = new LinkedHashMap<>();
    from.group("kinds", "the kinds of piece")
        .ifPresent(
            group -> {
              for (String kind : group.names()) {
                group
                    .group(kind, "a kind of piece")
                    .ifPresent(piece -> kinds.put(new PieceKind(kind), kind(piece)));
              }
              group.sound();
            });
    return new RoutineDetail(
        from.optional("level", Values.word(Level::of, Level.words())),
        kinds,
        questions(from),
        from.list("pictures", Values::id),
        from.group("suits", "the jobs it suits").map(DetailYaml::suits),
        from.group("link-adds", "what a link adds").map(DetailYaml::linkAdds),
        from.optional("usual-pieces", Values::whole).orElse(1));
  }

  static StepDetail ofStep(YamlFields from) {
    Map<String, String> solder = new LinkedHashMap<>();
    from.group("solder", "the solder")
        .ifPresent(
            group -> {
              solder.putAll(group.all(Read::good));
              group.sound();
            });
    return new StepDetail(
        from.list("was", RoutineYaml::stepId),
        when(from),
        solder,
        from.group("loop", "the loop").map(DetailYaml::loop),
        stages(from, "needs", "what it needs"),
        from.texts("tools"),
        from.list("pictures", Values::id),
        questions(from));
  }

  /** Kind of piece → a stage of it, in the file's order. */
  static Map<PieceKind, Stage> stages(YamlFields from, String key, String what) {
    Map<PieceKind, Stage> stages = new LinkedHashMap<>();
    from.group(key, what)
        .ifPresent(
            group -> {
              group
                  .all(Values::id)
                  .forEach((kind, reached) -> stages.put(new PieceKind(kind), new Stage(reached)));
              group.sound();
            });
    return stages;
  }

  /** For what jobs a step or a caution is meant: for all if nothing is said. */
  static When when(YamlFields from) {
    return from.group("when", "the condition")
        .map(
            group -> {
              When when = conditions(group);
              group.sound();
              return when;
            })
        .orElse(When.ALWAYS);
  }

  private static LinkAdds linkAdds(YamlFields from) {
    LinkAdds adds =
        new LinkAdds(
            from.optional("inside", Values::number).orElse(0.0),
            from.optional("wire", Values::number).orElse(0.0),
            from.value("doubt", DetailYaml::doubt, 1.0));
    if (from.sound() && !(adds.ofInside() > 0 || adds.ofWire() > 0)) {
      from.wrong("inside", "So a link adds nothing.", "Write inside: 0.8, or wire: 1, or both.");
    }
    return adds;
  }

  private static Read<Double> doubt(String text) {
    return Share.read(text)
        .map(Share::value)
        .flatMap(
            share ->
                share > 0 && share < 1
                    ? Read.good(share)
                    : Read.bad("A doubt lies above 0 % and below 100 %, such as 10 %."));
  }

  private static Suits suits(YamlFields from) {
    Suits suits = new Suits(conditions(from), from.text("otherwise"));
    from.sound();
    return suits;
  }

  private static When conditions(YamlFields when) {
    Map<String, List<String>> words = new LinkedHashMap<>();
    for (String trait : When.TRAITS) {
      List<String> any =
          when.isList(trait)
              ? when.texts(trait)
              : when.optional(trait, Read::good).map(List::of).orElse(List.of());
      if (!any.isEmpty()) {
        words.put(trait, any);
      }
    }
    return new When(words, mm(when, "thicker-than"), mm(when, "thinner-than"));
  }

  private static OptionalDouble mm(YamlFields from, String key) {
    return PatternYaml.mm(from.optional(key, Length::readSize));
  }

  private static PieceDetail kind(YamlFields from) {
    PieceDetail kind =
        new PieceDetail(
            from.textOrEmpty("pattern"), from.optional("per-repeat", Values::whole).orElse(1));
    from.sound();
    return kind;
  }

  private static Loop loop(YamlFields from) {
    Loop loop =
        new Loop(from.value("back-to", RoutineYaml::stepId, StepId.NONE), from.text("until"));
    from.sound();
    return loop;
  }

  static List<StudyQuestion> questions(YamlFields from) {
    return from.groups("questions", "a question").stream()
        .map(
            each -> {
              StudyQuestion question =
                  new StudyQuestion(
                      each.text("asks"), each.texts("answers"), each.textOrEmpty("why"));
              each.sound();
              return question;
            })
        .toList();
  }
}
