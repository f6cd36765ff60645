package linkwright.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.link.Pattern;
import linkwright.quantity.Problem;
import linkwright.reference.Reference;
import linkwright.routine.Caution;
import linkwright.routine.Routine;

/**
 * Everything that is looked up: the shipped data with the user's own laid over them by name. A file
 * with a problem is told and passed over; what it would have replaced stays.
 *
 * @param reference metals, solders, fineness rules, clasps, what laws allow
 * @param patterns link patterns by id
 * @param routines routines by id
 * @param cautions cautions by id
 * @param problems all that is wrong in any of the files, located
 * @param bench the maker's own bench, with what is wrong in its file
 */
public record Library(
    Reference reference,
    Map<String, Pattern> patterns,
    Map<String, Routine> routines,
    Map<String, Caution> cautions,
    List<Problem> problems,
    BenchFile bench) {
  /** Copies the collections. */
  public Library {
    patterns = Collections.unmodifiableMap(new LinkedHashMap<>(patterns));
    routines = Collections.unmodifiableMap(new LinkedHashMap<>(routines));
    cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
    problems = List.copyOf(problems);
  }

  /** Reads the shipped data, once, and those in the user's folder. */
  public static Library load(Home home) {
    BenchFile bench = BenchFile.load(home);
    OwnFiles own = OwnFiles.of(home);
    if (own.isNone()) {
      Library shipped = Shipped.ALONE;
      return new Library(
          shipped.reference,
          shipped.patterns,
          shipped.routines,
          shipped.cautions,
          shipped.problems,
          bench.known(shipped.reference, shipped.routines.values()));
    }
    return reading(own).library(bench);
  }

  /** Everything read, so that more can be laid over it. */
  static LibraryReading reading(Home home) {
    return reading(OwnFiles.of(home));
  }

  private static LibraryReading reading(OwnFiles own) {
    LibraryReading reading = new LibraryReading();
    for (DataKind kind : DataKind.values()) {
      try {
        reading.read(ShippedData.files(kind.folder()), kind);
      } catch (IOException trouble) {
        reading.tell(new Problem(kind.folder(), 0, 0, "Shipped data: " + trouble.getMessage(), ""));
      }
    }
    reading.nextLayer();
    own.files().forEach((kind, files) -> reading.read(files, kind));
    own.problems().forEach(reading::tell);
    return reading;
  }

  /** What is laid over the shipped data, and what of it cannot be read. */
  private record OwnFiles(Map<DataKind, List<DataFile>> files, List<Problem> problems) {
    static final OwnFiles NONE = new OwnFiles(Map.of(), List.of());

    static OwnFiles of(Home home) {
      Map<DataKind, List<DataFile>> files = new EnumMap<>(DataKind.class);
      List<Problem> problems = new ArrayList<>();
      for (DataKind kind : DataKind.values()) {
        files.put(kind, home.files(kind.folder(), problems));
      }
      return new OwnFiles(files, problems);
    }

    boolean isNone() {
      return problems.isEmpty() && files.values().stream().allMatch(List::isEmpty);
    }
  }

  /** The program's own files do not change while it runs, and taking them apart takes long. */
  private static final class Shipped {
    static final Library ALONE = reading(OwnFiles.NONE).library();
  }
}
