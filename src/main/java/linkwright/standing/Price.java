package linkwright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.job.PriceList;

/**
 * What a chain costs and sells for, line by line.
 *
 * <p>Price = (metal used − scrap and filings credit + solder + hours × rate + overhead + findings)
 * × (1 + margin); assay, carriage and tax follow as lines of their own, tax on all before it.
 * Common practice, no source; every figure is the user's own.
 *
 * @param lines the lines in order
 * @param total the last sum, in the user's money
 */
public record Price(List<Line> lines, double total) {
  /**
   * One line.
   *
   * @param what what it is for
   * @param money how much, negative for a credit
   */
  public record Line(String what, double money) {}

  /**
   * What went into the chain.
   *
   * @param metalG metal that is gone from the stock: weighed out less wire returned, g, 0 or more
   * @param scrapG clean and soldered scrap to be credited, g
   * @param filingsG filings and sweeps to be credited, g
   * @param solderG solder, g
   * @param hours hours at the bench, h
   */
  public record Used(double metalG, double scrapG, double filingsG, double solderG, double hours) {}

  /** Puts its lines and its total among the figures that stay, under that name. */
  void into(String name, Map<String, Double> figures) {
    figures.put(name, total);
    lines.forEach(line -> figures.put(name + ": " + line.what(), line.money()));
  }

  /** The price as it stays under that name. */
  static Price kept(String name, Map<String, Double> figures) {
    List<Line> lines = new ArrayList<>();
    figures.forEach(
        (key, money) -> {
          if (key.startsWith(name + ": ")) {
            lines.add(new Line(key.substring(name.length() + 2), money));
          }
        });
    return new Price(List.copyOf(lines), figures.getOrDefault(name, 0.0));
  }

  /** The price of what was used, by the user's figures. */
  public static Price of(Used used, PriceList prices) {
    double perGram = prices.of(PriceList.METAL_PER_G);
    double labour = used.hours() * prices.of(PriceList.HOUR);
    List<Line> lines = new ArrayList<>();
    add(lines, "metal", used.metalG() * perGram);
    add(lines, "scrap credited", -used.scrapG() * perGram * prices.of(PriceList.SCRAP_CREDIT));
    add(
        lines,
        "filings credited",
        -used.filingsG() * perGram * prices.of(PriceList.FILINGS_CREDIT));
    add(lines, "solder", used.solderG() * prices.of(PriceList.SOLDER_PER_G));
    add(lines, "work", labour);
    add(lines, "overhead", labour * prices.of(PriceList.OVERHEAD));
    add(lines, "findings", prices.of(PriceList.FINDINGS));
    add(lines, "margin", sum(lines) * prices.of(PriceList.MARGIN));
    add(lines, "assay", prices.of(PriceList.ASSAY));
    add(lines, "carriage", prices.of(PriceList.CARRIAGE));
    add(lines, "tax", sum(lines) * prices.of(PriceList.TAX));
    return new Price(List.copyOf(lines), sum(lines));
  }

  private static void add(List<Line> lines, String what, double money) {
    if (money != 0) {
      lines.add(new Line(what, money));
    }
  }

  private static double sum(List<Line> lines) {
    return lines.stream().mapToDouble(Line::money).sum();
  }
}
