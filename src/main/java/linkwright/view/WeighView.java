package linkwright.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import linkwright.job.StillToDo;
import linkwright.job.plan.FinenessWord;
import linkwright.job.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
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
    if (!job.reckoned().counted().holds()) {
      body.wrapped(0, 0, body.width(), 3, "There is no plan yet to weigh against.", Tone.WARNING);
      return;
    }
    int half = body.width() >= 72 ? body.width() / 2 : body.width();
    boolean beside = half < body.width();
    int left = against(body.area(0, 0, half - 2, body.height()), model, job, beside);
    Canvas rest =
        beside
            ? body.area(half, 0, body.width() - half, body.height())
            : body.area(0, left, body.width(), Math.max(0, body.height() - left));
    int prices = prices(rest, model, job);
    int row = beside ? Math.max(left, prices) + 1 : left + prices;
    if (row >= body.height()) {
      String more = body.glyphs().cutMark() + " more in a larger window";
      body.fill(0, body.height() - 1, body.width(), 1, " ", Tone.PLAIN);
      body.text(0, body.height() - 1, more, Tone.FAINT);
    }
    remarks(body.area(0, row, body.width(), Math.max(0, body.height() - row)), model, job);
  }

  private static int against(Canvas area, Model model, OpenJob job, boolean beside) {
    UnitStyle units = model.settings().units();
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    area.text(0, 0, area.width(), columns("", "planned", "came out"), Tone.FAINT);
    int row =
        job.reckoned().counted().plan().isPresent()
            ? chain(area, units, job, job.reckoned().counted().plan().get())
            : pieces(area, units, job);
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
    Map<String, OptionalDouble> back = new LinkedHashMap<>();
    back.put("wire returned", in.wireReturnedG());
    back.put("clean scrap", in.cleanScrapG());
    back.put("soldered scrap", in.solderedScrapG());
    back.put("filings", in.filingsG());
    back.put("sweeps", in.sweepsG());
    for (Map.Entry<String, OptionalDouble> each : back.entrySet()) {
      // Where prices stand below and not beside, what was not weighed gives way to them.
      if (beside || each.getValue().isPresent()) {
        row = line(area, row, columns(each.getKey(), "", mass(each.getValue(), units)));
      }
    }
    Closing closing = closing(model, job);
    if (closing.unaccountedG().isPresent()) {
      row =
          line(
              area,
              row,
              columns("not accounted", "", units.mass(closing.unaccountedG().getAsDouble())));
    }
    return row;
  }

  private static int chain(Canvas area, UnitStyle units, OpenJob job, Plan plan) {
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    Pile links = job.state().piles().of("link");
    String length = length(in.lengthMm(), units);
    int row = line(area, 1, columns("length", units.length(plan.lengthMm()), length));
    row =
        line(area, row, columns("chain", units.mass(plan.massChainG()), mass(in.chainG(), units)));
    row = line(area, row, columns("links", "" + plan.links(), "" + links.atOrPast("checked")));
    row = line(area, row, columns("done again", "", "" + links.sentBack()));
    return line(
        area,
        row,
        columns("scrapped", "" + (plan.blanksToCut() - plan.links()), "" + links.scrapped()));
  }

  /** What is no chain: each kind of piece by itself. */
  private static int pieces(Canvas area, UnitStyle units, OpenJob job) {
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    int row = line(area, 1, columns("length", "", length(in.lengthMm(), units)));
    row = line(area, row, columns("weight", "", mass(in.chainG(), units)));
    int again = 0;
    int scrapped = 0;
    for (Map.Entry<String, StillToDo> kind : job.reckoned().left().entrySet()) {
      Pile pile = job.state().piles().of(kind.getKey());
      StillToDo left = kind.getValue();
      row = line(area, row, columns(kind.getKey(), "" + left.wanted(), "" + left.good()));
      again += pile.sentBack();
      scrapped += pile.scrapped();
    }
    row = line(area, row, columns("done again", "", "" + again));
    return line(area, row, columns("scrapped", "", "" + scrapped));
  }

  private static Closing closing(Model model, OpenJob job) {
    Optional<Routine> routine = model.shelf().routine(job.state().course().routine());
    return job.reckoned()
        .counted()
        .plan()
        .map(plan -> Closing.of(job.state(), plan, routine))
        .orElseGet(() -> Closing.of(job.state(), routine));
  }

  private static int prices(Canvas area, Model model, OpenJob job) {
    if (job.state().accounts().prices().isEmpty()) {
      return area.wrapped(
          0,
          0,
          area.width(),
          3,
          "p asks for your own prices; then the first chain and one made again stand here.",
          Tone.FAINT);
    }
    Closing closing = closing(model, job);
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

  private static void remarks(Canvas area, Model model, OpenJob job) {
    List<String> told = new ArrayList<>();
    boolean closed = job.state().course().closed();
    if (closed) {
      told.add(("Closed. " + job.state().course().nextTime()).strip());
    } else {
      NextTime.of(job, model.settings().units()).forEach(each -> told.add("Next time: " + each));
    }
    int own = told.size();
    told.addAll(fineness(model, job));
    int row = 0;
    for (int i = 0; i < told.size(); i++) {
      Tone tone = i >= own ? Tone.FAINT : closed ? Tone.STRONG : Tone.PLAIN;
      row +=
          area.wrapped(0, row, area.width(), Math.max(0, area.height() - row), told.get(i), tone);
    }
    Optional<String> limits = FinenessWord.limits(model.shelf().reference());
    if (limits.isPresent()) {
      area.wrapped(
          0, row, area.width(), Math.max(0, area.height() - row), limits.get(), Tone.FAINT);
    }
  }

  private static List<String> fineness(Model model, OpenJob job) {
    OptionalDouble weighed = job.state().accounts().weighedIn().chainG();
    return job.reckoned()
        .counted()
        .plan()
        .map(
            plan ->
                FinenessWord.of(
                    plan.wish().metal(),
                    weighed.orElse(plan.massChainG()),
                    model.shelf().reference()))
        .orElse(List.of());
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
