package linkwright.cli.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import linkwright.files.Home;

/** Keeps the details of a fault of the program for whoever mends it. */
public final class TraceFile {
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("'trouble-'yyyyMMdd-HHmmss'.txt'").withZone(ZoneOffset.UTC);

  private TraceFile() {}

  /** Writes the details into the user's folder; answers with one sentence for her. */
  public static String keep(Home home, Throwable fault, Instant now) {
    String said = "Linkwright met a fault of its own and had to stop. ";
    String safe = "Every entry that was shown as done is in the job book.";
    Path file = home.folder().resolve(NAME.format(now));
    StringWriter details = new StringWriter();
    fault.printStackTrace(new PrintWriter(details));
    try {
      home.keep(file, now + "\n" + details);
      return said + safe + " The details are in " + file + ".";
    } catch (IOException trouble) {
      return said
          + safe
          + " The details could not be kept ("
          + file
          + "): "
          + fault.getClass().getSimpleName()
          + ".";
    }
  }
}
