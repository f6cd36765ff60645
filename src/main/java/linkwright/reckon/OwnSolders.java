package linkwright.reckon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linkwright.bench.OwnSolder;
import linkwright.reference.Family;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Solder;

/** Solders that lie at a maker's bench, looked up by her names beside those that are known. */
public final class OwnSolders {
  private static final int LAST = 99;

  private OwnSolders() {}

  /**
   * The reference with her solders in it. One needs its melting range of its sheet; the density,
   * where no sheet says it, is that of the known solder for the same metals that melts most like
   * it. A name that is known already stays what it is.
   */
  public static Reference in(Reference known, List<OwnSolder> hers) {
    List<Solder> all = new ArrayList<>(known.solders());
    for (OwnSolder each : hers) {
      if (known.solder(each.name()).found().isEmpty()) {
        solder(each, known).ifPresent(all::add);
      }
    }
    return all.size() == known.solders().size()
        ? known
        : new Reference(
            known.metals(),
            all,
            known.finenessRules(),
            known.clasps(),
            known.limits(),
            known.glossary(),
            known.pictures(),
            known.tools());
  }

  private static Optional<Solder> solder(OwnSolder own, Reference known) {
    if (own.name().isBlank() || own.solidusC().isEmpty() || own.liquidusC().isEmpty()) {
      return Optional.empty();
    }
    double solidus = own.solidusC().getAsDouble();
    double liquidus = own.liquidusC().getAsDouble();
    Family family = known.metal(own.alloy()).found().map(Metal::family).orElse(Family.SILVER);
    List<Solder> like = known.soldersFor(family);
    if (!(solidus <= liquidus) || like.isEmpty()) {
      return Optional.empty();
    }
    Solder nearest =
        like.stream()
            .min(
                Comparator.comparingDouble(
                    each ->
                        Math.abs(each.solidusC() - solidus)
                            + Math.abs(each.liquidusC() - liquidus)))
            .orElseThrow();
    return Optional.of(
        new Solder(
            own.name(),
            own.name(),
            List.of(),
            family,
            solidus,
            liquidus,
            LAST,
            nearest.densityGCm3(),
            own.grade(),
            own.alloy(),
            own.finenessPermille(),
            "",
            "your bench"));
  }
}
