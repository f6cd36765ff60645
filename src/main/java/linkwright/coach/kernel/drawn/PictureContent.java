package linkwright.coach.kernel.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Model;
import linkwright.reference.Picture;
import linkwright.reference.PicturePanel;
import linkwright.reference.PictureStroke;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;

/** What a step shows drawn: its bends, then the pictures that it names. */
public final class PictureContent {
  private PictureContent() {}

  /** A page for each drawing of a step; none where it shows none. */
  public static List<List<Part>> pages(Step step, Model model) {
    List<List<Part>> pages = new ArrayList<>();
    List<Part> bends = BendContent.at(step, model);
    if (!bends.isEmpty()) {
      pages.add(BendContent.page(bends));
    }
    pictures(step, model).forEach(picture -> pages.add(page(picture, JobWords.tradeWords(model))));
    return pages;
  }

  /** The pictures below a step's texts, for whoever has the room; told in words without one. */
  public static List<Part> below(Step step, Model model) {
    TradeWords words = JobWords.tradeWords(model);
    return pictures(step, model).stream()
        .map(picture -> (Part) new Drawing(shapes(picture, words), said(picture, words), true))
        .toList();
  }

  private static List<Picture> pictures(Step step, Model model) {
    return step.detail().pictures().stream()
        .flatMap(name -> model.handbook().reference().picture(name).stream())
        .toList();
  }

  /** A picture with what each of its states is, below it. */
  public static List<Part> page(Picture picture, TradeWords words) {
    List<Row> rows =
        picture.panels().stream()
            .map(
                panel ->
                    Row.of(words.show(panel.name()), words.show(panel.says()))
                        .with(panel.wrong() ? Emphasis.PLAIN : Emphasis.NOW))
            .toList();
    String names =
        picture.panels().stream().map(PicturePanel::name).collect(Collectors.joining(", "));
    return List.of(
        new Prose(Prose.Kind.HEAD, words.show(picture.title())),
        Prose.aside(words.show(picture.says())),
        new Drawing(shapes(picture, words), List.of(words.show("Drawn: " + names)), false),
        new Rows(rows));
  }

  /** A picture whose states have numbers in place of names, for whoever is to tell them apart. */
  public static Part unnamed(Picture picture, TradeWords words) {
    List<PicturePanel> numbered = new ArrayList<>();
    for (PicturePanel panel : picture.panels()) {
      numbered.add(
          new PicturePanel(
              Integer.toString(numbered.size() + 1),
              panel.says(),
              false,
              panel.drawn(),
              panel.which(),
              panel.strokes()));
    }
    Picture asked = new Picture(picture.id(), picture.title(), picture.says(), numbered);
    return new Drawing(shapes(asked, words), List.of(words.show(picture.says())), false);
  }

  private static List<String> said(Picture picture, TradeWords words) {
    return Stream.concat(
            Stream.of(picture.title()),
            picture.panels().stream().map(panel -> panel.name() + ": " + panel.says()))
        .map(words::show)
        .toList();
  }

  private static List<Drawing.Outline> shapes(Picture picture, TradeWords words) {
    return picture.panels().stream().map(panel -> shape(panel, words)).toList();
  }

  /** A step of a picture counts as a millimetre: it is drawn as large as there is room. */
  private static Drawing.Outline shape(PicturePanel panel, TradeWords words) {
    double left = least(panel, PictureStroke.StrokePoint::x);
    double right = -least(panel, at -> -at.x());
    double low = least(panel, PictureStroke.StrokePoint::y);
    double high = -least(panel, at -> -at.y());
    List<Drawing.Stroke> strokes =
        panel.strokes().stream()
            .map(
                stroke ->
                    new Drawing.Stroke(
                        stroke.points().stream()
                            .map(at -> new Drawing.At(at.x() - (left + right) / 2, at.y()))
                            .toList(),
                        0,
                        stroke.solid() ? Drawing.StrokeKind.SOLID : Drawing.StrokeKind.PLAIN))
            .toList();
    return new Drawing.Outline(
        words.show(panel.name()),
        strokes,
        Math.max(1, right - left),
        Math.max(1, high - low),
        panel.wrong() ? Emphasis.PLAIN : Emphasis.NOW);
  }

  private static double least(PicturePanel panel, ToDoubleFunction<PictureStroke.StrokePoint> of) {
    return panel.strokes().stream()
        .flatMap(stroke -> stroke.points().stream())
        .mapToDouble(of)
        .min()
        .orElse(0);
  }
}
