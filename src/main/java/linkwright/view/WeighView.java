package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.coach.NextTime;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.job.Closing;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.job.Price;
import linkwright.job.plan.FinenessWord;
import linkwright.job.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.text.Text;

/** Plan against what came of it, scrap by kind, the price first and again, what to do next time. */
final class WeighView {
  private WeighView() {}

  static void draw(Canvas body, Model model, Screen.WeighIn screen) {
    if (screen.form().isPresent()) {
      FormView.draw(body, screen.form().get());
      return;
    }
    OpenJob job = model.job().orElseThrow();
    if (job.reckoned().counted().plan().isEmpty()) {
      body.wrapped(0, 0, body.width(), 3, "There is no plan yet to weigh against.", Tone.WARNING);
      return;
    }
    Plan plan = job.reckoned().counted().plan().get();
    int half = body.width() >= 72 ? body.width() / 2 : body.width();
    int left = against(body.area(0, 0, half - 2, body.height()), model, job, plan);
    boolean beside = half < body.width();
    Canvas rest =
        beside
            ? body.area(half, 0, body.width() - half, body.height())
            : body.area(0, left, body.width(), Math.max(0, body.height() - left));
    int prices = prices(rest, model, job, plan);
    int row = beside ? Math.max(left, prices) + 1 : left + prices;
    if (row >= body.height()) {
      String more = " " + body.glyphs().cutMark() + " more in a larger window";
      body.right(body.height() - 1, more, Tone.FAINT);
    }
    remarks(body.area(0, row, body.width(), Math.max(0, body.height() - row)), model, job, plan);
  }

  private static int against(Canvas area, Model model, OpenJob job, Plan plan) {
    UnitStyle units = model.settings().units();
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    Pile links = job.state().piles().of("link");
    area.text(0, 0, area.width(), columns("", "planned", "came out"), Tone.FAINT);
    int row = 1;
    row =
        line(
            area,
            row,
            columns("length", units.length(plan.lengthMm()), length(in.lengthMm(), units)));
    row =
        line(area, row, columns("chain", units.mass(plan.massChainG()), mass(in.chainG(), units)));
    row = line(area, row, columns("links", "" + plan.links(), "" + links.atOrPast("checked")));
    row = line(area, row, columns("done again", "", "" + links.sentBack()));
    row =
        line(
            area,
            row,
            columns("scrapped", "" + (plan.blanksToCut() - plan.links()), "" + links.scrapped()));
    row = line(area, row, columns("hours", "", Clock.spoken(job.state().times().totalSeconds())));
    row++;
    row =
        line(
            area,
            row,
            columns(
                "weighed out",
                "",
                job.state().accounts().weighedOutG() > 0
                    ? units.mass(job.state().accounts().weighedOutG())
                    : "-"));
    row = line(area, row, columns("wire returned", "", mass(in.wireReturnedG(), units)));
    row = line(area, row, columns("clean scrap", "", mass(in.cleanScrapG(), units)));
    row = line(area, row, columns("soldered scrap", "", mass(in.solderedScrapG(), units)));
    row = line(area, row, columns("filings", "", mass(in.filingsG(), units)));
    row = line(area, row, columns("sweeps", "", mass(in.sweepsG(), units)));
    Closing closing = closing(model, job, plan);
    if (closing.unaccountedG().isPresent()) {
      row =
          line(
              area,
              row,
              columns("not accounted", "", units.mass(closing.unaccountedG().getAsDouble())));
    }
    return row;
  }

  private static Closing closing(Model model, OpenJob job, Plan plan) {
    return Closing.of(job.state(), plan, model.shelf().routine(job.state().course().routine()));
  }

  private static int prices(Canvas area, Model model, OpenJob job, Plan plan) {
    if (job.state().accounts().prices().isEmpty()) {
      return area.wrapped(
          0,
          0,
          area.width(),
          3,
          "p asks for your own prices; then the first chain and one made again stand here.",
          Tone.FAINT);
    }
    Closing closing = closing(model, job, plan);
    String money = job.state().accounts().currency();
    area.text(0, 0, area.width(), columns("", "this one", "made again"), Tone.FAINT);
    Map<String, Double> again = new TreeMap<>();
    closing.again().lines().forEach(line -> again.put(line.what(), line.money()));
    int row = 1;
    for (Price.Line line : closing.first().lines()) {
      row =
          line(
              area,
              row,
              columns(
                  line.what(),
                  money(line.money(), ""),
                  money(again.getOrDefault(line.what(), 0.0), "")));
    }
    area.text(
        0,
        row,
        area.width(),
        columns(
            "price", money(closing.first().total(), money), money(closing.again().total(), money)),
        Tone.STRONG);
    return row + 1;
  }

  private static void remarks(Canvas area, Model model, OpenJob job, Plan plan) {
    List<String> told = new ArrayList<>();
    boolean closed = job.state().course().closed();
    if (closed) {
      told.add("Closed. " + job.state().course().nextTime());
    } else {
      NextTime.of(job, model.settings().units()).forEach(each -> told.add("Next time: " + each));
    }
    int own = told.size();
    double mass = job.state().accounts().weighedIn().chainG().orElse(plan.massChainG());
    told.addAll(FinenessWord.of(plan.wish().metal(), mass, model.shelf().reference()));
    int row = 0;
    for (int i = 0; i < told.size(); i++) {
      Tone tone = i >= own ? Tone.FAINT : closed ? Tone.STRONG : Tone.PLAIN;
      row += area.wrapped(0, row, area.width(), Math.max(0, area.height() - row), told.get(i), tone);
    }
  }

  private static int line(Canvas area, int row, String text) {
    area.text(0, row, area.width(), text, Tone.PLAIN);
    return row + 1;
  }

  private static String columns(String label, String first, String second) {
    return Text.pad(label, 16) + Text.pad(first, 11) + second;
  }

  private static String length(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : "-";
  }

  private static String mass(OptionalDouble grams, UnitStyle units) {
    return grams.isPresent() ? units.mass(grams.getAsDouble()) : "-";
  }

  private static String money(double amount, String currency) {
    return String.format(Locale.ROOT, "%.2f", amount) + (currency.isEmpty() ? "" : " " + currency);
  }
}
