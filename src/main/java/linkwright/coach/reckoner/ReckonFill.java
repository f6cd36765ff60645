package linkwright.coach.reckoner;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.fit.Tried;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.quantity.Length;
import linkwright.quantity.UnitStyle;
import linkwright.reckon.OwnSolders;
import linkwright.reckon.ReckoningBasis;
import linkwright.routine.PieceKind;
import linkwright.standing.StillToDo;
import linkwright.standing.TestPieces;

/** What the open job already says of a sum's asks, and what the sums are reckoned with. */
final class ReckonFill {
  private ReckonFill() {}

  /** What a sum rests on; the job's test pieces where they are of the wire that was typed. */
  static ReckoningBasis given(Model model, String sum, Map<String, String> texts) {
    Optional<Double> wire = Length.readWire(texts.getOrDefault("wire", "")).map(Length::mm).found();
    boolean sameLink =
        model
            .job()
            .map(job -> wish(job, WishKeys.LINK_PATTERN).equals(texts.get("pattern")))
            .orElse(false);
    List<Tried> tried =
        sum.equals("blank") && sameLink && wire.isPresent()
            ? TestPieces.tried(model.job().orElseThrow().state(), wire.get())
            : List.of();
    return new ReckoningBasis(
        OwnSolders.in(model.handbook().reference(), model.handbook().own().solders()),
        model.handbook().patterns(),
        tried,
        List.of(),
        model.settings().units());
  }

  /** Key of an ask → what the job says; empty without a job. */
  static Map<String, String> of(Model model, String sum) {
    Map<String, String> texts = new LinkedHashMap<>();
    model
        .job()
        .ifPresent(
            job -> {
              wished(texts, job, sum);
              job.standing()
                  .counted()
                  .plan()
                  .ifPresent(plan -> counted(texts, job, plan, sum, model.settings().units()));
            });
    texts.values().removeIf(String::isBlank);
    return texts;
  }

  private static String wish(OpenJob job, String key) {
    return job.state().course().wish().getOrDefault(key, "");
  }

  /** What was typed in the plan goes over as it was typed. */
  private static void wished(Map<String, String> texts, OpenJob job, String sum) {
    boolean ofRing = sum.equals("ring") || sum.equals("pull");
    String ringWire = wish(job, WishKeys.RING_WIRE);
    String wire = wish(job, WishKeys.WIRE);
    texts.put("metal", wish(job, WishKeys.METAL));
    texts.put("temper", wish(job, WishKeys.TEMPER));
    String bent = ofRing && !ringWire.isBlank() ? ringWire : wire;
    // The sums are of round wire; what is not round is typed there by whoever knows what is meant.
    texts.put("wire", Length.readWire(bent).isGood() ? bent : "");
    texts.put("pattern", wish(job, WishKeys.LINK_PATTERN));
    texts.put("inside", ofRing ? wish(job, WishKeys.RING_INSIDE) : "");
    texts.put("oval-inside", wish(job, WishKeys.RING_OVAL));
    texts.put("kerf", wish(job, WishKeys.KERF));
    texts.put("coil-tail", wish(job, WishKeys.COIL_TAIL));
    texts.put("usual-loss", wish(job, WishKeys.USUAL_LOSS));
    texts.put("confidence", wish(job, WishKeys.CONFIDENCE));
    texts.put("eye-wire", ofRing && !ringWire.isBlank() ? wire : "");
    switch (sum) {
      case "draw" -> texts.put("to", wire);
      case "link" -> {
        texts.put("former", wish(job, WishKeys.LINK_FORMERS));
        texts.put("ring-inside", wish(job, WishKeys.RING_INSIDE));
        texts.put("ring-wire", ringWire);
      }
      case "blank" -> {
        texts.put("length", wish(job, WishKeys.LINK_LENGTH));
        texts.put("width", wish(job, WishKeys.LINK_WIDTH));
        texts.put("owned", wish(job, WishKeys.LINK_FORMERS));
      }
      case "chain" -> {
        texts.put("length", wish(job, WishKeys.FINISHED));
        texts.put("clasp", wish(job, WishKeys.CLASP_LENGTH));
      }
      default -> {}
    }
  }

  /** What the plan came to goes over exactly, not as it is rounded for reading. */
  private static void counted(
      Map<String, String> texts, OpenJob job, Plan plan, String sum, UnitStyle units) {
    switch (sum) {
      case "link" -> texts.put("blank", units.exact(plan.linkBlankMm()));
      case "chain" -> {
        texts.put("link-inside", units.exact(plan.meanInsideMm()));
        texts.put("ring-inside", plan.rings() > 0 ? units.exact(plan.ringInsideLengthMm()) : "");
        texts.put("joining", plan.rings() > 0 ? "" : "each-other");
      }
      case "cut" -> {
        texts.put(
            "stock",
            job.standing().stockLeft().linksMm().stream()
                .map(mm -> units.exact(mm))
                .collect(Collectors.joining(", ")));
        texts.put("blank", units.exact(plan.linkBlankMm()));
        Optional<StillToDo> links = Optional.ofNullable(job.standing().left().get(PieceKind.LINK));
        texts.put("want", links.map(todo -> "" + todo.toCut().orElse(todo.more())).orElse(""));
        if (plan.rings() > 0 && plan.wish().ringsOfSameWire()) {
          Optional<StillToDo> rings =
              Optional.ofNullable(job.standing().left().get(PieceKind.RING));
          texts.put("ring", units.exact(plan.ringTurnMm()));
          texts.put("want-rings", rings.map(todo -> "" + todo.more()).orElse(""));
        }
      }
      case "spare" -> {
        Optional<StillToDo> links = Optional.ofNullable(job.standing().left().get(PieceKind.LINK));
        texts.put("more", links.map(todo -> "" + todo.more()).orElse(""));
        texts.put("good", links.map(todo -> "" + todo.good()).orElse(""));
        texts.put("lost", links.map(todo -> "" + todo.scrapped()).orElse(""));
      }
      case "pull" ->
          plan.formed()
              .filter(link -> !link.eyes().isEmpty())
              .ifPresent(
                  link -> texts.put("eye-inside", units.exact(link.eyes().get(0).insideMm())));
      default -> {}
    }
  }
}
