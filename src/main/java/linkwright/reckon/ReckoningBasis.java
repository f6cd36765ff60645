package linkwright.reckon;

import java.util.List;
import linkwright.fit.Tried;
import linkwright.link.Pattern;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;

/**
 * What a reckoning rests on besides what was typed.
 *
 * @param reference where metals, solders and clasps are looked up
 * @param patterns the link patterns there are
 * @param tried test pieces made so far, for the sum that learns from them
 * @param toAsk those of them that nobody was asked about: a measure out of reason is refused
 * @param units how amounts are written in sentences
 */
public record ReckoningBasis(
    Reference reference,
    List<Pattern> patterns,
    List<Tried> tried,
    List<Tried> toAsk,
    UnitStyle units) {
  /** Copies the lists. */
  public ReckoningBasis {
    patterns = List.copyOf(patterns);
    tried = List.copyOf(tried);
    toAsk = List.copyOf(toAsk);
  }
}
