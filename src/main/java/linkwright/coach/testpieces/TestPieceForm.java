package linkwright.coach.testpieces;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.fit.LinkSize;
import linkwright.fit.Proposal;
import linkwright.hands.Verdicts;
import linkwright.plan.ChainWish;
import linkwright.plan.WishKeys;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;

/** What is asked of a test piece; blank and formers as they are proposed of the link chosen. */
final class TestPieceForm {
  private TestPieceForm() {}

  /** Behind what is asked for the wished measure as example; none where nothing is wished. */
  private static String wished(OpenJob job, ToDoubleFunction<LinkSize> measure) {
    return job.standing()
        .counted()
        .wish()
        .flatMap(ChainWish::linkSize)
        .map(size -> ", {mm:" + Decimals.upTo(measure.applyAsDouble(size), 2) + "}")
        .orElse("");
  }

  /**
   * A form for the next piece.
   *
   * @param size which link of the chain; the planned one has no name
   */
  static Form of(Model model, TestsHeld screen, String size) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    Optional<Proposal> next = screen.of(size).flatMap(tests -> tests.next().found());
    String blank =
        next.map(proposal -> units.length(proposal.blankMm()))
            .orElse(
                size.isEmpty()
                    ? job.state().course().wish().getOrDefault(WishKeys.LINK_BLANK, "")
                    : "");
    List<Field> fields = new ArrayList<>();
    if (!TestsPlace.sizes(job).isEmpty()) {
      List<String> links = new ArrayList<>(List.of(""));
      links.addAll(TestsPlace.sizes(job));
      fields.add(
          Field.choice("size", "which link", size, "empty: the planned one", links)
              .helped("Each link of the chain has test pieces and a sample of its own."));
    }
    fields.add(
        Field.of("blank", "blank", blank, "what you cut, {mm:38}", Measure.LENGTH, units)
            .helped(
                "The wire that was cut for this piece. With what it measured it tells your hands'"
                    + " springback, and so the next blank."));
    next.ifPresent(
        proposal ->
            proposal
                .formersMm()
                .forEach((name, mm) -> fields.add(former(name, units.length(mm), units))));
    Stream.concat(screen.taught().stream(), screen.others().values().stream())
        .flatMap(other -> other.next().found().stream())
        .flatMap(proposal -> proposal.formersMm().entrySet().stream())
        .forEach(
            each -> {
              if (fields.stream().noneMatch(one -> named(one, each.getKey()))) {
                fields.add(former(each.getKey(), units.length(each.getValue()), units));
              }
            });
    fields.add(
        Field.of(
                "length",
                "length",
                "",
                "measured soldered and flattened" + wished(job, LinkSize::lengthMm),
                Measure.LENGTH,
                units)
            .helped("The piece's length over all. The next blank is found from it."));
    fields.add(
        Field.of(
                "width",
                "width",
                "",
                "measured" + wished(job, LinkSize::widthMm),
                Measure.LENGTH,
                units)
            .helped("The piece's width over all. It tells which former does."));
    fields.add(
        Field.of(
                "inside",
                "inside length",
                "",
                "from eye to eye, if you can measure it",
                Measure.LENGTH,
                units)
            .helped("What this link adds to a chain. It goes before what is reckoned.")
            .aside());
    List<String> words = new ArrayList<>(List.of(""));
    words.addAll(Verdicts.words());
    fields.add(
        Field.choice(
                "verdict",
                "make the next",
                "",
                "longer, shorter, wider … or right; empty: from the measures",
                words)
            .helped("What you would change in the next piece. Right: this one may be the last."));
    fields.add(
        Field.choice("verdict2", "and", "", "a second direction, if there is one", words)
            .helped("As above. The next piece follows both.")
            .aside());
    fields.add(
        Field.of("note", "note", "", "anything to remember")
            .helped("It stands beside the piece.")
            .aside());
    return Form.of(Form.Purpose.TEST_PIECE, "A test piece", "log it", fields)
        .startingAt(next.isPresent() ? "length" : "blank");
  }

  /** The form gone on with where it was left, for the link that was chosen there. */
  static Form resumed(Model model, TestsHeld screen) {
    Form left = Drafting.resumed(model, of(model, screen, ""));
    return turned(model, screen, left, "");
  }

  /** The form once another link of the chain was chosen: what nobody typed is that link's. */
  static Form turned(Model model, TestsHeld screen, Form form, String before) {
    String size = form.text("size");
    if (size.equals(before)) {
      return form;
    }
    Map<String, String> stood = of(model, screen, before).texts();
    Map<String, String> proposed = new LinkedHashMap<>(of(model, screen, size).texts());
    proposed
        .entrySet()
        .removeIf(
            each ->
                each.getKey().equals("size")
                    || each.getValue().isEmpty()
                    || !form.text(each.getKey()).equals(stood.get(each.getKey())));
    return form.withTexts(proposed);
  }

  private static boolean named(Field field, String former) {
    return field.id().equals("former." + former);
  }

  private static Field former(String name, String text, UnitStyle units) {
    return Field.of(
            "former." + name,
            name,
            text,
            "its inside, the former you took, {mm:3}",
            Measure.LENGTH,
            units)
        .helped("The inside size of the former that was taken. The link's size follows from it.");
  }
}
