package linkwright.view;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import linkwright.coach.Bencher;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.tray.TrayWords;
import linkwright.drawer.Drawer;
import linkwright.drawer.JobMetal;
import linkwright.drawer.Taking;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.UnitStyle;
import linkwright.shell.Demo;

/** Every screen of the coach, reached by its keys in a job that somebody works on. */
public final class Scenes {
  /** Wide signs, combining ones, an accent over a letter that has none of its own, a flag. */
  private static final String LONG_NAME =
      "銀の鎖 for A\u0301na-Lœ\u0323 \uD83C\uDDE6\uD83C\uDDF9, to match the 金 earrings she had of her"
          + " grandmother in 1961";

  private static final Map<String, Function<Bencher, Bencher>> ALL = all();

  private Scenes() {}

  public static List<String> names() {
    return List.copyOf(ALL.keySet());
  }

  /** The scene of that name in a window of that size. */
  public static Bencher of(String name, int width, int height) {
    Bencher bencher = begin(name);
    bencher.take(new Message.Resized(width, height));
    return ALL.get(name).apply(bencher);
  }

  /** The same for a reader of inches and American words. */
  public static Bencher inInches(String name, int width, int height) {
    List<Fact> facts = Demo.facts(Bencher.LIBRARY).stream().map(Scenes::typedInInches).toList();
    Settings settings = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    Bencher bencher =
        name.startsWith("tray")
            ? Bencher.atTheTray(settings)
            : Bencher.with(settings, false, facts);
    bencher.take(new Message.Resized(width, height));
    return ALL.get(name).apply(bencher);
  }

  private static Fact typedInInches(Fact fact) {
    if (!(fact instanceof Fact.PlanSet plan)) {
      return fact;
    }
    Map<String, String> wish = new LinkedHashMap<>(plan.wish());
    wish.replaceAll(
        (key, text) -> Measure.translated(text.replace("0.9 mm", "19 AWG"), UnitStyle.INCH));
    return new Fact.PlanSet(wish);
  }

  private static Bencher begin(String name) {
    if (name.startsWith("tray")) {
      return Bencher.atTheTray();
    }
    if (name.equals("plan-bare")) {
      return Bencher.with(new Fact.JobOpened("A chain without a plan", "scroll-and-ring"));
    }
    if (name.startsWith("names")) {
      Map<String, String> wish = new LinkedHashMap<>();
      for (Fact fact : Demo.facts(Bencher.LIBRARY)) {
        if (fact instanceof Fact.PlanSet plan) {
          wish.putAll(plan.wish());
        }
      }
      return Bencher.with(new Fact.JobOpened(LONG_NAME, "scroll-and-ring"), new Fact.PlanSet(wish));
    }
    return name.startsWith("inch")
        ? Bencher.withTheDemo(new Settings(UnitStyle.INCH, false, KeyMap.USUAL))
        : Bencher.withTheDemo();
  }

  private static Map<String, Function<Bencher, Bencher>> all() {
    Map<String, Function<Bencher, Bencher>> all = new LinkedHashMap<>();
    all.put("tray", bencher -> trayWith(bencher, jobs()).press("down"));
    all.put("tray-empty", bencher -> bencher);
    all.put("tray-new-job", bencher -> trayWith(bencher, jobs()).press("n").type("Šárka’s 鎖"));
    all.put("tray-drawer", bencher -> lots(bencher).press("d"));
    all.put("tray-drawer-drawn", bencher -> lots(bencher).press("d", "d").put("wire", "1.4 mm"));
    all.put("tray-hands", bencher -> bencher.press("h"));
    all.put("tray-own-bench", bencher -> bencher.press("o"));
    all.put("round", bencher -> formed(bencher).press("esc"));
    all.put("plan", bencher -> bencher.press("p"));
    all.put("plan-trouble", Scenes::planTrouble);
    all.put("plan-too-thick", Scenes::tooThick);
    all.put("plan-bare", bencher -> bencher);
    all.put("tests", Scenes::tests);
    all.put("tests-form", bencher -> tests(bencher).press("n").put("width", "5 apples"));
    all.put("trial", Scenes::trial);
    all.put("trial-form", bencher -> trial(bencher).press("n").put("hung", "61 mm"));
    all.put("bench-caution", bencher -> bencher.press("b", "space"));
    all.put("bench-do", bencher -> bencher.goTo("judge-test"));
    all.put("bench-cut", bencher -> bencher.goTo("cut-blanks").press(5, "page-down").type("12"));
    all.put("bench-lit-first", bencher -> bencher.goTo("anneal-wire"));
    all.put("bench-watch", Scenes::watching);
    all.put("hot-work", bencher -> formed(bencher).press("!"));
    all.put("bench-count", bencher -> formed(bencher));
    all.put("bench-why", bencher -> formed(bencher).type("2").press("r"));
    all.put("bench-remedy", bencher -> formed(bencher).type("2").press("r", "1"));
    all.put("bench-redo-in-hand", bencher -> formed(bencher).type("2").press("r", "1", "x"));
    all.put("bench-why-form", bencher -> formed(bencher).press("v"));
    all.put("bench-batch", bencher -> pickling(bencher).pass(Duration.ofSeconds(95)));
    all.put("bench-due", bencher -> pickling(bencher).pass(Duration.ofMinutes(9)));
    all.put("bench-leaving", bencher -> formed(bencher).press("y").type("13"));
    all.put("bench-away", bencher -> pickling(bencher).press("y", "space"));
    all.put("failed", bencher -> failed(bencher).press("esc", "o", "s"));
    all.put("wire", bencher -> formed(bencher).press("esc", "w"));
    all.put("wire-came", bencher -> formed(bencher).press("esc", "w", "n", "down").type("2 m"));
    all.put("wire-drawn", Scenes::drawn);
    all.put("book", Scenes::book);
    all.put("book-strike", bencher -> book(bencher).press("x"));
    all.put("cautions", bencher -> bencher.press("c").press(3, "down"));
    all.put("cautions-card", bencher -> bencher.press("c").press(3, "down").press("enter"));
    all.put("timers", Scenes::timers);
    all.put("reckoner", bencher -> bencher.press("r"));
    all.put("reckoner-sum", bencher -> bencher.press("r", "enter").put("length", "2 m"));
    all.put("what-if", bencher -> bencher.press("x", "n").put("wire 2", "0.9 mm").press("ctrl-k"));
    all.put("what-there-is", bencher -> thereIs(bencher).press("ctrl-k"));
    all.put("what-there-is-form", bencher -> thereIs(bencher).put("hours", "soon"));
    all.put("job-card", bencher -> card(bencher).press("ctrl-k"));
    all.put("job-card-form", bencher -> card(bencher).put("promised", "soon").press("ctrl-k"));
    all.put("names-round", bencher -> bencher);
    all.put("names-bench", bencher -> bencher.goTo("cut-blanks").press("space"));
    all.put("inch-plan", bencher -> bencher.press("p", "down"));
    all.put("inch-tests", Scenes::tests);
    all.put("inch-bench", bencher -> formed(bencher));
    all.put("inch-wire", bencher -> formed(bencher).press("esc", "w"));
    all.put("inch-weigh-in", Scenes::weighed);
    all.put("weigh-in", Scenes::weighed);
    all.put("weigh-in-prices", bencher -> weighed(bencher).press("p", "down"));
    all.put("find", bencher -> bencher.press("f").type("pick"));
    all.put("look-up", bencher -> bencher.press("esc", "e").press(3, "down").press("enter"));
    all.put("settings", bencher -> bencher.press(","));
    all.put("rehearsal", bencher -> bencher.press("esc", "y").press(5, "right"));
    all.put("lesson", bencher -> bencher.press("esc", "s"));
    all.put("lesson-not-so", bencher -> bencher.press("esc", "s", "0"));
    all.put("lesson-over", LearningScenes::lessonOver);
    all.put("students", bencher -> LearningScenes.mara(bencher).press("esc", "s"));
    all.put("her-book", LearningScenes::herBook);
    all.put("class", LearningScenes::classRoom);
    all.put("plan-explained", bencher -> bencher.press("p").toField("wire").press("?"));
    all.put("across", bencher -> formed(bencher).press("="));
    all.put("across-due", bencher -> pickling(bencher).pass(Duration.ofMinutes(9)).press("="));
    all.put("keys", bencher -> formed(bencher).press("?"));
    return all;
  }

  private static Bencher thereIs(Bencher bencher) {
    bencher.press("h").put("wire", "420 mm, 260 mm").put("metal", "9 g");
    return bencher.put("hours", "6");
  }

  private static Bencher card(Bencher bencher) {
    bencher
        .press("d", "n")
        .put("customer", "The keeper’s niece, Ána")
        .put("promised", "2026-03-14");
    bencher.put("quote", "180 EUR").put("deposit", "60 EUR").put("own-metal", "old ring, 4.2 g");
    return bencher.put("clasp", "scroll hook, her own").put("mark", "925");
  }

  /** Wire and solder in the drawer, some of it taken and weighed by a job. */
  private static Bencher lots(Bencher bencher) {
    OptionalDouble none = OptionalDouble.empty();
    List<Entry> book =
        List.of(
            lot(
                1,
                new LotFact.LotArrived(
                    "silver 1.2 March",
                    "wire",
                    "sterling",
                    OptionalDouble.of(1.2),
                    "soft",
                    "b7",
                    OptionalDouble.of(3000),
                    none,
                    "")),
            lot(
                2,
                new LotFact.LotArrived(
                    "hard strip",
                    "solder",
                    "hard-silver",
                    none,
                    "",
                    "",
                    none,
                    OptionalDouble.of(20),
                    "")));
    List<Taking> takings =
        List.of(
            new Taking(
                "lighthouse",
                Bencher.MORNING,
                "silver 1.2 March",
                OptionalDouble.of(900),
                none,
                false));
    JobMetal work =
        new JobMetal(
            "lighthouse",
            "sterling",
            0,
            0,
            new Fact.WeighedIn(
                OptionalDouble.of(6.1),
                none,
                OptionalDouble.of(2.2),
                OptionalDouble.of(0.8),
                OptionalDouble.of(0.6),
                OptionalDouble.of(0.4),
                OptionalDouble.of(0.1)),
            Optional.of(Map.of()));
    Drawer drawer = Drawer.of(book, takings, List.of(work), Bencher.SHELF.reference());
    bencher.take(new Message.TrayRead(jobs(), 0, List.of(), Optional.empty(), Optional.of(drawer)));
    return bencher;
  }

  private static Entry lot(int number, Fact fact) {
    return new Entry(number, Bencher.MORNING, "bench", fact);
  }

  private static Bencher trayWith(Bencher bencher, List<TrayJob> jobs) {
    bencher.take(new Message.TrayRead(jobs, 0, List.of(), Optional.empty(), Optional.empty()));
    return bencher;
  }

  private static List<TrayJob> jobs() {
    Bencher ringing = pickling(Bencher.withTheDemo()).pass(Duration.ofMinutes(9));
    return List.of(
        job("lighthouse", ringing),
        job(
            "fresh",
            Bencher.with(
                new Fact.JobOpened(
                    "Neck chain in red gold for the goldsmith’s own daughter, to match the earrings"
                        + " of 2019",
                    "oval-and-long"))),
        job("wide", Bencher.with(new Fact.JobOpened("銀の鎖 — Ána’s nȯte", "round-cable"))),
        job("done", closed()));
  }

  private static TrayJob job(String slug, Bencher bencher) {
    return TrayWords.standing(slug, bencher.entries(), Bencher.SHELF)
        .at(bencher.now(), ClockMoves.NONE);
  }

  private static Bencher closed() {
    return weighed(Bencher.withTheDemo()).press("c", "ctrl-k", "ctrl-k");
  }

  private static Bencher planTrouble(Bencher bencher) {
    return bencher.press("p").put("wire", "4 mm").put("finished-length", "9 apples");
  }

  private static Bencher tooThick(Bencher bencher) {
    return bencher.press("p", "down").press(6, "backspace").type("4 mm");
  }

  static Bencher tests(Bencher bencher) {
    bencher.press("t");
    test(bencher, "42 mm", "15.1 mm", "6.3 mm", "longer");
    test(bencher, "44 mm", "16.9 mm", "6.1 mm", "shorter");
    return test(bencher, "43 mm", "15.9 mm", "6.2 mm", "right");
  }

  private static Bencher test(
      Bencher bencher, String blank, String length, String width, String verdict) {
    bencher.press("n").put("blank", blank).put("length", length).put("width", width);
    return bencher.put("verdict", verdict).press("ctrl-k");
  }

  static Bencher trial(Bencher bencher) {
    tests(bencher).press("s", "l");
    hung(bencher, "3.2 mm", "62.5 mm");
    return hung(bencher, "3 mm", "61 mm").press("s");
  }

  private static Bencher hung(Bencher bencher, String ring, String length) {
    return bencher.press("n").put("ring", ring).put("hung", length).press("ctrl-k");
  }

  /** At the soldering of links, some through. */
  private static Bencher formed(Bencher bencher) {
    bencher.goTo("cut-blanks").type("10").press("space");
    bencher
        .goTo("anneal-blanks")
        .press("space", "space")
        .pass(Duration.ofMinutes(8))
        .press("space");
    bencher.goTo("form-links").type("9").press("space");
    bencher.goTo("solder-links").press(5, "page-down");
    return bencher.pass(Duration.ofMinutes(10));
  }

  /** At the soldering of links, some of them failed. */
  private static Bencher failed(Bencher bencher) {
    formed(bencher).type("2").press("r", "1").press("space", "s", "1");
    return bencher;
  }

  /** Every flame out, at the step where the fire watch is kept. */
  private static Bencher watching(Bencher bencher) {
    bencher.goTo("anneal-wire").press("space", "space").goTo("look-over").press("space", "space");
    return bencher.pass(Duration.ofMinutes(20)).press("space");
  }

  /** The links in the pickle, its timer running. */
  private static Bencher pickling(Bencher bencher) {
    return formed(bencher).press("a").goTo("pickle-links").press("space");
  }

  private static Bencher drawn(Bencher bencher) {
    bencher.press("w", "d", "down").type("1.5 mm").press("down");
    return bencher.type("1.4 mm, 1.3 mm, 1.2 mm, 1.1 mm, 1.0 mm").press("down").type("400 mm");
  }

  private static Bencher book(Bencher bencher) {
    formed(bencher).press("esc", "k", "n").type("Eyes a little tight; 鎖 for Ána").press("ctrl-k");
    return bencher.press("down", "down").press("x").type("counted twice").press("ctrl-k");
  }

  private static Bencher timers(Bencher bencher) {
    bencher.press("m");
    timer(bencher, "Kettle for the pitch bowl", "5 min");
    timer(bencher, "Second pickle pot by the window, the small one", "90 s");
    timer(bencher, "Fire watch", "1 h 30 min");
    return bencher.pass(Duration.ofSeconds(100)).press("down");
  }

  private static void timer(Bencher bencher, String name, String time) {
    bencher.press("n").type(name).press("down").type(time).press("ctrl-k");
  }

  private static Bencher weighed(Bencher bencher) {
    formed(bencher).press("esc", "i", "o").type("14.5 g").press("ctrl-k");
    // Heavier than planned by far: asked about once, kept the second time.
    bencher.press("n").type("10.2 g").press("down").type("19.1 cm").press("down").type("2.1 g");
    bencher.press("down").type("0.6 g").press("down").type("0.2 g").press("ctrl-k", "ctrl-k");
    bencher
        .press("p")
        .type("EUR")
        .press("down")
        .type("1.05")
        .press("down")
        .type("90 %")
        .press("down", "down", "down")
        .type("30");
    return bencher.press("ctrl-k");
  }
}
