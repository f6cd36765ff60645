package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.drawn.BendContent;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.LaidOut;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.InWait;
import linkwright.job.Pile;
import linkwright.job.Strikes;
import linkwright.job.TimerRun;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Caution;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Remedy;
import linkwright.routine.RoutinePart;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;
import linkwright.standing.sizes.SizeAtBench;

/** A step that is open: its count or wait as the figure, its piles, then do, look for, mind. */
final class StepContent {
  /** How many steps ahead are named. */
  private static final int AHEAD = 3;

  private StepContent() {}

  static List<Part> of(Model model, BenchHeld held, AtBench at) {
    Optional<List<Part>> drawn = DrawnContent.of(model, held, at);
    if (drawn.isPresent()) {
      return drawn.get();
    }
    List<Part> parts = new ArrayList<>();
    parts.add(new Prose(Prose.Kind.HEAD, JobWords.fill(at.step().title(), model)));
    if (at.counts()) {
      parts.add(new Beside(List.of(figure(model, at)), List.of(new Rows(piles(model, held, at)))));
    } else {
      // Its own wait stands big, whatever else is due sooner.
      at.ownTimer(model)
          .map(own -> BenchContent.figure(model, own, ": due"))
          .or(() -> BenchContent.next(model))
          .ifPresent(parts::add);
    }
    held.remedy().ifPresent(remedy -> parts.addAll(remedy(model, remedy)));
    texts(parts, model, at);
    return parts;
  }

  private static Figure figure(Model model, AtBench at) {
    Optional<TimerRun> own = at.ownTimer(model);
    if (own.isPresent()) {
      return BenchContent.figure(model, own.get(), ": due");
    }
    String number = came(at) + "/" + wanted(model, at);
    return new Figure(number, at.counted(2) + " " + at.stage(), Emphasis.NOW);
  }

  static int wanted(Model model, AtBench at) {
    Optional<StillToDo> left = at.left(model.job().orElseThrow());
    int wanted = left.map(StillToDo::wanted).orElse(0);
    if (at.begins() && left.isPresent()) {
      wanted = came(at) + left.get().toCut().orElse(0);
    }
    return Math.max(wanted, came(at));
  }

  /** What goes back to a later stage came through here all the same. */
  private static int came(AtBench at) {
    return at.pile().cameThrough(at.stage());
  }

  private static List<Row> piles(Model model, BenchHeld held, AtBench at) {
    List<Row> rows = new ArrayList<>();
    first(model, held, at).ifPresent(row -> rows.add(row.with(Emphasis.MAIN)));
    if (!at.begins()) {
      rows.add(Row.of("waiting", "" + at.waiting()).remark(others(model, at)));
      rows.add(Row.of("redo", "" + at.redo()).remark(reasons(model, at)));
    }
    inWaits(model, at).ifPresent(rows::add);
    rows.add(Row.of("through", "" + came(at)));
    at.left(model.job().orElseThrow())
        .ifPresent(
            left -> {
              String over = left.over() > 0 ? ", " + left.over() + " over" : "";
              rows.add(Row.of("good", left.goodForChain() + " of " + left.wanted() + over));
            });
    rows.add(Row.of("scrap", "" + at.pile().scrapped()));
    return rows;
  }

  /** What waits here of the sizes that are not counted now; empty if nothing does. */
  private static String others(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    return at.begins() || at.together()
        ? ""
        : SizeAtBench.choices(job.state(), job.standing(), at.piece(), at.stage()).stream()
            .filter(size -> !size.equals(at.size()))
            .map(size -> waiting(job.state().piles().of(at.piece(), size), at, size))
            .collect(Collectors.joining(", "));
  }

  private static String waiting(Pile pile, AtBench at, String size) {
    int waits = pile.waitingFor(at.stage()) + pile.redoAt(at.stage());
    return waits + " " + (size.isEmpty() ? "of no said size" : size) + " besides";
  }

  private static Optional<Row> first(Model model, BenchHeld held, AtBench at) {
    if (!held.digits().isEmpty()) {
      return Optional.of(Row.of("how many", held.digits()));
    }
    if (held.ask() instanceof BenchAsk.Sure sure) {
      return Optional.of(Row.of("how many", sure.count() + "?"));
    }
    if (at.begins()) {
      return each(model, at);
    }
    if (at.inHand() > 0) {
      return Optional.of(
          Row.of("in hand", at.inHand() + (at.fromRedo() ? ", from redo" : ", new")));
    }
    if (at.available() > 0 || !BenchCount.alongAtBatch(model, at).isEmpty()) {
      return Optional.of(Row.of("", "all go together"));
    }
    return Optional.of(
        Row.of("", elsewhere(model, at).isEmpty() ? "nothing waits" : "none here, some elsewhere"));
  }

  /** Which of what went in at different times is due when; one alone is the figure. */
  private static Optional<Row> inWaits(Model model, AtBench at) {
    AtWait wait = AtWait.of(model, at);
    List<String> words =
        wait.in().stream().filter(each -> !each.isAll()).map(each -> due(model, each)).toList();
    boolean several = words.size() + (wait.goesIn().isEmpty() ? 0 : 1) > 1;
    return words.isEmpty() || !several
        ? Optional.empty()
        : Optional.of(Row.of("in it", String.join(", ", words)));
  }

  private static String due(Model model, InWait in) {
    String runs =
        model.timers().running().stream()
            .filter(timer -> in.running().contains(timer.id()) && !timer.rings(model.steady()))
            .map(timer -> Clock.running(timer.left(model.steady()).toSeconds()))
            .collect(Collectors.joining(" "));
    int count = in.pieces().values().stream().mapToInt(Integer::intValue).sum();
    return count + (runs.isEmpty() ? " over" : " for " + runs);
  }

  /** What waits at other steps; empty if nothing does. */
  private static String elsewhere(Model model, AtBench at) {
    return WaitingWords.line(WaitingWords.besides(model, at));
  }

  private static Optional<Row> each(Model model, AtBench at) {
    Standing standing = model.job().orElseThrow().standing();
    double each = BenchCount.eachMm(standing, at);
    if (!(each > 0)) {
      return Optional.empty();
    }
    UnitStyle units = model.settings().units();
    Optional<Plan> plan = standing.counted().plan();
    if (plan.isPresent() && at.piece().equals(PieceKind.LINK)) {
      StillToDo links = standing.left().get(PieceKind.LINK);
      LinksOfSize size = BenchCount.sizeOf(standing, at).orElse(plan.get().sizes().get(0));
      double blank = size.link().blankMm();
      // What the stop is set to stands first; the kerf is wire, not blank.
      String taken = each > blank ? "takes " + units.length(each) : "";
      return Optional.of(
          plan.get().sized()
              ? Row.of(size.name() + " blank", units.length(blank)).remark(bySize(links))
              : Row.of("blank", units.length(blank)).remark(taken));
    }
    return Optional.of(Row.of("each", units.length(each) + " of wire"));
  }

  /** What is still to cut of each size, in the order in which they are cut. */
  private static String bySize(StillToDo links) {
    return links.sizes().stream()
        .map(size -> size.toCutOrAsMany() + " " + size.name())
        .collect(Collectors.joining(", ", "", " to cut"));
  }

  /** Why those were sent back that came to this redo pile last, so many as it holds. */
  private static String reasons(Model model, AtBench at) {
    List<Entry> entries = model.job().orElseThrow().entries();
    Set<String> reasons = new TreeSet<>();
    Strikes strikes = at.redo() > 0 ? Strikes.in(entries) : Strikes.in(List.of());
    int left = at.redo();
    for (int i = entries.size() - 1; i >= 0 && left > 0; i--) {
      if (entries.get(i).fact() instanceof Fact.PiecesSentBack back
          && !strikes.has(entries.get(i))
          && comesTo(at, back)) {
        left -= back.count();
        reasons.add(back.reason());
      }
    }
    reasons.remove("");
    return reasons.isEmpty() ? "" : "(" + String.join(", ", reasons) + ")";
  }

  private static boolean comesTo(AtBench at, Fact.PiecesSentBack back) {
    Stage to = at.pile().stages().contains(back.to()) ? back.to() : back.from();
    return back.piece().equals(at.piece())
        && to.equals(at.stage())
        && (at.size().isEmpty() || at.size().equals(back.size()));
  }

  private static List<Part> remedy(Model model, Remedy remedy) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Prose(Prose.Kind.REMEDY, JobWords.fill(remedy.remedy(), model)));
    if (!remedy.backTo().equals(Stage.NONE)) {
      parts.add(
          Prose.aside(
              "Back to “"
                  + remedy.backTo()
                  + "”. Failed twice at one joint: saw it out or scrap it."));
    }
    return parts;
  }

  private static void texts(List<Part> parts, Model model, AtBench at) {
    Step step = at.step();
    // A caution stands above what it warns of.
    for (Caution card : Cards.of(model, at).cautions()) {
      add(parts, model, Prose.Kind.CAUTION, card.shortLine());
    }
    parts.add(new Prose(Prose.Kind.ELSEWHERE, elsewhere(model, at)));
    parts.add(new Prose(Prose.Kind.STOP, notWhole(model, at)));
    parts.add(new Prose(Prose.Kind.STOP, Partners.says(model, at)));
    LaidOut laidOut = LaidOut.of(model);
    parts.add(new Prose(Prose.Kind.STOP, laidOut.saysLacking(laidOut.at(step))));
    add(parts, model, Prose.Kind.MIND, step.mind());
    add(parts, model, Prose.Kind.DO, step.doText());
    parts.add(new Prose(Prose.Kind.MEASURE, BendContent.marks(step, model)));
    add(parts, model, Prose.Kind.LOOK_FOR, step.lookFor());
    add(parts, model, Prose.Kind.MEASURE, step.measure());
    parts.add(new Prose(Prose.Kind.MEASURE, logged(at)));
    parts.add(
        at.number() == 1
            ? new Prose(Prose.Kind.LAY_OUT, laidOut.saysWhole(at.routine()))
            : new Prose(Prose.Kind.TOOLS, laidOut.says(laidOut.at(step))));
    add(parts, model, Prose.Kind.WHY, step.why());
    for (Remedy remedy : step.wrong()) {
      String text = remedy.sees() + ": " + remedy.means() + " " + remedy.remedy();
      add(parts, model, Prose.Kind.WRONG, text);
    }
    parts.add(new Prose(Prose.Kind.NEXT, next(model, at)));
    parts.addAll(BendContent.below(step, model));
    parts.addAll(PictureContent.below(step, model));
  }

  /** Where that is entered which a trial is made for; empty at a step before its last. */
  private static String logged(AtBench at) {
    RoutinePart part = at.step().part();
    List<Step> steps = at.routine().steps();
    boolean last = at.number() == steps.size() || steps.get(at.number()).part() != part;
    if (at.counts() || !last || at.routine().makes() != Makes.CHAIN) {
      return "";
    }
    return switch (part) {
      case TRIAL -> "Log each test piece: " + ActMention.of(Act.TO_TESTS) + ".";
      case SAMPLE -> "Log it: " + ActMention.of(Act.TO_TRIAL) + ".";
      default -> "";
    };
  }

  /** What lacks of the chain where something is done to the whole of it; empty if nothing does. */
  private static String notWhole(Model model, AtBench at) {
    OpenJob job = model.job().orElseThrow();
    if (!job.makesChain() || at.step().part() != RoutinePart.FINISH || !at.together()) {
      return "";
    }
    List<String> lacking = new ArrayList<>();
    at.step()
        .stage()
        .forEach(
            (piece, stage) -> {
              Pile pile = job.state().piles().of(piece);
              StillToDo left = job.standing().left().get(piece);
              int there = pile.waitingFor(stage) + pile.atOrPast(stage);
              if (left != null && there < left.wanted()) {
                lacking.add(there + " of " + piece.counted(left.wanted()));
              }
            });
    return lacking.isEmpty()
        ? ""
        : "The chain is not whole, only "
            + String.join(" and ", lacking)
            + " are here: what is done at this step is done to all of it.";
  }

  /** The steps after this one by their numbers, as far as one thinks ahead. */
  private static String next(Model model, AtBench at) {
    if (model.job().filter(model.learning()::works).isPresent()) {
      // A student is asked what comes.
      return "";
    }
    List<Step> steps = at.routine().steps();
    List<String> next = new ArrayList<>();
    for (int i = at.number(); i < Math.min(steps.size(), at.number() + AHEAD); i++) {
      next.add((i + 1) + " " + JobWords.fill(steps.get(i).title(), model));
    }
    return next.isEmpty() ? "" : String.join("; ", next) + ".";
  }

  private static void add(List<Part> parts, Model model, Prose.Kind kind, String text) {
    parts.add(new Prose(kind, JobWords.fill(text, model)));
  }
}
