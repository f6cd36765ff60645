package linkwright.cli.reckon;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import linkwright.cli.console.Exit;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PatternFile;
import linkwright.files.TriedFile;
import linkwright.files.UserSettings;
import linkwright.link.Pattern;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.reckon.Ask;
import linkwright.reckon.OwnAnswers;
import linkwright.reckon.OwnSolders;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Reckoning;
import linkwright.reckon.ReckoningBasis;
import linkwright.reckon.Sum;
import picocli.CommandLine.Model.CommandSpec;

/** One run of a sum from the command line: options in, result out, problems told. */
final class ReckonRun {
  /** The folder of metals, solders and patterns; routines have no part in a reckoning. */
  private static final String LOOKED_UP = "shared";

  private final Sum sum;
  private final CommandSpec spec;
  private final Function<String, Read<Path>> input;
  private final Consumer<String> out;
  private final Consumer<String> err;
  private final Map<String, String> typed = new LinkedHashMap<>();
  private final List<String> sentences = new ArrayList<>();
  private boolean noFile;

  private ReckonRun(
      Sum sum,
      CommandSpec spec,
      Function<String, Read<Path>> input,
      Consumer<String> out,
      Consumer<String> err) {
    this.sum = sum;
    this.spec = spec;
    this.input = input;
    this.out = out;
    this.err = err;
  }

  /**
   * Reckons and answers with the exit code.
   *
   * @param input where a file that was named is; a hyphen is what comes on standard input
   */
  static int of(
      Sum sum,
      CommandSpec spec,
      Home home,
      Function<String, Read<Path>> input,
      Consumer<String> out,
      Consumer<String> err) {
    return new ReckonRun(sum, spec, input, out, err).run(home);
  }

  private int run(Home home) {
    sum.asks().forEach(ask -> typed.put(ask.key(), text(ask)));
    String form = value(ReckonCommand.AS).map(Object::toString).orElse("text");
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      err.accept(bad.sentence());
      return Exit.WRONG_USE;
    }
    Library library = Library.load(home);
    library.problems().stream()
        .filter(problem -> problem.file().contains(LOOKED_UP))
        .forEach(problem -> err.accept(problem.sentence()));
    List<Pattern> patterns = patterns(library);
    TriedFile tried = tried();
    if (!sentences.isEmpty()) {
      return told(noFile ? Exit.WRONG_USE : Exit.PROBLEMS);
    }
    UserSettings settings = UserSettings.load(home).settings();
    ReckoningBasis given =
        new ReckoningBasis(
            OwnSolders.in(library.reference(), library.bench().bench().solders()),
            patterns,
            tried.pieces(),
            tried.toAsk(),
            settings.units());
    Map<String, String> hers = new LinkedHashMap<>();
    if (!value(ReckonCommand.NO_BENCH).equals(Optional.of(true))) {
      hers.putAll(OwnAnswers.of(sum, library.bench().bench(), typed, patterns, settings.units()));
    }
    typed.putAll(hers);
    Map<String, String> refused =
        new LinkedHashMap<>(Reckoner.reckon(sum.id(), typed, given).problems());
    refused.keySet().retainAll(hers.keySet());
    // What nobody typed may not stand in the way: it is told, and the sum goes on without it.
    refused.keySet().forEach(typed::remove);
    hers.keySet().removeAll(refused.keySet());
    refused.values().forEach(why -> sentences.add("Your bench does not fit here. " + why));
    Reckoning reckoning =
        Reckoner.reckon(sum.id(), typed, given).from(sum, hers).inWords(settings.words()::show);
    if (!reckoning.good()) {
      reckoning.problems().forEach((key, wrong) -> sentences.add(located(key, wrong)));
      boolean typedWrong = reckoning.problems().keySet().stream().anyMatch(key -> !key.isEmpty());
      return told(typedWrong ? Exit.WRONG_USE : Exit.PROBLEMS);
    }
    if (as.orThrow() != OutForm.TEXT) {
      out.accept(as.orThrow().written(reckoning.values()).stripTrailing());
    } else {
      reckoning.lines().forEach(out);
    }
    sentences.addAll(reckoning.warnings());
    return told(Exit.GOOD);
  }

  private int told(int exit) {
    sentences.forEach(err);
    return exit;
  }

  private static String located(String key, String sentence) {
    return key.isEmpty() ? sentence : "--" + key + ": " + sentence;
  }

  private String text(Ask ask) {
    Optional<Object> value = value("--" + ask.key());
    if (value.isPresent() && value.get() instanceof List<?> several) {
      return String.join("; ", several.stream().map(String::valueOf).toList());
    }
    if (ask.kind() == Ask.Kind.SWITCH) {
      return value.equals(Optional.of(true)) ? "yes" : "";
    }
    return value.map(Object::toString).orElse("");
  }

  private Optional<Object> value(String option) {
    return Optional.ofNullable(spec.findOption(option).getValue());
  }

  /** The patterns there are; one that was named by its file is read and its name put in. */
  private List<Pattern> patterns(Library library) {
    Map<String, Pattern> patterns = new LinkedHashMap<>(library.patterns());
    String wanted = typed.getOrDefault("pattern", "");
    Optional<Path> path = patterns.containsKey(wanted) ? Optional.empty() : file(wanted);
    if (path.isPresent()) {
      noFile |= !Files.exists(path.get());
      PatternFile file = PatternFile.read(path.get());
      tell(file.problems());
      file.pattern()
          .ifPresent(
              pattern -> {
                patterns.put(pattern.id(), pattern);
                typed.put("pattern", pattern.id());
              });
    }
    return new ArrayList<>(patterns.values());
  }

  private TriedFile tried() {
    TriedFile none = new TriedFile(List.of(), List.of(), List.of());
    String name = typed.getOrDefault("tried", "");
    if (name.isEmpty()) {
      return none;
    }
    Read<Path> path = input.apply(name);
    if (path instanceof Read.Bad<Path> bad) {
      noFile = true;
      sentences.add("--tried: " + bad.sentence());
      return none;
    }
    noFile |= !Files.exists(path.orThrow());
    TriedFile file = TriedFile.read(path.orThrow());
    tell(file.problems());
    return file;
  }

  private void tell(List<Problem> problems) {
    problems.forEach(problem -> sentences.add(problem.sentence()));
  }

  /** A file, where the text looks like the name of one or is one. */
  private Optional<Path> file(String text) {
    if (text.equals("-")) {
      return input.apply(text).found();
    }
    try {
      Path path = Path.of(text);
      boolean looksLikeOne = text.endsWith(".yaml") || text.endsWith(".yml") || text.contains("/");
      return looksLikeOne || (!text.isEmpty() && Files.isRegularFile(path))
          ? Optional.of(path)
          : Optional.empty();
    } catch (InvalidPathException notAName) {
      return Optional.empty();
    }
  }
}
