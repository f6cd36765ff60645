package linkwright.shell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.job.Fact;
import linkwright.job.plan.WishKeys;

/** The job that lies in the tray when the program is started for the first time. */
public final class Demo {
  /** The demo's routine. */
  static final String ROUTINE = "scroll-and-ring";

  private Demo() {}

  /** The demo's name. */
  static String name() {
    return wish().get(WishKeys.JOB);
  }

  /** The entries with which the demo begins: the job and its plan. */
  public static List<Fact> facts() {
    return List.of(new Fact.JobOpened(name(), ROUTINE), new Fact.PlanSet(wish()));
  }

  /** The demo's wish as if it had been typed. */
  public static Map<String, String> wish() {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put(WishKeys.JOB, "Lighthouse keeper's bracelet (demo)");
    wish.put(WishKeys.METAL, "sterling");
    wish.put(WishKeys.WIRE, "1.0 mm");
    wish.put(WishKeys.TEMPER, "soft");
    wish.put(WishKeys.LINK_PATTERN, "scroll");
    wish.put(WishKeys.LINK_LENGTH, "15 mm");
    wish.put(WishKeys.LINK_WIDTH, "5.5 mm");
    wish.put(WishKeys.RING_INSIDE, "3.2 mm");
    wish.put(WishKeys.RING_OVAL, "2.4 mm");
    wish.put(WishKeys.FINISHED, "19 cm");
    wish.put(WishKeys.CLASP_LENGTH, "16 mm");
    wish.put(WishKeys.CLASP_MASS, "1.4 g");
    wish.put(WishKeys.KERF, "0.3 mm");
    wish.put(WishKeys.STOCK, "420 mm, 260 mm, 150 mm");
    return wish;
  }
}
