package linkwright.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The JSON Schema of each sort of file that the program reads. */
public final class FileSchemas {
  private static final Map<String, Supplier<Map<String, Object>>> ALL = new LinkedHashMap<>();

  static {
    ALL.put("plan", OwnFileSchemas::plan);
    ALL.put("routine", RoutineSchema::routine);
    ALL.put("caution", RoutineSchema::caution);
    ALL.put("pattern", PatternSchema::pattern);
    ALL.put("book", () -> BookSchema.book("book", "A job's book, an entry a line"));
    ALL.put("settings", OwnFileSchemas::settings);
    ALL.put("keys", OwnFileSchemas::keys);
    ALL.put("bench", OwnFileSchemas::bench);
    ALL.put("drawer", () -> BookSchema.book("drawer", "drawer.yaml, an entry a line"));
    ALL.put("students", OwnFileSchemas::students);
    ALL.put("student", () -> BookSchema.book("student", "A student's book, an entry a line"));
  }

  private FileSchemas() {}

  /** The sorts of file there are. */
  public static List<String> kinds() {
    return List.copyOf(ALL.keySet());
  }

  /** The schema of a sort of file; empty if there is no such sort. */
  public static Optional<Map<String, Object>> of(String kind) {
    return Optional.ofNullable(ALL.get(kind)).map(Supplier::get);
  }
}
