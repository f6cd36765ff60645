package linkwright.coach.testpieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drawn.BendContent;
import linkwright.coach.kernel.drawn.LinkShape;
import linkwright.coach.keys.Act;
import linkwright.fit.LinkSize;
import linkwright.fit.Proposal;
import linkwright.fit.Verdict;
import linkwright.hands.Verdicts;
import linkwright.job.Fact;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TestPieces;

/** Test pieces drawn to one scale beside the wished link and the next, the next blank, all made. */
final class TestsContent {
  private static final String TITLE = "test pieces";

  /** Pieces drawn at once, the chosen one among them. */
  private static final int DRAWN = 2;

  private TestsContent() {}

  static Content of(TestsHeld held, Model model) {
    return held.form()
        .map(form -> Content.of(TITLE, new Fields(form)))
        .orElseGet(() -> new Content(TITLE, shown(held, model)));
  }

  private static List<Part> shown(TestsHeld held, Model model) {
    List<Part> bends = bends(held, model);
    return held.drawn() && !bends.isEmpty() ? BendContent.page(bends) : parts(held, model);
  }

  /** The next piece bend by bend; nothing where none is proposed or nothing is bent. */
  static List<Part> bends(TestsHeld held, Model model) {
    return chosen(held, model.job().orElseThrow())
        .map(taught -> BendContent.ofNext(taught, model))
        .orElse(List.of());
  }

  /** What is known of the link of which the chosen piece is; of the planned one where none is. */
  private static Optional<TestPieces> chosen(TestsHeld held, OpenJob job) {
    List<Fact.TestPieceTried> pieces = job.state().trials().inOrder();
    return (held.at() < pieces.size() ? held.of(pieces.get(held.at()).size()) : held.taught())
        .or(held::taught);
  }

  private static List<Part> parts(TestsHeld held, Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    List<Part> parts = new ArrayList<>();
    held.taught()
        .ifPresent(
            taught -> {
              TestPieces drawn = chosen(held, job).orElse(taught);
              parts.add(new Drawing(shapes(drawn, held.at(), job, units), List.of(), units));
              parts.addAll(next("", taught, units));
              held.others().forEach((size, one) -> parts.addAll(next(size, one, units)));
            });
    if (held.taught().isEmpty()) {
      parts.add(Prose.aside(noProposal(job)));
    }
    if (job.state().trials().pieces().isEmpty()) {
      parts.add(Prose.says(howTo()));
    } else {
      parts.add(TestPieceTable.of(held, job.state().trials(), units));
    }
    otherWire(job).ifPresent(says -> parts.add(Prose.stop(says)));
    parts.addAll(BendContent.beneath(bends(held, model)));
    return parts;
  }

  private static String noProposal(OpenJob job) {
    if (job.makesChain() && job.standing().counted().wish().isEmpty()) {
      return "There is no plan yet, so no blank can be proposed: "
          + ActMention.of(Act.TO_PLAN)
          + " makes one; pieces are logged all the same.";
    }
    return job.makesChain()
        ? "This link is known by its measures, not by a pattern, so no blank can be proposed;"
            + " pieces are logged all the same."
        : "This routine makes no chain, so no blank is proposed; what you try can be logged all"
            + " the same.";
  }

  /** Of another wire nothing is proposed here: it is chosen in the plan, and tried anew. */
  private static Optional<String> otherWire(OpenJob job) {
    return job.standing().counted().wish().stream()
        .flatMap(wish -> job.state().trials().lastOf(wish.wireMm()).stream())
        .flatMap(last -> last.verdicts().stream())
        .filter(
            word ->
                word.equals(Verdicts.word(Verdict.LIGHTER_WIRE))
                    || word.equals(Verdicts.word(Verdict.HEAVIER_WIRE)))
        .findFirst()
        .map(
            word ->
                "The last piece asks for "
                    + word
                    + ": the blank proposed is still for this one. "
                    + ActMention.of(Act.TO_PLAN)
                    + " takes another wire, and the next piece is reckoned for it.");
  }

  private static String howTo() {
    return "No test piece yet. Cut the blank proposed, form it, solder and flatten it, measure"
        + " it, then "
        + ActMention.of(Act.LOG)
        + " logs it.";
  }

  private static List<Drawing.Outline> shapes(
      TestPieces taught, int at, OpenJob job, UnitStyle units) {
    List<Drawing.Outline> shapes = new ArrayList<>();
    taught.wished().ifPresent(link -> shapes.add(LinkShape.of(link, "wished", Emphasis.ASIDE)));
    List<Fact.TestPieceTried> pieces = job.state().trials().inOrder();
    int first = Math.max(0, Math.min(at, pieces.size() - DRAWN));
    for (int i = first; i < Math.min(pieces.size(), first + DRAWN); i++) {
      String caption = (i + 1) + ": " + units.length(pieces.get(i).blankMm());
      taught
          .made()
          .get(i)
          .ifPresent(link -> shapes.add(LinkShape.of(link, caption, Emphasis.PLAIN)));
    }
    String next = taught.next().found().map(piece -> units.length(piece.blankMm())).orElse("");
    taught
        .proposed()
        .ifPresent(link -> shapes.add(LinkShape.of(link, "next: " + next, Emphasis.NOW)));
    return shapes;
  }

  private static List<Part> next(String size, TestPieces taught, UnitStyle units) {
    String of = size.isEmpty() ? "" : size + " ";
    LinkSize wish = taught.wish();
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of(
            of + "wished", units.length(wish.lengthMm()) + " x " + units.length(wish.widthMm())));
    Optional<Proposal> found = taught.next().found();
    Optional<String> wrong =
        found.flatMap(next -> next.shortfall(units)).or(() -> taught.next().problem());
    if (wrong.isPresent()) {
      return List.of(new Rows(rows), Prose.stop(wrong.get()));
    }
    found.ifPresent(
        next -> {
          rows.add(
              Row.of(
                      of + "next blank",
                      units.length(next.blankMm()) + " over " + formers(next, units))
                  .with(Emphasis.NOW));
          rows.add(Row.of(of + "reckoned", expected(next, units)));
        });
    return List.of(new Rows(rows));
  }

  private static String expected(Proposal next, UnitStyle units) {
    return units.length(next.expected().lengthMm())
        + " ± "
        + units.length(next.expected().lengthSpreadMm())
        + " x "
        + units.length(next.expected().widthMm())
        + " ± "
        + units.length(next.expected().widthSpreadMm());
  }

  private static String formers(Proposal next, UnitStyle units) {
    return next.formersMm().entrySet().stream()
        .map(each -> each.getKey() + " " + units.length(each.getValue()))
        .collect(Collectors.joining(", "));
  }
}
