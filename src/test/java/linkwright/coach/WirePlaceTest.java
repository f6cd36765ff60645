package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import linkwright.coach.keys.Act;
import linkwright.coach.wire.WireHeld;
import linkwright.coach.wire.WirePlace;
import linkwright.job.Fact;
import linkwright.plain.PlainLines;
import linkwright.routine.PieceKind;
import linkwright.standing.WireStand;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WirePlaceTest {
  private final Apprentice apprentice = at(Map.of());

  private static Apprentice at(Map<String, String> changes) {
    return Apprentice.withAJob(changes).press("esc", "w");
  }

  private static WireStand stand(Apprentice apprentice) {
    return ((WireHeld) apprentice.model().held()).stand().orElseThrow();
  }

  private static String trouble(Apprentice apprentice, String field) {
    return apprentice.model().held().form().orElseThrow().fields().stream()
        .filter(each -> each.id().equals(field))
        .findFirst()
        .orElseThrow()
        .trouble()
        .orElse("");
  }

  private static void clear(Apprentice apprentice) {
    for (int i = 0; i < 12; i++) {
      apprentice.press("backspace");
    }
  }

  @Nested
  class Standing {
    @Test
    void everyLengthIsWhatWasCutWhatIsToBeCutAndWhatIsOver() {
      apprentice.press("c", "enter").type("5").press("ctrl-k");
      for (WireStand.Bar bar : stand(apprentice).links()) {
        assertThat(
                bar.cutMm() + bar.lostMm() + bar.nextLinksMm() + bar.nextRingsMm() + bar.overMm())
            .isCloseTo(bar.mm(), within(0.01));
      }
      assertThat(WireStand.cutMm(stand(apprentice).links())).isCloseTo(211.5, within(0.01));
    }

    @Test
    void theCutPlanGivesAllThatIsStillToBeCut() {
      WireStand stand = stand(apprentice);
      int links = stand.links().stream().mapToInt(bar -> bar.next().links()).sum();
      int rings = stand.links().stream().mapToInt(bar -> bar.next().rings()).sum();
      assertThat(stand.missing().none()).isTrue();
      assertThat(new WireStand.LinksAndRings(links, rings)).isEqualTo(stand.toCut());
    }

    @Test
    void tooLittleWireIsToldWithHowMuch() {
      WireStand stand = stand(at(Map.of("stock", "100 mm")));
      assertThat(stand.missing().none()).isFalse();
      assertThat(stand.shortMm()).isGreaterThan(400);
    }

    @Test
    void linksAreNoWorseOffForWantOfTheRingsOwnWire() {
      WireStand stand = stand(at(Map.of("ring.wire", "0.8 mm", "ring-stock", "30 mm")));
      assertThat(stand.missing().links()).isZero();
      assertThat(stand.missing().rings()).isPositive();
      assertThat(stand.shortLinksMm()).isZero();
      assertThat(stand.rings().orElseThrow()).hasSize(1);
    }
  }

  @Nested
  class WireThatCame {
    @Test
    void said_for_several_is_for_the_piece_and_for_no_other() {
      apprentice.press("n", "ctrl-u").type("links").press("down").type("412 mm").press("ctrl-k");
      assertThat(apprentice.lastFact())
          .isInstanceOfSatisfying(
              Fact.WireAdded.class, came -> assertThat(came.piece()).isEqualTo(PieceKind.LINK));
      int facts = apprentice.facts().size();
      apprentice.press("n", "ctrl-u").type("bangle").press("down").type("1 m").press("ctrl-k");
      assertThat(apprentice.facts()).hasSize(facts);
      assertThat(apprentice.shown()).contains("Say what the wire is for");
    }

    @Test
    void isEnteredLengthByLengthAndUndoneAtOnce() {
      apprentice.press("n", "enter").type("412 mm, 0,5 m").press("ctrl-k");
      assertThat(apprentice.facts().subList(2, 4))
          .containsExactly(
              new Fact.WireAdded(PieceKind.LINK, 1.0, 412, "soft", ""),
              new Fact.WireAdded(PieceKind.LINK, 1.0, 500, "soft", ""));
      assertThat(stand(apprentice).links()).hasSize(5);
      apprentice.press("u");
      assertThat(stand(apprentice).links()).hasSize(3);
    }

    @Test
    void doesNotChangeWhatIsLeftOfTheOthers() {
      apprentice.press("c", "enter").type("5").press("ctrl-k");
      List<Double> before = stand(apprentice).links().stream().map(WireStand.Bar::leftMm).toList();
      apprentice.press("n", "enter").type("90 mm").press("ctrl-k");
      assertThat(stand(apprentice).links().stream().map(WireStand.Bar::leftMm))
          .startsWith(before.toArray(Double[]::new))
          .endsWith(90.0);
    }

    @Test
    void byWeightIsTurnedIntoLength() {
      apprentice.press("n", "enter").type("10 g").press("ctrl-k");
      Fact.WireAdded added = (Fact.WireAdded) apprentice.lastFact();
      // 10 g / (π/4 · 1 mm² · 10.36 mg/mm³); sterling's density as in the CRC Handbook.
      assertThat(added.lengthMm()).isCloseTo(1229, within(3.0));
    }

    @Test
    void ofAnotherThicknessIsToldAndNotEntered() {
      apprentice.press("n", "enter").type("1 m").press("enter");
      clear(apprentice);
      apprentice.type("1.5 mm").press("ctrl-k");
      assertThat(trouble(apprentice, "wire"))
          .startsWith("The plan's wire for links is 1 mm. Draw this one down first");
      assertThat(apprentice.lastFact()).isInstanceOf(Fact.PlanSet.class);
      clear(apprentice);
      apprentice.type("0.8 mm");
      assertThat(trouble(apprentice, "wire")).contains("This one is thinner");
    }

    @Test
    void asNearAsACaliperShowsIsThePlansWire() {
      apprentice.press("n", "enter").type("1 m").press("enter");
      clear(apprentice);
      apprentice.type("18 AWG").press("ctrl-k");
      assertThat(trouble(apprentice, "wire")).contains("1 mm");
      clear(apprentice);
      apprentice.type("1.01 mm").press("ctrl-k");
      assertThat(apprentice.lastFact())
          .isEqualTo(new Fact.WireAdded(PieceKind.LINK, 1.01, 1000, "soft", ""));
    }

    @Test
    void ofNoLengthIsTold() {
      apprentice.press("n", "enter").type("0 mm").press("ctrl-k");
      assertThat(trouble(apprentice, "lengths")).contains("nothing");
    }
  }

  @Nested
  class WireThatWent {
    @Test
    void cutTakesWhatThePlanSaysEachTakes() {
      apprentice.press("c", "right", "enter").type("4").press("ctrl-k");
      Fact.WireCut cut = (Fact.WireCut) apprentice.lastFact();
      assertThat(cut.piece()).isEqualTo(PieceKind.RING);
      assertThat(cut.count()).isEqualTo(4);
      // A turn of the coil: π (3.2 + 1.0) mm, and a little for its pitch.
      assertThat(cut.eachMm()).isBetween(13.19, 13.6);
    }

    @Test
    void noNumberIsTold() {
      apprentice.press("c", "enter").type("some").press("ctrl-k");
      assertThat(trouble(apprentice, "count"))
          .isEqualTo("“some” is no number of pieces. Write 12, say.");
    }

    @Test
    void moreThanTheBookHasIsEnteredAndTold() {
      apprentice.press("c", "enter").type("30").press("ctrl-k");
      assertThat(apprentice.lastFact()).as("asked once").isNotInstanceOf(Fact.WireCut.class);
      apprentice.press("ctrl-k");
      assertThat(apprentice.lastFact()).isInstanceOf(Fact.WireCut.class);
      assertThat(apprentice.told()).startsWith("By the book the wire on hand gives only 18 more");
    }

    @Test
    void moreCannotBeLostThanIsThere() {
      apprentice.press("x", "enter").type("900 mm").press("ctrl-k");
      assertThat(trouble(apprentice, "length")).startsWith("By the book only 830 mm");
      clear(apprentice);
      apprentice.type("60 mm").press("enter").type("kinked").press("ctrl-k");
      assertThat(apprentice.lastFact())
          .isEqualTo(new Fact.WireDiscarded(PieceKind.LINK, 60, "kinked"));
    }

    @Test
    void weighedOutNeedsAMass() {
      apprentice.press("o", "ctrl-k");
      assertThat(trouble(apprentice, "mass")).isNotEmpty();
      apprentice.type("14.5 g").press("ctrl-k");
      assertThat(apprentice.lastFact()).isEqualTo(new Fact.MetalWeighedOut(14.5, "wire"));
    }
  }

  @Nested
  class DrawingDown {
    private String sum() {
      return ((WireHeld) apprentice.model().held()).drawn().sum();
    }

    private List<String> said() {
      return new PlainLines(Act::words).of(new WirePlace().content(apprentice.model()));
    }

    @Test
    void showsPassesAndAnnealsWhileTypingAndEntersNothing() {
      apprentice.press("d", "enter").type("1.5 mm").press("enter");
      apprentice.type("1.4 mm, 1.2 mm, 1.0 mm").press("enter").type("400 mm").press("enter");
      clear(apprentice);
      apprentice.type("0 mm");
      // Volume is kept: 400 mm · (1.0 / 1.5)² = 177.8 mm.
      assertThat(sum()).startsWith("400 mm of 1 mm: begin with 177.8 mm of 1.5 mm");
      assertThat(said()).anyMatch(line -> line.contains("anneal, quench"));
      apprentice.press("ctrl-k");
      assertThat(apprentice.model().held().form()).isEmpty();
      assertThat(said())
          .contains("Drawn down, " + sum() + ".")
          .anyMatch(line -> line.startsWith("Pass 3"));
      assertThat(apprentice.lastFact()).isInstanceOf(Fact.PlanSet.class);
    }

    @Test
    void fromThinnerWireIsTold() {
      apprentice.press("d", "enter").type("0.8 mm").press("enter").type("1 mm");
      apprentice.press("enter").type("400 mm");
      assertThat(trouble(apprentice, "from")).contains("a drawplate only makes wire thinner");
    }

    @Test
    void aPlateWithoutTheHoleIsTold() {
      apprentice.press("d", "enter").type("1.5 mm").press("enter").type("1.2 mm");
      apprentice.press("enter").type("400 mm");
      assertThat(trouble(apprentice, "holes")).contains("no hole of 1 mm");
    }

    @Test
    void beginsWithWhatIsShort() {
      Apprentice poor = at(Map.of("stock", "100 mm")).press("d");
      String length = poor.model().held().form().orElseThrow().text("length");
      assertThat(length).isEqualTo((long) Math.ceil(stand(poor).shortMm()) + " mm");
    }
  }

  @Test
  void withoutAPlanNothingCanBeEntered() {
    Apprentice blank = Apprentice.withAJob(Map.of("wire", "")).press("esc", "w", "n");
    assertThat(blank.model().held().form()).isEmpty();
    assertThat(blank.told()).startsWith("The job has no plan yet");
  }

  /** What came back was entered as taken. */
  @Test
  void words_of_metal_that_came_back_are_asked_about_where_metal_is_weighed_out() {
    for (String place : List.of("w", "i")) {
      Apprentice bench = Apprentice.withAJob(Map.of()).press(place, "o").type("1.2 g");
      bench.press("down").type("wire returned").press("ctrl-k");
      assertThat(bench.told()).contains("What came back is weighed in");
      assertThat(bench.model().held().form()).isPresent();
      bench.press("ctrl-k");
      assertThat(bench.lastFact()).isEqualTo(new Fact.MetalWeighedOut(1.2, "wire returned"));
    }
  }
}
