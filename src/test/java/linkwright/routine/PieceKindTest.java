package linkwright.routine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PieceKindTest {
  @ParameterizedTest
  @CsvSource({
    "link, 1 link, 6 links",
    "box, 1 box, 6 boxes",
    "brooch, 1 brooch, 6 brooches",
    "cap, 1 cap, 6 caps"
  })
  void says_one_and_several(String kind, String one, String six) {
    PieceKind piece = new PieceKind(kind);
    assertThat(piece.counted(1)).isEqualTo(one);
    assertThat(piece.counted(6)).isEqualTo(six);
    assertThat("6 " + piece.many()).isEqualTo(six);
  }
}
