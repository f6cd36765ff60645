package linkwright.cli;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Function;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.link.UsualSizes;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Level;
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
      UnitStyle units = Choices.load(root.home()).user().units();
      rows.forEach(row -> root.here().out().say(SaidIn.units(words.show(line(row)), units)));
    } else {
      String name = listed.name().toLowerCase(Locale.ROOT);
      root.here().out().print(form.orThrow().written(name, rows));
    }
    return Exit.GOOD;
  }

  /** Ends of a key → the unit that it stands for, as it is read. */
  private static final Map<String, String> UNITS =
      Map.of("_g_cm3", " g/cm³", "_c", " °C", "_mm", " mm", "_g", " g", "_permille", " ‰");

  private static String line(Map<String, Object> row) {
    StringBuilder line = new StringBuilder(String.valueOf(row.get("id")));
    row.forEach(
        (key, value) -> {
          if (!key.equals("id") && !String.valueOf(value).isEmpty()) {
            // What is said in sentences goes on in the same line.
            while (line.charAt(line.length() - 1) == '.') {
              line.setLength(line.length() - 1);
            }
            line.append(key.equals("name") || key.equals("says") ? ": " : "; " + said(key))
                .append(value instanceof Double number ? Decimals.upTo(number, 3) : value)
                .append(UNITS.getOrDefault(end(key), ""));
          }
        });
    return line.toString();
  }

  /** The longest end of a key that is a unit; empty where it has none. */
  private static String end(String key) {
    return UNITS.keySet().stream()
        .filter(key::endsWith)
        .max(Comparator.comparingInt(String::length))
        .orElse("");
  }

  private static String said(String key) {
    return key.substring(0, key.length() - end(key).length()).replace('_', ' ') + " ";
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
              Optional<UsualSizes> usual = pattern.usual();
              row.put("usual_wire_mm", usual.<Object>map(UsualSizes::wireMm).orElse(""));
              row.put("usual_blank_mm", usual.<Object>map(UsualSizes::blankMm).orElse(""));
              row.put("usual_ring_inside_mm", mm(usual, UsualSizes::ringInsideMm));
              row.put("usual_ring_wire_mm", mm(usual, UsualSizes::ringWireMm));
              return row;
            })
        .toList();
  }

  private static Object mm(Optional<UsualSizes> usual, Function<UsualSizes, OptionalDouble> which) {
    OptionalDouble mm = usual.map(which).orElse(OptionalDouble.empty());
    return mm.isPresent() ? mm.getAsDouble() : "";
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
              row.put("level", routine.detail().level().map(Level::word).orElse(""));
              row.put("repeat", routine.detail().repeat());
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
