package linkwright.files;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import linkwright.files.yaml.YamlFields;

/** The sorts of data file, by the folder they are in and the key that names them. */
enum DataKind {
  SAFETY("safety", "a caution"),
  SHARED("shared", "this file"),
  ROUTINES("routines", "a routine");

  private final String folder;
  private final String what;

  DataKind(String folder, String what) {
    this.folder = folder;
    this.what = what;
  }

  String folder() {
    return folder;
  }

  /** What a file of this sort describes, for sentences. */
  String what() {
    return what;
  }

  /** The keys of which a file of this sort has at least one. */
  List<String> keys() {
    return switch (this) {
      case SAFETY -> List.of("caution");
      case SHARED ->
          List.of(
              "metals",
              "solders",
              "fineness",
              "clasps",
              "limits",
              "glossary",
              "tools",
              "pattern",
              "drawing");
      case ROUTINES -> List.of("routine");
    };
  }

  /** The keys by which files are told apart, for who has none of them. */
  static List<String> allKeys() {
    return Arrays.stream(values()).flatMap(kind -> kind.keys().stream()).toList();
  }

  /** The sort of a file, told by a key that only this sort has. */
  static Optional<DataKind> of(YamlFields file) {
    return Arrays.stream(values())
        .filter(kind -> kind.keys().stream().anyMatch(file::names))
        .findFirst();
  }

  /** Reads a file of this sort onto the shelves. */
  void read(YamlFields file, DataRead shelves) {
    switch (this) {
      case SAFETY -> CautionYaml.read(file, shelves);
      case ROUTINES -> RoutineYaml.read(file, shelves);
      case SHARED -> {
        if (file.names("pattern")) {
          PatternYaml.read(file, shelves);
        } else if (file.names("drawing")) {
          PictureYaml.read(file, shelves);
        } else {
          ReferenceYaml.read(file, shelves);
        }
      }
    }
  }
}
