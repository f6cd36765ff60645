package linkwright.link;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.quantity.UnitStyle;

/**
 * A link bend by bend: from the tips inwards, as hands make it, both ends alike where the pattern
 * says so. Bends keep the length of the centre line, so each lies on the straight blank where its
 * stretch lies along the wire.
 *
 * @param steps the bends, in order; empty for a ring, which is wound
 * @param blankMm the straight blank, as it lies in the link, mm
 */
public record BendSteps(List<BendStep> steps, double blankMm) {
  /** Points along the centre line, mm; finer than any screen shows a link. */
  private static final double STEP_MM = 0.3;

  public BendSteps {
    steps = List.copyOf(steps);
  }

  /**
   * The bends of a link.
   *
   * @param link the link
   * @param formersMm inside diameters that replace the pattern's by name, mm
   */
  public static BendSteps of(Formed link, Map<String, Double> formersMm) {
    double lengthMm = link.centreLine().lengthMm();
    if (link.pattern().isRing()) {
      return new BendSteps(List.of(), lengthMm);
    }
    int middle = middle(link.bits(), link.pattern());
    List<Integer> first = bends(link.bits(), 0, middle);
    List<Integer> other = new ArrayList<>(bends(link.bits(), middle, link.bits().size()));
    Collections.reverse(other);
    boolean alike = link.pattern().other() != OtherHalf.NONE;
    List<BendStep> steps = new ArrayList<>();
    List<Integer> done = new ArrayList<>();
    for (int i = 0; i < Math.max(first.size(), other.size()); i++) {
      List<Integer> now = new ArrayList<>();
      if (i < first.size()) {
        now.add(first.get(i));
      }
      if (i < other.size() && alike) {
        now.add(other.get(i));
      }
      if (!now.isEmpty()) {
        done.addAll(now);
        steps.add(step(link, formersMm, done, now, false, steps.size() + 1));
      }
    }
    if (!alike) {
      for (int at : other) {
        done.add(at);
        steps.add(step(link, formersMm, done, List.of(at), true, steps.size() + 1));
      }
    }
    return new BendSteps(steps, lengthMm);
  }

  /** The first bit of the half that is bent from the other end. */
  private static int middle(List<PatternPart> bits, Pattern pattern) {
    if (pattern.other() != OtherHalf.NONE) {
      return bits.size() / 2;
    }
    for (int at = 0; at < bits.size(); at++) {
      if (bits.get(at) instanceof Run run && run.isRest()) {
        return at;
      }
    }
    return bits.size();
  }

  private static List<Integer> bends(List<PatternPart> bits, int from, int to) {
    List<Integer> bends = new ArrayList<>();
    for (int at = from; at < to; at++) {
      if (bits.get(at) instanceof Bend) {
        bends.add(at);
      }
    }
    return bends;
  }

  private static BendStep step(
      Formed link,
      Map<String, Double> formersMm,
      List<Integer> done,
      List<Integer> now,
      boolean other,
      int number) {
    List<Stretch> stretches = link.centreLine().stretches();
    double lengthMm = link.centreLine().lengthMm();
    Stretch stretch = stretches.get(now.get(0));
    Bend bend = (Bend) link.bits().get(now.get(0));
    double overMm = formerMm(link, formersMm, other ? bend.to().orElse(bend.over()) : bend.over());
    double toMm = formerMm(link, formersMm, other ? bend.over() : bend.to().orElse(bend.over()));
    Side side = other ? bend.side().opposite() : bend.side();
    CentreLine after = after(stretches, done, lengthMm);
    return new BendStep(
        number,
        other ? bend.to().orElse(bend.over()) : bend.over(),
        overMm,
        bend.to().map(to -> other ? bend.over() : to),
        toMm,
        other ? lengthMm - stretch.toMm() : stretch.fromMm(),
        other ? lengthMm - stretch.fromMm() : stretch.toMm(),
        now.size() > 1
            ? BendStep.BlankEnds.BOTH
            : other ? BendStep.BlankEnds.OTHER : BendStep.BlankEnds.FIRST,
        side,
        now.size() > 1 && link.pattern().other() == OtherHalf.MIRRORED,
        Math.toDegrees(Math.abs(stretch.turn())),
        Math.toDegrees(stretch.lengthMm() / ((overMm + toMm) / 4 + link.wireMm() / 2)),
        bend.curl(),
        after.points(STEP_MM),
        now.stream().map(bit -> part(after, bit)).toList());
  }

  private static double formerMm(Formed link, Map<String, Double> formersMm, String name) {
    Double own = formersMm.get(name);
    return own == null ? link.pattern().formersMm().get(name) : own;
  }

  /** The wire with some of its bends made, the rest still straight. */
  private static CentreLine after(List<Stretch> stretches, List<Integer> done, double lengthMm) {
    List<Stretch> walked = new ArrayList<>(stretches.size());
    Point at = new Point(0, 0);
    double heading = 0;
    for (int i = 0; i < stretches.size(); i++) {
      Stretch one = stretches.get(i);
      Stretch next =
          done.contains(i)
              ? new Stretch(
                  one.fromMm(),
                  at.xMm(),
                  at.yMm(),
                  heading,
                  one.lengthMm(),
                  one.turn(),
                  one.startRadiusMm(),
                  one.endRadiusMm(),
                  one.bit())
              : Stretch.straight(
                  one.fromMm(), at.xMm(), at.yMm(), heading, one.lengthMm(), one.bit());
      walked.add(next);
      at = next.end();
      heading = next.endHeading();
    }
    CentreLine walk = new CentreLine(walked);
    Point middle = walk.at(lengthMm / 2);
    double along = walk.headingAt(lengthMm / 2);
    return new CentreLine(
        walked.stream().map(one -> one.seenFrom(middle.xMm(), middle.yMm(), along)).toList());
  }

  private static List<Point> part(CentreLine line, int bit) {
    Stretch stretch = line.stretches().get(bit);
    int pieces = Math.max(1, (int) Math.ceil(stretch.lengthMm() / STEP_MM));
    List<Point> points = new ArrayList<>(pieces + 1);
    for (int i = 0; i <= pieces; i++) {
      points.add(stretch.after(stretch.lengthMm() * i / pieces));
    }
    return points;
  }

  /**
   * Where to mark the straight blank, mm from the end that is bent first, or from each where both
   * are bent alike; empty where there is nothing to mark.
   *
   * @param other whether from the other end, where the two are not alike
   */
  List<Double> marksMm(boolean other) {
    List<Double> marks = new ArrayList<>();
    steps.stream()
        .filter(step -> (step.ends() == BendStep.BlankEnds.OTHER) == other)
        .flatMap(step -> Stream.of(step.fromMm(), step.toEndMm()))
        .filter(mm -> mm > STEP_MM && mm < blankMm - STEP_MM)
        .sorted()
        // Where one bend goes over into the next is one place, told as the bends tell it.
        .filter(mm -> marks.isEmpty() || mm - marks.get(marks.size() - 1) > BendStep.AT_MM)
        .forEachOrdered(marks::add);
    return List.copyOf(marks);
  }

  /** The marks in words, to be drawn on the straight blank; empty where there is none. */
  public Optional<String> saysMarks(UnitStyle units) {
    boolean each = steps.stream().allMatch(step -> step.ends() == BendStep.BlankEnds.BOTH);
    String marks =
        Stream.of(
                from(marksMm(false), each ? "each end" : "the first end", units),
                from(marksMm(true), "the other end", units))
            .flatMap(Optional::stream)
            .collect(Collectors.joining("; "));
    return marks.isEmpty() ? Optional.empty() : Optional.of("Mark the blank at " + marks + ".");
  }

  private static Optional<String> from(List<Double> marks, String end, UnitStyle units) {
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            marks.stream().map(units::length).collect(Collectors.joining(", ")) + " from " + end);
  }

  /** All of it in words: the marks, then bend by bend. */
  public List<String> says(UnitStyle units) {
    List<String> words = new ArrayList<>();
    saysMarks(units).ifPresent(words::add);
    steps.forEach(step -> words.add("Bend " + step.says(units)));
    return words;
  }
}
