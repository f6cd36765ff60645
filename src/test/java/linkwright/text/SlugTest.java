package linkwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SlugTest {
  private static String slug(String name) {
    return Slug.of(name, taken -> false);
  }

  @Test
  void keepsWhatIsReadableOfAName() {
    assertThat(slug("Anna's 16\" Trace, No. 2")).isEqualTo("anna-s-16-trace-no-2");
    assertThat(slug("Gänseblümchen für Łucja Straße")).isEqualTo("ganseblumchen-fur-lucja-strasse");
    assertThat(slug("  ../../etc/passwd  ")).isEqualTo("etc-passwd");
  }

  @Test
  void keepsNamesInOtherScriptsApart() {
    assertThat(slug("花")).isEqualTo("u82b1");
    assertThat(slug("鎖")).isNotEqualTo(slug("花"));
  }

  @Test
  void aNameWithNothingToKeepIsAJob() {
    assertThat(slug("")).isEqualTo("job");
    assertThat(slug("?!…")).isEqualTo("job");
  }

  @Test
  void namesThatASystemKeepsForItselfAreAvoided() {
    assertThat(slug("CON")).isEqualTo("job-con");
  }

  @Test
  void aNameInUseGetsANumber() {
    assertThat(Slug.of("Trace", List.of("trace", "trace-2")::contains)).isEqualTo("trace-3");
  }

  @Test
  void isSafeForAnyName() {
    long seed = 99L;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      StringBuilder name = new StringBuilder();
      for (int n = random.nextInt(80); n > 0; n--) {
        name.appendCodePoint(random.nextInt(0x3000));
      }
      assertThat(slug(name.toString()))
          .as("seed %d: %s", seed, name)
          .matches("[a-z0-9]([a-z0-9-]*[a-z0-9])?")
          .hasSizeLessThanOrEqualTo(64);
    }
  }
}
