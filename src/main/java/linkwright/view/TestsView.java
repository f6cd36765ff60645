package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.fit.Proposal;
import linkwright.job.Fact;
import linkwright.link.Formed;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TestPieces;

/** Test pieces drawn to one scale beside the wished link and the proposal. */
final class TestsView {
  private TestsView() {}

  static void draw(Canvas body, Model model, Screen.Tests tests) {
    if (tests.form().isPresent()) {
      FormView.draw(body, tests.form().get());
      return;
    }
    OpenJob job = model.job().orElseThrow();
    Optional<TestPieces> taught = tests.taught();
    int drawn = taught.map(known -> drawings(body, model, job, known, tests.at())).orElse(0);
    int row = drawn;
    if (taught.isEmpty()) {
      row +=
          body.wrapped(
              0,
              0,
              body.width(),
              3,
              model.job().orElseThrow().makesChain()
                  ? "This link is known by its measures, not by a pattern, so no blank can be"
                      + " proposed; pieces are logged all the same."
                  : "This routine makes no chain, so no blank is proposed; what you try can be"
                      + " logged all the same.",
              Tone.FAINT);
    }
    TestPieceTable.draw(
        body.area(0, row, body.width(), Math.max(0, body.height() - row)), model, tests);
  }

  /** A drawing with a caption under it. */
  private record Picture(String caption, Formed link, Tone tone) {}

  private static int drawings(Canvas body, Model model, OpenJob job, TestPieces taught, int at) {
    UnitStyle units = model.settings().units();
    List<Picture> pictures = new ArrayList<>();
    Optional<Proposal> next = taught.next().found();
    taught.wished().ifPresent(link -> pictures.add(new Picture("wished", link, Tone.FAINT)));
    List<Fact.TestPieceTried> pieces = job.state().trials().inOrder();
    int first = Math.max(0, Math.min(at, pieces.size() - 2));
    for (int i = first; i < Math.min(pieces.size(), first + 2); i++) {
      String caption = (i + 1) + ": " + units.length(pieces.get(i).blankMm());
      taught.made().get(i).ifPresent(link -> pictures.add(new Picture(caption, link, Tone.PLAIN)));
    }
    taught
        .proposed()
        .ifPresent(
            link ->
                pictures.add(
                    new Picture(
                        "next: " + units.length(next.orElseThrow().blankMm()), link, Tone.ACCENT)));
    int high = Math.max(3, body.height() * 2 / 5);
    int wide = body.width() / Math.max(2, pictures.size());
    double longest =
        pictures.stream().mapToDouble(picture -> picture.link().lengthMm()).max().orElse(1);
    double widest =
        pictures.stream().mapToDouble(picture -> picture.link().widthMm()).max().orElse(1);
    double scale = Dots.scale(longest, widest, wide - 2, high - 1);
    for (int i = 0; i < pictures.size(); i++) {
      LinkDrawing.draw(
          body.area(i * wide, 0, wide - 2, high - 1),
          pictures.get(i).link(),
          scale,
          pictures.get(i).tone());
      body.text(i * wide, high - 1, wide - 1, pictures.get(i).caption(), pictures.get(i).tone());
    }
    Tone tone = next.isPresent() ? Tone.ACCENT : Tone.WARNING;
    int rows = body.wrapped(0, high, body.width(), 3, proposal(taught, units), tone);
    return high + rows + 1;
  }

  private static String proposal(TestPieces taught, UnitStyle units) {
    String wish =
        "wished "
            + units.length(taught.wish().lengthMm())
            + " x "
            + units.length(taught.wish().widthMm());
    return taught
        .next()
        .map(
            next ->
                next.shortfall(units)
                    .orElse(
                        wish
                            + "; next blank "
                            + units.length(next.blankMm())
                            + " over "
                            + formers(next.formersMm(), units)
                            + ": expected "
                            + units.length(next.expected().lengthMm())
                            + " "
                            + pm(units, next.expected().lengthSpreadMm())
                            + " x "
                            + units.length(next.expected().widthMm())
                            + " "
                            + pm(units, next.expected().widthSpreadMm())))
        .orElse(taught.next().problem().orElse(""));
  }

  private static String pm(UnitStyle units, double spreadMm) {
    return "± " + units.length(spreadMm);
  }

  private static String formers(Map<String, Double> formers, UnitStyle units) {
    return String.join(
        ", ",
        formers.entrySet().stream()
            .map(each -> each.getKey() + " " + units.length(each.getValue()))
            .toList());
  }
}
