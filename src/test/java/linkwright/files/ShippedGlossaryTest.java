package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
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

  /** What no word-book for everybody has, or has in another sense. */
  private static final List<String> TRADE =
      List.of(
          "pallion",
          "joint",
          "flux",
          "pickle",
          "quench",
          "anneal",
          "firescale",
          "former",
          "blank",
          "taper",
          "loupe",
          "mallet",
          "planish",
          "burnish",
          "draw plate",
          "draw tongs",
          "bench pin",
          "lemel",
          "clean scrap",
          "soldered scrap",
          "ingot",
          "crucible",
          "mould",
          "rolling mill",
          "fuse",
          "hallmark",
          "fineness",
          "assay",
          "steel shot",
          "liver of sulphur",
          "fire watch",
          "spark lighter",
          "neutral",
          "trial length",
          "pinhole",
          "fillet",
          "hard solder",
          "soft solder",
          "soda water",
          "dead soft",
          "half hard",
          "temper",
          "aspect ratio",
          "jump ring",
          "trace",
          "belcher",
          "curb",
          "bolt ring",
          "calipers",
          "flush cutters",
          "cross-locking tweezers",
          "flash",
          "flooded",
          "slumped",
          "crept",
          "waist",
          "shank",
          "stem",
          "burr",
          "kink",
          "stop",
          "jig",
          "feeler",
          "awl",
          "steel point",
          "hand vice",
          "brass brush",
          "temperature paint",
          "charcoal block",
          "boric dip",
          "arrestor",
          "purge",
          "regulator",
          "verdict",
          "sample",
          "repeat",
          "tag",
          "punch",
          "bail",
          "end caps",
          "half-round",
          "flush",
          "grade",
          "scrap",
          "plating",
          "tumble");

  @Test
  void explainsWhatABeginnerStumblesOver() {
    assertThat(TERMS)
        .extracting(TradeTerm::word)
        .contains("pallion", "taper", "loupe", "planish", "soda water", "former", "aspect ratio")
        .doesNotHaveDuplicates();
  }

  /**
   * Words of the trade that stand in a routine or a card are explained, by themselves or as forms.
   */
  @Test
  void explainsEveryTradeWordThatTheTextsUse() {
    List<String> explained =
        TERMS.stream()
            .flatMap(term -> Stream.concat(Stream.of(term.word()), term.seenAs().stream()))
            .map(word -> word.toLowerCase(Locale.ROOT))
            .toList();
    assertThat(TRADE)
        .filteredOn(word -> Pattern.compile("\\b" + word + "\\b").matcher(TEXTS).find())
        .hasSizeGreaterThan(60)
        .isSubsetOf(explained);
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
