package linkwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;

/** What files hold, as {@code sha256sum} tells it. */
final class Checksums {
  private Checksums() {}

  /** One line a file, in the order of their names: its SHA-256, two spaces, its name. */
  static List<String> lines(Collection<Path> files) throws IOException {
    TreeMap<String, String> byName = new TreeMap<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      byName.put(name, sum(file) + "  " + name);
    }
    return List.copyOf(byName.values());
  }

  private static String sum(Path file) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
