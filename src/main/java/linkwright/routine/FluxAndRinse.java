package linkwright.routine;

import java.util.List;
import java.util.regex.Pattern;

/** What solder needs before it, and pickle after it. */
final class FluxAndRinse {
  private static final Pattern DRIED = Pattern.compile("(?i)\\bpickle(,| and|, then)? dry\\b");

  private FluxAndRinse() {}

  static List<Finding> solderHasItsFlux(Routine routine, Known known) {
    return routine.steps().stream()
        .filter(step -> !step.detail().solder().isEmpty())
        .filter(step -> !step.does().contains(Hazard.FLUX_FUMES))
        .map(
            step ->
                Finding.at(
                    step,
                    "does",
                    "Step %s solders, and nothing says that it is fluxed.".formatted(step.id()),
                    "Say in do when flux goes on, and add flux-fumes under does."))
        .toList();
  }

  static List<Finding> noPickleIsDriedUnrinsed(Routine routine, Known known) {
    return routine.steps().stream()
        .filter(step -> DRIED.matcher(step.doText()).find())
        .map(
            step ->
                Finding.at(
                    step,
                    "do",
                    "Step %s dries what comes out of the pickle, unrinsed.".formatted(step.id()),
                    "Say pickle, rinse, soda water, rinse, dry."))
        .toList();
  }
}
