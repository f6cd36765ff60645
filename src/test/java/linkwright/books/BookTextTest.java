package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

class BookTextTest {
  private static final String MARKS = "#:,{}[]&*!|>'\"%@`-?\\ ~";
  private static final Instant EIGHT = Instant.parse("2026-11-25T20:00:00Z");

  @Test
  void anEntryIsOneFlowMappingClosedByItsCheck() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("count", 6);
    fields.put("note", "six at once");
    fields.put("ok", true);
    fields.put("blank-mm", 38.1);
    String line =
        BookText.encode(
            new BookLine(12, EIGHT, "bench-k7", "Anna", "pieces-through", fields), "00c0ffee");
    assertThat(line)
        .matches(
            "- \\{n: 12, at: 2026-11-25T20:00:00Z, device: bench-k7, by: \"Anna\","
                + " after: \"00c0ffee\", kind: pieces-through, count: 6,"
                + " note: \"six at once\", ok: true, blank-mm: 38\\.1} # crc32c:[0-9a-f]{8}");
  }

  @Test
  void theCheckIsCrc32c() {
    // The check value of CRC-32C in common use: the digits 1 to 9 give e3069283.
    assertThat(BookText.check("123456789".getBytes(java.nio.charset.StandardCharsets.US_ASCII)))
        .isEqualTo("e3069283");
  }

  @Test
  void wordsThatYamlWouldTurnIntoSomethingElseAreQuoted() {
    BookLine line = new BookLine(1, EIGHT, "on", "null", Map.of("y", "yes", "12", "~"));
    assertThat(BookText.encode(line, ""))
        .contains("device: \"on\", kind: \"null\"", "\"y\": \"yes\"");
    assertThat(readBack(line)).isEqualTo(line);
  }

  @Test
  void anyEntryIsReadBackAsItWasWritten() {
    long seed = 20261125L;
    Random random = new Random(seed);
    for (int i = 0; i < 3000; i++) {
      BookLine line = randomLine(random, i + 1);
      assertThat(readBack(line)).as("seed %d, case %d", seed, i).isEqualTo(line);
    }
  }

  @Test
  void anyYamlReaderReadsTheSame() {
    long seed = 7L;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      BookLine line = randomLine(random, i + 1);
      String text = BookText.encode(line, "");
      assertThat(YamlLine.parse(text))
          .as("seed %d, %s", seed, text)
          .contains(new ParsedLine(line, "", true));
      Object plain = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
      assertThat(plain).isInstanceOf(List.class);
    }
  }

  @Test
  void numbersThatAreNoneAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BookLine(1, EIGHT, "bench", "x", Map.of("mm", Double.NaN)))
        .withMessageContaining("mm must be a finite number, not NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BookLine(1, EIGHT, "bench", "x", Map.of("l", List.of(1.0 / 0.0))))
        .withMessageContaining("Infinity");
  }

  @Test
  void anEntrysOwnKeysAreNotFields() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BookLine(1, EIGHT, "bench", "x", Map.of("at", "noon")))
        .withMessageContaining("own key at");
  }

  @Test
  void wordsOfAnotherWriterAreLeftToTheYamlReader() {
    assertThat(BookParser.parse("- {n: 0x10, at: 2026-11-25T20:00:00Z, by: a, kind: b}")).isEmpty();
    assertThat(BookParser.parse("- {n: 1, at: 2026-11-25T20:00:00Z, by: a, kind: b, c: yes}"))
        .isEmpty();
    assertThat(YamlLine.parse("- n: 1\n  at: 2026-11-25T20:00:00Z\n  by: a\n  kind: b\n  c: yes"))
        .contains(new ParsedLine(new BookLine(1, EIGHT, "a", "b", Map.of("c", true)), "", false));
  }

  private static BookLine readBack(BookLine line) {
    BookScan scan =
        BookScan.of(
            (BookText.encode(line, "") + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
    assertThat(scan.rows()).hasSize(1);
    assertThat(scan.rows().get(0).sound()).isTrue();
    String text = BookText.encode(line, "");
    String bare = text.substring(0, text.lastIndexOf(BookText.CHECK_MARK));
    assertThat(BookParser.parse(bare)).as("our own parser knows our own shape").isPresent();
    return scan.rows().get(0).entry().orElseThrow();
  }

  static BookLine randomLine(Random random, int number) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      fields.put("f" + text(random, 8), value(random, 0));
    }
    Instant at =
        Instant.ofEpochSecond(random.nextInt(2_000_000_000), random.nextInt(1_000_000_000));
    return new BookLine(number, at, "d" + text(random, 6), "k" + text(random, 6), fields);
  }

  private static Object value(Random random, int depth) {
    return switch (random.nextInt(depth < 3 ? 7 : 5)) {
      case 0 -> random.nextLong();
      case 1 -> random.nextBoolean();
      case 2 -> (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
      case 3 -> (long) random.nextInt(100);
      case 4 -> text(random, 20);
      case 5 -> {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          list.add(value(random, depth + 1));
        }
        yield list;
      }
      default -> {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          map.put(text(random, 5), value(random, depth + 1));
        }
        yield map;
      }
    };
  }

  /**
   * Letters, YAML's own marks, control characters, halves of surrogate pairs, the astral planes.
   */
  private static String text(Random random, int longest) {
    StringBuilder out = new StringBuilder();
    for (int i = random.nextInt(longest); i > 0; i--) {
      switch (random.nextInt(6)) {
        case 0 -> out.append(MARKS.charAt(random.nextInt(MARKS.length())));
        case 1 -> out.append((char) random.nextInt(0x180));
        case 2 -> out.append((char) random.nextInt(0x10000));
        case 3 -> out.appendCodePoint(0x10000 + random.nextInt(0x100000));
        default -> out.append((char) ('a' + random.nextInt(26)));
      }
    }
    return out.toString();
  }
}
