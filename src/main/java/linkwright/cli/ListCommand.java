package linkwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;
import linkwright.routine.TradeWords;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * {@code linkwright metals}, {@code solders}, {@code patterns}, {@code clasps}, {@code routines}.
 */
final class ListCommand {
  private static final String AS = "--as";

  private ListCommand() {}

  /** What is listed, by the name of its command. */
  private enum Listed {
    METALS("Lists the metals that are known.", ListCommand::metals),
    SOLDERS("Lists the solders that are known, in order of their flow.", ListCommand::solders),
    PATTERNS("Lists the link patterns that are known.", ListCommand::patterns),
    CLASPS("Lists the clasps that are known.", ListCommand::clasps),
    ROUTINES("Lists the routines that are known.", ListCommand::routines);

    private final String says;

    @SuppressWarnings("ImmutableEnumChecker") // a method reference that holds nothing
    private final Function<Library, List<Map<String, Object>>> rows;

    Listed(String says, Function<Library, List<Map<String, Object>>> rows) {
      this.says = says;
      this.rows = rows;
    }
  }

  /** A command for each kind of thing that can be listed. */
  static List<CommandSpec> all(Root root) {
    return List.of(Listed.values()).stream().map(listed -> of(root, listed)).toList();
  }

  private static CommandSpec of(Root root, Listed listed) {
    CommandSpec[] self = new CommandSpec[1];
    Callable<Integer> run = () -> run(root, listed, self[0]);
    CommandSpec spec = CommandSpec.wrapWithoutInspection(run);
    self[0] = spec;
    String name = listed.name().toLowerCase(Locale.ROOT);
    spec.name(name).mixinStandardHelpOptions(true);
    spec.usageMessage()
        .description(listed.says)
        .footer("", "Example: linkwright " + name + " --as csv");
    spec.addOption(
        OptionSpec.builder(AS)
            .type(String.class)
            .paramLabel("FORM")
            .completionCandidates(new OutForm.Named())
            .description(OutForm.SAYS)
            .build());
    return spec;
  }

  private static int run(Root root, Listed listed, CommandSpec spec) {
    Object asked = spec.findOption(AS).getValue();
    Read<OutForm> form = OutForm.named(asked == null ? "text" : asked.toString());
    if (form instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Library library = Library.load(root.home());
    root.here().err().sayAll(Located.all(library.problems()));
    List<Map<String, Object>> rows = listed.rows.apply(library);
    if (form.orThrow() == OutForm.TEXT) {
      TradeWords words = Choices.load(root.home()).user().words();
      rows.forEach(row -> root.here().out().say(words.show(line(row))));
    } else {
      String name = listed.name().toLowerCase(Locale.ROOT);
      root.here().out().print(form.orThrow().written(name, rows));
    }
    return Exit.GOOD;
  }

  private static String line(Map<String, Object> row) {
    StringBuilder line = new StringBuilder(String.valueOf(row.get("id")));
    row.forEach(
        (key, value) -> {
          if (!key.equals("id") && !String.valueOf(value).isEmpty()) {
            line.append(
                    key.equals("name") || key.equals("says")
                        ? ": "
                        : "; " + key.replace('_', ' ') + " ")
                .append(value instanceof Double number ? Decimals.upTo(number, 3) : value);
          }
        });
    return line.toString();
  }

  private static List<Map<String, Object>> metals(Library library) {
    return library.reference().metals().stream()
        .map(
            metal -> {
              Map<String, Object> row = row(metal.id(), metal.name());
              row.put(
                  "fineness_permille",
                  metal.finenessPermille().isPresent() ? metal.finenessPermille().getAsInt() : "");
              row.put("density_g_cm3", metal.densityGCm3().value());
              row.put("melts_from_c", metal.meltC().from());
              row.put("melts_to_c", metal.meltC().to());
              row.put("anneals_from_c", metal.annealC().from());
              row.put("anneals_to_c", metal.annealC().to());
              return row;
            })
        .toList();
  }

  private static List<Map<String, Object>> solders(Library library) {
    return library.reference().solders().stream()
        .map(
            solder -> {
              Map<String, Object> row = row(solder.id(), solder.name());
              row.put("grade", solder.grade());
              row.put("melts_from_c", solder.solidusC());
              row.put("flows_at_c", solder.liquidusC());
              row.put(
                  "fineness_permille",
                  solder.finenessPermille().isPresent()
                      ? solder.finenessPermille().getAsInt()
                      : "");
              return row;
            })
        .toList();
  }

  private static List<Map<String, Object>> patterns(Library library) {
    return library.patterns().values().stream()
        .map(
            pattern -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("id", pattern.id());
              row.put("says", pattern.says());
              row.put("formers", String.join(" ", pattern.formersMm().keySet()));
              row.put("joints", pattern.joints().size());
              return row;
            })
        .toList();
  }

  private static List<Map<String, Object>> clasps(Library library) {
    return library.reference().clasps().stream()
        .map(
            clasp -> {
              Map<String, Object> row = row(clasp.id(), clasp.name());
              row.put("adds_mm", clasp.insideLengthMm());
              row.put("weighs_g", clasp.massG());
              return row;
            })
        .toList();
  }

  private static List<Map<String, Object>> routines(Library library) {
    return library.routines().values().stream()
        .map(
            routine -> {
              Map<String, Object> row = row(routine.id(), routine.title());
              row.put("steps", routine.steps().size());
              row.put("patterns", String.join(" ", routine.patterns()));
              return row;
            })
        .toList();
  }

  private static Map<String, Object> row(String id, String name) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", id);
    row.put("name", name);
    return row;
  }
}
