package linkwright.coach.kernel;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;

/** An entry in words, as the book and undo show it. */
public final class EntryWords {
  private EntryWords() {}

  /** One line that says what the fact is; amounts in the user's units. */
  public static String of(Fact fact, Settings settings) {
    return of(fact, settings, id -> Integer.toString(id.number()));
  }

  /**
   * The same in a book whose entries are told apart by labels.
   *
   * @param label what an entry that is named in it is called there
   */
  public static String of(Fact fact, Settings settings, Function<EntryId, String> label) {
    return oneLine(named(fact, label).orElseGet(() -> inWords(fact, settings.units())));
  }

  /** The same as a sentence quotes it: what was typed in it is told as it was typed. */
  public static String quoted(Fact fact, Settings settings) {
    return "“" + of(fact, settings) + "”";
  }

  /** What names another entry. */
  private static Optional<String> named(Fact fact, Function<EntryId, String> label) {
    if (fact instanceof Fact.SampleChosen sample) {
      return Optional.of(
          "sample link chosen: entry "
              + label.apply(sample.piece())
              + (sample.firstLink() ? ", and it is link 1" : ""));
    }
    if (fact instanceof Fact.TrialChosen chosen) {
      return Optional.of("the chain follows trial length " + label.apply(chosen.trial()));
    }
    return fact instanceof Fact.Struck struck
        ? Optional.of("struck entry " + label.apply(struck.entry()) + noted(struck.why()))
        : Optional.empty();
  }

  /** What somebody typed over several lines must not look like lines of ours. */
  private static String oneLine(String words) {
    return words.strip().replaceAll("\\s*\\R\\s*", " / ");
  }

  private static String inWords(Fact fact, UnitStyle units) {
    if (fact instanceof Fact.JobOpened opened) {
      return "job begun: "
          + opened.name()
          + ", by the routine "
          + spoken(opened.routine())
          + (opened.again().isEmpty() ? "" : ", again from " + opened.again());
    }
    if (fact instanceof Fact.PlanSet plan) {
      return "plan set: " + joined(plan.wish());
    }
    if (fact instanceof Fact.MetalWeighedOut out) {
      return "weighed out: " + units.mass(out.massG()) + " " + out.what();
    }
    if (fact instanceof Fact.TestPieceTried tried) {
      return tested(tried, units);
    }
    if (fact instanceof Fact.TrialMeasured trial) {
      return "trial length: "
          + trial.links()
          + " links hang "
          + units.length(trial.hungMm())
          + noted(trial.note());
    }
    if (fact instanceof Fact.StepOpened opened) {
      return "step opened: " + words(opened.step().word());
    }
    if (fact instanceof Fact.StepDone done) {
      return "step done: " + words(done.step().word());
    }
    if (fact instanceof Fact.CautionSeen seen) {
      return "caution seen: " + words(seen.caution());
    }
    return pieces(fact, units);
  }

  /** An id as words: the title itself may have changed since, or its file be gone. */
  private static String words(String id) {
    return id.replace('-', ' ');
  }

  private static String size(String size) {
    return size.isEmpty() ? "" : " (" + size + ")";
  }

  private static String sizes(Map<String, Integer> sizes) {
    return sizes.isEmpty()
        ? ""
        : sizes.entrySet().stream()
            .map(each -> each.getValue() + " " + each.getKey())
            .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String pieces(Fact fact, UnitStyle units) {
    if (fact instanceof Fact.PiecesTaken taken) {
      return "in hand: "
          + counted(taken.pieces())
          + size(taken.size())
          + (taken.redo() ? ", to be redone" : "");
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return counted(through.pieces())
          + sizes(through.sizes())
          + " "
          + through.stage()
          + (through.redo() ? ", redone" : "");
    }
    if (fact instanceof Fact.PiecesSentBack back) {
      return counted(Map.of(back.piece(), back.count()))
          + size(back.size())
          + " to redo at "
          + back.to()
          + ": "
          + back.reason();
    }
    if (fact instanceof Fact.PiecesScrapped scrapped) {
      return counted(Map.of(scrapped.piece(), scrapped.count()))
          + size(scrapped.size())
          + " scrapped: "
          + scrapped.reason();
    }
    if (fact instanceof Fact.WireCut cut) {
      return counted(Map.of(cut.piece(), cut.count()))
          + size(cut.size())
          + " cut, "
          + units.length(cut.eachMm())
          + " of wire each";
    }
    if (fact instanceof Fact.WireAdded wire) {
      return "wire came for "
          + wire.piece().many()
          + ": "
          + units.length(wire.lengthMm())
          + " of "
          + units.wire(wire.wireMm())
          + (wire.temper().isBlank() ? "" : ", " + wire.temper())
          + (wire.batch().isBlank() ? "" : ", batch " + wire.batch());
    }
    if (fact instanceof Fact.WireDiscarded gone) {
      return "wire for "
          + gone.piece().many()
          + " lost: "
          + units.length(gone.lengthMm())
          + noted(gone.why());
    }
    return rest(fact, units);
  }

  private static String rest(Fact fact, UnitStyle units) {
    if (fact instanceof Fact.SittingStarted) {
      return "at the bench";
    }
    if (fact instanceof Fact.SteppedAway away) {
      return "stepped away"
          + (away.torchOut() && away.gasShut() && away.hotWorkSafe()
              ? ", torch out, gas shut, hot work looked to"
              : ", not all was looked to");
    }
    if (fact instanceof Fact.TimerStarted timer) {
      return "timer set: "
          + timer.name()
          + (timer.wentIn().isEmpty() ? "" : ", " + counted(timer.wentIn()))
          + ", "
          + Clock.spoken((double) timer.seconds());
    }
    if (fact instanceof Fact.TimerAnswered answered) {
      return switch (answered.how()) {
        case NOT_SAID -> "timer quieted";
        case TIME -> "wait over by its time";
        case LOOKED -> "wait over: looked, done";
        case REASON -> "wait ended before its time: " + answered.reason();
      };
    }
    if (fact instanceof Fact.WeighedIn in) {
      return "weighed in" + mass(", chain ", in.chainG(), units) + length(in.lengthMm(), units);
    }
    if (fact instanceof Fact.PricesSet) {
      return "prices set";
    }
    if (fact instanceof Fact.Noted note) {
      return "note: " + note.text();
    }
    if (fact instanceof Fact.LineAccepted line) {
      return "a line was accepted as it stands (check " + line.lineCrc() + ")";
    }
    if (fact instanceof Fact.JobClosed closed) {
      return "job closed" + noted(closed.nextTime());
    }
    if (fact instanceof Fact.JobReopened reopened) {
      return "job opened again" + noted(reopened.why());
    }
    return LaterEntryWords.of(fact, units);
  }

  private static String tested(Fact.TestPieceTried tried, UnitStyle units) {
    String measured =
        tried.lengthMm().isPresent()
            ? " came out " + units.length(tried.lengthMm().getAsDouble())
            : " not measured";
    String verdict =
        tried.verdicts().isEmpty() ? "" : ": next " + String.join(" and ", tried.verdicts());
    return "test piece: blank " + units.length(tried.blankMm()) + measured + verdict;
  }

  private static String counted(Map<PieceKind, Integer> pieces) {
    return pieces.entrySet().stream()
        .map(each -> each.getKey().counted(each.getValue()))
        .collect(Collectors.joining(" and "));
  }

  private static String joined(Map<String, String> wish) {
    return wish.entrySet().stream()
        .filter(each -> !each.getValue().isBlank())
        .map(each -> WishKeys.label(each.getKey()) + " " + each.getValue())
        .collect(Collectors.joining(", "));
  }

  /** What files call it, as words. */
  private static String spoken(String id) {
    return id.replaceAll("[.-]", " ");
  }

  private static String noted(String note) {
    return note.isBlank() ? "" : ": " + note;
  }

  private static String mass(String before, OptionalDouble grams, UnitStyle units) {
    return grams.isPresent() ? before + units.mass(grams.getAsDouble()) : "";
  }

  private static String length(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? ", length " + units.length(mm.getAsDouble()) : "";
  }
}
