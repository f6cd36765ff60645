package linkwright.routine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words of danger in a {@code do} have their action declared, so that its caution is seen. What
 * only lies ready ("quench water, warm pickle") and what a sentence forbids ("Never …") is none.
 */
final class DangerWords {
  private static final Map<Hazard, Pattern> WORDS =
      new EnumMap<>(
          Map.of(
              Hazard.PICKLES,
              words(
                  "\\binto (the |a |warm |a short |cold )*pickle\\b|{begins}pickle\\b|\\bacid\\b"),
              Hazard.QUENCHES,
              words("\\{quench\\}|{begins}quench\\b(?! water)|\\bthen quench\\b"),
              Hazard.HEATS,
              words("\\bred[ -]hot\\b|\\bflame\\b"),
              Hazard.SPINS,
              words("\\b(wheel|polishing motor)\\b"),
              Hazard.DRILLS,
              words("\\bdrill\\b"),
              Hazard.MELTS,
              words("\\bmelt (the|your|clean)\\b|\\bcrucible\\b"),
              Hazard.POURS,
              words("{begins}pour\\b|\\byou pour\\b"),
              Hazard.LIGHTS,
              words("\\blight (the|your|a) (torch|flame|pilot)\\b"),
              Hazard.HAMMERS,
              words("{begins}(planish|hammer|strike|tap)\\b")));

  private static final Pattern SENTENCE = Pattern.compile("[^.!?]+(\\.\\d[^.!?]*)*[.!?]*");
  private static final Pattern FORBIDS =
      Pattern.compile("^\\s*(never|no|not|do not)\\b", Pattern.CASE_INSENSITIVE);

  private DangerWords() {}

  private static Pattern words(String regex) {
    // A word that begins a sentence or a clause is what one is told to do.
    return Pattern.compile(
        regex.replace("{begins}", "(?:^|[.:;] )(?:then )?"), Pattern.CASE_INSENSITIVE);
  }

  static List<Finding> areDeclared(Routine routine, Known known) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : routine.steps()) {
      String told = told(step.doText());
      WORDS.forEach(
          (hazard, words) -> {
            Matcher found = words.matcher(told);
            if (!step.does().contains(hazard) && found.find()) {
              findings.add(
                  Finding.at(
                      step,
                      "does",
                      "Step %s tells one to \"%s\" and does not say that it does \"%s\"."
                          .formatted(
                              step.id(),
                              found.group().replaceAll("^[.:;] ", "").strip(),
                              hazard.word()),
                      "Add %s to does and its caution to cautions.".formatted(hazard.word())));
            }
          });
    }
    return findings;
  }

  private static String told(String text) {
    StringBuilder told = new StringBuilder();
    Matcher sentences = SENTENCE.matcher(text);
    while (sentences.find()) {
      if (!FORBIDS.matcher(sentences.group()).find()) {
        told.append(sentences.group());
      }
    }
    return told.toString();
  }
}
