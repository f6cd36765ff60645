package linkwright.shell;

import java.util.List;
import java.util.Map;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;

/** The job that lies in the tray when the program is started for the first time. */
public final class Demo {
  private static final String FILE = "linkwright/demo.yaml";
  private static final String ROUTINE = "scroll-and-ring";

  private Demo() {}

  /** The demo's plan, as its file gives it. */
  public static PlanFile plan(Library library) {
    return PlanFile.packed(FILE, library);
  }

  /** The entries with which the demo begins: the job and its plan. */
  public static List<Fact> facts(Library library) {
    Map<String, String> wish = plan(library).texts();
    return List.of(new Fact.JobOpened(wish.get(WishKeys.JOB), ROUTINE), new Fact.PlanSet(wish));
  }
}
