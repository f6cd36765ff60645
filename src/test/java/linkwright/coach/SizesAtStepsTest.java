package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Pieces;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.StillToDo;
import org.junit.jupiter.api.Test;

/** Long and round links of one chain at the bench: each size its own pile at every step. */
class SizesAtStepsTest {
  /** 18 long and 18 round ones, of which none is usually lost. */
  private static Fact plan() {
    return new Fact.PlanSet(Wishes.figaro().with(WishKeys.STOCK, "3 m").texts());
  }

  private final Bencher bench =
      Bencher.with(new Fact.JobOpened("figaro", "figaro"), plan()).press("esc");

  private static String step(Bencher bench, String stage) {
    return bench.at().routine().steps().stream()
        .filter(step -> new Stage(stage).equals(step.stage().get(PieceKind.LINK)))
        .findFirst()
        .orElseThrow()
        .id()
        .word();
  }

  private String cut() {
    return step(bench, "cut");
  }

  private Pile pile(String size) {
    return bench.model().job().orElseThrow().state().piles().of(PieceKind.LINK, size);
  }

  private StillToDo left() {
    return bench.model().job().orElseThrow().standing().left().get(PieceKind.LINK);
  }

  @Test
  void each_size_is_cut_by_itself_and_a_key_takes_the_other() {
    bench.goTo(cut());
    assertThat(bench.at().size()).isEqualTo("long");
    bench.type("3").press("space").press("i");
    assertThat(bench.at().size()).isEqualTo("round");
    bench.type("2").press("space");

    assertThat(bench.entered(Fact.WireCut.class))
        .extracting(Fact.WireCut::size, Fact.WireCut::count)
        .containsExactly(tuple("long", 3), tuple("round", 2));
    assertThat(bench.entered(Fact.WireCut.class).get(1).eachMm()).isLessThan(14);
    assertThat(pile("long").alive()).isEqualTo(3);
    assertThat(pile("round").alive()).isEqualTo(2);
    assertThat(left().toCutBySize()).containsExactly(15, 16);
    // The round ones were cut last, and go on.
    assertThat(bench.at().size()).isEqualTo("round");
  }

  @Test
  void a_link_that_is_lost_lacks_of_its_own_size() {
    bench.goTo(cut()).type("18").press("space");
    assertThat(bench.at().size()).isEqualTo("round");
    bench.type("18").press("space");
    assertThat(left().toCutOrAsMany()).isZero();
    bench.press("i");
    assertThat(bench.at().size()).isEqualTo("long");
    bench.press("s", "1");

    assertThat(bench.entered(Fact.PiecesScrapped.class))
        .extracting(Fact.PiecesScrapped::size)
        .containsExactly("long");
    assertThat(pile("long").alive()).isEqualTo(17);
    assertThat(pile("round").alive()).isEqualTo(18);
    assertThat(left().leastBySize()).containsExactly(1, 0);
  }

  /** Nothing of the size that is cut next is there that could fail. */
  @Test
  void what_was_cut_last_is_scrapped_though_the_other_size_comes_next() {
    bench.goTo(cut()).type("18").press("space");
    assertThat(bench.at().size()).isEqualTo("round");
    bench.press("s", "1");

    assertThat(bench.entered(Fact.PiecesScrapped.class))
        .extracting(Fact.PiecesScrapped::size, Fact.PiecesScrapped::count)
        .containsExactly(tuple("long", 1));
    assertThat(pile("long").alive()).isEqualTo(17);
    assertThat(pile("round").alive()).isZero();
  }

  @Test
  void a_second_one_of_what_was_cut_last_is_scrapped_after_the_first() {
    bench.goTo(cut()).press("i").type("2").press("space").press("i").type("18").press("space");
    assertThat(bench.at().size()).as("what is cut next").isEqualTo("round");
    bench.press("s", "1");
    bench.press("s", "1");

    assertThat(bench.entered(Fact.PiecesScrapped.class))
        .extracting(Fact.PiecesScrapped::size)
        .containsExactly("long", "long");
    assertThat(pile("long").alive()).isEqualTo(16);
    assertThat(pile("round").alive()).isEqualTo(2);
  }

  @Test
  void a_second_one_of_what_was_counted_last_fails_beside_the_first() {
    bench.goTo(cut()).type("3").press("space").press("i").type("2").press("space");
    bench.goTo(step(bench, "soldered")).press("space");
    String first = bench.at().size();
    String other = first.equals("long") ? "round" : "long";
    int all = first.equals("long") ? 3 : 2;
    bench.type(Integer.toString(all)).press("space");
    assertThat(bench.at().size()).isEqualTo(other);
    bench.press("s", "1");
    bench.press("s", "1");

    assertThat(pile(first).scrapped()).isEqualTo(2);
    assertThat(pile(first).alive()).isEqualTo(all - 2);
    assertThat(pile(first).waitingFor(Stage.PICKLED)).isEqualTo(all - 2);
    assertThat(pile(other).scrapped()).isZero();
  }

  /** Three long and no round one: the first of each repeat is drawn, not the first of the bar. */
  @Test
  void the_chain_bar_fills_where_the_size_stands_in_the_chain() {
    bench.goTo(cut()).type("3").press("space");
    Pieces chain = Pages.of(bench.model()).chain().orElseThrow();
    List<Integer> links = new ArrayList<>();
    chain
        .portions()
        .forEach(each -> links.addAll(Collections.nCopies(each.count(), each.reached())));
    assertThat(links).hasSize(36);
    assertThat(links.subList(0, 6)).containsExactly(1, 0, 1, 0, 1, 0);
    assertThat(links.subList(6, 36)).containsOnly(0);
  }

  @Test
  void what_goes_together_keeps_its_sizes_and_what_is_counted_says_its_own() {
    bench.goTo(cut()).type("3").press("space").press("i").type("2").press("space");
    bench.goTo(step(bench, "soldered"));
    String first = bench.at().size();
    int there = bench.at().waiting();
    assertThat(there).isEqualTo(first.equals("long") ? 3 : 2);
    bench.press("space", "space");
    assertThat(bench.entered(Fact.PiecesThrough.class).get(0).sizes()).isEqualTo(Map.of(first, 1));
    bench.press("a").press("a");
    assertThat(pile("long").waitingFor(Stage.PICKLED)).isEqualTo(3);
    assertThat(pile("round").waitingFor(Stage.PICKLED)).isEqualTo(2);
    bench.goTo(step(bench, "pickled")).together();
    assertThat(pile("long").waitingFor(Stage.CHECKED)).isEqualTo(3);
    assertThat(pile("round").waitingFor(Stage.CHECKED)).isEqualTo(2);
    bench.goTo(step(bench, "checked")).press("i");
    String other = bench.at().size();
    bench.press("r", "1");
    assertThat(pile(other).inRedo()).isEqualTo(1);
    assertThat(bench.pile("link").inRedo()).isEqualTo(1);
  }

  /** After the last of one size the other is counted; what fails then is what was counted. */
  @Test
  void the_last_of_a_size_can_fail_when_it_was_counted() {
    bench.goTo(cut()).type("3").press("space").press("i").type("2").press("space");
    bench.goTo(step(bench, "soldered")).press("space");
    String first = bench.at().size();
    int all = first.equals("long") ? 3 : 2;
    bench.type(Integer.toString(all)).press("space");
    assertThat(bench.at().size()).isNotEqualTo(first);
    bench.press("r");
    assertThat(Pages.of(bench.model()).body().toString())
        .contains("1 " + first + " link counted just now to redo");
    bench.press("1");
    assertThat(pile(first).inRedo()).isEqualTo(1);
    assertThat(pile(first).waitingFor(Stage.PICKLED)).isEqualTo(all - 1);
    assertThat(pile(first.equals("long") ? "round" : "long").inRedo()).isZero();
  }

  /** Of the shorter links the wire gives more than of the longer ones. */
  @Test
  void the_last_wire_is_told_of_the_size_that_is_cut() {
    Fact little = new Fact.PlanSet(Wishes.figaro().with(WishKeys.STOCK, "50 mm").texts());
    Bencher scarce = Bencher.with(new Fact.JobOpened("figaro", "figaro"), little).press("esc");
    scarce.goTo(cut());
    StillToDo links = scarce.model().job().orElseThrow().standing().left().get(PieceKind.LINK);
    String size = scarce.at().size();
    assertThat(links.of("long").canCut()).isLessThan(links.of("round").canCut());
    if (size.equals("round")) {
      scarce.press("i");
    }
    scarce.press(links.of("long").canCut() + 1, "space");
    assertThat(scarce.notice()).startsWith("By the book the wire on hand gives none");
  }

  /** A book of an earlier version said no size: it goes on as it is, and says it from now on. */
  @Test
  void a_book_without_sizes_goes_on() {
    Bencher old =
        Bencher.with(
                new Fact.JobOpened("figaro", "figaro"),
                plan(),
                new Fact.WireCut(PieceKind.LINK, 20, 38),
                new Fact.PiecesThrough(
                    Map.of(PieceKind.LINK, 19), Stage.SOLDERED, false, new StepId("solder")))
            .press("esc");
    StillToDo left = old.model().job().orElseThrow().standing().left().get(PieceKind.LINK);
    assertThat(left.toCutBySize()).containsExactly(0, 16);
    old.goTo(step(old, "cut"));
    assertThat(old.at().size()).isEqualTo("round");
    old.type("4").press("space");

    JobState state = old.model().job().orElseThrow().state();
    assertThat(state.piles().of(PieceKind.LINK).alive()).isEqualTo(24);
    assertThat(state.piles().of(PieceKind.LINK, "round").alive()).isEqualTo(4);
    assertThat(state.piles().of(PieceKind.LINK, "").alive()).isEqualTo(20);
    StillToDo now = old.model().job().orElseThrow().standing().left().get(PieceKind.LINK);
    assertThat(now.toCutBySize()).containsExactly(0, 12);
    List<Entry> entries = old.entries();
    assertThat(JobState.replay(entries, Bencher.SHELF.stages()).piles()).isEqualTo(state.piles());
  }
}
