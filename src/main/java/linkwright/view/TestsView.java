package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.coach.TestPieces;
import linkwright.fit.Proposal;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.link.Formed;
import linkwright.quantity.UnitStyle;
import linkwright.text.Text;

/** Test pieces drawn to one scale beside the wished link and the proposal. */
final class TestsView {
  private TestsView() {}

  static void draw(Canvas body, Model model, Screen.Tests tests) {
    if (tests.form().isPresent()) {
      FormView.draw(body, tests.form().get());
      return;
    }
    OpenJob job = model.job().orElseThrow();
    Optional<TestPieces> taught = TestPieces.of(job);
    int drawn = taught.map(known -> drawings(body, model, job, known, tests.at())).orElse(0);
    int row = drawn;
    if (taught.isEmpty()) {
      row +=
          body.wrapped(
              0,
              0,
              body.width(),
              3,
              "This link is known by its measures, not by a pattern, so no blank can be proposed; pieces are logged all the same.",
              Tone.FAINT);
    }
    list(body.area(0, row, body.width(), Math.max(0, body.height() - row)), model, job, tests.at());
  }

  /** A drawing with a caption under it. */
  private record Picture(String caption, Formed link, Tone tone) {}

  private static int drawings(Canvas body, Model model, OpenJob job, TestPieces taught, int at) {
    UnitStyle units = model.settings().units();
    List<Picture> pictures = new ArrayList<>();
    Optional<Proposal> next = taught.next().found();
    next.flatMap(proposal -> taught.drawn(proposal.blankMm(), proposal.formersMm()))
        .ifPresent(
            link ->
                pictures.add(
                    new Picture("next: " + units.length(next.get().blankMm()), link, Tone.ACCENT)));
    List<Fact.TestPieceTried> pieces = job.state().trials().inOrder();
    for (int i = Math.max(0, Math.min(at, pieces.size() - 3));
        i < pieces.size() && pictures.size() < 4;
        i++) {
      Fact.TestPieceTried piece = pieces.get(i);
      String caption = (i + 1) + ": " + units.length(piece.blankMm());
      taught
          .drawn(piece.blankMm(), piece.formersMm())
          .ifPresent(link -> pictures.add(new Picture(caption, link, Tone.PLAIN)));
    }
    int high = Math.max(3, body.height() * 2 / 5);
    int wide = body.width() / Math.max(3, pictures.size());
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
    body.text(
        0,
        high,
        body.width(),
        proposal(taught, units),
        next.isPresent() ? Tone.ACCENT : Tone.WARNING);
    return high + 2;
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

  private static void list(Canvas area, Model model, OpenJob job, int at) {
    UnitStyle units = model.settings().units();
    Map<EntryId, Fact.TestPieceTried> pieces = job.state().trials().pieces();
    if (pieces.isEmpty()) {
      area.wrapped(
          0,
          0,
          area.width(),
          3,
          "No test piece yet. Cut the blank proposed, form it, solder and flatten it, measure it, then press n.",
          Tone.PLAIN);
      return;
    }
    area.text(0, 0, area.width(), "   blank      length     width      next one", Tone.FAINT);
    int first = Math.max(0, Math.min(at - area.height() + 3, pieces.size() - area.height() + 2));
    int i = 0;
    int row = 1;
    for (Map.Entry<EntryId, Fact.TestPieceTried> each : pieces.entrySet()) {
      if (i >= first && row < area.height()) {
        boolean sample =
            job.state()
                .trials()
                .sample()
                .map(choice -> choice.piece().equals(each.getKey()))
                .orElse(false);
        String mark = i == at ? area.glyphs().pick("▸", ">") : " ";
        Fact.TestPieceTried piece = each.getValue();
        String line =
            mark
                + Text.pad((i + 1) + " ", 2)
                + Text.pad(units.length(piece.blankMm()), 11)
                + Text.pad(length(piece.lengthMm(), units), 11)
                + Text.pad(length(piece.widthMm(), units), 11)
                + String.join(" and ", piece.verdicts())
                + (sample ? "   sample link" : "")
                + (piece.note().isBlank() ? "" : "   " + piece.note());
        area.text(
            0, row, area.width(), line, sample ? Tone.STRONG : i == at ? Tone.PLAIN : Tone.FAINT);
        row++;
      }
      i++;
    }
  }

  private static String length(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : "-";
  }
}
