package linkwright.cli.console;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import linkwright.disk.DiskTrouble;
import linkwright.text.Text;
import linkwright.view.Ascii;

/**
 * Tells lines of text, each at once. No cursor is moved and nothing is coloured; whatever a file
 * may hold, no control character gets out.
 */
public final class Teller {
  private static final Pattern LINE_BREAKS = Pattern.compile("\\s*\\R\\s*");

  private final Writer to;
  private final boolean utf8;

  /** Why a line could not be told; once one could not, no other is tried. */
  private Optional<IOException> trouble = Optional.empty();

  private Teller(Writer to, boolean utf8) {
    this.to = to;
    this.utf8 = utf8;
  }

  /**
   * A teller.
   *
   * @param to where the lines go
   * @param utf8 whether all characters may be written; else each is told by its nearest in ASCII
   */
  public static Teller of(OutputStream to, boolean utf8) {
    Charset charset = utf8 ? StandardCharsets.UTF_8 : StandardCharsets.US_ASCII;
    return new Teller(new OutputStreamWriter(to, charset), utf8);
  }

  /** Tells one line; what somebody typed over several must not look like lines of ours. */
  public void say(String text) {
    String line = LINE_BREAKS.matcher(text.stripTrailing()).replaceAll(" / ");
    write((utf8 ? Text.safe(line) : Ascii.of(line)) + "\n");
  }

  private void write(String text) {
    if (trouble.isPresent()) {
      return;
    }
    try {
      to.write(text);
      to.flush();
    } catch (IOException refused) {
      trouble = Optional.of(refused);
    }
  }

  /**
   * What to say where lines were lost, such as on a full disk. Whoever stops listening, as at the
   * end of a pipe, has heard enough: then nothing.
   */
  public Optional<String> lost() {
    return trouble
        .filter(why -> !String.valueOf(why.getMessage()).toLowerCase(Locale.ROOT).contains("pipe"))
        .map(why -> DiskTrouble.writing(Path.of("standard output"), why));
  }

  /** Tells each on a line of its own. */
  public void sayAll(Iterable<String> lines) {
    lines.forEach(this::say);
  }

  /** Rings the bell of whoever listens. */
  public void bell() {
    write("\u0007");
  }

  /** Tells text that ends its own lines. */
  public void print(String text) {
    String all = text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
    sayAll(List.of(all.split("\n", -1)));
  }

  /** The same for those who print by themselves: what they print comes out line by line. */
  public PrintWriter writer() {
    return new PrintWriter(new Lines(this), true);
  }

  /** Gathers characters until a line is whole. */
  private static final class Lines extends Writer {
    private final Teller teller;
    private final StringBuilder line = new StringBuilder();

    Lines(Teller teller) {
      this.teller = teller;
    }

    @Override
    public void write(char[] characters, int from, int length) {
      for (int i = from; i < from + length; i++) {
        if (characters[i] == '\n') {
          teller.say(line.toString());
          line.setLength(0);
        } else if (characters[i] != '\r') {
          line.append(characters[i]);
        }
      }
    }

    @Override
    public void flush() {
      // A line is told when it is whole; half a line waits for its rest.
    }

    @Override
    public void close() {
      if (!line.isEmpty()) {
        teller.say(line.toString());
        line.setLength(0);
      }
    }
  }
}
