package linkwright.link;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;

/** What is wrong with a pattern whatever its wire: for the reader of pattern files. */
public final class PatternCheck {
  private PatternCheck() {}

  /**
   * One thing that is wrong.
   *
   * @param bit its place in {@link Pattern#path()}, from 0; empty where it is the pattern's
   * @param wrong what is wrong, without a full stop
   * @param expected what would be right, without a full stop
   */
  public record PatternFault(OptionalInt bit, String wrong, String expected) {
    /** Both halves as one sentence. */
    public String sentence() {
      return wrong + ": " + expected + ".";
    }
  }

  /** Everything that is wrong with a pattern, in the order of its path; empty when it is sound. */
  public static List<PatternFault> of(Pattern pattern) {
    List<PatternFault> findings = new ArrayList<>();
    if (pattern.path().isEmpty()) {
      findings.add(whole("The pattern has no runs and no bends", "write its path from the tip"));
      return List.copyOf(findings);
    }
    formers(pattern, findings);
    for (int at = 0; at < pattern.path().size(); at++) {
      PatternPart bit = pattern.path().get(at);
      if (bit instanceof Bend bend) {
        bend(pattern, at, bend, findings);
      } else if (bit instanceof Run run) {
        run(at, run, findings);
      }
    }
    rest(pattern, findings);
    eyes(pattern, findings);
    joints(pattern, findings);
    loop(pattern, findings);
    return List.copyOf(findings);
  }

  private static void formers(Pattern pattern, List<PatternFault> findings) {
    pattern
        .formersMm()
        .forEach(
            (name, mm) -> {
              if (!(mm > 0 && Double.isFinite(mm))) {
                findings.add(
                    whole(
                        "The former \"" + name + "\" is " + Sizes.mm(mm),
                        "an inside diameter of more than 0 mm"));
              }
            });
  }

  private static void bend(Pattern pattern, int at, Bend bend, List<PatternFault> findings) {
    named(pattern, at, bend.over(), findings);
    bend.to().ifPresent(name -> named(pattern, at, name, findings));
    if (!(bend.turnDeg() > 0 && bend.turnDeg() <= 3600)) {
      findings.add(
          bit(
              at,
              "The bend turns " + Sizes.plain(bend.turnDeg()) + " degrees",
              "more than 0, at most 3600 (ten turns); the side says to which hand"));
    }
  }

  private static void named(Pattern pattern, int at, String name, List<PatternFault> findings) {
    if (!pattern.formersMm().containsKey(name)) {
      findings.add(
          bit(
              at,
              "There is no former \"" + name + "\"",
              "one of the pattern's formers, "
                  + String.join(", ", new TreeSet<>(pattern.formersMm().keySet()))));
    }
  }

  private static void run(int at, Run run, List<PatternFault> findings) {
    if (run.mm().isPresent()) {
      double mm = run.mm().getAsDouble();
      if (!(mm > 0 && Double.isFinite(mm))) {
        findings.add(bit(at, "The run is " + Sizes.mm(mm) + " long", "a length of more than 0 mm"));
      }
    }
  }

  private static void rest(Pattern pattern, List<PatternFault> findings) {
    int rests = 0;
    int copies = 0;
    for (PatternPart bit : pattern.path()) {
      if (bit instanceof Run run) {
        rests += run.isRest() ? 1 : 0;
        copies += run.asRest() ? 1 : 0;
      }
    }
    boolean formersDecide = pattern.closed() && rests == 0 && copies == 0;
    if (rests != 1 && !formersDecide) {
      findings.add(
          whole(
              "The path has " + (rests == 0 ? "no" : String.valueOf(rests)) + " \"run: rest\"",
              "exactly one, so that the blank decides its length; repeat it as \"run: as rest\""));
    }
  }

  private static void eyes(Pattern pattern, List<PatternFault> findings) {
    int eyes = 0;
    for (PatternPart bit : pattern.path()) {
      eyes += bit instanceof Bend bend && bend.eye() ? 1 : 0;
    }
    if (pattern.isRing()) {
      return;
    }
    int wanted = pattern.other() == OtherHalf.NONE ? 2 : 1;
    if (eyes != wanted) {
      findings.add(
          whole(
              "The path has "
                  + (eyes == 0 ? "no bend" : eyes == 1 ? "1 bend" : eyes + " bends")
                  + " with \"eye: true\"",
              wanted == 2
                  ? "two, one at each end, to know how the link is pulled"
                  : "one in the half, which gives one at each end of the link"));
    }
  }

  /** A loop comes back to its own heading: whole turns, or none at all for an eight. */
  private static void loop(Pattern pattern, List<PatternFault> findings) {
    if (!pattern.closed()) {
      return;
    }
    double turnDeg = 0;
    for (PatternPart bit : TipToTip.whole(pattern)) {
      if (bit instanceof Bend bend) {
        turnDeg += bend.side().sign() * bend.turnDeg();
      }
    }
    double off = Math.abs(turnDeg - 360 * Math.rint(turnDeg / 360));
    if (off > 0.01) {
      findings.add(
          whole(
              "The pattern is closed, yet its bends come to " + Sizes.plain(turnDeg) + " degrees",
              "bends that come to a whole turn, so that the tips face each other"));
    }
  }

  private static void joints(Pattern pattern, List<PatternFault> findings) {
    int ofTips = 0;
    for (Joint joint : pattern.joints()) {
      ofTips += joint == Joint.CURL_TO_BODY ? 0 : joint == Joint.TIP_TO_TIP ? 2 : 1;
    }
    if (ofTips > 2) {
      findings.add(whole("The joints use more tips than a wire has", "two tips, one joint each"));
    }
    if (pattern.closed() && !pattern.joints().contains(Joint.TIP_TO_TIP)) {
      findings.add(
          whole("The pattern is closed, yet no joint closes it", "a joint \"tip to tip\""));
    }
  }

  private static PatternFault whole(String wrong, String expected) {
    return new PatternFault(OptionalInt.empty(), wrong, expected);
  }

  private static PatternFault bit(int at, String wrong, String expected) {
    return new PatternFault(OptionalInt.of(at), wrong, expected);
  }
}
