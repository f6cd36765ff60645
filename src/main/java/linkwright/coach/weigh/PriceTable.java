package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.job.Accounts;
import linkwright.quantity.Decimals;
import linkwright.standing.Closing;
import linkwright.standing.Price;

/** The price line by line: this chain, and the same without its trials. */
final class PriceTable {
  private PriceTable() {}

  static Part of(Accounts accounts, Closing closing) {
    if (accounts.prices().isEmpty()) {
      return Prose.aside(
          "{do:price} asks for your prices; then the price of this chain stands here, with what its"
              + " trials cost and without.");
    }
    String currency = accounts.currency();
    Map<String, Double> again = new TreeMap<>();
    closing.again().lines().forEach(line -> again.put(line.what(), line.money()));
    List<Table.Line> lines = new ArrayList<>();
    for (Price.Line line : closing.first().lines()) {
      double second = again.getOrDefault(line.what(), 0.0);
      lines.add(Table.Line.of(line.what(), money(line.money(), currency), money(second, currency)));
    }
    lines.add(
        Table.Line.of(
                "price",
                money(closing.first().total(), currency),
                money(closing.again().total(), currency))
            .with(Emphasis.MAIN));
    List<Table.Column> columns =
        List.of(
            Table.Column.words(""),
            Table.Column.numbers("this one"),
            Table.Column.numbers("without trials"));
    return new Table(columns, lines, -1);
  }

  private static String money(double amount, String currency) {
    return Decimals.money(amount, currency);
  }
}
