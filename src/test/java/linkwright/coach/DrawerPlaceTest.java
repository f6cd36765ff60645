package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.drawer.Drawer;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;

/** Lots of the drawer by its keys: wire drawn down into another lot, solder taken for a job. */
class DrawerPlaceTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  static Apprentice withLots(Apprentice bench) {
    List<Entry> book =
        List.of(
            entry(
                1,
                new LotFact.LotArrived(
                    "march",
                    "wire",
                    "sterling",
                    OptionalDouble.of(1.2),
                    "soft",
                    "b7",
                    OptionalDouble.of(2000),
                    NONE,
                    "")),
            entry(
                2,
                new LotFact.LotArrived(
                    "strip",
                    "solder",
                    "hard-silver",
                    NONE,
                    "",
                    "",
                    NONE,
                    OptionalDouble.of(20),
                    "")));
    Drawer drawer = Drawer.of(book, List.of(), List.of(), bench.model().handbook().reference());
    return bench.take(
        new Message.TrayRead(List.of(), 0, List.of(), Optional.empty(), Optional.of(drawer)));
  }

  private static Entry entry(int number, Fact fact) {
    return new Entry(number, Apprentice.BEGIN, "bench", fact);
  }

  private static Apprentice drawing(String wire, String length) {
    return withLots(Apprentice.withAJob(Map.of()).press("a"))
        .press("d", "d", "down")
        .type("april")
        .press("down")
        .type(wire)
        .press("down")
        .type(length)
        .press("ctrl-k");
  }

  /** 1.2 to 0.9 mm makes a length 1.7778 times as long: L1 = L0 (d0/d1)^2. */
  @Test
  void wire_drawn_down_becomes_another_lot_in_one_entry() {
    Apprentice bench = drawing("0.9 mm", "3.5 m");
    assertThat(bench.asked())
        .contains(
            new Effect.KeepInDrawer(
                List.of(
                    new LotFact.LotTurned(
                        "march",
                        "april",
                        OptionalDouble.of(0.9),
                        OptionalDouble.of(3500),
                        NONE,
                        ""))));
  }

  @Test
  void thicker_wire_and_more_metal_than_there_was_are_told_and_not_entered() {
    for (Apprentice bench : List.of(drawing("1.4 mm", "1 m"), drawing("0.9 mm", "3.7 m"))) {
      assertThat(bench.asked()).noneMatch(Effect.KeepInDrawer.class::isInstance);
      assertThat(Troubles.in(bench.model().held().form().orElseThrow())).isTrue();
    }
  }

  @Test
  void a_job_takes_solder_by_its_lot_and_the_card_names_it() {
    Apprentice bench = withLots(Apprentice.withAJob(Map.of()));
    bench.press("w", "s", "down").type("1.5 g").press("ctrl-k");
    assertThat(bench.model().job().orElseThrow().entries())
        .extracting(Entry::fact)
        .contains(
            new LotFact.StockTaken("strip", PieceKind.NONE, NONE, OptionalDouble.of(1.5), ""));
    bench.press("esc", "d");
    assertThat(bench.shown()).contains("lots used", "strip");
  }

  @Test
  void where_a_plan_lacks_wire_the_drawer_that_has_some_or_none_is_named() {
    Map<String, String> lacking = Map.of("wire", "1.2 mm", "stock", "100 mm");
    Apprentice bench = withLots(Apprentice.withAJob(lacking));
    assertThat(bench.window(180, 120).press("p").shown())
        .contains("wire to buy", "The drawer has 2 m of wire of 1.2 mm, in “march”");
    Apprentice other = withLots(Apprentice.withAJob(Map.of("wire", "1 mm", "stock", "100 mm")));
    assertThat(other.window(180, 120).press("p").shown())
        .contains("The drawer has none of wire of 1 mm.");
  }

  @Test
  void wire_out_of_a_lot_is_of_its_batch_where_none_is_typed() {
    Apprentice bench = withLots(Apprentice.withAJob(Map.of("wire", "1.2 mm")));
    bench.press("w").press("n", "down").type("1 m").press("down", "down", "down", "down", "right");
    bench.press("ctrl-k");
    assertThat(bench.lastFact())
        .isEqualTo(new Fact.WireAdded(PieceKind.LINK, 1.2, 1000, "soft", "b7", "march"));
  }

  @Test
  void at_the_wire_of_a_job_that_lacks_some_the_drawer_is_named_too() {
    Map<String, String> lacking = Map.of("wire", "1.2 mm", "stock", "100 mm");
    assertThat(withLots(Apprentice.withAJob(lacking)).press("w").shown())
        .contains("The drawer has 2 m of wire of 1.2 mm, in “march”.");
  }

  @Test
  void more_solder_than_is_left_is_told() {
    Apprentice bench = withLots(Apprentice.withAJob(Map.of()));
    bench.press("w", "s", "down").type("21 g").press("ctrl-k");
    assertThat(Troubles.in(bench.model().held().form().orElseThrow())).isTrue();
  }

  @Test
  void what_the_open_job_takes_is_gone_at_once_and_there_again_when_it_is_undone() {
    Apprentice bench = withLots(Apprentice.withAJob(Map.of("wire", "1.2 mm")));
    bench.take(kept(bench, "march", 1200));
    assertThat(left(bench)).isEqualTo(800);
    bench.take(kept(bench, "march", 700));
    assertThat(left(bench)).isEqualTo(100);
    bench.take(new Message.Kept(List.of(next(bench, new Fact.Struck(last(bench), "")))));
    assertThat(left(bench)).isEqualTo(800);
  }

  private static double left(Apprentice bench) {
    return bench.model().handbook().drawer().lots().get(0).lengthMm().orElseThrow();
  }

  private static Message kept(Apprentice bench, String lot, double mm) {
    return new Message.Kept(
        List.of(next(bench, new Fact.WireAdded(PieceKind.LINK, 1.2, mm, "soft", "", lot))));
  }

  private static EntryId last(Apprentice bench) {
    List<Entry> book = bench.model().job().orElseThrow().entries();
    return book.get(book.size() - 1).id();
  }

  private static Entry next(Apprentice bench, Fact fact) {
    List<Entry> book = bench.model().job().orElseThrow().entries();
    return new Entry(book.size() + 1, Apprentice.BEGIN, "bench", fact);
  }
}
