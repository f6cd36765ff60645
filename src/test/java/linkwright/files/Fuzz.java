package linkwright.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import linkwright.books.BookFuzz;
import linkwright.files.MutationsTest.Sort;
import linkwright.quantity.NumbersFuzz;
import linkwright.terminal.KeysFuzz;

/**
 * Where a fuzzer comes in, and the corpus that it left: bytes for whatever the property {@code
 * linkwright.fuzz} names. What does not hold is thrown.
 */
public final class Fuzz {
  private static final int LONGEST = 5_000;

  private Fuzz() {}

  /** Reads the bytes as what the property names. */
  public static void fuzzerTestOneInput(byte[] data) {
    read(System.getProperty("linkwright.fuzz", "plan"), data);
  }

  /** Reads the bytes as a line of a book, as keys, as an amount, or as a sort of file. */
  static void read(String target, byte[] data) {
    switch (target) {
      case "book-line" -> BookFuzz.read(data);
      case "key-decoder" -> KeysFuzz.read(data);
      case "numbers" -> NumbersFuzz.read(data);
      default -> file(Sort.of(target), data);
    }
  }

  private static void file(Sort sort, byte[] data) {
    try {
      // Unlike a mutation, a fuzzer finds out which words an oracle looks for, and writes them.
      MutationsTest.told(sort, data)
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
