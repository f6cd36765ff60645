package linkwright.coach.content;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A labelled value.
 *
 * @param label what it is
 * @param value how much, without its unit, or a word
 * @param unit the unit; empty for none
 * @param plusMinus its spread in the same unit; empty for none
 * @param source where it comes from, in a word; empty where that is plain
 * @param remark what else is to be said of it; empty for nothing
 * @param emphasis how much it is to be minded
 */
public record Row(
    String label,
    String value,
    String unit,
    String plusMinus,
    String source,
    String remark,
    Emphasis emphasis) {
  private static final Pattern FORECAST = Pattern.compile("(.*\\d) ± ([\\d.]+)( \\S+)?");

  /** A value with its unit in one text, such as {@code 14 mm}, {@code 181 ± 13 mm}, or a word. */
  public static Row of(String label, String amount) {
    Matcher forecast = FORECAST.matcher(amount);
    if (forecast.matches()) {
      String unit = forecast.group(3) == null ? "" : forecast.group(3).strip();
      return new Row(label, forecast.group(1), unit, forecast.group(2), "", "", Emphasis.PLAIN);
    }
    int gap = amount.indexOf(' ');
    boolean number = gap > 0 && Character.isDigit(amount.charAt(gap - 1));
    boolean clock = gap + 1 < amount.length() && Character.isDigit(amount.charAt(gap + 1));
    boolean unitOnly = number && !clock && amount.indexOf(' ', gap + 1) < 0;
    return unitOnly
        ? new Row(
            label, amount.substring(0, gap), amount.substring(gap + 1), "", "", "", Emphasis.PLAIN)
        : new Row(label, amount, "", "", "", "", Emphasis.PLAIN);
  }

  /** The same row, minded so much. */
  public Row with(Emphasis other) {
    return new Row(label, value, unit, plusMinus, source, remark, other);
  }

  /** The same row with where it comes from. */
  public Row from(String word) {
    return new Row(label, value, unit, plusMinus, word, remark, emphasis);
  }

  /** The same row with a remark. */
  public Row remark(String sentence) {
    return new Row(label, value, unit, plusMinus, source, sentence, emphasis);
  }

  /** The value as it is read: number, spread and unit. */
  public String amount() {
    String spread = plusMinus.isEmpty() ? "" : " ± " + plusMinus;
    return value + spread + (unit.isEmpty() ? "" : " " + unit);
  }
}
