package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.quantity.UnitStyle;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every routine from its first step to a closed job, some pieces failing by chance on the way, in
 * millimetres with British words and in inches with American ones.
 */
class WalkedToCloseTest {
  private static final long SEED = 20261126;
  private static final int MOST_PRESSES = 900;
  private static final Pattern MM = Pattern.compile("\\d\\s*mm\\b");
  private static final Pattern BRITISH =
      Pattern.compile(
          "(?i)\\b(joints?|pallions?|formers?|belcher|bolt ring|lemel|hallmark|vice|\\w*colour\\w*"
              + "|\\w*vapour\\w*|mould|neighbour|centre)\\b");

  static List<String> routines() {
    return Bencher.SHELF.routines().stream().map(Routine::id).toList();
  }

  @ParameterizedTest
  @MethodSource("routines")
  void in_millimetres_and_british_words(String id) {
    walked(id, Settings.USUAL, List.of("0.9 mm", "38 mm", "3 mm", "2.4 mm", "6 cm", "2 g"));
  }

  @ParameterizedTest
  @MethodSource("routines")
  void in_inches_and_american_words(String id) {
    Settings american = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    walked(id, american, List.of("0.035 in", "1 1/2 in", "1/8 in", "0.095 in", "2 1/2 in", "2 g"));
  }

  private static void walked(String id, Settings settings, List<String> sizes) {
    Routine routine = Bencher.SHELF.routine(id).orElseThrow();
    Bencher bench =
        Bencher.with(
            settings,
            false,
            List.of(new Fact.JobOpened("A job", id), new Fact.PlanSet(wish(routine, sizes))));
    bench.press("esc");
    bench.take(new Message.KeyPressed(Key.of("b")));
    Random chance = new Random(SEED + id.hashCode());
    Set<StepId> opened = new HashSet<>();
    List<String> strange = new ArrayList<>();
    Set<String> outOfSight = new TreeSet<>();
    Set<String> looked = new HashSet<>();
    int presses = 0;
    while (!bench.notice().startsWith("All done here") && presses++ < MOST_PRESSES) {
      if (canFail(bench) && chance.nextInt(15) == 0) {
        bench.press(chance.nextInt(3) == 0 ? "s" : "r", "1");
      }
      bench.press("page-down");
      if (bench.notice().contains("no other work waits")) {
        bench.pass(Duration.ofMinutes(10));
      }
      if (looked.add(bench.at().number() + " " + bench.model().timers().running().size())) {
        outOfSight.addAll(outOfSight(bench));
      }
      if (opened.add(bench.at().step().id()) && settings.units() == UnitStyle.INCH) {
        strange.addAll(strange(bench));
      }
    }
    String as = id + ", seed " + SEED + ", at " + bench.at().step().id() + ": " + bench.notice();
    assertThat(bench.notice()).as(as).startsWith("All done here");
    assertThat(strange).as(as).isEmpty();
    assertThat(passedBy(bench, opened)).as(as + ", whose timer was passed by").isEmpty();
    assertThat(outOfSight).as(as + ", out of sight on the first page").isEmpty();
    assertThat(opened).as(as).hasSizeGreaterThanOrEqualTo(bench.at().routine().steps().size() - 1);

    bench.press("esc");
    bench.take(new Message.KeyPressed(Key.of("i")));
    bench.press("n").type(sizes.get(5));
    for (int i = 0; i < 3 && bench.model().held().form().isPresent(); i++) {
      bench.press("ctrl-k");
    }
    bench.press("c");
    for (int i = 0; i < 5 && !bench.job().state().course().closed(); i++) {
      bench.press("ctrl-k");
    }
    assertThat(bench.job().state().course().closed()).as(as + bench.notice()).isTrue();
    assertThat(bench.model().hotWork().open()).as(as).isFalse();
  }

  private static Map<String, String> wish(Routine routine, List<String> sizes) {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put("metal", "sterling");
    wish.put("wire", sizes.get(0));
    if (routine.makes() == Makes.CHAIN) {
      wish.put("link.pattern", routine.patterns().get(0));
      wish.put("link.blank", sizes.get(1));
      wish.put("finished-length", sizes.get(4));
      if (routine.ends() == ChainEnds.RINGS) {
        wish.put("ring.inside", sizes.get(2));
        wish.put("ring.oval-inside", sizes.get(3));
      }
    }
    return wish;
  }

  /** What can be said to have failed: pieces that lie at a step that counts them. */
  private static boolean canFail(Bencher bench) {
    Optional<AtBench> at = AtBench.of(bench.model());
    return bench.caution().isEmpty()
        && !BenchAnswers.away(bench.model())
        && at.filter(here -> here.counts() && !here.begins() && here.available() > 0).isPresent();
  }

  /** Steps that were worked at by the common key alone and whose timer it never started. */
  private static Set<StepId> passedBy(Bencher bench, Set<StepId> opened) {
    Set<StepId> left = new HashSet<>(opened);
    bench.entered(Fact.TimerStarted.class).forEach(started -> left.remove(started.step()));
    bench.entered(BenchFact.StepSkipped.class).forEach(skipped -> left.remove(skipped.step()));
    left.removeIf(
        id -> {
          Step step = bench.at().routine().step(id).orElseThrow();
          return AtBench.of(bench.at().routine(), bench.job(), step).timed().isEmpty();
        });
    return left;
  }

  /**
   * Cautions that are not whole on the first page, 80 x 24, and what is to do if it never begins.
   */
  private static Set<String> outOfSight(Bencher bench) {
    List<Prose> texts =
        Pages.of(bench.model()).body().parts().stream()
            .flatMap(part -> part instanceof Prose prose ? Stream.of(prose) : Stream.empty())
            .toList();
    if (texts.stream().noneMatch(each -> each.kind() == Prose.Kind.DO)) {
      return Set.of();
    }
    String first = Shown.draw(bench.model(), Glyphs.FULL).text().replaceAll("\\s+", " ");
    return texts.stream()
        .filter(each -> each.kind() == Prose.Kind.CAUTION || each.kind() == Prose.Kind.DO)
        .filter(each -> !first.contains(beginning(each)))
        .map(each -> bench.at().step().id() + ": " + beginning(each))
        .collect(Collectors.toSet());
  }

  private static String beginning(Prose text) {
    List<String> words = List.of(text.text().split("\\s+", -1));
    int least = text.kind() == Prose.Kind.DO ? 4 : words.size();
    return String.join(" ", words.subList(0, Math.min(least, words.size())));
  }

  /** Millimetres and British words in what a step says. */
  private static List<String> strange(Bencher bench) {
    return Pages.of(bench.model()).body().parts().stream()
        .filter(Prose.class::isInstance)
        .map(Prose.class::cast)
        .filter(prose -> prose.kind() != Prose.Kind.SOURCE)
        .map(Prose::text)
        .filter(text -> MM.matcher(text).find() || BRITISH.matcher(text).find())
        .map(text -> bench.at().step().id() + ": " + text)
        .toList();
  }
}
