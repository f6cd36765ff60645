package linkwright.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  // What ships does not change while the program runs, and is asked for again with each plan file.
  private static volatile Optional<Library> shipped = Optional.empty();

  /** Reads the shipped data and those in the user's folder. */
  public static Library load(Home home) {
    BenchFile bench = BenchFile.load(home);
    if (!nothingOver(home)) {
      return reading(home).library(bench);
    }
    Library all = shipped.orElseGet(() -> shippedReading().library());
    shipped = Optional.of(all);
    return new Library(
        all.reference,
        all.patterns,
        all.routines,
        all.cautions,
        all.problems,
        bench.known(all.reference, all.routines.values()));
  }

  /** Whether there is no file of hers, nor trouble with where they would lie. */
  private static boolean nothingOver(Home home) {
    List<Problem> problems = new ArrayList<>();
    for (DataKind kind : DataKind.values()) {
      if (!home.files(kind.folder(), problems).isEmpty() || !problems.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Everything read, so that more can be laid over it. */
  static LibraryReading reading(Home home) {
    LibraryReading reading = shippedReading();
    reading.nextLayer();
    for (DataKind kind : DataKind.values()) {
      List<Problem> problems = new ArrayList<>();
      reading.read(home.files(kind.folder(), problems), kind);
      problems.forEach(reading::tell);
    }
    return reading;
  }

  private static LibraryReading shippedReading() {
    LibraryReading reading = new LibraryReading();
    for (DataKind kind : DataKind.values()) {
      try {
        reading.read(ShippedData.files(kind.folder()), kind);
      } catch (IOException trouble) {
        reading.tell(new Problem(kind.folder(), 0, 0, "Shipped data: " + trouble.getMessage(), ""));
      }
    }
    return reading;
  }
}
