package linkwright.terminal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a terminal answered when it was asked what it can do. Nothing is used that it did not say.
 *
 * @param speaks whether it answered at all, and so reads control strings without showing them
 * @param backgroundRgb its background, 0xRRGGBB; empty where it did not tell
 * @param synchronizes whether a picture can be held back until it is whole (private mode 2026)
 * @param notices whether it shows notices on the desktop when asked by OSC 99
 * @param copies whether it takes text for pasting elsewhere by OSC 52
 * @param name its name and version as it told them; empty for none
 */
record TerminalAnswers(
    boolean speaks,
    Optional<Integer> backgroundRgb,
    boolean synchronizes,
    boolean notices,
    boolean copies,
    String name) {
  /** One that was not asked, or said nothing. */
  static final TerminalAnswers NONE =
      new TerminalAnswers(false, Optional.empty(), false, false, false, "");

  /**
   * "Primary device attributes" (ECMA-48, DA): every terminal that reads control sequences answers.
   */
  static final String ASK_AT_ALL = "\u001b[c";

  /**
   * Background (xterm, OSC 11), synchronized output (DECRQM 2026), name (XTVERSION), notices, and
   * whether text is taken for pasting (XTGETTCAP of "Ms", in hexadecimal).
   */
  static final String ASK_MORE =
      "\u001b]11;?\u001b\\"
          + "\u001b[?2026$p"
          + "\u001b[>0q"
          + "\u001b]99;i=linkwright:p=?;\u001b\\"
          + "\u001bP+q4d73\u001b\\";

  private static final Pattern BACKGROUND =
      Pattern.compile("11;rgba?:([0-9a-fA-F]{1,4})/([0-9a-fA-F]{1,4})/([0-9a-fA-F]{1,4}).*");
  private static final Pattern MODE = Pattern.compile("\\?2026;([0-4])\\$y");

  /** Takes text for pasting, among the attributes that a terminal lists (DA with 52). */
  private static final Pattern TAKES_COPIES = Pattern.compile("\\?[0-9;]*;52(;[0-9;]*)?c");

  /** Told by name: it hands copies on as far as its own settings let it. */
  private static final List<String> COPY_BY_NAME = List.of("tmux", "wezterm", "iterm2", "ghostty");

  /** Told by name: they follow links that are written behind words (OSC 8). */
  private static final List<String> FOLLOW_BY_NAME =
      List.of("foot", "wezterm", "iterm2", "ghostty", "kitty", "vte", "konsole", "contour", "tmux");

  /** The longest text that is handed on, bytes as written; xterm takes as many. */
  private static final int MOST_COPIED = 99_000;

  /** Whether an answer is the one to {@link #ASK_AT_ALL}. */
  static boolean isAnyAnswer(String answer) {
    return answer.startsWith("?") && answer.endsWith("c");
  }

  /** The same with one more answer. */
  TerminalAnswers and(String answer) {
    Matcher background = BACKGROUND.matcher(answer);
    if (background.matches()) {
      int rgb = channel(background, 1) << 16 | channel(background, 2) << 8 | channel(background, 3);
      return new TerminalAnswers(speaks, Optional.of(rgb), synchronizes, notices, copies, name);
    }
    Matcher mode = MODE.matcher(answer);
    if (mode.matches()) {
      boolean known = mode.group(1).equals("1") || mode.group(1).equals("2");
      return new TerminalAnswers(speaks, backgroundRgb, known, notices, copies, name);
    }
    if (answer.startsWith("99;") && answer.contains("p=?")) {
      return new TerminalAnswers(speaks, backgroundRgb, synchronizes, true, copies, name);
    }
    if (answer.toLowerCase(Locale.ROOT).startsWith("1+r4d73")) {
      return new TerminalAnswers(speaks, backgroundRgb, synchronizes, notices, true, name);
    }
    if (answer.startsWith(">|")) {
      String told = answer.substring(2);
      boolean takes = copies || isOneOf(COPY_BY_NAME, told);
      return new TerminalAnswers(speaks, backgroundRgb, synchronizes, notices, takes, told);
    }
    boolean takes = copies || TAKES_COPIES.matcher(answer).matches();
    return isAnyAnswer(answer)
        ? new TerminalAnswers(true, backgroundRgb, synchronizes, notices, takes, name)
        : this;
  }

  private static boolean isOneOf(List<String> names, String told) {
    return names.stream().anyMatch(told.toLowerCase(Locale.ROOT)::startsWith);
  }

  /** Whether it follows links that are written behind words. */
  boolean follows() {
    return isOneOf(FOLLOW_BY_NAME, name);
  }

  /** The control string that hands a text on for pasting; empty where it would go nowhere. */
  Optional<String> copy(String text) {
    String coded = Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    return copies && coded.length() <= MOST_COPIED
        ? Optional.of("\u001b]52;c;" + coded + "\u001b\\")
        : Optional.empty();
  }

  /** What it answered, for whoever wonders. */
  String sentence() {
    if (!speaks) {
      return "It answers nothing when it is asked what it can do, so no more is used of it than"
          + " every terminal has.";
    }
    List<String> says = new ArrayList<>();
    if (!name.isEmpty()) {
      says.add("it is " + name);
    }
    backgroundRgb.ifPresent(
        rgb -> says.add(String.format(Locale.ROOT, "its background is #%06x", rgb)));
    if (synchronizes) {
      says.add("it holds a picture back until it is whole");
    }
    if (notices) {
      says.add("it shows notices on the desktop");
    }
    if (copies) {
      says.add("it takes text for pasting");
    }
    if (follows()) {
      says.add("it follows links");
    }
    return says.isEmpty()
        ? "It answers when it is asked, and tells nothing of itself."
        : "It answers: " + String.join("; ", says) + ".";
  }

  /** The control string that shows a notice; empty where the bell has to do. */
  Optional<String> notice(String sentence) {
    String safe = sentence.replaceAll("[\\p{Cntrl};]", " ");
    String known = name.toLowerCase(Locale.ROOT);
    if (notices) {
      return Optional.of("\u001b]99;i=linkwright;" + safe + "\u001b\\");
    }
    if (known.startsWith("wezterm") || known.startsWith("iterm2") || known.startsWith("ghostty")) {
      return Optional.of("\u001b]9;" + safe + "\u001b\\");
    }
    return known.startsWith("foot") || known.startsWith("rxvt")
        ? Optional.of("\u001b]777;notify;Linkwright;" + safe + "\u001b\\")
        : Optional.empty();
  }

  /** The control string that names the window; empty where it might be shown as text. */
  Optional<String> title(String words) {
    return speaks
        ? Optional.of("\u001b]2;" + words.replaceAll("\\p{Cntrl}", " ") + "\u001b\\")
        : Optional.empty();
  }

  /** One to four hexadecimal digits, scaled to 0 to 255. */
  private static int channel(Matcher found, int group) {
    String digits = found.group(group);
    int most = (1 << (4 * digits.length())) - 1;
    return Math.round(255f * Integer.parseInt(digits, 16) / most);
  }
}
