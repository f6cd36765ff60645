package linkwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import linkwright.job.Again;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.plan.WishKeys;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.JobBook;

/**
 * A job's book as chance has it: planned with rings or without, with one size of link or several,
 * with and without rings at the ends, tried, cut, soldered, failed, scrapped, planned anew.
 */
final class RandomBook {
  private static final int ENTRIES = 22;
  private static final String ROUND_BETWEEN = "1 link + 2 small pattern=round ring=3 mm";

  private final Random chance;

  /** Of its own, so that a seed still makes the book that it made before sizes were said. */
  private final Random sizes;

  private final JobBook book;
  private final boolean ringed;
  private final List<Fact> facts = new ArrayList<>();
  private final List<EntryId> pieces = new ArrayList<>();
  private final List<EntryId> trials = new ArrayList<>();

  private RandomBook(long seed) {
    this.chance = new Random(seed);
    this.sizes = new Random(31 * seed + 7);
    this.ringed = seed % 4 > 0; // the first draws of neighbouring seeds are much alike
    String routine = ringed ? "scroll-and-ring" : "figure-of-eight";
    this.book = JobBook.of(routine);
    facts.add(new Fact.JobOpened("A chain", routine));
  }

  /** Its facts, in order. */
  static List<Fact> of(long seed) {
    RandomBook random = new RandomBook(seed);
    random.enter(new Fact.PlanSet(random.wish()));
    while (random.facts.size() < ENTRIES) {
      random.one();
    }
    return List.copyOf(random.facts);
  }

  private EntryId enter(Fact fact) {
    facts.add(fact);
    return book.enter(fact);
  }

  private String pick(String... texts) {
    return texts[chance.nextInt(texts.length)];
  }

  private Map<String, String> wish() {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put(WishKeys.METAL, pick("sterling", "copper"));
    wish.put(WishKeys.WIRE, pick("0.9 mm", "1 mm"));
    wish.put(WishKeys.LINK_PATTERN, ringed ? "scroll" : "figure-of-eight");
    wish.put(WishKeys.LINK_LENGTH, pick("14 mm", "15 mm"));
    wish.put(WishKeys.LINK_BLANK, pick("", "", "40 mm"));
    wish.put(WishKeys.LINK_REPEAT, pick("", "", ROUND_BETWEEN, "2 link + 1 oval blank=30 mm"));
    wish.put(WishKeys.RING_ENDS, pick("", "", "3 mm", "4 mm"));
    if (ringed) {
      wish.put(WishKeys.RING_INSIDE, pick("2.5 mm", "3 mm", "3.4 mm"));
      wish.put(WishKeys.RING_WIRE, pick("", "", "0.8 mm"));
    }
    wish.put(WishKeys.FINISHED, pick("12 cm", "19 cm", "45 cm"));
    wish.put(WishKeys.CLASP_LENGTH, pick("", "14 mm"));
    wish.put(WishKeys.KERF, pick("", "0.3 mm"));
    wish.put(WishKeys.STOCK, pick("", "1 m", "500 mm, 96 mm", "3 m"));
    wish.values().removeIf(String::isEmpty);
    return wish;
  }

  private void one() {
    OptionalDouble none = OptionalDouble.empty();
    switch (chance.nextInt(11)) {
      case 0 -> enter(new Fact.PlanSet(wish()));
      case 1 -> enter(new Fact.WireAdded(kind(), 0.9, 50 + chance.nextInt(600), "soft", ""));
      case 2 ->
          pieces.add(
              enter(
                  new Fact.TestPieceTried(
                      0.9,
                      38 + chance.nextInt(5),
                      Map.of(),
                      OptionalDouble.of(13.5 + chance.nextDouble()),
                      OptionalDouble.of(5 + chance.nextDouble()),
                      none,
                      List.of("right"),
                      "")));
      case 3 -> {
        if (!pieces.isEmpty()) {
          EntryId piece = pieces.get(chance.nextInt(pieces.size()));
          enter(new Fact.SampleChosen(piece, chance.nextBoolean()));
        }
      }
      case 4 ->
          trials.add(enter(new Fact.TrialMeasured(3, 4, 3, none, 45 + chance.nextInt(8), 0, "")));
      case 5 -> {
        if (!trials.isEmpty()) {
          enter(new Fact.TrialChosen(trials.get(chance.nextInt(trials.size()))));
        }
      }
      case 6 -> enter(new Fact.WireDiscarded(PieceKind.LINK, 5 + chance.nextInt(20), "kinked"));
      case 7, 8 -> enter(cut(kind()));
      default -> moved();
    }
  }

  private Fact cut(PieceKind kind) {
    return new Fact.WireCut(kind, 1 + chance.nextInt(4), 30, size(kind));
  }

  /** One of the sizes that the chain has now, or none said. */
  private String size(PieceKind kind) {
    String repeat = book.state().course().wish().getOrDefault(WishKeys.LINK_REPEAT, "");
    if (kind.equals(PieceKind.RING) || repeat.isEmpty() || sizes.nextInt(4) == 0) {
      return "";
    }
    String planned = ringed ? "scroll" : "figure-of-eight";
    String other = repeat.contains("small") ? "small" : "oval";
    return sizes.nextBoolean() ? planned : other;
  }

  private static Map<String, Integer> sized(String size, int count) {
    return size.isEmpty() ? Map.of() : Map.of(size, count);
  }

  private PieceKind kind() {
    return chance.nextBoolean() ? PieceKind.LINK : PieceKind.RING;
  }

  /** Some pieces of a kind that waits go on, fail or are lost. */
  private void moved() {
    JobState state = book.state();
    PieceKind kind = kind();
    Pile pile = state.piles().of(kind);
    for (Stage stage : pile.stages()) {
      int waiting = pile.waitingFor(stage);
      if (waiting > 0) {
        int count = 1 + chance.nextInt(waiting);
        switch (chance.nextInt(5)) {
          case 0 -> enter(new Fact.PiecesScrapped(kind, 1, stage, false, "melted", size(kind)));
          case 1 ->
              enter(
                  new Fact.PiecesSentBack(
                      kind, 1, stage, stage, false, "gap", Again.NOT_SAID, size(kind)));
          default ->
              enter(
                  new Fact.PiecesThrough(
                      Map.of(kind, count),
                      stage,
                      false,
                      new StepId("solder-links"),
                      sized(size(kind), count)));
        }
        return;
      }
    }
  }
}
