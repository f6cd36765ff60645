package linkwright.coach.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.LessonFact;
import linkwright.job.LotFact;
import linkwright.quantity.UnitStyle;

/** The entries of the second format in words. */
final class LaterEntryWords {
  private LaterEntryWords() {}

  static String of(Fact fact, UnitStyle units) {
    if (fact instanceof BenchFact bench) {
      return bench(bench);
    }
    if (fact instanceof LotFact lot) {
      return lot(lot, units);
    }
    if (fact instanceof LessonFact lesson) {
      return lesson(lesson);
    }
    String kind = fact instanceof Fact.Unread unread ? unread.kind() : "an entry";
    return kind + " (this version cannot use it; kept, not counted)";
  }

  private static String bench(BenchFact fact) {
    if (fact instanceof BenchFact.HotWorkSaid said) {
      String what = said.statement().isBlank() ? state(said.state()) : said.statement();
      return "hot work: " + what + (said.of().isEmpty() ? "" : ", lit in the book " + said.of());
    }
    if (fact instanceof BenchFact.WatchEnded ended) {
      return "fire watch ended before its time" + because(ended.why());
    }
    if (fact instanceof BenchFact.SittingEnded ended) {
      return "sitting ended" + because(ended.person());
    }
    if (fact instanceof BenchFact.StepSkipped skipped) {
      return "step passed: " + words(skipped.step().word()) + because(skipped.why());
    }
    if (fact instanceof BenchFact.JointsChecked joints) {
      return "joints looked at: "
          + joints.failed()
          + " of "
          + joints.of()
          + " failed"
          + because(joints.reason());
    }
    if (fact instanceof BenchFact.HoursCorrected hours) {
      return "hours put right: "
          + minutes(hours.isSeconds())
          + " and not "
          + minutes(hours.wasSeconds())
          + because(hours.why());
    }
    if (fact instanceof BenchFact.PilePlaced pile) {
      return pile.piece().many()
          + " "
          + (pile.redo() ? "to redo at " : "")
          + pile.stage()
          + " lie in: "
          + pile.place();
    }
    if (fact instanceof BenchFact.RedoPlanned planned) {
      return planned.piece().many()
          + " to redo at "
          + planned.stage()
          + ": "
          + switch (planned.again()) {
            case NEXT_HEAT -> "with the next heat";
            case NOW -> "now";
            case SPARES -> "spares cover them";
            case NOT_SAID -> "not said when";
          };
    }
    if (fact instanceof BenchFact.CardSet) {
      return "job card set";
    }
    if (fact instanceof BenchFact.JobPutAway put) {
      return put.away() ? "job put away" : "job brought back";
    }
    throw none(fact);
  }

  private static String lot(LotFact fact, UnitStyle units) {
    if (fact instanceof LotFact.LotArrived lot) {
      return "into the drawer: " + lot.lot() + amount(lot.lengthMm(), lot.massG(), units);
    }
    if (fact instanceof LotFact.LotCounted lot) {
      return "lot " + lot.lot() + " by the scale" + amount(lot.lengthMm(), lot.massG(), units);
    }
    if (fact instanceof LotFact.LotTurned lot) {
      return "lot "
          + lot.lot()
          + " made into "
          + lot.into()
          + amount(lot.lengthMm(), lot.massG(), units);
    }
    if (fact instanceof LotFact.StockTaken lot) {
      return "taken from lot " + lot.lot() + amount(lot.lengthMm(), lot.massG(), units);
    }
    if (fact instanceof LotFact.StockReturned back) {
      return "back into lot " + back.lot() + amount(back.lengthMm(), back.massG(), units);
    }
    throw none(fact);
  }

  private static String lesson(LessonFact fact) {
    if (fact instanceof LessonFact.QuestionAsked asked) {
      return "asked: " + words(asked.item());
    }
    if (fact instanceof LessonFact.QuestionAnswered answered) {
      return "answered " + (answered.right() ? "right" : "wrong") + because(answered.given());
    }
    if (fact instanceof LessonFact.Signed signed) {
      return "signed by " + signed.teacher() + ": " + words(signed.step()) + because(signed.note());
    }
    if (fact instanceof LessonFact.PieceStudied studied) {
      return "studied: " + studied.piece() + because(studied.change());
    }
    if (fact instanceof LessonFact.PracticeSet practice) {
      return "practice: "
          + practice.pieces()
          + " of "
          + words(practice.exercise())
          + " in "
          + practice.days()
          + " days";
    }
    if (fact instanceof LessonFact.PiecesMade made) {
      return "made at " + words(made.step().word()) + ": " + made.through() + " through";
    }
    if (fact instanceof LessonFact.MetalCounted counted) {
      return "metal of " + counted.job() + " counted";
    }
    if (fact instanceof LessonFact.StudentBookOpened) {
      return "book of a student begun";
    }
    throw none(fact);
  }

  /** No entry is to be read as another: a kind without words of its own is a fault. */
  private static IllegalStateException none(Fact fact) {
    return new IllegalStateException("No words for " + fact.getClass().getSimpleName());
  }

  private static String state(HotWorkState state) {
    return switch (state) {
      case LIT -> "lit";
      case HOT -> "hot, no flame";
      case SHUT -> "every flame out, gas shut";
      case NOT_KNOWN -> "not known";
    };
  }

  private static String amount(OptionalDouble mm, OptionalDouble grams, UnitStyle units) {
    List<String> amounts = new ArrayList<>();
    mm.ifPresent(length -> amounts.add(units.length(length)));
    grams.ifPresent(mass -> amounts.add(units.mass(mass)));
    return amounts.isEmpty() ? "" : ", " + String.join(", ", amounts);
  }

  private static String minutes(double seconds) {
    return Math.round(seconds / 60) + " min";
  }

  private static String words(String id) {
    return id.replace('-', ' ');
  }

  private static String because(String why) {
    return why.isBlank() ? "" : ": " + why;
  }
}
