package linkwright.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.coach.content.Part;
import linkwright.coach.keys.Act;
import linkwright.coach.reach.ReachContent;
import linkwright.exchange.forms.OutForm;
import linkwright.job.JobState;
import linkwright.plain.PlainLines;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.JobPrices;
import linkwright.standing.reach.Bound;
import linkwright.standing.reach.OnHand;
import linkwright.standing.reach.WithinReach;

/** Tells the longest chain and the heaviest wire from what a command line says there is. */
final class FromWhatThereIs {
  private FromWhatThereIs() {}

  /** Tells it; from holds a {@code limit=amount} each. */
  static int tell(
      Root root,
      List<String> from,
      Map<String, String> wish,
      JobState state,
      Handbook handbook,
      OutForm as) {
    List<String> words = Arrays.stream(Bound.values()).map(Bound::word).toList();
    Map<String, String> typed = new LinkedHashMap<>();
    for (String each : from) {
      String[] pair = each.split("=", 2);
      if (pair.length < 2 || !words.contains(pair[0].strip())) {
        return root.wrong(
            "\""
                + each
                + "\" says nothing of what there is: write --from \"metal=20 g\"; one of "
                + String.join(", ", words)
                + ".");
      }
      typed.put(pair[0].strip(), pair[1].strip());
    }
    OnHand.Reading read = OnHand.read(typed, wish, handbook);
    if (!read.troubles().isEmpty()) {
      return root.wrong(read.troubles().values().iterator().next());
    }
    UnitStyle units = Choices.load(root.home()).user().units();
    WithinReach reach = WithinReach.of(wish, state, handbook, read.onHand(), units);
    if (!reach.trouble().isEmpty()) {
      root.here().err().say(reach.trouble());
      return Exit.PROBLEMS;
    }
    List<Part> parts =
        new ReachContent(units, JobPrices.of(state, handbook).currency()).of(reach, typed);
    if (as == OutForm.TEXT) {
      PlainLines plain = new PlainLines(Act::words);
      root.inHerWords(parts).forEach(part -> root.here().out().sayAll(part.answer(plain)));
    } else {
      root.here().out().print(AnswerRows.written(as, "within-reach", parts));
    }
    return Exit.GOOD;
  }
}
