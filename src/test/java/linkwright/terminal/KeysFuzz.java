package linkwright.terminal;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import linkwright.terminal.Input.Pressed;

/** Bytes for a fuzzer, and for the corpus that it left: whatever a terminal may send. */
public final class KeysFuzz {
  private static final List<Charset> CHARSETS =
      List.of(StandardCharsets.UTF_8, StandardCharsets.US_ASCII, StandardCharsets.ISO_8859_1);

  /** Stands for a silence in which a sequence that has not ended is given up. */
  private static final int SILENCE = 0xFE;

  private KeysFuzz() {}

  /** Decodes the bytes; throws where something does not hold. */
  public static void read(byte[] data) {
    if (data.length == 0) {
      return;
    }
    KeyDecoder decoder = new KeyDecoder(CHARSETS.get((data[0] & 0xFF) % CHARSETS.size()));
    for (int i = 1; i < data.length; i++) {
      int b = data[i] & 0xFF;
      if (b == SILENCE) {
        silence(decoder);
      } else {
        decoder.take(b);
      }
      drain(decoder);
    }
    silence(decoder);
    drain(decoder);
    if (decoder.isPending() && decoder.patienceMillis() < 0) {
      throw new AssertionError("it waits for less than nothing");
    }
  }

  private static void silence(KeyDecoder decoder) {
    if (decoder.isPending()) {
      decoder.expire();
    }
  }

  private static void drain(KeyDecoder decoder) {
    for (Optional<Input> next = decoder.next(); next.isPresent(); next = decoder.next()) {
      if (next.get() instanceof Pressed pressed
          && pressed.key().text().codePoints().anyMatch(Character::isISOControl)) {
        throw new AssertionError("a control character came as text: " + pressed);
      }
    }
  }
}
