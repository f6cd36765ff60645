package linkwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Someone who works a job to its end by what she is told and nothing else. Keeps what she heard and
 * what she typed.
 */
final class Jeweller implements Commandline.Typist {
  private static final Pattern TO_CUT = Pattern.compile("(\\d+) to cut");
  private static final Pattern EMPTY_LINE = Pattern.compile("(?m)^An empty line: (.*)\\.$");
  private static final Pattern WAITING = Pattern.compile("(?m)^Waiting: (\\d+)\\.$");
  private static final Pattern PIECES = Pattern.compile("(?m)^(\\w+)s (\\w+): \\d+ of \\d+\\.$");
  private static final int MOST_LINES = 600;

  private final List<String> heard = new ArrayList<>();
  private final List<String> typed = new ArrayList<>();
  private final List<String> first;
  private final List<String> last;
  private final int stopAfter;
  private final Runnable patience;

  /**
   * A jeweller.
   *
   * @param first what she types before she goes to the bench
   * @param last what she types when the bench is done
   * @param stopAfter after so many lines she is gone
   * @param patience lets half an hour go by
   */
  Jeweller(List<String> first, List<String> last, int stopAfter, Runnable patience) {
    this.patience = patience;
    this.first = new ArrayList<>(first);
    this.last = new ArrayList<>(last);
    this.stopAfter = stopAfter;
  }

  /** A fault of hers ends the walk, and is told by the lines she heard last. */
  @Override
  public Optional<String> apply(String told) {
    heard.add(told);
    if (typed.size() >= stopAfter) {
      return Optional.empty();
    }
    if (typed.size() > MOST_LINES) {
      return Optional.empty();
    }
    String line = line(told);
    typed.add(line);
    return Optional.of(line);
  }

  private String line(String told) {
    if (!first.isEmpty()) {
      return first.remove(0);
    }
    boolean looks = told.contains("“looked”: looked, done");
    if (looks || told.contains("“looked” again if it is.")) {
      return "looked";
    }
    if (told.contains("It ends by its time.") && !done()) {
      patience.run();
      return "";
    }
    if (done()) {
      return last.isEmpty() ? "quit" : last.remove(0);
    }
    if (told.contains("every flame out, gas shut?")) {
      return "shut";
    }
    if (told.contains("what do you see?")) {
      return "1";
    }
    return count();
  }

  private boolean done() {
    return heard.stream()
        .anyMatch(each -> each.contains("Next: weigh in") || each.contains("Weigh in meanwhile"));
  }

  /** What an empty line does is told when it changes, and so are the piles. */
  private String count() {
    String common = lastOf(EMPTY_LINE).map(match -> match.group(1)).orElse("");
    if (common.equals("one cut") || common.equals("one begun")) {
      Matcher cut = TO_CUT.matcher(own());
      return cut.find() ? cut.group(1) : "";
    }
    if (!common.equals("one done")) {
      return "";
    }
    boolean joints =
        lastOf(PIECES)
            .filter(match -> match.group(1).equals("Link") && match.group(2).equals("checked"))
            .isPresent();
    int there = lastOf(WAITING).map(match -> Integer.parseInt(match.group(1))).orElse(0);
    return joints && there > 3 && !typed.contains("redo 2") ? "redo 2" : "all";
  }

  /** The part of "still to do" about the piece that is cut here. */
  private String own() {
    String piece =
        lastOf(PIECES).filter(match -> match.group(1).equals("Ring")).isPresent() ? "ring" : "link";
    String all = heard();
    String still = all.substring(Math.max(0, all.lastIndexOf("Still to do:"))).split("\n", 2)[0];
    for (String part : still.split(";", -1)) {
      if (part.contains(" " + piece)) {
        return part;
      }
    }
    return "";
  }

  private Optional<MatchResult> lastOf(Pattern pattern) {
    return pattern.matcher(heard()).results().reduce((before, after) -> after);
  }

  String heard() {
    return String.join("", heard);
  }

  List<String> typed() {
    return List.copyOf(typed);
  }
}
