package linkwright.coach.form;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.job.PriceList;
import linkwright.quantity.Decimals;
import linkwright.quantity.Read;
import linkwright.quantity.Share;

/** The user's price figures as they are typed and shown. */
public final class PriceWords {
  private PriceWords() {}

  public static boolean isShare(String name) {
    return PriceList.isShare(name);
  }

  public static String label(String name) {
    return name.equals(PriceList.HOUR)
        ? "an hour"
        : name.replace("-per-g", ", a gram").replace('-', ' ');
  }

  public static String hint(String name) {
    return switch (name) {
      case PriceList.METAL_PER_G -> "what you pay for a gram of the metal, 1.10";
      case PriceList.SCRAP_CREDIT -> "what the refiner credits of it, 90 %";
      case PriceList.FILINGS_CREDIT -> "what the refiner credits of filings and sweeps, 70 %";
      case PriceList.OVERHEAD -> "on your hours, 25 %";
      case PriceList.MARGIN -> "on the whole, 40 %";
      case PriceList.TAX -> "on the price, 20 %";
      case PriceList.HOUR -> "your own rate, 28";
      default -> "an amount of money, 12.50; empty: none";
    };
  }

  /** What a figure is and what it changes. */
  public static String help(String name) {
    return switch (name) {
      case PriceList.METAL_PER_G ->
          "For one gram. The chain's metal and its scrap are priced by it.";
      case PriceList.SCRAP_CREDIT, PriceList.FILINGS_CREDIT ->
          "The share of the metal's price that comes back for it. It lowers the price.";
      case PriceList.HOUR -> "For one hour. The hours that the books counted are priced by it.";
      case PriceList.OVERHEAD -> "Rent, gas, tools: a share of the work, added to it.";
      case PriceList.MARGIN -> "A share of all costs, added to them.";
      case PriceList.TAX -> "A share of the price, added last.";
      default -> "An amount that is added to the price as it stands.";
    };
  }

  /** A number without needless zeros. */
  public static String plain(double value) {
    return Decimals.upTo(value, 4);
  }

  public static Map<String, String> troubles(Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (String name : PriceList.NAMES) {
      if (!form.text(name).isEmpty()) {
        read(name, form.text(name)).problem().ifPresent(sentence -> troubles.put(name, sentence));
      }
    }
    return troubles;
  }

  public static Map<String, Double> prices(Form form) {
    Map<String, Double> prices = new LinkedHashMap<>();
    for (String name : PriceList.NAMES) {
      if (!form.text(name).isEmpty()) {
        read(name, form.text(name)).found().ifPresent(value -> prices.put(name, value));
      }
    }
    return prices;
  }

  /** 38 would be thirty-eight times the whole; whoever means that writes 3800 %. */
  private static Read<Double> believable(String text, double value) {
    return value > 1 && !text.contains("%")
        ? Read.bad("“" + text + "” is a share of the whole: write it as " + text.strip() + " %.")
        : Read.good(value);
  }

  private static Read<Double> read(String name, String text) {
    if (isShare(name)) {
      return Share.readAny(text).map(Share::value).flatMap(value -> believable(text, value));
    }
    return text.matches("[0-9]{1,9}([.,][0-9]{1,4})?")
        ? Read.good(Decimals.read(text).orElseThrow())
        : Read.bad("“" + text + "” is not an amount of money: write it as 12.50.");
  }
}
