package linkwright.coach.kernel.safety;

import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import linkwright.routine.Caution;

/** The digest by which it is known whether a card was met as it reads now, reckoned once a card. */
final class CardDigests {
  /** More than all cards that are read at once; beyond it the known ones are given up. */
  private static final int MOST = 1000;

  private static final Map<Shown, String> KNOWN = new ConcurrentHashMap<>();

  private CardDigests() {}

  /** A card by itself, not by its texts: to compare these would take as long as the digest. */
  private record Shown(Caution card, String reason) {
    @Override
    @SuppressWarnings("ReferenceEquality")
    public boolean equals(Object other) {
      return other instanceof Shown shown && shown.card == card && shown.reason.equals(reason);
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(card) + reason.hashCode();
    }
  }

  /** The digest of a card's texts and of the reason for which it is shown, 8 hexadecimal digits. */
  static String of(Caution card, String reason) {
    if (KNOWN.size() > MOST) {
      KNOWN.clear();
    }
    return KNOWN.computeIfAbsent(
        new Shown(card, reason), shown -> reckoned(shown.card(), shown.reason()));
  }

  private static String reckoned(Caution card, String reason) {
    CRC32 sum = new CRC32();
    List.of(
            card.title(),
            card.shortLine(),
            card.canHappen(),
            String.join("\n", card.doList()),
            String.join("\n", card.doNot()),
            String.join("\n", card.ifItGoesWrong()),
            card.wear().toString(),
            card.source(),
            card.defers(),
            reason)
        .forEach(text -> add(sum, text));
    return HexFormat.of().toHexDigits((int) sum.getValue());
  }

  private static void add(CRC32 sum, String text) {
    char[] letters = text.toCharArray();
    byte[] bytes = new byte[2 * letters.length + 1];
    for (int i = 0; i < letters.length; i++) {
      bytes[2 * i] = (byte) (letters[i] >> 8);
      bytes[2 * i + 1] = (byte) letters[i];
    }
    sum.update(bytes);
  }
}
