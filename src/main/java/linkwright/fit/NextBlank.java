package linkwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The blank and formers for a wish: for each choice of formers the blank that gives the length,
 * then the choice whose width comes nearest; wire that would cross itself counts against a choice.
 */
final class NextBlank {
  private static final int DOUBLINGS = 8;
  private static final int LOOKS = 12;
  private static final double NEAR_MM = 0.002;

  /** A straight just long enough to tell a link's length from its width. */
  private static final double STRAIGHT_MM = 0.1;

  /** Wire that crosses is as bad as a size that is off by this share, and worse as it is deeper. */
  private static final double CROSSING = 0.05;

  /** How deep a touch may seem, as a share of the wire's thickness: hands settle so much. */
  private static final double TOUCH = 0.25;

  /** Of how many choices it is looked up whether they cross. */
  private static final int LOOKED_AT = 4;

  /** A choice whose size is off by so much more than the nearest is not looked at further. */
  private static final double WORTH_WEIGHING = 0.15;

  private final Shape shape;
  private final Maker maker;
  private final LinkSize wish;
  private final double stepMm;
  private final double[][] root;

  /** A choice of formers with its best blank, and what the two become. */
  record Choice(Map<String, Double> formersMm, double blankMm, FormedSize size) {}

  NextBlank(Shape shape, Maker maker, LinkSize wish, double stepMm) {
    this.shape = shape;
    this.maker = maker;
    this.wish = wish;
    this.stepMm = stepMm;
    this.root = maker.covariance().root();
  }

  /** Empty if no choice of formers can be formed at all. */
  Optional<Proposal> best(List<Map<String, Double>> choices) {
    List<Choice> found = new ArrayList<>();
    for (Map<String, Double> formers : choices) {
      blank(formers).ifPresent(found::add);
    }
    // Looking for crossings is slow: the likeliest first, and no further than one can still win.
    double nearest = found.stream().mapToDouble(this::miss).min().orElse(0);
    List<Weighed> weighed =
        found.stream()
            .filter(choice -> miss(choice) <= nearest + WORTH_WEIGHING)
            .map(this::weigh)
            .sorted(Comparator.comparingDouble(Weighed::cost))
            .toList();
    Optional<Choice> best = Optional.empty();
    double pressed = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Weighed one : weighed.subList(0, Math.min(weighed.size(), LOOKED_AT))) {
      if (one.cost() >= least) {
        break;
      }
      double deep = overlapMm(one.choice());
      double cost = one.cost() + (deep > 0 ? CROSSING + deep / shape.wireMm() / 10 : 0);
      if (cost < least) {
        least = cost;
        best = Optional.of(one.choice());
        pressed = deep;
      }
    }
    double overlapMm = pressed;
    return best.map(choice -> propose(choice, overlapMm));
  }

  /** A tip that is to lie against the stem stops there; only what goes deeper is told. */
  double overlapMm(Choice choice) {
    return shape.overlapMm(
        choice.blankMm(), choice.formersMm(), maker.bending(), TOUCH * shape.wireMm());
  }

  private record Weighed(Choice choice, double cost) {}

  private Weighed weigh(Choice choice) {
    return new Weighed(choice, Math.hypot(miss(choice), doubt(expected(choice))));
  }

  private Proposal propose(Choice choice, double overlapMm) {
    Choice rounded = rounded(choice);
    Reach reach = Reach.of(choice.size(), wish);
    Optional<Map<String, Double>> instead =
        reach == Reach.REACHED && overlapMm == 0
            ? Optional.empty()
            : OtherFormers.reaching(shape, wish, this);
    return new Proposal(
        rounded.blankMm(), rounded.formersMm(), expected(rounded), wish, reach, overlapMm, instead);
  }

  private Expected expected(Choice choice) {
    return Sensitivity.of(shape, choice.blankMm(), choice.formersMm(), maker, root)
        .map(piece -> Expected.of(piece, maker.scatter()))
        .orElse(new Expected(choice.size().lengthMm(), choice.size().widthMm(), 0, 0));
  }

  /** Formers that were tried are surer than others, which may outweigh a slightly nearer width. */
  private double doubt(Expected expected) {
    return Math.hypot(
        expected.lengthSpreadMm() / wish.lengthMm(), expected.widthSpreadMm() / wish.widthMm());
  }

  double miss(Choice choice) {
    return Math.hypot(
        choice.size().lengthMm() / wish.lengthMm() - 1,
        choice.size().widthMm() / wish.widthMm() - 1);
  }

  private Optional<Choice> rounded(Choice choice, double blankMm) {
    return shape
        .size(blankMm, choice.formersMm(), maker.bending())
        .map(size -> new Choice(choice.formersMm(), blankMm, size));
  }

  /** To the nearest step that can still be formed. */
  private Choice rounded(Choice choice) {
    if (stepMm == 0) {
      return choice;
    }
    double nearest = stepMm * Math.rint(choice.blankMm() / stepMm);
    return rounded(choice, nearest).or(() -> rounded(choice, nearest + stepMm)).orElse(choice);
  }

  /** The blank that gives the wished length, or comes nearest to it. */
  Optional<Choice> blank(Map<String, Double> formers) {
    Optional<Choice> any = Optional.empty();
    double blankMm = 3 * wish.lengthMm();
    for (int i = 0; i < DOUBLINGS; i++, blankMm *= 2) {
      any = look(formers, blankMm);
      if (any.isPresent() && any.get().size().lengthMm() >= wish.lengthMm()) {
        break;
      }
    }
    if (any.isEmpty()) {
      return any;
    }
    Choice high = any.get();
    double shortest = high.size().shortestBlankMm();
    // Without any straight between its ends an oval is a ring, which is pulled in no one direction.
    Optional<Choice> least =
        look(formers, shortest).or(() -> look(formers, shortest + STRAIGHT_MM));
    if (least.isEmpty()) {
      return any;
    }
    if (high.size().lengthMm() < wish.lengthMm()) {
      return nearer(least.get(), high);
    }
    return Optional.of(
        least.get().size().lengthMm() <= wish.lengthMm()
            ? between(least.get(), high)
            : afterADip(least.get(), high));
  }

  private Optional<Choice> nearer(Choice one, Choice other) {
    return Optional.of(miss(one) <= miss(other) ? one : other);
  }

  private Optional<Choice> look(Map<String, Double> formers, double blankMm) {
    return shape
        .size(blankMm, formers, maker.bending())
        .map(size -> new Choice(formers, blankMm, size));
  }

  /** A link can first get shorter as the blank grows, its bends drawing apart; look for that. */
  private Choice afterADip(Choice least, Choice high) {
    Choice shortest = least;
    double reach = Math.min(wish.lengthMm(), high.blankMm() - least.blankMm());
    for (int i = 1; i <= LOOKS; i++) {
      Optional<Choice> seen = look(least.formersMm(), least.blankMm() + reach * i / LOOKS);
      if (seen.isPresent() && seen.get().size().lengthMm() < shortest.size().lengthMm()) {
        shortest = seen.get();
      }
    }
    return shortest.size().lengthMm() <= wish.lengthMm() ? between(shortest, high) : shortest;
  }

  /** Regula falsi, in the Illinois form that never sticks to one end. */
  private Choice between(Choice low, Choice high) {
    double from = low.blankMm();
    double to = high.blankMm();
    double below = low.size().lengthMm() - wish.lengthMm();
    double above = high.size().lengthMm() - wish.lengthMm();
    // Where the blank changes nothing both are right, and the shorter is the one that closes.
    Choice best = -below <= above ? low : high;
    int side = 0;
    for (int i = 0; i < 60 && Math.abs(best.size().lengthMm() - wish.lengthMm()) > NEAR_MM; i++) {
      double blankMm =
          above == below ? (from + to) / 2 : from - below * (to - from) / (above - below);
      Optional<Choice> seen = look(low.formersMm(), blankMm);
      if (seen.isEmpty()) {
        break;
      }
      best = seen.get();
      double miss = best.size().lengthMm() - wish.lengthMm();
      if (miss < 0) {
        from = blankMm;
        below = miss;
        above = side < 0 ? above / 2 : above;
        side = -1;
      } else {
        to = blankMm;
        above = miss;
        below = side > 0 ? below / 2 : below;
        side = 1;
      }
    }
    return best;
  }
}
