package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.keys.Act;
import linkwright.plain.PlainLines;
import linkwright.view.Scenes;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the places beside the bench say, whatever draws it. */
class BesideContentTest {
  private static Content said(Bencher bench) {
    return Pages.of(bench.model()).body();
  }

  private static Content said(Apprentice apprentice) {
    return Pages.of(apprentice.model()).body();
  }

  private static <P extends Part> P one(List<Part> parts, Class<P> kind) {
    return parts.stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
  }

  private static List<String> lines(Content content) {
    return new PlainLines(Act::words).of(content);
  }

  @Nested
  class TestPieces {
    private final List<Part> parts = said(Scenes.of("tests", 80, 24)).parts();

    @Test
    void are_drawn_between_the_wish_and_the_next() {
      assertThat(one(parts, Drawing.class).shapes().stream().map(Drawing.Outline::caption))
          .containsExactly("wished", "2: 44 mm", "3: 43 mm", "next: 43 mm");
    }

    @Test
    void are_drawn_as_large_as_they_are() {
      for (Drawing.Outline shape : one(parts, Drawing.class).shapes()) {
        double least =
            shape.strokes().get(0).line().stream().mapToDouble(Drawing.At::xMm).min().orElseThrow();
        double most =
            shape.strokes().get(0).line().stream().mapToDouble(Drawing.At::xMm).max().orElseThrow();
        // The centre line is a wire's thickness shorter than the link; its points a step apart.
        assertThat(most - least)
            .isCloseTo(shape.lengthMm() - shape.strokes().get(0).thickMm(), within(0.3));
      }
    }

    @Test
    void say_the_next_blank_before_what_is_expected_of_it() {
      assertThat(one(parts, Rows.class).rows())
          .extracting("label", "value")
          .containsExactly(
              tuple("wished", "16 mm x 6 mm"),
              tuple("next blank", "43 mm over tip 1.1 mm, bow 3.8 mm"),
              tuple("reckoned", "16 mm ± 0.32 mm x 6.18 mm ± 0.3 mm"));
    }

    @Test
    void are_a_line_each_the_last_one_chosen() {
      Table table = one(parts, Table.class);
      assertThat(table.chosen()).isEqualTo(2);
      assertThat(table.lines().get(0).cells())
          .containsExactly("1", "42 mm", "15.1 x 6.3 mm", "15.1 x 6.52 mm", "longer", "");
    }

    @Test
    void name_the_sample_link() {
      Table table = one(said(Scenes.of("tests", 80, 24).press("s")).parts(), Table.class);
      assertThat(table.lines().get(2).cells()).endsWith("sample link");
      assertThat(table.lines().get(2).emphasis()).isEqualTo(Emphasis.MAIN);
    }

    @Test
    void that_are_not_yet_there_are_asked_for_by_the_act_and_no_key() {
      List<String> lines = lines(said(Bencher.withTheDemo().press("t")));
      assertThat(lines).anyMatch(line -> line.endsWith("measure it, then log one logs it."));
    }
  }

  @Nested
  class TrialLengths {
    @Test
    void are_a_line_each_with_the_chain_that_would_follow() {
      Table table = one(said(Scenes.of("trial", 80, 24)).parts(), Table.class);
      assertThat(table.columns().stream().map(Table.Column::name))
          .containsExactly(
              "", "links", "rings", "ring inside", "ovalled to", "hung", "one link adds", "");
      assertThat(table.lines().get(1).cells())
          .containsExactly("2", "3", "4", "3 mm", "2.4 mm", "61 mm", "15.6 mm", "followed");
      assertThat(table.lines().get(0).below().get(0).text())
          .isEqualTo("9 links and 10 rings make 195.6 mm");
    }

    @Test
    void tell_what_the_chain_is_now() {
      assertThat(one(said(Scenes.of("trial", 80, 24)).parts(), Prose.class).text())
          .isEqualTo(
              "The chain now: 9 links of 15.6 mm inside, 10 rings, 191.9 mm long, wished 190 mm.");
    }
  }

  @Nested
  class Wire {
    @Test
    void stretches_of_a_bar_are_its_whole_length() {
      Bars bars = one(said(Scenes.of("wire", 80, 24)).parts(), Bars.class);
      assertThat(bars.groups()).hasSize(1);
      assertThat(bars.groups().get(0).bars().stream().mapToDouble(Bars.Bar::mm).toArray())
          .containsExactly(new double[] {150, 260, 420}, within(0.01));
    }

    @Test
    void of_rings_has_its_own_group() {
      Apprentice apprentice =
          Apprentice.withAJob(Map.of("ring.wire", "0.8 mm", "ring-stock", "30 mm"))
              .press("esc", "w");
      Bars bars = one(said(apprentice).parts(), Bars.class);
      assertThat(bars.groups().get(1).title()).isEqualTo("Wire for rings, 0.8 mm");
      assertThat(lines(said(apprentice))).anyMatch(line -> line.startsWith("Rings: on hand"));
    }

    @Test
    void that_will_not_do_is_trouble_said_first() {
      Apprentice poor = Apprentice.withAJob(Map.of("stock", "100 mm")).press("esc", "w");
      Prose first = one(said(poor).parts(), Prose.class);
      assertThat(first.kind()).isEqualTo(Prose.Kind.STOP);
      assertThat(first.text()).startsWith("Short: ").contains("more wire is needed");
    }

    @Test
    void drawn_down_is_a_line_each_pull_with_the_anneal_before_it() {
      List<Part> parts = said(Scenes.of("wire-drawn", 80, 24)).parts();
      Table passes = one(parts, Table.class);
      assertThat(passes.lines()).hasSize(5);
      assertThat(passes.lines().get(4).cells())
          .containsExactly("5", "1 mm", "17 %", "17 %", "first anneal, quench, pickle, dry");
    }
  }

  @Nested
  class Sums {
    @Test
    void say_what_they_come_to_beside_the_form() {
      Beside beside = one(said(Scenes.of("reckoner-sum", 80, 24)).parts(), Beside.class);
      Prose first = one(beside.second(), Prose.class);
      assertThat(first.kind()).isEqualTo(Prose.Kind.MAIN);
      assertThat(first.text()).startsWith("2 m of it weighs 16.27 g");
    }

    @Test
    void that_form_a_link_draw_it() {
      Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "r");
      apprentice.press("down", "down", "down", "down", "enter");
      Beside beside = one(said(apprentice).parts(), Beside.class);
      assertThat(one(beside.second(), Drawing.class).shapes()).hasSize(1);
    }

    @Test
    void still_to_be_given_are_no_trouble() {
      Beside beside = one(said(Apprentice.atTheTray().press("r", "enter")).parts(), Beside.class);
      assertThat(beside.second())
          .isNotEmpty()
          .allMatch(part -> part instanceof Prose prose && prose.kind() == Prose.Kind.ASIDE);
    }
  }
}
