package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.safety.Cards;
import linkwright.job.CautionMet;
import linkwright.job.CautionsMet;
import linkwright.job.Fact;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards come whole when they are due, before the step that they belong to, and else in a line. */
class CardsTest {
  private static final List<Step> STEPS =
      Bencher.SHELF.routine("scroll-and-ring").orElseThrow().steps();

  /** The demo is of sterling, its clasp is not named, and nobody described a bench. */
  private static final Set<String> NOT_HERE = Set.of("germanium-silver", "metal-on-skin");

  private static List<String> applying(Step step) {
    return step.cautions().stream().filter(id -> !NOT_HERE.contains(id)).toList();
  }

  private static List<Part> parts(Bencher bench) {
    return Pages.of(bench.model()).body().parts();
  }

  private static List<String> texts(Bencher bench, Prose.Kind kind) {
    return parts(bench).stream()
        .filter(part -> part instanceof Prose prose && prose.kind() == kind)
        .map(part -> ((Prose) part).text())
        .toList();
  }

  /** Goes through all steps and answers which cards came whole at each. */
  private static List<List<String>> shownWhole(Bencher bench) {
    List<List<String>> all = new ArrayList<>();
    bench.press("esc", "b");
    for (Step step : STEPS) {
      assertThat(bench.at().step().id()).isEqualTo(step.id());
      List<String> here = new ArrayList<>();
      while (bench.caution().isPresent()) {
        String title = bench.caution().get().title();
        assertThat(texts(bench, Prose.Kind.CAUTION_TITLE))
            .singleElement()
            .asString()
            .startsWith(title);
        assertThat(Pages.of(bench.model()).body().title())
            .startsWith("step " + bench.at().number() + " of");
        here.add(bench.caution().get().id());
        bench.press("space");
      }
      all.add(here);
      bench.press("n");
    }
    return all;
  }

  @Test
  void a_card_of_several_pages_turns_round_as_every_place_does() {
    Bencher bench = Bencher.withTheDemo();
    bench.take(new Message.Resized(40, 12));
    bench.press("esc", "b");
    for (int i = 0; i < 12 && bench.caution().isEmpty(); i++) {
      bench.press("n");
    }
    int parts = bench.model().parts(Pages.of(bench.model()).body());
    assertThat(parts).isGreaterThan(1);
    List<Integer> turned = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      turned.add(bench.model().held().turned());
      bench.press("v");
    }
    assertThat(turned).doesNotHaveDuplicates();
    assertThat(bench.model().held().turned()).isZero();
    assertThat(bench.caution()).isPresent();
  }

  /** The scroll routine of the demo, step by step: which card is new there. */
  private static final Map<String, List<String>> NEW =
      Map.of(
          "lay-out",
          List.of(
              "soldering-surface",
              "ventilation",
              "oxygen",
              "lone-work",
              "foot-pedal",
              "torch-fuels",
              "fire-watch"),
          "anneal-wire",
          List.of("torch-lighting", "torch", "hot-metal"),
          "pickle-wire",
          List.of("pickle", "electricity-water", "pulling-wire"),
          "form-test",
          List.of("cutting-wire", "dust-lemel", "marking-bends"),
          "clean-test",
          List.of("trapped-pickle"),
          "true-test",
          List.of("hammering"),
          "join",
          List.of("spring-clasp"),
          "finish",
          List.of("tumbling-ultrasonic", "rotary-polishing"),
          "look-over",
          List.of("chain-does-not-let-go"));

  @Test
  void each_card_of_the_scroll_routine_stands_whole_at_the_step_it_belongs_to() {
    List<List<String>> whole = shownWhole(Bencher.withTheDemo());
    for (int i = 0; i < STEPS.size(); i++) {
      String step = STEPS.get(i).id().word();
      assertThat(whole.get(i)).as(step).isEqualTo(NEW.getOrDefault(step, List.of()));
    }
  }

  /** Whatever step she takes over at: its own cards, and before a flame those of room and torch. */
  @Test
  void who_takes_over_meets_no_card_of_work_that_lies_behind_her() {
    Set<String> room = new HashSet<>(NEW.get("lay-out"));
    room.addAll(NEW.get("anneal-wire"));
    for (Step step : STEPS) {
      Bencher bench = Bencher.withTheDemo().press("esc").goTo(step.id().word());
      bench.take(new Message.Kept(List.of(sitting(bench.model(), "Berta"))));
      List<String> due =
          Cards.of(bench.model(), bench.at()).all().stream()
              .filter(Cards.Card::whole)
              .map(card -> card.caution().id())
              .toList();
      Set<String> expected = new HashSet<>(applying(step));
      if (step.does().contains(Hazard.BURNS_GAS)) {
        expected.addAll(room);
      }
      assertThat(due)
          .as(step.id().word())
          .doesNotHaveDuplicates()
          .containsAll(applying(step))
          .isSubsetOf(expected);
      if (step.does().contains(Hazard.BURNS_GAS)) {
        assertThat(due).as(step.id().word()).contains("torch-lighting", "torch-fuels", "lone-work");
      }
    }
  }

  /** The torch is lit there at a step that also marks bends, or ties with iron. */
  @ParameterizedTest
  @ValueSource(strings = {"bar-and-ring marking-bends", "clasp-box binding-wire"})
  void who_takes_over_meets_what_is_about_one_kind_of_work_at_its_own_steps_alone(String what) {
    String routine = what.split(" ", -1)[0];
    String card = what.split(" ", -1)[1];
    List<Step> steps = Bencher.SHELF.routine(routine).orElseThrow().steps();
    boolean lit = false;
    for (Step step : steps) {
      Bencher bench = Bencher.with(new Fact.JobOpened("Harbour", routine)).press("esc");
      bench.goTo(step.id().word());
      bench.take(new Message.Kept(List.of(sitting(bench.model(), "Berta"))));
      List<String> due =
          Cards.of(bench.model(), bench.at()).all().stream()
              .filter(Cards.Card::whole)
              .map(each -> each.caution().id())
              .toList();
      assertThat(due.contains(card)).as(step.id().word()).isEqualTo(step.cautions().contains(card));
      lit |= step.does().contains(Hazard.LIGHTS);
      if (lit && step.does().contains(Hazard.BURNS_GAS)) {
        assertThat(due).as(step.id().word()).contains("torch-lighting", "torch-fuels");
      }
    }
    assertThat(lit).isTrue();
  }

  @Test
  void a_new_person_meets_each_that_applies_whole_once_at_the_step_it_belongs_to() {
    List<List<String>> whole = shownWhole(Bencher.withTheDemo());
    Set<String> met = new HashSet<>();
    for (int i = 0; i < STEPS.size(); i++) {
      List<String> expected = applying(STEPS.get(i)).stream().filter(met::add).toList();
      assertThat(whole.get(i)).as(STEPS.get(i).id().word()).containsExactlyElementsOf(expected);
    }
    assertThat(whole.get(0))
        .as("room and tools come first")
        .contains("soldering-surface", "ventilation", "lone-work", "torch-fuels", "fire-watch");
    int join = STEPS.stream().map(Step::id).toList().indexOf(new StepId("join"));
    assertThat(whole.get(join))
        .as("before the ring at the clasp is heated")
        .contains("spring-clasp");
  }

  @Test
  void who_worked_under_all_of_them_this_week_meets_no_whole_card_and_all_the_lines() {
    Bencher first = Bencher.withTheDemo();
    shownWhole(first);
    first.pass(Duration.ofDays(6)).restart();
    first.press("b");
    if (linkwright.coach.bench.BenchAnswers.away(first.model())) {
      first.press("space");
    }
    for (int i = STEPS.size() - 1; i > 0; i--) {
      first.press("b");
    }
    for (Step step : STEPS) {
      assertThat(first.at().step().id()).isEqualTo(step.id());
      assertThat(first.caution()).as(step.id().word()).isEmpty();
      if (step.detail().when().words().containsKey("mark")) {
        first.press("1"); // It is due: the job card says nothing of it.
      }
      List<String> lines =
          applying(step).stream()
              .map(id -> Bencher.SHELF.caution(id).map(Caution::shortLine).orElseThrow())
              .toList();
      assertThat(texts(first, Prose.Kind.CAUTION)).containsExactlyInAnyOrderElementsOf(lines);
      List<Part> parts = parts(first);
      int last =
          parts.stream().filter(CardsTest::isCaution).mapToInt(parts::indexOf).max().orElse(0);
      int deed =
          parts.stream().filter(CardsTest::isDeed).mapToInt(parts::indexOf).min().orElseThrow();
      assertThat(last).as("lines stand above what is done").isLessThan(deed);
      first.press("n");
    }
  }

  @Test
  void the_worst_of_what_a_step_does_stands_first() {
    Bencher bench = Bencher.withTheDemo().goTo("anneal-wire");
    assertThat(texts(bench, Prose.Kind.CAUTION))
        .startsWith(
            Bencher.SHELF.caution("torch-lighting").map(Caution::shortLine).orElseThrow(),
            Bencher.SHELF.caution("torch").map(Caution::shortLine).orElseThrow(),
            Bencher.SHELF.caution("hot-metal").map(Caution::shortLine).orElseThrow());
  }

  private static boolean isCaution(Part part) {
    return part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION;
  }

  private static boolean isDeed(Part part) {
    return part instanceof Prose prose && prose.kind() == Prose.Kind.DO;
  }

  @Test
  void before_the_first_wait_of_the_demo_no_more_come_than_apply() {
    List<List<String>> whole = shownWhole(Bencher.withTheDemo());
    Set<String> apply = new HashSet<>();
    STEPS.subList(0, 3).forEach(step -> apply.addAll(applying(step)));
    assertThat(whole.subList(0, 3).stream().flatMap(List::stream))
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(apply);
  }

  @ParameterizedTest
  @ValueSource(strings = {"n", "right g"})
  void no_key_passes_a_step_whose_cards_were_not_all_turned_over(String keys) {
    Bencher bench = Bencher.withTheDemo().press("esc", "b");
    int all = applying(STEPS.get(0)).size();
    for (int i = 0; i < all; i++) {
      bench.press(keys.split(" ", -1));
      assertThat(bench.at().number()).isEqualTo(1);
      assertThat(bench.notice()).startsWith("First this card: space turns it.");
      bench.press("space");
    }
    assertThat(bench.entered(linkwright.job.BenchFact.StepSkipped.class)).isEmpty();
    bench.press("n");
    assertThat(bench.at().number()).isEqualTo(2);
  }

  @Test
  void the_card_says_which_of_how_many_it_is_before_which_step() {
    Bencher bench = Bencher.withTheDemo().press("esc", "b");
    int all = applying(STEPS.get(0)).size();
    for (int i = 1; i <= all; i++) {
      assertThat(texts(bench, Prose.Kind.CAUTION_TITLE).get(0))
          .endsWith("card " + i + " of " + all + ", before step 1");
      bench.press("space");
    }
  }

  @Test
  void work_under_a_line_is_entered_once_in_half_a_day_and_keeps_the_card_from_coming_back() {
    Bencher bench = Bencher.withTheDemo().press("esc").goTo("lay-out");
    bench.pass(Duration.ofDays(13));
    bench.press("space", "space").seeCautions();
    List<Fact.CautionSeen> lines =
        bench.entered(Fact.CautionSeen.class).stream()
            .filter(seen -> seen.how() == CautionMet.LINE)
            .toList();
    assertThat(lines)
        .extracting(Fact.CautionSeen::caution)
        .containsExactlyElementsOf(applying(STEPS.get(0)));
    bench.press("b").pass(Duration.ofDays(13));
    bench.press("space");
    assertThat(bench.caution()).as("26 days after it was shown, 13 after work").isEmpty();
  }

  @Test
  void what_was_seen_in_another_job_is_known_here_but_not_by_another_person() {
    Bencher bench = Bencher.withTheDemo();
    OpenJob job = bench.job();
    Bencher seen = Bencher.withTheDemo().press("esc").goTo("anneal-wire");
    CautionsMet met = seen.state().cautions();
    bench.take(
        new Message.JobOpened(
            "job",
            "bench",
            job.entries(),
            false,
            List.of(),
            Map.of(),
            List.of(),
            met,
            Optional.empty()));
    AtBench at = AtBench.of(bench.model()).orElseThrow();
    assertThat(Cards.of(bench.model(), at).next()).isEmpty();

    bench.press("esc", "b");
    bench.take(new Message.Kept(List.of(sitting(bench.model(), "Berta"))));
    Optional<Cards.Card> next = Cards.of(bench.model(), at).next();
    assertThat(next).as("Berta has met none").isPresent();
  }

  @Test
  void who_takes_over_sees_the_cards_of_torch_and_room_before_her_first_flame() {
    Bencher bench = Bencher.withTheDemo().press("esc").goTo("anneal-wire");
    bench.take(new Message.Kept(List.of(sitting(bench.model(), "Berta"))));
    AtBench at = AtBench.of(bench.model()).orElseThrow();
    Set<String> due = new HashSet<>();
    Cards.of(bench.model(), at).all().stream()
        .filter(Cards.Card::whole)
        .forEach(card -> due.add(card.caution().id()));
    assertThat(due).contains("torch-fuels", "lone-work", "fire-watch", "soldering-surface");
    assertThat(due).containsAll(applying(at.step()));
  }

  @Test
  void who_takes_over_after_the_wire_was_pulled_meets_no_card_of_that() {
    Bencher bench = Bencher.with(new Fact.JobOpened("Harbour", "oval-and-long"));
    bench.goTo("pickle-chain").goTo("fit-clasp");
    bench.take(new Message.Kept(List.of(sitting(bench.model(), "Berta"))));
    List<String> due =
        Cards.of(bench.model(), bench.at()).all().stream()
            .filter(Cards.Card::whole)
            .map(card -> card.caution().id())
            .toList();
    assertThat(due).contains("lone-work", "torch-fuels").doesNotContain("pulling-wire");
  }

  private static linkwright.job.Entry sitting(Model model, String person) {
    int number = model.job().orElseThrow().entries().size() + 1;
    return new linkwright.job.Entry(
        number, model.now(), "bench", person, new Fact.SittingStarted(person));
  }

  @Test
  void signs_of_danger_are_not_worn() {
    Bencher bench = Bencher.withTheDemo().press("esc").goTo("anneal-wire").press("n");
    while (!bench.caution().map(Caution::id).orElse("").equals("electricity-water")) {
      bench.press("space");
    }
    assertThat(texts(bench, Prose.Kind.WEAR)).allMatch(String::isBlank);
    assertThat(texts(bench, Prose.Kind.SIGNS)).containsExactly("electricity (sign W012)");
  }
}
