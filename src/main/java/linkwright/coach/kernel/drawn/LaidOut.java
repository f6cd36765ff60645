package linkwright.coach.kernel.drawn;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linkwright.bench.OwnBench;
import linkwright.coach.kernel.Model;
import linkwright.quantity.Read;
import linkwright.reference.Reference;
import linkwright.reference.Tool;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;

/**
 * What is laid out for a step or a whole routine, held against her bench.
 *
 * @param reference the tools that are known
 * @param own her bench; nothing lacks on one that lists none of what is asked
 * @param words whose trade words
 */
public record LaidOut(Reference reference, OwnBench own, TradeWords words) {
  private static final String SOLDER = " solder";

  /** For the model's reader. */
  public static LaidOut of(Model model) {
    return new LaidOut(
        model.handbook().reference(), model.handbook().own(), JobWords.tradeWords(model));
  }

  /** The tools of a step: those that it names, its solder, then what goes with what it does. */
  public List<String> at(Step step) {
    Set<String> tools = new LinkedHashSet<>(step.detail().tools());
    step.detail().solder().values().forEach(grade -> tools.add(grade + SOLDER));
    for (Tool tool : reference.tools()) {
      if (step.does().stream().anyMatch(does -> tool.laidOutFor().contains(does.word()))) {
        tools.add(tool.name());
      }
    }
    return List.copyOf(tools);
  }

  /** All that a routine lays out, each once, in the order in which it is first wanted. */
  List<String> of(Routine routine) {
    return routine.steps().stream().flatMap(step -> at(step).stream()).distinct().toList();
  }

  /** Tools in a sentence; empty where there are none. */
  public String says(List<String> tools) {
    return tools.isEmpty() ? "" : words.show(String.join(", ", tools)) + ".";
  }

  /** The whole routine's in a sentence. */
  public String saysWhole(Routine routine) {
    String tools = says(of(routine));
    return tools.isEmpty() ? "" : "for all of it: " + tools;
  }

  /** What of these she has not, in a sentence; empty where nothing lacks. */
  public String saysLacking(List<String> tools) {
    String lacks = tools.stream().filter(this::lacks).collect(Collectors.joining(", "));
    return lacks.isEmpty() ? "" : "Not on your bench: " + words.show(lacks) + ".";
  }

  /** What of a whole routine she has not, in a sentence; empty where nothing lacks. */
  public String lackedBy(Routine routine) {
    return saysLacking(of(routine));
  }

  private boolean lacks(String tool) {
    if (tool.endsWith(SOLDER)) {
      String grade = tool.substring(0, tool.length() - SOLDER.length());
      // A solder whose grade she did not say may be any.
      return !own.solders().isEmpty()
          && own.solders().stream()
              .noneMatch(solder -> solder.grade().isEmpty() || same(solder.grade(), grade));
    }
    return !own.tools().isEmpty() && !told(tool) && own.tools().stream().noneMatch(hers(tool));
  }

  /** What her bench tells of elsewhere than under its tools. */
  private boolean told(String tool) {
    return switch (tool) {
      case "torch" -> !own.flame().torch().isEmpty() || !own.flame().fuel().isEmpty();
      case "pickle pot" -> !own.pickle().kind().isEmpty();
      case "draw plate" -> !own.plateMm().isEmpty();
      case "former" -> !own.formersMm().isEmpty();
      default -> false;
    };
  }

  private Predicate<String> hers(String tool) {
    return each ->
        same(each, tool)
            || (reference.tool(each) instanceof Read.Good<Tool> known
                && known.value().name().equals(tool));
  }

  private static boolean same(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }
}
