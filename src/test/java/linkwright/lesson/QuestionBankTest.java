package linkwright.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.StudyQuestion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the shipped routines can be asked, and that no question is answered from its wording. */
class QuestionBankTest {
  private static final Library SHIPPED = Library.load(new Home(Path.of("target/no-such-home")));
  private static final long SEED = 20261126;
  private static final int DRAWS = 6;

  static Stream<Routine> routines() {
    return SHIPPED.routines().values().stream();
  }

  static List<Item> bank(Routine routine) {
    return QuestionBank.of(routine, List.copyOf(SHIPPED.cautions().values()), SHIPPED.reference());
  }

  @ParameterizedTest
  @MethodSource("routines")
  void a_chain_has_forty_questions_and_all_else_twenty_five(Routine routine) {
    List<Item> bank = bank(routine);
    assertThat(bank).extracting(Item::id).doesNotHaveDuplicates();
    assertThat(bank).hasSizeGreaterThanOrEqualTo(routine.makes() == Makes.CHAIN ? 40 : 25);
  }

  @ParameterizedTest
  @MethodSource("routines")
  void each_has_one_right_answer_among_different_ones(Routine routine) {
    for (Item item : bank(routine)) {
      for (long seed = SEED; seed < SEED + 2; seed++) {
        Asked asked = item.draw(seed, UnitStyle.METRIC);
        assertThat(asked.answers()).as(item.id() + " " + seed).doesNotHaveDuplicates();
        assertThat(asked.answers().size()).as(item.id()).isBetween(2, 6);
        assertThat(asked).isEqualTo(item.draw(seed, UnitStyle.METRIC));
      }
    }
  }

  /** What a card warns of that applies at a step is right there, whatever the key says. */
  @ParameterizedTest
  @MethodSource("routines")
  void no_danger_that_may_apply_is_counted_as_wrong(Routine routine) {
    List<String> anywhere =
        SHIPPED.cautions().values().stream()
            .filter(card -> card.covers().isEmpty())
            .flatMap(card -> Stream.concat(Stream.of(card.canHappen()), card.doList().stream()))
            .toList();
    List<Item.TextItem> dangers =
        bank(routine).stream()
            .filter(item -> item.topic() == Topic.DANGER)
            .map(Item.TextItem.class::cast)
            .toList();
    for (Item.TextItem danger : dangers) {
      assertThat(danger.pool()).as(danger.id()).doesNotContainAnyElementsOf(anywhere);
      routine.steps().stream()
          .filter(step -> step.id().equals(danger.step()))
          .flatMap(step -> step.cautions().stream())
          .map(id -> SHIPPED.cautions().get(id).canHappen())
          .forEach(own -> assertThat(danger.pool()).as(danger.id()).doesNotContain(own));
    }
  }

  /** 60 min: NFPA 51B (2019), as the fire-watch card says it; block and floor felt besides. */
  @ParameterizedTest
  @MethodSource("routines")
  void no_answer_to_a_fire_watch_is_wrong_that_is_as_safe(Routine routine) {
    List<Item> watches =
        bank(routine).stream()
            .filter(item -> item.topic() == Topic.WAIT && item.caution().equals("fire-watch"))
            .toList();
    for (Item watch : watches) {
      for (long seed = SEED; seed < SEED + DRAWS; seed++) {
        Asked asked = watch.draw(seed, UnitStyle.METRIC);
        assertThat(asked.answers().get(asked.right())).contains("60 min", "last flame", "cold");
        assertThat(asked.answers())
            .as(watch.id() + " " + seed)
            .filteredOn(answer -> answer.contains("last flame") && answer.contains("cold"))
            .hasSize(1);
        assertThat(asked.answers()).allMatch(answer -> answer.startsWith("60 min"));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("routines")
  void where_a_step_shuts_the_gas_no_shutting_of_it_is_wrong(Routine routine) {
    assertThat(bank(routine))
        .filteredOn(item -> item.topic() == Topic.DANGER && item.id().contains("/first/"))
        .filteredOn(
            item ->
                routine.steps().stream()
                    .anyMatch(
                        step ->
                            step.id().equals(item.step()) && step.doText().contains("Gas shut")))
        .allSatisfy(
            item ->
                assertThat(((Item.TextItem) item).pool())
                    .as(item.id())
                    .noneMatch(text -> text.contains("hose") || text.contains("ottle")));
  }

  /** More water, or longer, is no worse where water helps. */
  @ParameterizedTest
  @MethodSource("routines")
  void where_water_helps_no_water_is_wrong(Routine routine) {
    assertThat(bank(routine))
        .filteredOn(item -> item.topic() == Topic.CARD && item.id().contains("/wrong/"))
        .map(Item.TextItem.class::cast)
        .filteredOn(item -> item.right().matches("(?i).*\\b(rinse|water|wash)\\b.*"))
        .allSatisfy(
            item ->
                assertThat(item.pool())
                    .as(item.id())
                    .noneMatch(text -> text.matches("(?i).*\\b(rinse|water|wash)\\b.*")));
  }

  /** Cards on fire stand at the first step of a routine; they are asked about where a flame is. */
  @ParameterizedTest
  @MethodSource("routines")
  void no_flame_is_asked_about_before_the_first_is_lit(Routine routine) {
    List<StepId> cold =
        routine.steps().stream()
            .takeWhile(step -> !step.does().contains(Hazard.HEATS))
            .map(Step::id)
            .toList();
    assertThat(bank(routine))
        .filteredOn(item -> item.topic() == Topic.DANGER && cold.contains(item.step()))
        .extracting(Item::caution)
        .doesNotContain("fire-watch", "torch-fuels", "oxygen", "soldering-surface", "torch");
  }

  @Test
  void what_smoulders_is_asked_of_a_hook_by_its_watch_and_not_where_its_wire_is_cut() {
    assertThat(bank(SHIPPED.routines().get("clasp-hook-and-eye")))
        .anyMatch(item -> item.topic() == Topic.WAIT && item.caution().equals("fire-watch"))
        .extracting(Item::id)
        .doesNotContain("clasp-hook-and-eye/danger/cut-hook/fire-watch");
  }

  @Test
  void where_wire_is_pulled_no_end_that_whips_is_wrong() {
    assertThat(bank(SHIPPED.routines().get("jump-rings")))
        .filteredOn(
            item -> item.topic() == Topic.DANGER && item.step().equals(new StepId("anneal-wire")))
        .allSatisfy(
            item -> assertThat(((Item.TextItem) item).pool()).noneMatch(t -> t.contains("whips")));
  }

  @Test
  void whether_to_go_on_is_asked_only_where_the_remedy_says_it() {
    assertThat(bank(SHIPPED.routines().get("jump-rings")))
        .extracting(Item::id)
        .doesNotContain("jump-rings/fate/anneal-wire/0")
        .anyMatch(id -> id.startsWith("jump-rings/fate/"));
  }

  @ParameterizedTest
  @MethodSource("routines")
  void a_first_lesson_mixes_its_kinds(Routine routine) {
    Lesson lesson =
        new Lesson(
            routine.id() + "/2026-03-02/1",
            bank(routine),
            new Recall(Map.of(), Recall.GAP_DAYS),
            java.time.LocalDate.of(2026, 3, 2),
            List.of());
    Map<Topic, Integer> kinds = new LinkedHashMap<>();
    for (int i = 0; i < 8; i++) {
      Item item = lesson.next().orElseThrow();
      kinds.merge(item.topic(), 1, Integer::sum);
      List<Lesson.LessonAnswer> more = new ArrayList<>(lesson.asked());
      more.add(new Lesson.LessonAnswer(item.id(), true));
      lesson = new Lesson(lesson.id(), lesson.bank(), lesson.learnt(), lesson.today(), more);
    }
    assertThat(kinds.values()).allMatch(times -> times <= 2);
  }

  /** Their wrong answers are the card's own too, of the same danger, as many and as long. */
  @Test
  void each_shipped_card_asks_of_its_own_and_hides_the_right_answer_among_its_like() {
    WordStems stems = new WordStems();
    List<String> bare = new ArrayList<>();
    for (Caution card : SHIPPED.cautions().values()) {
      assertThat(card.questions()).as(card.id()).isNotEmpty();
      for (StudyQuestion asked : card.questions()) {
        String asks = card.title() + ". " + asked.asks();
        List<String> wrong = asked.answers().subList(1, asked.answers().size());
        if (!WrongAnswers.hides(asks, asked.answers().get(0), wrong, stems)) {
          bare.add(card.id() + ": " + asked.asks());
        }
      }
    }
    assertThat(bare).isEmpty();
    for (Routine routine : routines().toList()) {
      assertThat(bank(routine))
          .filteredOn(item -> item.topic() == Topic.CARD)
          .extracting(Item::id)
          .isNotEmpty()
          .allMatch(id -> id.contains("/own/"));
    }
  }

  @Test
  void new_numbers_are_no_new_question() {
    Routine chain = SHIPPED.routines().get("scroll-and-ring");
    List<Item> sums = bank(chain).stream().filter(item -> item.topic() == Topic.NUMBER).toList();
    assertThat(sums).extracting(Item::id).contains("sum/rings", "sum/links", "sum/wire");
    for (Item sum : sums) {
      Asked one = sum.draw(1, UnitStyle.METRIC);
      Asked other = sum.draw(2, UnitStyle.METRIC);
      assertThat(one.asks()).isNotEqualTo(other.asks());
    }
  }

  /** Ways to guess that need no knowledge: question and answers → the number of one. */
  private static final Map<String, BiFunction<String, List<String>, Integer>> GUESSERS =
      new LinkedHashMap<>();

  static {
    GUESSERS.put("first", (asks, all) -> 0);
    GUESSERS.put("last", (asks, all) -> all.size() - 1);
    GUESSERS.put("longest", (asks, all) -> most(all, String::length));
    GUESSERS.put("shortest", (asks, all) -> most(all, text -> -text.length()));
    GUESSERS.put("odd one", (asks, all) -> most(all, text -> -(int) alike(text, all)));
    GUESSERS.put("least odd", (asks, all) -> most(all, text -> (int) alike(text, all)));
    GUESSERS.put(
        "words of the question",
        (asks, all) ->
            most(all, text -> WordStems.shared(WordStems.taken(asks), WordStems.taken(text))));
    GUESSERS.put("the only one with a word of the question", QuestionBankTest::onlyOne);
    GUESSERS.put("largest", (asks, all) -> most(all, text -> (int) (1000 * number(text))));
    GUESSERS.put("smallest", (asks, all) -> most(all, text -> -(int) (1000 * number(text))));
  }

  /** Ways to guess by what the question is about: its step, its card → the number of an answer. */
  private static final Map<String, BiFunction<String, List<String>, Integer>> BY_SUBJECT =
      Map.of(
          "words of question, step and card, three letters and more",
          (about, all) -> most(all, text -> inCommon(about, text, 3)),
          "words of question, step and card, two letters and more",
          (about, all) -> most(all, text -> inCommon(about, text, 2)),
          "beginnings of words of question, step and card",
          (about, all) ->
              most(all, text -> WordStems.shared(WordStems.taken(about), WordStems.taken(text))));

  /** Whole words, small ones too. */
  private static int inCommon(String about, String text, int letters) {
    Set<String> words = words(about, letters);
    return (int) words(text, letters).stream().filter(words::contains).count();
  }

  private static Set<String> words(String text, int letters) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+", -1))
        .filter(word -> word.length() >= letters)
        .collect(Collectors.toSet());
  }

  /** The question, the title of its step unless that is the answer, and that of the card. */
  private static String about(Routine routine, Item item, Asked asked) {
    String step =
        routine.steps().stream()
            .filter(each -> each.id().equals(item.step()) && item.topic() != Topic.NEXT)
            .map(Step::title)
            .collect(Collectors.joining());
    String card = item.caution().isEmpty() ? "" : SHIPPED.cautions().get(item.caution()).title();
    return asked.asks() + " " + step + " " + card;
  }

  /**
   * The one answer that shares a word with the question; -1, no guess, unless there is just one.
   */
  private static int onlyOne(String asks, List<String> all) {
    List<Integer> naming = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (WordStems.shared(WordStems.taken(asks), WordStems.taken(all.get(i))) > 0) {
        naming.add(i);
      }
    }
    return naming.size() == 1 ? naming.get(0) : -1;
  }

  static int most(List<String> all, java.util.function.ToIntFunction<String> of) {
    return all.indexOf(all.stream().max(Comparator.comparingInt(of)).orElseThrow());
  }

  private static double alike(String text, List<String> all) {
    return all.stream()
        .filter(other -> !other.equals(text))
        .mapToInt(other -> WordStems.shared(WordStems.taken(text), WordStems.taken(other)))
        .sum();
  }

  private static double number(String text) {
    String digits = text.replaceAll("[^0-9.].*$", "");
    return digits.isEmpty() || digits.equals(".") ? 0 : Double.parseDouble(digits);
  }

  /**
   * Each item of each routine drawn six times, one that several have otherwise each time: no
   * guesser does better than chance by more than chance allows, over all and by routine and topic.
   */
  @Test
  void who_guesses_by_the_look_of_the_answers_does_no_better_than_chance() {
    Map<String, Map<String, double[]>> told = new LinkedHashMap<>();
    for (Routine routine : routines().toList()) {
      for (Item item : bank(routine)) {
        for (long seed = SEED; seed < SEED + DRAWS; seed++) {
          Asked asked =
              item.draw(seed * 31 + (routine.id() + item.id()).hashCode(), UnitStyle.METRIC);
          double share = 1.0 / asked.answers().size();
          Map<String, Integer> guesses = new LinkedHashMap<>();
          GUESSERS.forEach(
              (name, guess) -> guesses.put(name, guess.apply(asked.asks(), asked.answers())));
          BY_SUBJECT.forEach(
              (name, guess) ->
                  guesses.put(name, guess.apply(about(routine, item, asked), asked.answers())));
          guesses.forEach(
              (name, guessed) -> {
                boolean right = guessed == asked.right();
                if (guessed < 0) {
                  return;
                }
                for (String group : List.of(routine.id(), "topic " + item.topic(), "all")) {
                  double[] sums =
                      told.computeIfAbsent(name, any -> new LinkedHashMap<>())
                          .computeIfAbsent(group, any -> new double[3]);
                  sums[0] += right ? 1 : 0;
                  sums[1] += share;
                  sums[2] += share * (1 - share);
                }
              });
        }
      }
    }
    List<String> better = new ArrayList<>();
    told.forEach(
        (name, groups) ->
            groups.forEach(
                (group, sums) -> {
                  // Of so many groups one alone lies three deviations off by chance now and then.
                  int most = group.equals("all") ? 3 : 4;
                  if (sums[0] > sums[1] + most * Math.sqrt(sums[2])) {
                    better.add(
                        "%s in %s: %.0f right, %.0f by chance"
                            .formatted(name, group, sums[0], sums[1]));
                  }
                }));
    assertThat(better).as("seed " + SEED).isEmpty();
  }
}
