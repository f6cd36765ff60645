package linkwright.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import linkwright.coach.Clock;
import linkwright.coach.Model;
import linkwright.coach.NextTime;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.plan.FinenessWord;
import linkwright.plan.Plan;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.standing.Closing;
import linkwright.standing.Price;
import linkwright.standing.StillToDo;
import linkwright.text.Text;

/** Plan against what came of it, scrap by kind, the price first and again, what to do next time. */
final class WeighView {
  /** Rows that planned against actual takes with everything weighed. */
  private static final int ALL_ROWS = 16;

  private WeighView() {}

  static void draw(Canvas body, Model model, Screen.WeighIn screen) {
    if (screen.form().isPresent()) {
      FormView.draw(body, screen.form().get());
      return;
    }
    OpenJob job = model.job().orElseThrow();
    if (!job.standing().counted().holds()) {
      body.wrapped(0, 0, body.width(), 3, "There is no plan yet to weigh against.", Tone.WARNING);
      return;
    }
    if (body.width() >= 72) {
      sideBySide(body, model, job, screen.part());
    } else {
      oneByOne(body, model, job, screen.part());
    }
  }

  private static void sideBySide(Canvas body, Model model, OpenJob job, int part) {
    int half = body.width() / 2;
    int left = against(body.area(0, 0, half - 2, body.height()), model, job);
    int prices = prices(body.area(half, 0, body.width() - half, body.height()), model, job);
    int row = Math.max(left, prices) + 1;
    int room = Math.max(1, body.height() - Math.min(row, body.height() - 1));
    Canvas below = body.area(0, body.height() - room, body.width(), room);
    remarks(below, rows(model, job, body.width()), part, 0, 0);
  }

  /**
   * Where the two have no room beside each other: first what came of it, then the price, then all.
   */
  private static void oneByOne(Canvas body, Model model, OpenJob job, int part) {
    List<Row> rows = rows(model, job, body.width());
    int onePart = Math.max(1, body.height() - 1);
    int more = (rows.size() + onePart - 1) / onePart;
    int shown = Math.floorMod(part, 2 + more);
    Canvas page = body.area(0, 0, body.width(), onePart);
    if (shown == 0) {
      against(page, model, job);
    } else if (shown == 1) {
      prices(page, model, job);
    } else {
      remarks(body, rows, shown - 2, 2, 2 + more);
      return;
    }
    goesOn(body, shown, 2 + more);
  }

  private static void goesOn(Canvas area, int shown, int parts) {
    String more = "part " + (shown + 1) + " of " + parts + ": v goes on";
    area.right(area.height() - 1, more, Tone.FAINT);
  }

  private static int against(Canvas area, Model model, OpenJob job) {
    UnitStyle units = model.settings().units();
    Fact.WeighedIn in = job.state().accounts().weighedIn();
    area.text(0, 0, area.width(), columns("", "planned", "came out"), Tone.FAINT);
    int row =
        job.standing().counted().plan().isPresent()
            ? chain(area, units, job, job.standing().counted().plan().get())
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
      // In a low window what was not weighed gives way to what is not accounted for.
      if (area.height() >= ALL_ROWS || each.getValue().isPresent()) {
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
    for (Map.Entry<String, StillToDo> kind : job.standing().left().entrySet()) {
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
    Optional<Routine> routine = model.handbook().routine(job.state().course().routine());
    return job.standing()
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

  /** A sentence laid out in rows of one tone. */
  private record Row(String text, Tone tone) {}

  /** Draws one part of the rows; before and all say which part of the screen's parts that is. */
  private static void remarks(Canvas area, List<Row> rows, int part, int before, int all) {
    if (rows.isEmpty()) {
      return;
    }
    boolean whole = rows.size() <= area.height() && before == 0;
    int onePart = whole ? area.height() : Math.max(1, area.height() - 1);
    int parts = (rows.size() + onePart - 1) / onePart;
    int shown = Math.floorMod(part, parts);
    int from = shown * onePart;
    for (int i = from; i < Math.min(rows.size(), from + onePart); i++) {
      area.text(0, i - from, area.width(), rows.get(i).text(), rows.get(i).tone());
    }
    if (!whole) {
      goesOn(area, before + shown, Math.max(parts, all));
    }
  }

  private static List<Row> rows(Model model, OpenJob job, int width) {
    List<Row> rows = new ArrayList<>();
    if (job.state().course().closed()) {
      add(rows, ("Closed. " + job.state().course().nextTime()).strip(), Tone.STRONG, width);
    } else {
      NextTime.of(job, model.settings().units())
          .forEach(sentence -> add(rows, "Next time: " + sentence, Tone.PLAIN, width));
    }
    fineness(model, job).forEach(word -> add(rows, word, Tone.FAINT, width));
    FinenessWord.limits(model.handbook().reference())
        .ifPresent(limits -> add(rows, limits, Tone.FAINT, width));
    return rows;
  }

  private static void add(List<Row> rows, String sentence, Tone tone, int width) {
    Text.wrap(sentence, Math.max(2, width)).forEach(line -> rows.add(new Row(line, tone)));
  }

  private static List<String> fineness(Model model, OpenJob job) {
    OptionalDouble weighed = job.state().accounts().weighedIn().chainG();
    return job.standing()
        .counted()
        .plan()
        .map(
            plan ->
                FinenessWord.of(
                    plan.wish().metal(),
                    weighed.orElse(plan.massChainG()),
                    model.handbook().reference()))
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
    return Decimals.fixed(amount, 2) + (currency.isEmpty() ? "" : " " + currency);
  }
}
