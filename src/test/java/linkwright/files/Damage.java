package linkwright.files;

import java.io.ByteArrayOutputStream;
import java.util.Random;

/** Damages bytes as editors, disks and hands do. */
final class Damage {
  private static final String MARKS = "{}[]:,#&*!|>'\"%@`-?\\\t\n\r\u0000 0~<=e.+_";

  private Damage() {}

  /**
   * One to three of: a bit turned, a byte changed, a stretch taken out, doubled or moved, a mark of
   * YAML put in, all from some place on cut off.
   */
  static byte[] of(byte[] bytes, Random chance) {
    byte[] now = bytes;
    for (int i = 1 + chance.nextInt(3); i > 0 && now.length > 2; i--) {
      now = once(now, chance);
    }
    return now;
  }

  private static byte[] once(byte[] now, Random chance) {
    int at = chance.nextInt(now.length - 1);
    int end = Math.min(now.length, at + 1 + chance.nextInt(30));
    ByteArrayOutputStream out = new ByteArrayOutputStream(now.length + 32);
    out.write(now, 0, at);
    switch (chance.nextInt(8)) {
      case 0 -> out.write(now, end, now.length - end);
      case 1 -> {
        out.write(now, at, end - at);
        out.write(now, at, now.length - at);
      }
      case 2 -> {
        out.write(MARKS.charAt(chance.nextInt(MARKS.length())));
        out.write(now, end, now.length - end);
      }
      case 3 -> {
        out.write(MARKS.charAt(chance.nextInt(MARKS.length())));
        out.write(now, at, now.length - at);
      }
      case 4 -> {
        out.write(chance.nextInt(256));
        out.write(now, at, now.length - at);
      }
      case 5 -> {
        out.write(now[at] ^ (1 << chance.nextInt(8)));
        out.write(now, at + 1, now.length - at - 1);
      }
      case 6 -> {
        out.write(now, end, now.length - end);
        out.write(now, at, end - at);
      }
      default -> out.write(now, at, chance.nextInt(20) == 0 ? 0 : now.length - at);
    }
    return out.toByteArray();
  }
}
