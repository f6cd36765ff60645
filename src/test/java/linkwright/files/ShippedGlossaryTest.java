package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.reference.TradeTerm;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import org.junit.jupiter.api.Test;

/** The shipped glossary: the words that the texts use, each once, on both sides of the Atlantic. */
final class ShippedGlossaryTest {
  private static final List<TradeTerm> TERMS = LIBRARY.reference().glossary();

  private static final String TEXTS =
      Stream.concat(
              LIBRARY.routines().values().stream().map(Routine::toString),
              LIBRARY.cautions().values().stream().map(Caution::toString))
          .collect(Collectors.joining(" "))
          .toLowerCase(Locale.ROOT);

  @Test
  void explainsWhatABeginnerStumblesOver() {
    assertThat(TERMS)
        .extracting(TradeTerm::word)
        .contains("pallion", "taper", "loupe", "planish", "soda water", "former", "aspect ratio")
        .doesNotHaveDuplicates();
  }

  @Test
  void explainsNoWordInItself() {
    assertThat(TERMS).allSatisfy(term -> assertThat(term.says()).hasSizeBetween(20, 240));
  }

  @Test
  void holdsOnlyWordsThatTheTextsUse() {
    assertThat(TERMS)
        .filteredOn(
            term ->
                Stream.concat(Stream.of(term.word()), term.seenAs().stream())
                    .noneMatch(word -> TEXTS.contains(word.toLowerCase(Locale.ROOT))))
        .extracting(TradeTerm::word)
        .isEmpty();
  }

  @Test
  void saysTheAmericanWordAsTheTextsDo() {
    assertThat(TERMS)
        .filteredOn(term -> !TradeWords.AMERICAN.show(term.word()).equals(term.word()))
        .isNotEmpty()
        .allSatisfy(
            term ->
                assertThat(TradeWords.AMERICAN.show(term.word()))
                    .as(term.word())
                    .isEqualTo(term.american()));
  }
}
