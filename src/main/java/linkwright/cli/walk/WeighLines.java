package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.coach.NextTime;
import linkwright.coach.OpenJob;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Closing;
import linkwright.standing.Price;

/** What came of a job against its plan, the price, and what it teaches, in lines of text. */
final class WeighLines {
  private WeighLines() {}

  static List<String> of(Model model) {
    OpenJob job = model.job().orElseThrow();
    List<String> lines = new ArrayList<>(List.of("Weighing in."));
    job.standing()
        .counted()
        .plan()
        .ifPresentOrElse(
            plan -> plan(lines, model, job, plan), () -> lines.addAll(PlaceLines.planLines(model)));
    NextTime.of(job, model.settings().units()).forEach(learnt -> lines.add("Next time: " + learnt));
    if (job.state().course().closed()) {
      lines.add("The job is closed. " + job.state().course().nextTime());
    } else {
      lines.add("An empty line weighs in; out weighs metal out; prices, close.");
    }
    return lines;
  }

  private static void plan(List<String> lines, Model model, OpenJob job, Plan plan) {
    UnitStyle units = model.settings().units();
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    Pile links = job.state().piles().of("link");
    lines.add(
        "Length: planned " + units.length(plan.lengthMm()) + ", " + length(in.lengthMm(), units));
    lines.add("Chain: planned " + units.mass(plan.massChainG()) + ", " + mass(in.chainG(), units));
    lines.add(
        "Links: planned "
            + plan.links()
            + ", "
            + links.atOrPast("checked")
            + " good; done again "
            + links.sentBack()
            + " times; scrapped "
            + links.scrapped()
            + ".");
    lines.add("Hours at the bench: " + Clock.spoken(job.state().times().totalSeconds()) + ".");
    double out = job.state().accounts().weighedOutG();
    lines.add("Metal weighed out: " + (out > 0 ? units.mass(out) : "nothing entered") + ".");
    Closing closing =
        Closing.of(job.state(), plan, model.handbook().routine(job.state().course().routine()));
    if (closing.unaccountedG().isPresent()) {
      lines.add(
          "Metal not accounted for: " + units.mass(closing.unaccountedG().getAsDouble()) + ".");
    }
    prices(lines, job, closing);
    double mass = in.chainG().orElse(plan.massChainG());
    lines.addAll(FinenessWord.of(plan.wish().metal(), mass, model.handbook().reference()));
  }

  private static void prices(List<String> lines, OpenJob job, Closing closing) {
    if (job.state().accounts().prices().isEmpty()) {
      return;
    }
    String money = job.state().accounts().currency();
    Map<String, Double> again = new TreeMap<>();
    closing.again().lines().forEach(line -> again.put(line.what(), line.money()));
    for (Price.Line line : closing.first().lines()) {
      double second = again.getOrDefault(line.what(), 0.0);
      lines.add(line.what() + ": " + amount(line.money()) + ", made again " + amount(second) + ".");
    }
    lines.add(
        "Price: "
            + amount(closing.first().total())
            + " "
            + money
            + ", made again "
            + amount(closing.again().total())
            + " "
            + money);
  }

  private static String amount(double money) {
    return Decimals.fixed(money, 2);
  }

  private static String length(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? "came out " + units.length(mm.getAsDouble()) + "." : "not measured.";
  }

  private static String mass(OptionalDouble grams, UnitStyle units) {
    return grams.isPresent() ? "came out " + units.mass(grams.getAsDouble()) + "." : "not weighed.";
  }
}
