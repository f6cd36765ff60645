package linkwright.coach.kernel.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Standing;
import linkwright.standing.reach.WireInDrawer;
import linkwright.standing.reach.WireShared;
import linkwright.standing.reach.WireWanted;

/** Tells where other jobs lack the same wire; whose they are is told at the drawer alone. */
public final class SharedWire {
  private SharedWire() {}

  /** A sentence at the job that is open, as it stands or as it is typed; none where all is well. */
  public static List<Part> of(Model model, Standing standing) {
    String slug = model.job().map(job -> job.slug()).orElse("");
    boolean closed = model.job().filter(job -> job.state().course().closed()).isPresent();
    List<WireWanted> others =
        model.tray().stream()
            .filter(job -> !job.slug().equals(slug))
            .filter(job -> !job.away())
            .flatMap(job -> job.wants().stream())
            .toList();
    Optional<WireWanted> own = closed ? Optional.empty() : WireWanted.of(standing);
    return WireShared.of(own, others, model.handbook().drawer()).stream()
        .<Part>map(shared -> Prose.stop(says(shared, model.settings().units())))
        .toList();
  }

  /** What the drawer has of the wire that this job lacks; where others lack it too, see above. */
  public static List<Part> inDrawer(Model model, Standing standing) {
    return of(model, standing).isEmpty() ? there(model, standing) : List.of();
  }

  /** Where the wire itself is told: the lots that have some of it, and that others lack it too. */
  public static List<Part> atWire(Model model, Standing standing) {
    List<Part> parts = new ArrayList<>(of(model, standing));
    parts.addAll(there(model, standing));
    return parts;
  }

  private static List<Part> there(Model model, Standing standing) {
    boolean closed = model.job().filter(job -> job.state().course().closed()).isPresent();
    return closed
        ? List.of()
        : WireInDrawer.of(standing, model.handbook().drawer()).stream()
            .<Part>map(wire -> Prose.says(says(wire, model.settings().units())))
            .toList();
  }

  private static String says(WireInDrawer wire, UnitStyle units) {
    String of = " of wire of " + units.wire(wire.wanted().wireMm());
    String lots =
        wire.lots().stream().map(lot -> "“" + lot + "”").collect(Collectors.joining(" and "));
    return wire.lots().isEmpty()
        ? "The drawer has none" + of + "."
        : "The drawer has "
            + units.length(wire.thereMm())
            + of
            + ", in "
            + lots
            + "."
            + (wire.toBuyMm() > 0 ? " " + units.length(wire.toBuyMm()) + " more is to buy." : "");
  }

  private static String says(WireShared shared, UnitStyle units) {
    return (shared.others() == 1
            ? "Another open job lacks "
            : shared.others() + " other open jobs lack ")
        + units.length(shared.othersMm())
        + " of the same wire, this one "
        + units.length(shared.own().lacksMm())
        + "; in the drawer "
        + (shared.thereMm() > 0 ? "there is " + units.length(shared.thereMm()) : "there is none")
        + ".";
  }
}
