package linkwright.coach.hands;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.hands.Hands;
import linkwright.hands.StageResult;
import linkwright.hands.TaughtJob;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.TradeWords;
import linkwright.routine.Wording;
import linkwright.standing.Handbook;
import linkwright.standing.PlanDefaults;
import linkwright.standing.again.HandsInMetal;

/**
 * What the books taught: bending by metal, losses and redos by stage, time by stage, the pickle,
 * and the jobs it comes from.
 *
 * @param handbook with what was taught
 * @param settings how amounts are shown
 */
public record HandsContent(Handbook handbook, Settings settings) {
  HandsContent(Model model) {
    this(model.handbook(), model.settings());
  }

  /** All of it; at is the job that is looked at, counted from the last, −1 for none. */
  public List<Part> parts(int at) {
    Hands hands = handbook.hands();
    List<Part> parts = new ArrayList<>();
    if (hands.jobs().isEmpty()) {
      parts.add(
          Prose.says(
              "No book that can be read has taught anything of these hands yet: the first job"
                  + " will."));
      return parts;
    }
    parts.add(jobs(hands, at));
    List<HandsInMetal> metals = HandsInMetal.of(handbook);
    if (!metals.isEmpty()) {
      parts.add(bending(metals));
    }
    stages(hands, parts);
    losses(hands, parts);
    times(hands, parts);
    hands
        .pickleSeconds()
        .ifPresent(
            seconds ->
                parts.add(
                    Prose.says(
                        "Pieces were clean in the pickle after "
                            + Clock.spoken(seconds)
                            + ", in the middle of all.")));
    return parts;
  }

  private Table jobs(Hands hands, int at) {
    List<Table.Line> lines = new ArrayList<>();
    for (int i = hands.jobs().size() - 1; i >= 0; i--) {
      TaughtJob job = hands.jobs().get(i);
      boolean out = hands.leftOut().contains(job.slug());
      String day = DateTimeFormatter.ISO_LOCAL_DATE.withZone(settings.zone()).format(job.last());
      lines.add(
          Table.Line.of(job.name(), day, out ? "no" : "yes", job.says())
              .with(out ? Emphasis.ASIDE : Emphasis.PLAIN));
    }
    return new Table(
        List.of(
            Table.Column.words("job"),
            Table.Column.words("last"),
            Table.Column.words("used"),
            Table.Column.words("what it taught")),
        lines,
        at);
  }

  private Table bending(List<HandsInMetal> metals) {
    UnitStyle units = settings.units();
    List<Table.Line> lines = new ArrayList<>();
    for (HandsInMetal one : metals) {
      lines.add(
          Table.Line.of(
              one.metal().name() + ", " + one.temper().word(),
              units.stress(one.stressMpa(), one.stressSpreadMpa()),
              Decimals.ofHundred(one.clearanceShare(), 1)
                  + " ± "
                  + Decimals.ofHundred(one.clearanceSpread(), 1)
                  + " %",
              units.length(one.lostMm()) + " ± " + units.length(one.lostSpreadMm()),
              Decimals.fixed(one.turnDeg(), 0)
                  + " ± "
                  + Decimals.fixed(one.turnSpreadDeg(), 0)
                  + "°",
              Decimals.ofHundred(one.scatterShare(), 0) + " % of the usual"));
    }
    return new Table(
        List.of(
            Table.Column.words("bending"),
            Table.Column.numbers("gives way at"),
            Table.Column.numbers("stands off"),
            Table.Column.numbers("lost of a blank"),
            Table.Column.numbers("eyes turned further by"),
            Table.Column.numbers("pieces differ")),
        lines,
        -1);
  }

  private void losses(Hands hands, List<Part> parts) {
    for (PieceKind kind : List.of(PieceKind.LINK, PieceKind.RING)) {
      hands
          .lossShare(kind)
          .ifPresent(
              share ->
                  parts.add(
                      Prose.says(
                          "Of "
                              + kind
                              + "s "
                              + Decimals.ofHundred(share, 1)
                              + " % were scrapped"
                              + hands.redoShare(kind).stream()
                                  .mapToObj(
                                      again ->
                                          ", and of a hundred tries "
                                              + Decimals.ofHundred(again, 0)
                                              + " went back to be redone")
                                  .findFirst()
                                  .orElse("")
                              + " over all jobs that count, the last ones most.")));
    }
    if (hands.lossShare(PieceKind.LINK).isPresent()) {
      parts.add(
          Prose.says(
              "A new plan reckons with "
                  + PlanDefaults.usualLoss(handbook)
                  + " of links scrapped: these jobs and "
                  + handbook.own().loss().stream()
                      .mapToObj(own -> "your bench's " + Decimals.ofHundred(own, 1) + " %")
                      .findFirst()
                      .orElse("what is usual")
                  + ", together."));
    }
  }

  private static void stages(Hands hands, List<Part> parts) {
    List<Table.Line> lines = new ArrayList<>();
    hands
        .stages()
        .forEach(
            (stage, result) -> {
              if (result.sentBack() + result.scrapped() > 0) {
                lines.add(
                    Table.Line.of(
                        stage,
                        Integer.toString(result.through()),
                        Integer.toString(result.sentBack()),
                        Integer.toString(result.scrapped()),
                        reasons(result)));
              }
            });
    if (!lines.isEmpty()) {
      parts.add(
          new Table(
              List.of(
                  Table.Column.words("stage"),
                  Table.Column.numbers("through"),
                  Table.Column.numbers("redo"),
                  Table.Column.numbers("scrapped"),
                  Table.Column.words("most often")),
              lines,
              -1));
    }
  }

  private static String reasons(StageResult result) {
    return java.util.stream.Stream.concat(
            result.again().entrySet().stream(), result.lost().entrySet().stream())
        .sorted(
            Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey)
        .distinct()
        .limit(2)
        .reduce((one, other) -> one + ", " + other)
        .orElse("");
  }

  /** A step by its title, as some routine has it; a stage is its own name. */
  private String called(String what) {
    return handbook.routines().stream()
        .flatMap(routine -> routine.steps().stream())
        .filter(step -> step.id().word().equals(what))
        .map(step -> Wording.fill(step.title(), Map.of(), settings.units(), words()))
        .findFirst()
        .orElse(what);
  }

  private TradeWords words() {
    return settings.british() ? TradeWords.BRITISH : TradeWords.AMERICAN;
  }

  private void times(Hands hands, List<Part> parts) {
    List<Table.Line> lines = new ArrayList<>();
    hands
        .secondsEach()
        .forEach(
            (what, each) -> {
              double least = each.stream().mapToDouble(Double::doubleValue).min().orElse(0);
              double most = each.stream().mapToDouble(Double::doubleValue).max().orElse(0);
              lines.add(
                  Table.Line.of(
                      called(what),
                      Clock.spoken(hands.secondsEach(what).orElse(0)),
                      each.size() == 1
                          ? "one job only"
                          : Clock.spoken(least) + " to " + Clock.spoken(most)));
            });
    if (!lines.isEmpty()) {
      parts.add(
          new Table(
              List.of(
                  Table.Column.words("time for one"),
                  Table.Column.numbers("now"),
                  Table.Column.numbers("in the jobs")),
              lines,
              -1));
    }
  }
}
