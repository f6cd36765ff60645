package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;

class FactTest {
  private static <T> Map<String, T> twoInOrder(T value) {
    Map<String, T> map = new LinkedHashMap<>();
    map.put("wire", value);
    map.put("blank", value);
    return map;
  }

  private static Map<PieceKind, Integer> kindsInOrder() {
    Map<PieceKind, Integer> map = new LinkedHashMap<>();
    FactTest.<Integer>twoInOrder(2).forEach((word, count) -> map.put(new PieceKind(word), count));
    return map;
  }

  /** What a fact hands out keeps the order in which it was said, and never changes. */
  private static <K, T> void keeps(Map<K, T> said, Map<K, T> kept) {
    assertThat(kept.keySet()).hasToString("[wire, blank]");
    said.clear();
    assertThat(kept).hasSize(2);
    assertThatThrownBy(kept::clear).isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void whatever_was_said_in_a_map_stays_as_it_was_said() {
    Map<String, String> texts = twoInOrder("1 mm");
    keeps(texts, new Fact.PlanSet(texts).wish());
    Map<String, Sourced> sources = twoInOrder(new Sourced("1 mm", Sourced.Source.USUAL));
    keeps(sources, new Fact.PlanSet(Map.of(), sources).reckonedWith());
    Map<String, Double> prices = twoInOrder(2.0);
    keeps(prices, new Fact.PricesSet(prices, "£").prices());
    Map<String, Double> figures = twoInOrder(2.0);
    keeps(figures, new Fact.JobClosed("", figures).figures());
    Map<PieceKind, Integer> through = kindsInOrder();
    keeps(
        through,
        new Fact.PiecesThrough(through, new Stage("formed"), false, new StepId("form")).pieces());
    Map<PieceKind, Integer> taken = kindsInOrder();
    keeps(taken, new Fact.PiecesTaken(taken, new Stage("formed"), false).pieces());
    Map<String, Object> fields = twoInOrder("x");
    keeps(fields, new Fact.Unread("later-kind", fields).fields());
    Map<String, String> card = twoInOrder("x");
    keeps(card, new BenchFact.CardSet(card).card());
  }

  @Test
  void a_test_piece_keeps_its_formers_and_verdicts() {
    Map<String, Double> formers = twoInOrder(2.5);
    List<String> verdicts = new ArrayList<>(List.of("longer"));
    OptionalDouble none = OptionalDouble.empty();
    Fact.TestPieceTried tried =
        new Fact.TestPieceTried(0.9, 38, formers, none, none, none, verdicts, "by hand");
    verdicts.clear();
    keeps(formers, tried.formersMm());
    assertThat(tried.verdicts()).containsExactly("longer");
    assertThat(tried.note()).isEqualTo("by hand");
    assertThat(tried.confirmed()).isFalse();
    assertThat(tried.lot()).isEmpty();
  }

  @Test
  void what_the_first_release_could_not_say_is_not_said() {
    assertThat(new Fact.JobOpened("a", "cable").again()).isEmpty();
    assertThat(new Fact.CautionSeen("torch").how()).isEqualTo(CautionMet.WHOLE);
    assertThat(
            new Fact.PiecesSentBack(PieceKind.LINK, 1, Stage.CHECKED, Stage.SOLDERED, false, "gap")
                .again())
        .isEqualTo(Again.NOT_SAID);
    assertThat(new Fact.TimerStarted("pickle", 480).waitId()).isEqualTo(WaitId.NONE);
    assertThat(new Fact.TimerAnswered(ShortBook.id(1)).how()).isEqualTo(WaitEnd.NOT_SAID);
    assertThat(new Fact.SittingStarted("").person()).isEmpty();
    assertThat(new Fact.WireAdded(PieceKind.LINK, 1, 2, "soft", "").lot()).isEmpty();
    assertThat(new Fact.JobClosed("").figures()).isEmpty();
    assertThat(new Fact.PlanSet(Map.of()).reckonedWith()).isEmpty();
  }
}
