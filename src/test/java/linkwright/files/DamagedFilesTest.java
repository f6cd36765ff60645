package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.Test;

/** Whatever happens to a file, it is read or its problems are told; nothing is thrown. */
class DamagedFilesTest {
  private static final String MARKS = "{}[]:,#&*!|>'\"%@`-?\\\t\n\u0000 0~<=e.";

  private static final Library LIBRARY = Library.load(new Home(Path.of("no such folder")));

  @Test
  void shippedFilesMayBeDamagedInAnyWay() throws IOException {
    long seed = 4711L;
    Random random = new Random(seed);
    Map<DataKind, List<DataFile>> all =
        Map.of(
            DataKind.SAFETY, ShippedData.files("safety").subList(0, 4),
            DataKind.ROUTINES, ShippedData.files("routines").subList(0, 2),
            DataKind.SHARED, ShippedData.files("shared"));
    for (DataKind kind : DataKind.values()) {
      for (DataFile file : all.get(kind)) {
        for (int i = 0; i < 25; i++) {
          byte[] damaged = damage(file.bytes(), random);
          LibraryReading reading = new LibraryReading();
          reading.read(new DataFile("it.yaml", damaged), kind);
          assertLocated(
              reading.library().problems(), damaged, "seed " + seed + " " + file.name() + " " + i);
        }
      }
    }
  }

  @Test
  void soMayTheUsersOwn() {
    long seed = 815L;
    Random random = new Random(seed);
    String plan =
        """
        job: One
        metal: sterling
        wire: 19 AWG
        link: {pattern: hook-link, blank: 34 mm, formers: {eye: 2.6 mm}}
        ring: {inside: 3 mm, oval-inside: 2 mm}
        finished-length: 45 cm
        clasp: {length: 12 mm, mass: 0.5 g}
        stock: [400 mm, 1 1/2 in]
        """;
    String tried = "- {blank: 30 mm, formers: {body: 3 mm}, length: 11 mm, verdict: [wider]}\n";
    String settings = "format: 1\nunits: inch\ntheme: light\nfont-size: 20\nflash: no\n";
    int told = 0;
    for (int i = 0; i < 1500; i++) {
      String which = "seed " + seed + ", case " + i;
      byte[] one = damage(plan.getBytes(StandardCharsets.UTF_8), random);
      List<Problem> ofPlan = PlanFile.of(new DataFile("it.yaml", one), LIBRARY).problems();
      told += ofPlan.isEmpty() ? 0 : 1;
      assertLocated(ofPlan, one, which);
      byte[] two = damage(tried.getBytes(StandardCharsets.UTF_8), random);
      assertLocated(TriedFile.of(new DataFile("it.yaml", two)).problems(), two, which);
      byte[] three = damage(settings.getBytes(StandardCharsets.UTF_8), random);
      assertLocated(UserSettings.of(new DataFile("it.yaml", three)).problems(), three, which);
    }
    assertThat(told).as("plans damaged so that it is noticed").isBetween(750, 1499);
  }

  private static void assertLocated(List<Problem> problems, byte[] bytes, String which) {
    long lines = 2 + new String(bytes, StandardCharsets.UTF_8).lines().count();
    for (Problem problem : problems) {
      assertThat(problem.line()).as("%s: %s", which, problem.sentence()).isBetween(0, (int) lines);
      assertThat(problem.wrong()).as(which).isNotBlank().doesNotContain("Exception", "NaN");
    }
  }

  /** One to three of: a byte changed, a stretch taken out, doubled, or a mark of YAML put in. */
  private static byte[] damage(byte[] bytes, Random random) {
    byte[] now = bytes;
    for (int i = 1 + random.nextInt(3); i > 0 && now.length > 2; i--) {
      int at = random.nextInt(now.length - 1);
      int end = Math.min(now.length, at + 1 + random.nextInt(30));
      byte[] before = Arrays.copyOf(now, at);
      byte[] after = Arrays.copyOfRange(now, end, now.length);
      byte[] part = Arrays.copyOfRange(now, at, end);
      byte[] mark = {(byte) MARKS.charAt(random.nextInt(MARKS.length()))};
      now =
          switch (random.nextInt(5)) {
            case 0 -> join(before, after);
            case 1 -> join(before, part, part, after);
            case 2 -> join(before, mark, after);
            case 3 -> join(before, mark, part, after);
            default -> join(before, new byte[] {(byte) random.nextInt(256)}, part, after);
          };
    }
    return now;
  }

  private static byte[] join(byte[]... parts) {
    List<Byte> all = new ArrayList<>();
    for (byte[] part : parts) {
      for (byte b : part) {
        all.add(b);
      }
    }
    byte[] joined = new byte[all.size()];
    for (int i = 0; i < joined.length; i++) {
      joined[i] = all.get(i);
    }
    return joined;
  }
}
