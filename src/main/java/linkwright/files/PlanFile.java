package linkwright.files;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.exchange.PlanFileText;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlText;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.NamedFormers;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.reference.Clasp;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.standing.CountedPlan;
import org.yaml.snakeyaml.nodes.MappingNode;

/**
 * A plan file: the chain that is wished, or the pieces of a routine that makes none, each amount
 * with its unit.
 *
 * @param wish the chain it asks for; empty while something is wrong, and where it asks for none
 * @param texts what is written, by the keys of {@link WishKeys}; also when something is wrong
 * @param routine the routine that it is made by; empty where it says none
 * @param problems all that is wrong, located
 */
public record PlanFile(
    Optional<ChainWish> wish,
    Map<String, String> texts,
    Optional<String> routine,
    List<Problem> problems) {
  private static final List<String> GROUPS = List.of("link", "ring", "clasp");

  /** Copies the collections. */
  public PlanFile {
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    problems = List.copyOf(problems);
  }

  /**
   * Why what lies there is no plan file; empty where one lies there, or nothing.
   *
   * @param typed what was typed for it, as it is to be told
   */
  public static Optional<String> none(Path path, String typed) {
    if (Files.isDirectory(path)) {
      return Optional.of(typed + " is a folder: name the plan file in it.");
    }
    return Files.exists(path) && !Files.isRegularFile(path)
        ? Optional.of(typed + " is no plan file: it is no ordinary file.")
        : Optional.empty();
  }

  private static PlanFile none(List<Problem> problems) {
    return new PlanFile(Optional.empty(), Map.of(), Optional.empty(), problems);
  }

  /** Reads a plan file; what can be looked up is looked up in the library. */
  public static PlanFile read(Path path, Library library) {
    List<Problem> trouble = new ArrayList<>();
    Optional<DataFile> file = Home.read(path, trouble);
    return file.map(found -> of(found, library)).orElseGet(() -> none(trouble));
  }

  /**
   * Reads a plan that is packed with the program.
   *
   * @param name its name on the class path, from the root
   * @throws UncheckedIOException if the program was packed without it
   */
  public static PlanFile packed(String name, Library library) {
    try (InputStream in = PlanFile.class.getResourceAsStream("/" + name)) {
      if (in == null) {
        throw new FileNotFoundException(name);
      }
      return of(new DataFile(name, in.readAllBytes()), library);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  /**
   * Writes a plan file that is not there yet.
   *
   * @param routine the routine that it is made by; empty for none
   * @param texts what was typed, by the keys of {@link WishKeys}
   * @return its path, or a sentence that says why it was not written
   */
  public static Read<Path> write(Path path, Optional<String> routine, Map<String, String> texts) {
    try {
      Disk.create(path, PlanFileText.of(routine, texts).getBytes(StandardCharsets.UTF_8));
      return Read.good(path);
    } catch (FileAlreadyExistsException there) {
      return Read.bad(path + " is there already, and stays as it is: take another name.");
    } catch (IOException failed) {
      return Read.bad(DiskTrouble.writing(path, failed));
    }
  }

  static PlanFile of(DataFile file, Library library) {
    ProblemList problems = new ProblemList(file.name());
    Optional<YamlFields> fields =
        YamlText.compose(file.bytes(), problems)
            .flatMap(
                node -> {
                  if (node instanceof MappingNode mapping) {
                    return Optional.of(new YamlFields(mapping, "a plan", problems));
                  }
                  problems.add(
                      node,
                      "A plan file has keys.",
                      "Write metal: sterling and so on, one a line.");
                  return Optional.empty();
                });
    return fields.map(found -> of(found, library)).orElseGet(() -> none(problems.all()));
  }

  static PlanFile of(YamlFields from, Library library) {
    from.formatIfThere();
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, YamlFields> groups = new LinkedHashMap<>();
    if (from.isScalar("clasp")) {
      namedClasp(from, library, texts);
    }
    for (String group : GROUPS) {
      if (!from.isScalar("clasp") || !group.equals("clasp")) {
        from.group(group, "the " + group).ifPresent(found -> groups.put(group, found));
      }
    }
    Optional<String> routine =
        from.optional(PlanFileText.ROUTINE, id -> routine(id, from, library));
    Optional<Routine> part =
        routine.map(library.routines()::get).filter(known -> known.makes() != Makes.CHAIN);
    for (String key : PlanFileText.KEYS) {
      int dot = key.indexOf('.');
      Optional<YamlFields> at =
          dot < 0 ? Optional.of(from) : Optional.ofNullable(groups.get(key.substring(0, dot)));
      at.flatMap(fields -> text(fields, key.substring(dot + 1)))
          .ifPresent(text -> texts.put(key, text));
    }
    if (part.isEmpty() && texts.remove(PartPlan.PIECES) != null) {
      from.wrongValue(
          PartPlan.PIECES, "Of a chain no pieces are said: its links follow from its length.", "");
    }
    groups.values().forEach(YamlFields::sound);
    boolean wellFormed = from.sound();
    Map<String, String> sized = NamedFormers.sized(texts, library.bench().bench().formersMm());
    Optional<WishReading> reading =
        part.isPresent()
            ? Optional.empty()
            : Optional.of(
                WishReading.of(
                    sized, library.reference(), List.copyOf(library.patterns().values())));
    reading
        .map(WishReading::troubles)
        .or(() -> part.map(known -> pieces(sized, known, library)))
        .ifPresent(troubles -> troubles.forEach((key, says) -> tell(from, groups, key, says)));
    if (reading.filter(read -> read.wish().isPresent()).isPresent()) {
      routine
          .map(library.routines()::get)
          .flatMap(known -> CountedPlan.ringTrouble(known, sized))
          .ifPresent(sentence -> tell(from, groups, WishKeys.RING_INSIDE, sentence));
    }
    Optional<String> refused =
        reading
            .flatMap(WishReading::wish)
            .map(wish -> wish.metal().notPlanned())
            .filter(why -> !why.isEmpty());
    refused.ifPresent(why -> from.wrongValue(WishKeys.METAL, why, ""));
    Optional<ChainWish> wish =
        wellFormed && refused.isEmpty() ? reading.flatMap(WishReading::wish) : Optional.empty();
    return new PlanFile(wish, sized, routine, from.problems().all());
  }

  /** What is wrong with the plan of pieces that are no chain, by key. */
  private static Map<String, String> pieces(
      Map<String, String> texts, Routine routine, Library library) {
    Optional<Pattern> pattern =
        routine.patterns().stream().findFirst().map(library.patterns()::get);
    return PartPlan.of(
            texts,
            library.reference(),
            pattern,
            routine.usualLoss(),
            routine.detail().usualPieces())
        .troubles();
  }

  /** A length makes a chain: beside one a routine that makes none is a slip. */
  private static Read<String> routine(String id, YamlFields from, Library library) {
    if (library.routines().containsKey(id) && !from.has(WishKeys.FINISHED)) {
      return Read.good(id);
    }
    List<String> chains =
        library.routines().values().stream()
            .filter(known -> known.makes() == Makes.CHAIN)
            .map(Routine::id)
            .toList();
    return chains.contains(id)
        ? Read.good(id)
        : Read.bad(
            (library.routines().containsKey(id)
                    ? "The routine “" + id + "” makes no chain. "
                    : "There is no routine “" + id + "”. ")
                + Nearest.of(id, chains)
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("Of chains there are: " + String.join(", ", chains) + "."));
  }

  /** What stands at a key as it would be typed: a list with commas, formers as name=size. */
  private static Optional<String> text(YamlFields fields, String key) {
    if (key.equals("formers") && !fields.isScalar(key)) {
      return fields
          .group(key, "the formers")
          .map(
              group ->
                  group.all(Read::good).entrySet().stream()
                      .map(former -> former.getKey() + "=" + former.getValue())
                      .collect(Collectors.joining(", ")));
    }
    boolean list = fields.isList(key) && key.endsWith("stock");
    String text = list ? String.join(", ", fields.texts(key)) : fields.textOrEmpty(key);
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private static void namedClasp(YamlFields from, Library library, Map<String, String> texts) {
    from.optional("clasp", library.reference()::clasp)
        .ifPresent((Clasp clasp) -> texts.put(WishKeys.CLASP_LENGTH, clasp.id()));
  }

  private static void tell(
      YamlFields from, Map<String, YamlFields> groups, String key, String sentence) {
    int dot = key.indexOf('.');
    if (dot < 0) {
      from.wrongValue(key, sentence, "");
      return;
    }
    String group = key.substring(0, dot);
    if (groups.containsKey(group)) {
      groups.get(group).wrongValue(key.substring(dot + 1), sentence, "");
    } else {
      from.wrongValue(group, sentence, "");
    }
  }
}
