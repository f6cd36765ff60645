package linkwright.quantity;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** Bytes for a fuzzer, and for the corpus that it left: whatever may be typed as an amount. */
public final class NumbersFuzz {
  private static final List<Function<String, Read<?>>> READERS =
      List.of(
          Length::read,
          Length::readSize,
          Length::readWire,
          Length::readList,
          Length::readWireList,
          Mass::read,
          Angle::read,
          Share::read,
          Share::readAny,
          Span::read,
          Count::read);

  private NumbersFuzz() {}

  /** Reads the text by every reader; throws where something does not hold. */
  public static void read(byte[] data) {
    String typed = new String(data, StandardCharsets.UTF_8);
    for (Function<String, Read<?>> reader : READERS) {
      Read<?> read = reader.apply(typed);
      String told = read.problem().orElse("good");
      String value = read.found().map(Object::toString).orElse("");
      if (told.isBlank()) {
        throw new AssertionError("no sentence");
      }
      if (value.contains("NaN") || value.contains("Infinity")) {
        throw new AssertionError("no amount: " + value);
      }
    }
  }
}
