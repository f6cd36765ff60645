package linkwright.files;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** The sorts of data file, by the folder they are in and the key that names them. */
enum DataKind {
  SAFETY("safety", "a caution", "caution"),
  SHARED("shared", "this file", "metals", "solders", "fineness", "clasps", "limits", "pattern"),
  ROUTINES("routines", "a routine", "routine");

  private final String folder;
  private final String what;
  private final String[] keys;

  DataKind(String folder, String what, String... keys) {
    this.folder = folder;
    this.what = what;
    this.keys = keys;
  }

  String folder() {
    return folder;
  }

  /** What a file of this sort describes, for sentences. */
  String what() {
    return what;
  }

  /** The sort of a file, told by a key that only this sort has. */
  static Optional<DataKind> of(Fields file) {
    return Arrays.stream(values())
        .filter(kind -> Stream.of(kind.keys).anyMatch(file::names))
        .findFirst();
  }

  /** Reads a file of this sort onto the shelves. */
  void read(Fields file, Shelves shelves) {
    switch (this) {
      case SAFETY -> CautionYaml.read(file, shelves);
      case ROUTINES -> RoutineYaml.read(file, shelves);
      case SHARED -> {
        if (file.names("pattern")) {
          PatternYaml.read(file, shelves);
        } else {
          ReferenceYaml.read(file, shelves);
        }
      }
    }
  }
}
