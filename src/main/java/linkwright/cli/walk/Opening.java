package linkwright.cli.walk;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.GoneBooks;
import linkwright.coach.kernel.TrayJob;
import linkwright.disk.DiskTrouble;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.plan.WishKeys;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.BookOfJob;
import linkwright.shell.Demo;
import linkwright.shell.Start;
import linkwright.shell.TrayReading;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;
import linkwright.standing.asked.RoutineOfPlan;
import linkwright.text.Slug;

/**
 * Which job a walk begins with.
 *
 * @param slug the job to open; empty for the demo of an empty folder, or a new job
 * @param begun the job to begin, if one is to be begun
 * @param problems what is wrong with the folder of jobs or with the plan file of the job to be
 *     begun, located; then nothing is opened or begun
 */
public record Opening(Optional<String> slug, Optional<Begun> begun, List<Problem> problems) {
  private static final String USUAL_ROUTINE = "scroll-and-ring";
  private static final String ENDING = ".yaml";

  /**
   * A job to be begun.
   *
   * @param name its name
   * @param routine the routine to go by
   * @param plan what its plan file says, by the keys of {@link WishKeys}; empty without one
   */
  public record Begun(String name, String routine, Map<String, String> plan) {
    /** Copies the plan. */
    public Begun {
      plan = Map.copyOf(plan);
    }
  }

  /** Copies the list. */
  public Opening {
    problems = List.copyOf(problems);
  }

  /**
   * A job that there is: by its name in the tray or by its book; without either the one last worked
   * on, and in an empty folder the demo.
   */
  public static Read<Opening> open(Optional<String> job, Home home, Library library, Instant now) {
    if (job.filter(Opening::isPath).isPresent()) {
      return book(job.get());
    }
    Optional<String> trouble = home.jobsTrouble();
    if (trouble.isPresent()) {
      Problem told = new Problem(home.jobs().toString(), 0, 0, trouble.get(), "");
      return Read.good(new Opening(Optional.empty(), Optional.empty(), List.of(told)));
    }
    if (job.isEmpty()) {
      List<TrayJob> tray = TrayReading.of(home, Start.handbook(library), now);
      return Read.good(opening(tray.stream().map(TrayJob::slug).findFirst()));
    }
    String typed = job.get();
    List<String> slugs = home.books().stream().map(Opening::slug).toList();
    String demo =
        Slug.of(Demo.plan(library).texts().getOrDefault(WishKeys.JOB, ""), taken -> false);
    if (slugs.isEmpty() && typed.equals(demo)) {
      return Read.good(opening(Optional.empty()));
    }
    if (slugs.contains(typed)) {
      return Read.good(opening(job));
    }
    Map<String, String> named = named(home, library, now);
    return BookOfJob.called(typed, named)
        .flatMap(
            slug ->
                slug.isPresent()
                    ? Read.good(opening(slug))
                    : kept(typed, home).orElseGet(() -> unknown(typed, slugs, named.values())));
  }

  private static boolean isPath(String typed) {
    return typed.endsWith(ENDING) || typed.contains("/");
  }

  private static Opening opening(Optional<String> slug) {
    return new Opening(slug, Optional.empty(), List.of());
  }

  /** The jobs of the tray: book → name. */
  private static Map<String, String> named(Home home, Library library, Instant now) {
    Map<String, String> named = new LinkedHashMap<>();
    TrayReading.of(home, Start.handbook(library), now)
        .forEach(job -> named.put(job.slug(), job.name()));
    return named;
  }

  /** Why the book of that name is not opened though there is, or was, one. */
  private static Optional<Read<Opening>> kept(String typed, Home home) {
    List<Problem> problems = new ArrayList<>();
    home.books(problems);
    problems.addAll(GoneBooks.ofJobs(home));
    return problems.stream()
        .filter(each -> Path.of(each.file()).endsWith(Slug.of(typed, taken -> false) + ENDING))
        .map(each -> Read.<Opening>bad(each.sentence()))
        .findFirst();
  }

  private static Read<Opening> unknown(String typed, List<String> slugs, Collection<String> names) {
    List<String> known = new ArrayList<>(slugs);
    known.addAll(names);
    String hint =
        slugs.isEmpty()
            ? "There is none yet: --new NAME begins one."
            : Nearest.of(typed, known)
                .map(near -> "Did you mean " + near + "?")
                .orElse("There are: " + String.join(", ", slugs) + ".");
    return Read.bad("There is no job \"" + typed + "\" in the tray. " + hint);
  }

  private static Read<Opening> book(String typed) {
    try {
      Path path = Path.of(typed).toAbsolutePath();
      Optional<String> hidden = DiskTrouble.toLookAt(path);
      if (hidden.isPresent()) {
        return Read.bad(hidden.get());
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        String what = Files.isDirectory(path) ? " is a folder" : " is no ordinary file";
        return Read.bad(typed + what + ": a book is a file that ends in .yaml.");
      }
      if (!Files.isRegularFile(path) || !typed.endsWith(ENDING)) {
        return Read.bad("There is no job book " + typed + ": a book is a file that ends in .yaml.");
      }
      String name = path.toString();
      return Read.good(opening(Optional.of(name.substring(0, name.length() - ENDING.length()))));
    } catch (InvalidPathException notAName) {
      return Read.bad("\"" + typed + "\" cannot be the name of a book.");
    }
  }

  private static String slug(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.substring(0, name.length() - ENDING.length());
  }

  /** A new job; its plan file is read first, so that nothing is begun on a plan that is wrong. */
  public static Read<Opening> begin(
      String name, Optional<String> routine, Optional<String> plan, Library library) {
    if (name.isBlank()) {
      return Read.bad("Give the job a name, such as --new \"Anna's bracelet\".");
    }
    Read<String> proposed = routine.map(Read::good).orElseGet(() -> proposed(plan, library));
    if (proposed.problem().isPresent()) {
      return Read.bad(proposed.problem().get());
    }
    String by = proposed.orThrow();
    if (!library.routines().containsKey(by)) {
      return Read.bad(
          "There is no routine \""
              + by
              + "\". "
              + Nearest.of(by, library.routines().keySet())
                  .map(near -> "Did you mean " + near + "?")
                  .orElse("There are: " + String.join(", ", library.routines().keySet()) + "."));
    }
    if (plan.isEmpty()) {
      return Read.good(begun(new Begun(name, by, Map.of()), List.of()));
    }
    if (!Files.isRegularFile(Path.of(plan.get()))) {
      return Read.bad(
          PlanFile.none(Path.of(plan.get()), plan.get())
              .orElse("There is no plan file " + plan.get() + "."));
    }
    PlanFile file = PlanFile.read(Path.of(plan.get()), library);
    List<Problem> problems = new ArrayList<>(file.problems());
    if (file.wish().isPresent()) {
      Handbook handbook = Start.handbook(library);
      String why =
          Standing.of(Standing.newJob(file.texts(), handbook, by), handbook).counted().sentence();
      if (!why.isEmpty()) {
        problems.add(new Problem(plan.get(), 0, 0, why, ""));
      }
    }
    return Read.good(begun(new Begun(name, by, file.texts()), problems));
  }

  /** A plan file's routine, else the one for its pattern; the usual one without a plan. */
  private static Read<String> proposed(Optional<String> plan, Library library) {
    return plan.map(Path::of)
        .filter(Files::isRegularFile)
        .map(path -> PlanFile.read(path, library))
        .map(
            file ->
                file.routine()
                    .map(Read::good)
                    .orElseGet(
                        () ->
                            RoutineOfPlan.of(file.texts(), Start.handbook(library), USUAL_ROUTINE)))
        .orElseGet(() -> Read.good(USUAL_ROUTINE));
  }

  private static Opening begun(Begun begun, List<Problem> problems) {
    return new Opening(Optional.empty(), Optional.of(begun), problems);
  }
}
