package linkwright.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import linkwright.files.MutationsTest.Sort;

/**
 * Bytes for a fuzzer, and for the corpus that it left: whatever a file may hold. The property
 * {@code linkwright.fuzz} names the sort of file.
 */
public final class FilesFuzz {
  private static final int LONGEST = 5_000;

  private FilesFuzz() {}

  /** Reads the bytes as the file that the property names. */
  public static void fuzzerTestOneInput(byte[] data) {
    read(System.getProperty("linkwright.fuzz", "plan"), data);
  }

  /** Reads the bytes as a sort of file; throws where something does not hold. */
  public static void read(String sort, byte[] data) {
    try {
      // Unlike a mutation, a fuzzer finds out which words an oracle looks for, and writes them.
      MutationsTest.told(Sort.of(sort), data)
          .forEach(
              problem -> {
                if (problem.wrong().isBlank() || problem.sentence().length() > LONGEST) {
                  throw new AssertionError("no sentence: " + problem.sentence().length());
                }
              });
    } catch (IOException disk) {
      throw new UncheckedIOException(disk);
    }
  }
}
