package linkwright.walks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import linkwright.walks.KillPlan.Doing;

/**
 * A round by commands, a program an entry, the last of them killed: lots that come into the drawer,
 * and the bench's kerf. The drawer's book is judged like a job's; of the bench's file it is known
 * here what it may hold.
 */
final class KillCommands {
  private final Path home;
  private final ShippedProgram program;
  private final List<String> mayHold = new ArrayList<>();

  KillCommands(Path home, ShippedProgram program) {
    this.home = home;
    this.program = program;
  }

  private static String kerf(Doing doing) {
    return "kerf: 0." + (doing.count() < 10 ? "0" : "") + doing.count() + " mm";
  }

  /** What the commands said, to the last byte before the kill. */
  String run(KillPlan plan) throws IOException {
    mayHold.add(bench());
    StringBuilder shown = new StringBuilder();
    for (int i = 0; i < plan.entries().size(); i++) {
      Doing doing = plan.entries().get(i);
      boolean last = i == plan.entries().size() - 1;
      String said = run(doing, last ? plan.nanos() : Long.MAX_VALUE);
      shown.append(said);
      if (!doing.isNote()) {
        if (said.contains(kerf(doing).replace("kerf: ", "")) || !last) {
          mayHold.clear();
        }
        mayHold.add(kerf(doing));
      }
    }
    return shown.toString();
  }

  private String run(Doing doing, long nanos) throws IOException {
    String[] words =
        doing.isNote()
            ? new String[] {"drawer", "--came", doing.note(), "--mass", "20 g"}
            : new String[] {"bench", "--set", kerf(doing).replace(": ", "=")};
    Path out = Files.createTempFile(home, "said", ".txt");
    ProcessBuilder builder = new ProcessBuilder(program.with(words));
    builder.environment().put("LINKWRIGHT_HOME", home.toString());
    builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
    builder.environment().put("LANG", "C.UTF-8");
    builder.redirectErrorStream(true).redirectOutput(out.toFile());
    Process process = builder.start();
    try {
      if (nanos == Long.MAX_VALUE) {
        if (!process.waitFor(Workbench.LONG, TimeUnit.SECONDS) || process.exitValue() != 0) {
          throw new AssertionError(String.join(" ", words) + ": " + Files.readString(out));
        }
      } else {
        LockSupport.parkNanos(nanos);
        process.toHandle().destroyForcibly();
        process.waitFor();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", stopped);
    }
    String said = Files.readString(out);
    Files.delete(out);
    return said;
  }

  private String bench() throws IOException {
    Path file = home.resolve("bench.yaml");
    return Files.exists(file)
        ? Files.readString(file).lines().skip(1).findFirst().orElse("nothing")
        : "";
  }

  /** What the bench's file holds that it may not. */
  List<String> wrong() throws IOException {
    String holds = bench();
    return mayHold.contains(holds)
        ? List.of()
        : List.of(
            "Lost or doubled: bench.yaml holds “" + holds + "” where it may hold " + mayHold + ".");
  }
}
