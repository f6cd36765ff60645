package linkwright.coach.kernel.safety;

import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.zip.CRC32;
import linkwright.routine.Caution;

/** The digest by which it is known whether a card was met as it reads now, reckoned once a card. */
final class CardDigests {
  /** More than all cards that are read at once; beyond it the known ones are given up. */
  private static final int MOST = 300;

  private record Known(String reason, String digest) {}

  // By the card itself, not by its texts: to compare these would take as long as the digest. It
  // follows from card and reason alone, so that whoever asks at the same time at worst reckons once
  // more.
  private static volatile IdentityHashMap<Caution, Known> known = new IdentityHashMap<>();

  private CardDigests() {}

  /** The digest of a card's texts and of the reason for which it is shown, 8 hexadecimal digits. */
  static String of(Caution card, String reason) {
    IdentityHashMap<Caution, Known> before = known;
    Known last = before.get(card);
    if (last == null || !last.reason().equals(reason)) {
      last = new Known(reason, reckoned(card, reason));
      IdentityHashMap<Caution, Known> more = new IdentityHashMap<>();
      if (before.size() <= MOST) {
        more.putAll(before);
      }
      more.put(card, last);
      known = more;
    }
    return last.digest();
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
