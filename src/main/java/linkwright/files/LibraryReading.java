package linkwright.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.quantity.Problem;
import linkwright.reference.Reference;
import linkwright.routine.Caution;
import linkwright.routine.CautionChecks;
import linkwright.routine.Routine;
import linkwright.routine.RoutineChecks;

/** A library while it is read: file after file, then what the files say of each other. */
final class LibraryReading {
  /** A library before anything was read. */
  static final Library NOTHING = new LibraryReading().library();

  private final DataRead shelves = DataRead.empty();
  private final List<Problem> strays = new ArrayList<>();
  private final Set<ProblemList> files = new LinkedHashSet<>();

  /** From here on comes what is laid over all that came before. */
  void nextLayer() {
    shelves.nextLayer();
  }

  void tell(Problem problem) {
    strays.add(problem);
  }

  /** Reads files of one sort. Taking the YAML apart is most of the work, and is shared out. */
  void read(List<DataFile> more, DataKind kind) {
    List<Opened> opened = more.parallelStream().map(file -> Opened.of(file, kind)).toList();
    for (Opened one : opened) {
      files.add(one.problems());
      one.fields().ifPresent(fields -> kind.read(fields, shelves));
    }
  }

  private record Opened(ProblemList problems, Optional<YamlFields> fields) {
    static Opened of(DataFile file, DataKind kind) {
      ProblemList problems = new ProblemList(file.name());
      return new Opened(problems, YamlFields.ofFile(file.bytes(), kind.what(), problems));
    }
  }

  /** Reads a file whose keys were looked at already. */
  void read(YamlFields fields, DataKind kind) {
    files.add(fields.problems());
    kind.read(fields, shelves);
  }

  /** Checks what can only be checked now that all is read, and hands everything over. */
  Library library() {
    return library(new BenchFile(List.of()));
  }

  /** The same with the maker's own bench. */
  Library library(BenchFile bench) {
    for (DataByName.Kept<Caution> kept : shelves.cautions().all()) {
      RoutineYaml.tell(kept.from(), CautionChecks.check(kept.value()));
    }
    List<Caution> cautions = shelves.cautions().values();
    Map<String, Set<String>> formers = new HashMap<>();
    shelves
        .patterns()
        .values()
        .forEach(pattern -> formers.put(pattern.id(), pattern.formersMm().keySet()));
    Reference reference =
        new Reference(
            shelves.metals().values(),
            shelves.solders().values(),
            shelves.finenessRules().values(),
            shelves.clasps().values(),
            shelves.limits().values(),
            shelves.glossary().values(),
            shelves.pictures().values(),
            shelves.tools().values());
    for (DataByName.Kept<Routine> kept : shelves.routines().all()) {
      RoutineYaml.tell(
          kept.from(), RoutineChecks.check(kept.value(), cautions, formers, reference));
    }
    List<Problem> problems = new ArrayList<>(strays);
    files.forEach(file -> problems.addAll(file.all()));
    return new Library(
        reference,
        byId(shelves.patterns()),
        byId(shelves.routines()),
        byId(shelves.cautions()),
        problems,
        bench.known(reference, shelves.routines().values()));
  }

  private static <T> Map<String, T> byId(DataByName<T> shelf) {
    Map<String, T> byId = new LinkedHashMap<>();
    shelf.all().forEach(kept -> byId.put(kept.id(), kept.value()));
    return byId;
  }
}
