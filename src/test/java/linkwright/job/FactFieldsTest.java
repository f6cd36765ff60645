package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FactFieldsTest {
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
    return Arrays.stream(Fact.class.getPermittedSubclasses())
        .filter(kind -> kind != Fact.Unread.class);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void a_fact_that_is_written_as_fields_and_read_back_is_the_same(Class<?> kind) throws Exception {
    long seed = 17;
    Random chance = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Fact fact = anything(kind, chance);
      assertThat(FactFields.read(fact.kind(), FactFields.of(fact)))
          .as("seed %d, round %d", seed, i)
          .isEqualTo(fact);
    }
  }

  @Test
  void kinds_are_the_names_in_small_letters_with_hyphens() {
    assertThat(new Fact.PiecesSentBack("link", 1, "checked", "soldered", false, "gap").kind())
        .isEqualTo("pieces-sent-back");
    assertThat(new Fact.SittingStarted().kind()).isEqualTo("sitting-started");
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
    assertThat(FactFields.of(weighed)).containsOnlyKeys("chain-g");
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
      Fact fact = FactFields.read("enamel-laid", fields);
      assertThat(fact).isEqualTo(new Fact.Unread("enamel-laid", fields));
      assertThat(fact.kind()).isEqualTo("enamel-laid");
      assertThat(FactFields.of(fact)).isEqualTo(fields);
    }

    @Test
    void a_missing_field_makes_it_an_entry_that_is_passed_over() {
      assertThat(FactFields.read("wire-cut", Map.of("piece", "link")))
          .isInstanceOf(Fact.Unread.class);
    }

    @ParameterizedTest
    @MethodSource("linkwright.job.FactFieldsTest#numbersThatAreNoCount")
    void a_count_that_is_no_whole_number_or_too_large_is_passed_over_too(Object count) {
      Map<String, Object> fields = Map.of("piece", "link", "count", count, "each-mm", 38.0);
      assertThat(FactFields.read("wire-cut", fields)).isInstanceOf(Fact.Unread.class);
      Map<String, Object> pieces =
          Map.of("pieces", Map.of("link", count), "stage", "formed", "redo", false, "step", "s");
      assertThat(FactFields.read("pieces-through", pieces)).isInstanceOf(Fact.Unread.class);
    }

    @Test
    void a_field_of_another_sort_is_never_an_exception() {
      long seed = 23;
      Random chance = new Random(seed);
      List<Object> odd =
          List.of("x", 2.5, 1e300, -7L, true, List.of(1), Map.of("a", List.of()), Double.NaN);
      for (Class<?> kind : kinds().toList()) {
        for (int i = 0; i < 50; i++) {
          Map<String, Object> fields = new LinkedHashMap<>();
          for (RecordComponent component : kind.getRecordComponents()) {
            String name =
                component
                    .getName()
                    .replaceAll("(?<!^)([A-Z])", "-$1")
                    .toLowerCase(java.util.Locale.ROOT);
            fields.put(name, odd.get(chance.nextInt(odd.size())));
          }
          assertThatCode(() -> FactFields.read(FactFields.kindOf(kind), fields))
              .as("seed %d, %s %s", seed, kind.getSimpleName(), fields)
              .doesNotThrowAnyException();
        }
      }
    }
  }

  static Stream<Object> numbersThatAreNoCount() {
    return Stream.of(2.5, 99_999_999_999L, 1e300, Double.NaN, "three");
  }

  private static Fact anything(Class<?> kind, Random chance) throws Exception {
    List<Object> values = new ArrayList<>();
    List<Class<?>> types = new ArrayList<>();
    for (RecordComponent component : kind.getRecordComponents()) {
      types.add(component.getType());
      values.add(value(component, chance));
    }
    return (Fact)
        kind.getDeclaredConstructor(types.toArray(Class<?>[]::new)).newInstance(values.toArray());
  }

  private static Object value(RecordComponent component, Random chance) {
    Class<?> type = component.getType();
    if (type == String.class) {
      return text(chance);
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
    if (type == Optional.class) {
      return chance.nextBoolean() ? Optional.empty() : Optional.of(text(chance));
    }
    if (type == EntryId.class) {
      return new EntryId(chance.nextBoolean() ? "bench" : "Anna's-old-laptop", chance.nextInt(999));
    }
    if (type == List.class) {
      return Stream.generate(() -> text(chance)).limit(chance.nextInt(4)).toList();
    }
    return map(component, chance);
  }

  private static Map<String, Object> map(RecordComponent component, Random chance) {
    Object of = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[1];
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = chance.nextInt(4); i > 0; i--) {
      Object value =
          of == Integer.class
              ? (Object) chance.nextInt(100)
              : of == Double.class ? (Object) (chance.nextInt(1000) / 10.0) : text(chance);
      map.put(text(chance), value);
    }
    return map;
  }

  private static String text(Random chance) {
    return TEXTS.get(chance.nextInt(TEXTS.size()));
  }
}
