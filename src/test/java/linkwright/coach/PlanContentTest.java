package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.plan.PlanContent;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.plan.PlanPlace;
import linkwright.job.Fact;
import linkwright.job.Sourced;
import linkwright.plain.PlainLines;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.shell.Demo;
import linkwright.standing.Standing;
import org.junit.jupiter.api.Test;

class PlanContentTest {
  private final Bencher bench = Bencher.withTheDemo().press("p");

  private static PlanHeld held(Bencher bench) {
    return (PlanHeld) bench.model().held();
  }

  private static List<Part> said(Bencher bench) {
    return PlanContent.comesTo(held(bench).preview(), bench.model());
  }

  private static List<Row> rows(Bencher bench) {
    return said(bench).stream()
        .filter(Rows.class::isInstance)
        .flatMap(part -> ((Rows) part).rows().stream())
        .toList();
  }

  private static Row row(Bencher bench, String label) {
    return rows(bench).stream()
        .filter(row -> row.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no row " + label));
  }

  private static List<Prose> texts(Bencher bench, Prose.Kind kind) {
    return said(bench).stream()
        .filter(Prose.class::isInstance)
        .map(Prose.class::cast)
        .filter(prose -> prose.kind() == kind)
        .toList();
  }

  @Test
  void of_solder_that_nobody_typed_it_says_which_is_taken() {
    Bencher thin =
        Bencher.with(
                new Fact.JobOpened("Thin", "scroll-and-ring"),
                new Fact.PlanSet(
                    Wishes.common()
                        .with(WishKeys.WIRE, "0.8 mm")
                        .with(WishKeys.USUAL_LOSS, "2.9 %")
                        .texts()))
            .press("p");
    assertThat(rows(thin))
        .extracting(Row::value)
        .anySatisfy(
            value ->
                assertThat(value)
                    .startsWith("The usual strip is taken, 1 mm by 0.3 mm. A piece of 0.8 mm is"));
    assertThat(row(thin, "usual loss").value()).isEqualTo("2.9");
  }

  @Test
  void the_form_stands_beside_what_it_comes_to() {
    Beside beside = (Beside) new PlanPlace().content(bench.model()).parts().get(0);
    assertThat(beside.first()).startsWith(new Fields(held(bench).open()));
    assertThat(beside.first().subList(1, beside.first().size()))
        .allMatch(part -> part instanceof Drawing drawing && drawing.spare());
    assertThat(beside.second()).isEqualTo(said(bench));
  }

  @Test
  void the_figures_one_decides_by_come_first_as_they_were_reckoned() {
    Plan plan = held(bench).preview().counted().plan().orElseThrow();
    assertThat(rows(bench).stream().map(Row::label))
        .startsWith(
            "links",
            "rings",
            "length",
            "after a trial",
            "wished",
            "ring for that",
            "chain weighs",
            "mark",
            "mind");
    assertThat(row(bench, "links").value()).isEqualTo(Integer.toString(plan.links()));
    assertThat(row(bench, "rings").value()).isEqualTo(Integer.toString(plan.rings()));
    assertThat(row(bench, "length").amount()).isEqualTo("181 ± 13 mm");
    assertThat(plan.lengthMm()).isCloseTo(181.1, within(0.05));
    assertThat(row(bench, "link blank").source()).isEqualTo("reckoned");
    assertThat(row(bench, "wished").amount()).isEqualTo("190 mm");
    assertThat(row(bench, "link").amount()).isEqualTo("16 mm x 5.92 mm");
    assertThat(row(bench, "holds").amount()).isEqualTo(Math.round(plan.pull().solderedN()) + " N");
  }

  @Test
  void each_thing_to_mind_is_said_whole_and_counted() {
    Plan plan = held(bench).preview().counted().plan().orElseThrow();
    assertThat(plan.remarks()).hasSize(2);
    assertThat(row(bench, "mind").value()).startsWith("2 things");
    assertThat(row(bench, "mind").emphasis()).isEqualTo(Emphasis.TROUBLE);
    assertThat(texts(bench, Prose.Kind.STOP).stream().map(Prose::text))
        .containsExactlyElementsOf(plan.remarks());
  }

  @Test
  void prices_of_her_bench_stand_among_what_was_taken() {
    OwnBench none = OwnBench.NONE;
    OwnPrices prices = new OwnPrices("EUR", Map.of("sterling", 1.2), Map.of("hour", 28.0));
    OwnBench priced =
        new OwnBench(
            none.name(),
            none.persons(),
            none.units(),
            none.formersMm(),
            none.plateMm(),
            none.kerfMm(),
            none.flame(),
            none.pickle(),
            none.solders(),
            prices,
            none.losses(),
            none.redos(),
            none.fireWatchSeconds(),
            none.waitSeconds(),
            none.tools());
    Bencher hers = Bencher.withTheDemo();
    hers.take(new Message.BenchRead(priced, Message.From.HERE, List.of()));
    hers.press("p");
    assertThat(row(hers, "an hour").amount()).isEqualTo("28 EUR");
    assertThat(row(hers, "metal, a gram").amount()).isEqualTo("1.2 EUR");
  }

  @Test
  void what_an_earlier_job_settled_stands_in_words_and_not_by_the_keys_of_files() {
    Bencher again =
        Bencher.with(
            new Fact.JobOpened("Again", "scroll-and-ring"),
            new Fact.PlanSet(
                Wishes.common().texts(),
                Map.of(WishKeys.LINK_BLANK, new Sourced("38 mm", Sourced.Source.HANDS))));
    assertThat(PlanContent.comesTo(again.job().standing(), again.model()))
        .filteredOn(Rows.class::isInstance)
        .flatExtracting(part -> ((Rows) part).rows())
        .extracting(row -> row.label())
        .contains("link blank")
        .noneMatch(label -> label.contains("."));
  }

  @Test
  void it_says_how_to_cut_each_length_on_hand() {
    assertThat(row(bench, "420 mm").value()).contains("blanks", "a coil for 12 rings", "left");
    assertThat(row(bench, "150 mm").value()).isEqualTo("stays whole");
    assertThat(row(bench, "wire to buy").value()).isEqualTo("nothing");
  }

  @Test
  void what_was_to_cut_at_the_start_is_told_apart_from_what_is_still_to_cut() {
    assertThat(row(bench, "to cut").amount()).isEqualTo("11 for 9");
    Bencher cut = demoAnd(new Fact.WireCut(PieceKind.LINK, 4, 38));
    assertThat(row(cut.press("p"), "to cut").amount()).isEqualTo("11 for 9 at the start");
    assertThat(row(cut, "to cut").remark()).isEqualTo("7 still to cut");
    assertThat(row(cut, "rings to cut").remark()).isEmpty();
  }

  @Test
  void a_length_of_which_nothing_is_left_is_used_up() {
    Bencher cut = demoAnd(new Fact.WireDiscarded(PieceKind.LINK, 150, "kinked"));
    assertThat(rows(cut.press("p")))
        .anyMatch(row -> row.amount().equals("used up"))
        .noneMatch(row -> row.amount().equals("stays whole") && row.label().equals("0 mm"));
  }

  @Test
  void as_it_was_before_is_what_stood_before_the_field_not_the_half_of_what_is_typed_now() {
    bench.toField("finished-length").press(20, "backspace").type("700 mm");
    assertThat(shown(bench)).contains("700 mm").doesNotContain("As it was before");
    bench.type("m");
    assertThat(shown(bench)).contains("As it was before", "190 mm");
    bench.press("backspace", "up", "down").type("m");
    assertThat(shown(bench)).as("the caret had left the field").contains("As it was", "700 mm");
  }

  @Test
  void of_a_draft_that_does_not_hold_the_kept_plan_is_what_it_was_before() {
    bench.toField("finished-length").press(20, "backspace").type("7 apples").press("esc", "p");
    assertThat(shown(bench)).contains("As it was before", "190 mm");
  }

  private static Bencher demoAnd(Fact more) {
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    facts.add(more);
    return Bencher.with(facts.toArray(Fact[]::new));
  }

  private static String shown(Bencher bench) {
    return String.join("\n", new PlainLines(Act::words).of(new PlanPlace().content(bench.model())));
  }

  @Test
  void it_says_what_the_chance_is_of_and_what_one_link_more_takes() {
    Standing standing = held(bench).preview();
    Plan plan = standing.counted().plan().orElseThrow();
    List<Row> told = rows(bench).stream().filter(row -> row.label().equals("will do")).toList();
    assertThat(told).hasSize(2).extracting(Row::value).containsOnly(told.get(0).value());
    assertThat(told.get(1).remark()).contains("what is over goes to what falls short");
    assertThat(row(bench, "a link more").amount())
        .isEqualTo(UnitStyle.METRIC.length(plan.linkEachMm() + plan.ringTurnMm()));
    assertThat(rows(bench)).extracting(Row::label).doesNotContain("to order");
  }

  @Test
  void too_little_wire_is_trouble() {
    Bencher poor = Bencher.withTheDemo().press("p");
    while (!poor.form().fields().get(poor.form().at()).id().equals("stock")) {
      poor.press("down");
    }
    poor.press(poor.form().text("stock").length(), "backspace").type("100 mm");
    assertThat(row(poor, "wire to buy").emphasis()).isEqualTo(Emphasis.TROUBLE);
    assertThat(row(poor, "wire to buy").unit()).isEqualTo("mm");
  }

  @Test
  void it_speaks_in_the_users_units_and_trade_words() {
    Bencher inch =
        Bencher.withTheDemo(new Settings(UnitStyle.INCH, false, KeyMap.USUAL)).press("p");
    assertThat(row(inch, "length").amount()).isEqualTo("7.1 ± 0.5 in");
    assertThat(row(inch, "mandrels").value()).contains("bow");
    assertThat(texts(inch, Prose.Kind.MAIN).stream().map(Prose::text)).contains("Seams:");
  }

  @Test
  void what_is_missing_is_asked_for_in_place_of_figures() {
    bench.press("down").press(6, "backspace");
    assertThat(rows(bench)).isEmpty();
    assertThat(texts(bench, Prose.Kind.SAYS).stream().map(Prose::text))
        .anyMatch(text -> text.startsWith("Give the wire"));
  }
}
