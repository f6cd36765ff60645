package linkwright.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Decimals;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;

/**
 * One stroke of a picture: a thin line, or a patch that is filled.
 *
 * <p>As text it is a word and numbers: {@code line 0 0, 10 0, 10 5} through points; {@code curve},
 * the same with the corners rounded; {@code solid}, the patch inside of them; {@code arc x y radius
 * from to}, in degrees, from 3 o'clock against the clock; {@code oval x y half-length half-width};
 * {@code ball x y radius}, a filled disc.
 *
 * @param points where it goes, in steps of the drawing
 * @param solid whether it is a filled patch
 */
public record PictureStroke(List<StrokePoint> points, boolean solid) {
  /** A point of a picture. */
  public record StrokePoint(double x, double y) {}

  /** Further out than this nothing is drawn, steps. */
  public static final double FARTHEST = 200;

  private static final int PIECES_A_TURN = 48;

  /** Word → how it is written. */
  private static final Map<String, String> KINDS =
      Map.of(
          "line", "line 0 0, 10 0, 10 5",
          "curve", "curve 0 0, 5 2, 10 0",
          "solid", "solid 0 0, 4 0, 4 8",
          "arc", "arc 5 5 3 0 360",
          "oval", "oval 5 5 4 2",
          "ball", "ball 5 5 2");

  /** Copies the points. */
  public PictureStroke {
    points = List.copyOf(points);
  }

  /** A stroke from its text, or a sentence that says what is wrong with it. */
  public static Read<PictureStroke> read(String text) {
    String[] words = text.strip().split("\\s+", 2);
    String example = KINDS.get(words[0]);
    if (example == null) {
      String near =
          Nearest.of(words[0], KINDS.keySet())
              .map(word -> "Did you mean " + word + "?")
              .orElse("Known are: " + KINDS.keySet().stream().sorted().toList() + ".");
      return Read.bad("\"" + words[0] + "\" is no stroke. " + near);
    }
    Optional<List<double[]>> numbers = numbers(words.length > 1 ? words[1] : "");
    Optional<PictureStroke> stroke = numbers.flatMap(all -> of(words[0], all));
    if (stroke.isEmpty()) {
      return Read.bad("\"" + text + "\" can't be drawn. Write it so: " + example + ".");
    }
    return stroke.get().points().stream()
            .anyMatch(at -> Math.abs(at.x()) > FARTHEST || Math.abs(at.y()) > FARTHEST)
        ? Read.bad("\"" + text + "\" leaves the sheet: no further than 200 either way.")
        : Read.good(stroke.get());
  }

  private static Optional<List<double[]>> numbers(String text) {
    List<double[]> all = new ArrayList<>();
    for (String point : text.split(",", -1)) {
      String[] parts = point.strip().split("\\s+", -1);
      double[] numbers = new double[parts.length];
      for (int i = 0; i < parts.length; i++) {
        if (!parts[i].matches("-?\\d{1,4}(\\.\\d{1,3})?")) {
          return Optional.empty();
        }
        numbers[i] = Decimals.read(parts[i]).orElseThrow();
      }
      all.add(numbers);
    }
    return Optional.of(all);
  }

  private static Optional<PictureStroke> of(String kind, List<double[]> all) {
    return switch (kind) {
      case "arc" -> one(all, 5).map(n -> round(n[0], n[1], n[2], n[2], n[3], n[4], false));
      case "oval" ->
          one(all, 4).filter(n -> n[3] > 0).map(n -> round(n[0], n[1], n[2], n[3], 0, 360, false));
      case "ball" -> one(all, 3).map(n -> round(n[0], n[1], n[2], n[2], 0, 360, true));
      default -> {
        int fewest = kind.equals("solid") ? 3 : 2;
        boolean points = all.size() >= fewest && all.stream().allMatch(n -> n.length == 2);
        List<StrokePoint> spots =
            points ? all.stream().map(n -> new StrokePoint(n[0], n[1])).toList() : List.of();
        yield points
            ? Optional.of(
                new PictureStroke(
                    kind.equals("curve") ? rounded(spots) : spots, kind.equals("solid")))
            : Optional.empty();
      }
    };
  }

  private static Optional<double[]> one(List<double[]> all, int numbers) {
    return all.size() == 1 && all.get(0).length == numbers && all.get(0)[2] > 0
        ? Optional.of(all.get(0))
        : Optional.empty();
  }

  private static PictureStroke round(
      double x, double y, double across, double up, double from, double to, boolean solid) {
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(to - from) / 360 * PIECES_A_TURN));
    List<StrokePoint> spots = new ArrayList<>(pieces + 1);
    for (int i = 0; i <= pieces; i++) {
      double at = Math.toRadians(from + (to - from) * i / pieces);
      spots.add(new StrokePoint(x + across * Math.cos(at), y + up * Math.sin(at)));
    }
    return new PictureStroke(spots, solid);
  }

  /** A curve through all points, by cubics whose slope is that between the neighbours. */
  private static List<StrokePoint> rounded(List<StrokePoint> through) {
    int pieces = 6;
    List<StrokePoint> spots = new ArrayList<>();
    for (int i = 0; i + 1 < through.size(); i++) {
      StrokePoint before = through.get(Math.max(0, i - 1));
      StrokePoint from = through.get(i);
      StrokePoint to = through.get(i + 1);
      StrokePoint after = through.get(Math.min(through.size() - 1, i + 2));
      for (int k = 0; k < pieces; k++) {
        double t = (double) k / pieces;
        spots.add(
            new StrokePoint(
                between(before.x(), from.x(), to.x(), after.x(), t),
                between(before.y(), from.y(), to.y(), after.y(), t)));
      }
    }
    spots.add(through.get(through.size() - 1));
    return spots;
  }

  private static double between(double before, double from, double to, double after, double t) {
    double a = 2 * from;
    double b = to - before;
    double c = 2 * before - 5 * from + 4 * to - after;
    double d = 3 * (from - to) + after - before;
    return (a + b * t + c * t * t + d * t * t * t) / 2;
  }
}
