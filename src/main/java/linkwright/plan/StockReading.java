package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.quantity.Items;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Read;
import linkwright.reference.Metal;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/** Reads wire on hand, by length or by weight: {@code 412 mm, 96 mm} or {@code 12 g}. */
final class StockReading {
  private final Typed typed;
  private final Optional<Metal> metal;

  StockReading(Typed typed, Optional<Metal> metal) {
    this.typed = typed;
    this.metal = metal;
  }

  List<Double> lengths(String key, Optional<WireSection> wire) {
    return typed.optional(key, text -> read(text, wire)).orElse(List.of());
  }

  private Read<List<Double>> read(String text, Optional<WireSection> wire) {
    List<Read<Double>> lengths = new ArrayList<>();
    for (String item : Items.of(text)) {
      if (!item.isBlank()) {
        lengths.add(one(item.strip(), wire));
      }
    }
    return Read.all(lengths);
  }

  private Read<Double> one(String item, Optional<WireSection> wire) {
    Read<Length> length = Length.read(item);
    Read<Mass> mass = Mass.read(item);
    if (Mass.inEitherOunce(item)) {
      return mass.map(Mass::grams);
    }
    if (length.isGood() || !mass.isGood()) {
      return length.map(Length::mm);
    }
    if (metal.isEmpty() || wire.isEmpty()) {
      return Read.bad("A weight of wire needs its metal and thickness: mend those first.");
    }
    double area = wire.get().areaMm2();
    return Read.good(
        WireMass.lengthMm(area, mass.orThrow().grams(), metal.get().densityGCm3().value()));
  }
}
