package linkwright.coach.kernel;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Prose;
import linkwright.standing.typed.TypedTwice;

/** What is typed in the open job as in another one, offered to be kept at her bench. */
public final class TypedBefore {
  private TypedBefore() {}

  private static Map<String, String> of(Model model) {
    return model
        .job()
        .filter(job -> !job.state().course().closed())
        .map(job -> TypedTwice.here(job.slug(), job.state(), model.handbook()))
        .orElse(Map.of());
  }

  /** Whether there is something to be kept. */
  public static boolean any(Model model) {
    return !of(model).isEmpty();
  }

  /** The offer in a sentence; empty for none. */
  public static Optional<Prose> offer(Model model) {
    Map<String, String> typed = of(model);
    return typed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Prose.aside(
                "Typed for another job too: "
                    + TypedTwice.said(typed)
                    + ". {do:keep-for-all} keeps it at your bench."));
  }

  /** Keeps it. */
  public static Turn keep(Model model) {
    return any(model) ? Turn.with(model, new Effect.ChangeBench(of(model))) : Turn.to(model);
  }
}
