package linkwright.walks;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import linkwright.Main;
import linkwright.disk.FailPoint;

/**
 * The program with a fault that the kill harness has to find: {@code late} lays an entry on the
 * disk only when the next one comes, {@code twice} enters it once more until then.
 */
final class PlantedFault implements FailPoint.Happening {
  private final boolean late;
  private String whole = "";

  private PlantedFault(boolean late) {
    this.late = late;
  }

  /** Which fault, then the program's own arguments. */
  public static void main(String[] arguments) {
    String[] own = Arrays.copyOfRange(arguments, 1, arguments.length);
    FailPoint.during(new PlantedFault(arguments[0].equals("late")), () -> Main.main(own));
  }

  @Override
  public void at(String name) throws IOException {
    if (name.equals("before-show")) {
      whole = Files.readString(book());
      int lastLine = whole.lastIndexOf('\n', whole.length() - 2) + 1;
      if (late) {
        cutTo(whole.substring(0, lastLine));
      } else {
        append(again(whole.substring(lastLine)));
      }
    } else if (name.equals("before-write") && !whole.isEmpty()) {
      String left = Files.readString(book());
      if (left.length() < whole.length()) {
        append(whole.substring(left.length()));
      } else {
        cutTo(whole);
      }
    }
  }

  // Each in one step: a kill between emptying a book and filling it would be another fault.

  private static void cutTo(String text) throws IOException {
    try (FileChannel book = FileChannel.open(book(), StandardOpenOption.WRITE)) {
      book.truncate(text.getBytes(StandardCharsets.UTF_8).length);
    }
  }

  private static void append(String text) throws IOException {
    Files.writeString(book(), text, StandardOpenOption.APPEND);
  }

  /** The entry after a line that says the same: its check is right, its number the next. */
  private static String again(String line) {
    String[] parts = line.strip().split(" # crc32c:", -1);
    Matcher number = Pattern.compile("n: (\\d+)").matcher(parts[0]);
    String next =
        number
            .replaceFirst(found -> "n: " + (Integer.parseInt(found.group(1)) + 1))
            .replaceFirst("after: \"\\w+\"", "after: \"" + parts[1] + "\"");
    CRC32C check = new CRC32C();
    check.update(next.getBytes(StandardCharsets.UTF_8));
    return next + " # crc32c:" + HexFormat.of().toHexDigits((int) check.getValue()) + "\n";
  }

  private static Path book() throws IOException {
    Path jobs = Path.of(System.getenv("LINKWRIGHT_HOME"), "jobs");
    try (Stream<Path> books = Files.list(jobs)) {
      return books.filter(each -> each.toString().endsWith(".yaml")).findFirst().orElseThrow();
    }
  }
}
