package linkwright.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.link.Formed;

/** Somebody who knows the maker, and finds the best blank and formers by walking through all. */
final class Oracle {
  record Choice(double blankMm, Map<String, Double> formersMm, Formed link) {
    double miss(LinkSize wish) {
      return Math.hypot(link.lengthMm() / wish.lengthMm() - 1, link.widthMm() / wish.widthMm() - 1);
    }
  }

  private final TrueMaker maker;
  private final World world;
  private final double stepMm;

  Oracle(TrueMaker maker, World world, double stepMm) {
    this.maker = maker;
    this.world = world;
    this.stepMm = stepMm;
  }

  Optional<Choice> best(LinkSize wish, int piece) {
    Optional<Choice> best = Optional.empty();
    for (Map<String, Double> formers : choices()) {
      Optional<Choice> one = blank(formers, wish, piece);
      if (one.isPresent() && (best.isEmpty() || one.get().miss(wish) < best.get().miss(wish))) {
        best = one;
      }
    }
    return best;
  }

  private List<Map<String, Double>> choices() {
    List<Map<String, Double>> choices = List.of(Map.of());
    for (Map.Entry<String, List<Double>> former : world.owned().entrySet()) {
      choices =
          choices.stream()
              .flatMap(
                  begun ->
                      former.getValue().stream()
                          .map(
                              mm -> {
                                Map<String, Double> longer = new LinkedHashMap<>(begun);
                                longer.put(former.getKey(), mm);
                                return longer;
                              }))
              .toList();
    }
    return choices;
  }

  private Optional<Choice> blank(Map<String, Double> formers, LinkSize wish, int piece) {
    double low = 0;
    double high = 8 * wish.lengthMm();
    for (int i = 0; i < 18; i++) {
      double middle = (low + high) / 2;
      Optional<Formed> seen = maker.make(middle, formers, piece, TrueMaker.Slip.NONE);
      if (seen.isEmpty() || seen.get().lengthMm() < wish.lengthMm()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double blank = stepMm * Math.rint(high / stepMm);
    return maker
        .make(blank, formers, piece, TrueMaker.Slip.NONE)
        .map(link -> new Choice(blank, formers, link));
  }
}
