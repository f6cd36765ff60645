package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.disk.DiskTrouble;
import linkwright.files.DataFile;
import linkwright.files.Home;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.lesson.Recall;
import linkwright.lesson.Roster;
import linkwright.quantity.Count;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * The teacher's own file, {@code students.yaml} in the user's folder: names by id, and nothing else
 * holds a name.
 *
 * @param roster whom she teaches
 * @param problems all that is wrong, located; what is wrong is passed over
 */
public record StudentsFile(Roster roster, List<Problem> problems) {
  private static final String NAME = "students.yaml";

  public StudentsFile {
    problems = List.copyOf(problems);
  }

  /** Reads the file in the user's folder; without one nobody has a name. */
  public static StudentsFile load(Home home) {
    Path path = home.folder().resolve(NAME);
    List<Problem> trouble = new ArrayList<>();
    return Files.exists(path)
        ? Home.read(path, trouble)
            .map(StudentsFile::of)
            .orElseGet(() -> new StudentsFile(Roster.EMPTY, trouble))
        : new StudentsFile(Roster.EMPTY, trouble);
  }

  /** Reads what the file says. */
  public static StudentsFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    Map<String, String> names = new LinkedHashMap<>();
    int[] gap = {Recall.GAP_DAYS};
    YamlFields.ofFile(file.bytes(), "the students", problems)
        .ifPresent(
            from -> {
              gap[0] = from.optional("gap-days", StudentsFile::days).orElse(Recall.GAP_DAYS);
              from.group("students", "the names")
                  .ifPresent(group -> group.names().forEach(id -> names.put(id, group.text(id))));
              from.sound();
            });
    return new StudentsFile(new Roster(names, gap[0]), problems.all());
  }

  private static Read<Integer> days(String typed) {
    int days = Count.inDigits(typed, 2).orElse(0);
    return days >= 1 && days <= Roster.LONGEST_GAP_DAYS
        ? Read.good(days)
        : Read.bad("A gap is a whole number of days from 1 to " + Roster.LONGEST_GAP_DAYS + ".");
  }

  /** Writes it; answers with what is wrong, if it could not be. */
  public Optional<String> save(Home home) {
    if (!problems.isEmpty()) {
      return Optional.of("students.yaml has to be mended first: " + problems.get(0).sentence());
    }
    StringBuilder text =
        new StringBuilder("format: 1\n# Names stand here alone; students' books hold the ids.\n");
    text.append("gap-days: ").append(roster.gapDays()).append('\n');
    text.append("students:").append(roster.names().isEmpty() ? " {}\n" : "\n");
    roster
        .names()
        .forEach(
            (id, name) -> {
              text.append("  ").append(id).append(": ");
              YamlScalar.quoted(text, name);
              text.append('\n');
            });
    Path path = home.folder().resolve(NAME);
    try {
      home.keep(path, text.toString());
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(path, trouble));
    }
  }
}
