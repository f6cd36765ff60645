package linkwright.reckon;

import java.util.List;
import java.util.Optional;
import linkwright.plan.UsualFigures;
import linkwright.yield.BlanksToCut;
import linkwright.yield.Rate;
import linkwright.yield.Yield;

/** How many blanks to cut so that enough come good. */
final class SpareSum implements Working {
  private static final Sum SUM =
      new Sum(
          "spare",
          "spare blanks",
          "How many further blanks to cut so that enough come good.",
          List.of(
              Ask.needed("more", "pieces wanted", "27"),
              Ask.optional("good", "good so far", "12; none"),
              Ask.optional("lost", "scrapped so far", "1; none"),
              Ask.optional("confidence", "chance wished", "90 %"),
              Ask.optional("usual-loss", "usual loss", "5 %")));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Integer> more = answers.count("more");
    int good = answers.count("good").orElse(0);
    int lost = answers.count("lost").orElse(0);
    double confidence = answers.share("confidence").orElse(UsualFigures.CHANCE);
    double usual = answers.share("usual-loss").orElse(UsualFigures.LOSS);
    answers.check(
        "confidence", confidence > 0, "A chance of nothing needs no blanks: ask for 90 %, say.");
    if (answers.wrong()) {
      return;
    }
    Rate loss = Rate.usual(usual).seen(good, lost);
    BlanksToCut cut = Yield.cut(more.orElseThrow(), loss, confidence);
    if (cut instanceof BlanksToCut.OutOfReach outOfReach) {
      answers.problem("", outOfReach.sentence());
    } else if (cut instanceof BlanksToCut.Blanks enough) {
      outcome.put("cut", enough.blanks());
      outcome.line(
          more.get() == 0
              ? "No more are wanted, so none need be cut."
              : "Cut "
                  + Figures.count(enough.blanks(), "blank")
                  + ": the chance that "
                  + more.get()
                  + " of them come good is "
                  + Figures.percent(enough.chance())
                  + ".");
      outcome.line("Reckoned to be scrapped: " + Figures.percent(loss.mean()) + ".");
    }
  }
}
