package linkwright.books.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.BookTitles;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.StudentsAtHand;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.CautionMet;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.Sourced;
import linkwright.job.StepLeft;
import linkwright.job.WaitEnd;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FactCodecsTest {
  /** Those of the day when the sample was drawn, so that it is drawn the same; all are in it. */
  private static final List<Sourced.Source> SOURCES =
      List.of(Sourced.Source.values()).subList(0, 4);

  private static final List<String> TEXTS =
      List.of(
          "",
          "eye to eye",
          "Ångström é",
          "鎖の輪",
          "a\nline: and {more}, [it]",
          "👩🏽‍🔧 at the bench",
          "“quoted” 'and' \"so\" #",
          " 007 ",
          "null",
          "true");

  static Stream<Class<?>> kinds() {
    return kinds(Fact.class).filter(kind -> kind != Fact.Unread.class);
  }

  private static Stream<Class<?>> kinds(Class<?> family) {
    return Arrays.stream(family.getPermittedSubclasses())
        .flatMap(kind -> kind.isSealed() ? kinds(kind) : Stream.of(kind));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_fact_that_is_written_as_fields_and_read_back_is_the_same(Class<?> kind) throws Exception {
    long seed = 17;
    Random chance = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Fact fact = anything(kind, chance);
      assertThat(FactCodecs.fact(FactCodecs.kind(fact), FactCodecs.fields(fact)))
          .as("seed %d, round %d", seed, i)
          .isEqualTo(fact);
    }
  }

  /** What stands on the disk, pinned: whoever changes a name here breaks every book there is. */
  @Test
  void names_on_the_disk_stay_as_they_are() throws IOException {
    StringBuilder names = new StringBuilder();
    for (Class<?> kind : kinds().toList()) {
      Fact full = full(kind);
      names.append(FactCodecs.kind(full)).append(": ");
      names.append(String.join(" ", FactCodecs.fields(full).keySet())).append('\n');
    }
    assertThat(names.toString())
        .isEqualTo(Files.readString(Path.of("src/test/resources/books/names-on-disk.txt")));
  }

  /** Every kind of entry with every field, and every word for one of few values, as written now. */
  @Test
  void a_book_of_the_second_format_with_every_entry_is_read_for_ever() throws IOException {
    BookFile book =
        BookFile.look(Path.of("src/test/resources/books/format-2/every-kind-of-entry.yaml"))
            .orThrow();
    assertThat(book.problems()).isEmpty();
    assertThat(EntryLines.entries(book.lines())).extracting(Entry::fact).isEqualTo(everyFact());
  }

  /** A kind without words of its own throws, and none is read as another. */
  @Test
  void every_kind_of_entry_has_words_of_its_own() {
    Map<String, Class<?>> said = new LinkedHashMap<>();
    for (Fact fact : everyFact()) {
      String kind =
          EntryWords.of(
                  fact,
                  new BookTitles(Bencher.SHELF, "", StudentsAtHand.NOBODY),
                  Settings.USUAL,
                  id -> "" + id.number())
              .replaceAll("[:,;] .*", "");
      Class<?> other = said.putIfAbsent(kind, fact.getClass());
      assertThat(other == null || other == fact.getClass()).as(kind).isTrue();
    }
  }

  private static List<Fact> everyFact() {
    List<Fact> facts = new ArrayList<>();
    kinds().forEach(kind -> facts.add(full(kind)));
    for (Again again : Again.values()) {
      facts.add(
          new Fact.PiecesSentBack(
              PieceKind.LINK, 1, Stage.CHECKED, Stage.SOLDERED, true, "gap", again, ""));
    }
    for (WaitEnd end : WaitEnd.values()) {
      facts.add(new Fact.TimerAnswered(new EntryId("bench-k7", 3), end, "rinsed early"));
    }
    for (CautionMet met : CautionMet.values()) {
      facts.add(new Fact.CautionSeen("torch", met, "0badc0de", new StepId("solder-links")));
    }
    for (HotWorkState state : HotWorkState.values()) {
      facts.add(
          new BenchFact.HotWorkSaid(
              state, new StepId("solder-links"), "gas shut", Optional.empty(), ""));
    }
    for (Sourced.Source source : Sourced.Source.values()) {
      Map<String, Sourced> used = Map.of("kerf", new Sourced("0.3 mm", source));
      facts.add(new Fact.PlanSet(Map.of("metal", "sterling"), used));
    }
    return facts;
  }

  @Test
  void every_fact_has_a_codec_of_its_own_and_every_kind_its_own_name() {
    List<String> types = FactCodecs.ALL.stream().map(codec -> codec.type().getName()).toList();
    assertThat(types).containsExactlyInAnyOrderElementsOf(kinds().map(Class::getName).toList());
    assertThat(FactCodecs.ALL).extracting(FactCodec::kind).doesNotHaveDuplicates();
  }

  /** Before 2026-11-27 a book told by this sentence alone that a mark was not due. */
  @Test
  void that_a_mark_is_not_due_is_read_from_the_sentence_of_older_books() {
    Map<String, Object> before = Map.of("step", "mark", "why", "no mark is due");
    assertThat(FactCodecs.fact("step-skipped", before))
        .isEqualTo(
            new BenchFact.StepSkipped(new StepId("mark"), "no mark is due", StepLeft.NOT_DUE));
    assertThat(FactCodecs.fact("step-skipped", Map.of("step", "mark", "why", "nothing done")))
        .isEqualTo(new BenchFact.StepSkipped(new StepId("mark"), "nothing done", StepLeft.OPEN));
  }

  @Test
  void what_was_not_measured_is_absent_from_the_fields() {
    Fact weighed =
        new Fact.WeighedIn(
            OptionalDouble.of(9.1),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    assertThat(FactCodecs.fields(weighed)).containsOnlyKeys("chain-g");
  }

  @Test
  void a_fact_does_not_change_with_what_it_was_made_of_and_keeps_its_order() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("wire", "0.9 mm");
    typed.put("metal", "sterling");
    Fact.PlanSet plan = new Fact.PlanSet(typed);
    typed.put("wire", "1 mm");
    assertThat(plan.wish()).containsEntry("wire", "0.9 mm");
    assertThat(plan.wish().keySet()).containsExactly("wire", "metal");
  }

  @Nested
  class FieldsThatDoNotMakeAFact {
    @Test
    void a_kind_of_a_newer_version_is_kept_as_it_is() {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("colour", "copper");
      fields.put("how-many", 3L);
      Fact fact = FactCodecs.fact("enamel-laid", fields);
      assertThat(fact).isEqualTo(new Fact.Unread("enamel-laid", fields));
      assertThat(FactCodecs.kind(fact)).isEqualTo("enamel-laid");
      assertThat(FactCodecs.fields(fact)).isEqualTo(fields);
    }

    @Test
    void a_missing_field_makes_it_an_entry_that_is_passed_over() {
      assertThat(FactCodecs.fact("wire-cut", Map.of("piece", "link")))
          .isInstanceOf(Fact.Unread.class);
    }

    @ParameterizedTest
    @MethodSource("linkwright.books.facts.FactCodecsTest#numbersThatAreNoCount")
    void a_count_that_is_no_whole_number_or_too_large_is_passed_over_too(Object count) {
      Map<String, Object> fields = Map.of("piece", "link", "count", count, "each-mm", 38.0);
      assertThat(FactCodecs.fact("wire-cut", fields)).isInstanceOf(Fact.Unread.class);
      Map<String, Object> pieces =
          Map.of("pieces", Map.of("link", count), "stage", "formed", "redo", false, "step", "s");
      assertThat(FactCodecs.fact("pieces-through", pieces)).isInstanceOf(Fact.Unread.class);
    }

    @Test
    void a_field_of_another_sort_is_never_an_exception() {
      long seed = 23;
      Random chance = new Random(seed);
      List<Object> odd =
          List.of("x", 2.5, 1e300, -7L, true, List.of(1), Map.of("a", List.of()), Double.NaN);
      for (Class<?> kind : kinds().toList()) {
        Map<String, Object> sound = FactCodecs.fields(full(kind));
        String name = FactCodecs.kind(full(kind));
        for (int i = 0; i < 50; i++) {
          Map<String, Object> fields = new LinkedHashMap<>(sound);
          fields.replaceAll((key, value) -> odd.get(chance.nextInt(odd.size())));
          assertThatCode(() -> FactCodecs.fact(name, fields))
              .as("seed %d, %s %s", seed, name, fields)
              .doesNotThrowAnyException();
        }
      }
    }

    @Test
    void all_that_is_wrong_is_told_in_one_sentence() {
      assertThat(FactCodecs.wrong("wire-cut", Map.of("pice", "link", "count", -3L)))
          .contains(
              "This entry is of the kind wire-cut, but it has no piece; is it pice?, and its count"
                  + " is -3, which is not a whole number from 0 to 1000000, and it has no"
                  + " each-mm.");
      assertThat(FactCodecs.wrong("enamel-laid", Map.of())).isEmpty();
    }
  }

  static Stream<Object> numbersThatAreNoCount() {
    return Stream.of(2.5, 99_999_999_999L, 1e300, Double.NaN, "three");
  }

  /** A fact with every field filled, so that none is absent from the book. */
  private static Fact full(Class<?> kind) {
    for (int seed = 0; seed < 100_000; seed++) {
      Fact fact = anything(kind, new Random(seed));
      Map<String, Object> fields = FactCodecs.fields(fact);
      if (fields.size() == fieldsOf(kind) && !fields.containsValue(Map.of())) {
        return fact;
      }
    }
    throw new AssertionError("no full " + kind);
  }

  private static int fieldsOf(Class<?> kind) {
    return kind.getRecordComponents().length;
  }

  private static Fact anything(Class<?> kind, Random chance) {
    List<Object> values = new ArrayList<>();
    List<Class<?>> types = new ArrayList<>();
    for (RecordComponent component : kind.getRecordComponents()) {
      types.add(component.getType());
      values.add(value(component, chance));
    }
    try {
      return (Fact)
          kind.getDeclaredConstructor(types.toArray(Class<?>[]::new)).newInstance(values.toArray());
    } catch (ReflectiveOperationException impossible) {
      throw new LinkageError(kind + " cannot be made", impossible);
    }
  }

  private static Object value(RecordComponent component, Random chance) {
    Class<?> type = component.getType();
    if (type == String.class) {
      return text(chance);
    }
    if (type == PieceKind.class) {
      return new PieceKind(text(chance));
    }
    if (type == Stage.class) {
      return new Stage(text(chance));
    }
    if (type == StepId.class) {
      return new StepId(text(chance));
    }
    if (type == WaitId.class) {
      return new WaitId(text(chance));
    }
    if (type == int.class) {
      return chance.nextInt(10_000);
    }
    if (type == long.class) {
      return (long) chance.nextInt(1_000_000);
    }
    if (type == double.class) {
      return chance.nextInt(100_000) / 1000.0;
    }
    if (type == boolean.class) {
      return chance.nextBoolean();
    }
    if (type == OptionalDouble.class) {
      return chance.nextBoolean()
          ? OptionalDouble.empty()
          : OptionalDouble.of(chance.nextInt(100_000) / 1000.0);
    }
    if (type == EntryId.class) {
      return new EntryId(chance.nextBoolean() ? "bench" : "Anna's-old-laptop", chance.nextInt(999));
    }
    if (type == Optional.class) {
      return chance.nextBoolean()
          ? Optional.empty()
          : Optional.of(List.of(new EntryId("bench", chance.nextInt(999))));
    }
    if (type.isEnum()) {
      Object[] all = type.getEnumConstants();
      return all[chance.nextInt(all.length)];
    }
    if (type == List.class) {
      return Stream.generate(() -> text(chance)).limit(chance.nextInt(4)).toList();
    }
    return map(component, chance);
  }

  private static Map<Object, Object> map(RecordComponent component, Random chance) {
    Type[] types = ((ParameterizedType) component.getGenericType()).getActualTypeArguments();
    Object of = types[1];
    Map<Object, Object> map = new LinkedHashMap<>();
    for (int i = chance.nextInt(4); i > 0; i--) {
      Object value =
          of == Integer.class
              ? (Object) chance.nextInt(100)
              : of == Double.class
                  ? (Object) (chance.nextInt(1000) / 10.0)
                  : of == Stage.class
                      ? new Stage(text(chance))
                      : of == Sourced.class
                          ? new Sourced(text(chance), SOURCES.get(chance.nextInt(SOURCES.size())))
                          : text(chance);
      String key = text(chance);
      map.put(types[0] == PieceKind.class ? new PieceKind(key) : key, value);
    }
    return map;
  }

  private static String text(Random chance) {
    return TEXTS.get(chance.nextInt(TEXTS.size()));
  }
}
