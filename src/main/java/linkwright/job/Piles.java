package linkwright.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * All pieces of a job: link and ring piles and what is in hand.
 *
 * @param byPiece kind of piece → its pile, all sizes together
 * @param sizes the links by their sizes; none as long as no size was said
 * @param lastSize stage → which size of link was taken or counted there last
 * @param hand what is in hand
 * @param lies where piles lie, in her own words
 * @param trial what became of the pieces of the trial length that is followed
 */
public record Piles(
    Map<PieceKind, Pile> byPiece,
    LinkSizes sizes,
    Map<Stage, String> lastSize,
    InHand hand,
    Map<PileSpot, String> lies,
    TrialPieces trial) {
  static final Piles NONE =
      new Piles(Map.of(), LinkSizes.NONE, Map.of(), InHand.EMPTY, Map.of(), TrialPieces.NONE);

  static Piles of(Map<PieceKind, List<Stage>> stages) {
    Map<PieceKind, Pile> piles = new LinkedHashMap<>();
    stages.forEach((piece, order) -> piles.put(piece, Pile.empty(order)));
    return new Piles(piles, LinkSizes.NONE, Map.of(), InHand.EMPTY, Map.of(), TrialPieces.NONE);
  }

  /** The pile of that kind of piece; an empty one without stages for a kind the job has not. */
  public Pile of(PieceKind piece) {
    return byPiece.getOrDefault(piece, Pile.NONE);
  }

  /** The pile of that kind and size; of links of which no size was ever said, all. */
  public Pile of(PieceKind piece, String size) {
    return piece.equals(PieceKind.LINK) && !sizes.piles().isEmpty() ? sizes.of(size) : of(piece);
  }

  Piles after(Fact fact) {
    if (fact instanceof Fact.WireCut cut) {
      Stage first = of(cut.piece()).first();
      return add(cut.piece(), LinkSizes.one(cut.size(), cut.count()), Pile::begun)
          .last(first, cut.size())
          .lessInHand(first, Map.of(cut.piece(), cut.count()));
    }
    if (fact instanceof Fact.PiecesTaken taken) {
      InHand now = new InHand(taken.stage(), taken.pieces(), taken.redo(), taken.size());
      return new Piles(byPiece, sizes, lastSize, now, lies, trial)
          .last(taken.stage(), taken.size());
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return through(through);
    }
    if (fact instanceof Fact.PiecesSentBack back) {
      return go(
              back.piece(),
              LinkSizes.one(back.size(), back.count()),
              back.from(),
              back.redo(),
              (pile, count) ->
                  pile.sentBack(back.from(), back.to(), count, back.redo(), back.reason())
                      .saidAgain(
                          pile.stages().contains(back.to()) ? back.to() : back.from(),
                          back.again()))
          .lessInHand(back.from(), Map.of(back.piece(), back.count()));
    }
    if (fact instanceof Fact.PiecesScrapped scrapped) {
      return go(
              scrapped.piece(),
              LinkSizes.one(scrapped.size(), scrapped.count()),
              scrapped.stage(),
              scrapped.redo(),
              (pile, count) ->
                  pile.scrapped(scrapped.stage(), count, scrapped.redo(), scrapped.reason()))
          .lessInHand(scrapped.stage(), Map.of(scrapped.piece(), scrapped.count()));
    }
    if (fact instanceof BenchFact.RedoPlanned planned) {
      return each(planned.piece(), pile -> pile.saidAgain(planned.stage(), planned.again()));
    }
    if (fact instanceof BenchFact.PilePlaced placed) {
      Map<PileSpot, String> more = new LinkedHashMap<>(lies);
      more.put(
          new PileSpot(placed.piece(), placed.stage(), placed.redo(), placed.size()),
          placed.place());
      return new Piles(byPiece, sizes, lastSize, hand, Map.copyOf(more), trial);
    }
    return this;
  }

  /** Where a pile lies; empty if she never said. */
  public String lies(PileSpot spot) {
    return lies.getOrDefault(spot, "");
  }

  /**
   * After a sample was chosen: it may be link 1, and there is one of it however often it is chosen.
   *
   * @param wasFirst whether the sample before it was link 1
   * @param isFirst whether this one is
   * @param size which size of link it is; empty where none was said
   */
  Piles sampled(boolean wasFirst, boolean isFirst, String size) {
    if (wasFirst == isFirst) {
      return this;
    }
    Stage stage = whereASampleStands(of(PieceKind.LINK).stages());
    return add(
        PieceKind.LINK,
        LinkSizes.one(size, 1),
        (pile, one) -> isFirst ? pile.placed(stage, one) : pile.withdrawn(stage));
  }

  /**
   * After a trial length was chosen: its links and rings are part of the chain, finished but for
   * what is done to the whole of it.
   */
  Piles hung(Fact.TrialMeasured length, Map<String, Integer> of) {
    Map<String, Integer> links = LinkSizes.of(PieceKind.LINK, length.links(), of);
    return hung(PieceKind.LINK, links)
        .hung(PieceKind.RING, LinkSizes.one(LinkSizes.UNSAID, length.rings()))
        .with(new TrialPieces(links, 0, Map.of()));
  }

  /**
   * After a wish for other rings than those that hung, or for those again after all: the rings that
   * hung are opened, and their links wait to be joined anew.
   */
  Piles ringsSince(int hung, boolean others) {
    List<Stage> stages = of(PieceKind.RING).stages();
    if ((others == ringsAside() > 0) || stages.size() < 2) {
      return this;
    }
    Stage stage = stages.get(stages.size() - 2);
    int there = Math.min(hung, of(PieceKind.RING).waitingFor(stages.get(stages.size() - 1)));
    int moved = others ? -there : ringsAside();
    Piles next = change(PieceKind.RING, Map.of(), said -> said, pile -> pile.placed(stage, moved));
    return others
        ? (there > 0 ? next.opened(there) : next)
        : next.joinedAgain().with(new TrialPieces(trial.links(), 0, Map.of()));
  }

  /** Rings of the followed trial length that the chain takes no more. */
  public int ringsAside() {
    return trial.ringsAside();
  }

  /** Links that hang on rings which are to be opened before they are joined anew. */
  public int toOpen() {
    return Math.min(trial.linksOpened(), of(PieceKind.LINK).waitingFor(Stage.JOINED));
  }

  /** The same with no rings aside: those of an earlier trial length come back no more. */
  Piles noneAside() {
    return with(new TrialPieces(trial.links(), 0, Map.of()));
  }

  private Piles with(TrialPieces other) {
    return new Piles(byPiece, sizes, lastSize, hand, lies, other);
  }

  /** With so many rings opened the links that hung wait where links wait for the joining. */
  private Piles opened(int rings) {
    List<Stage> stages = of(PieceKind.LINK).stages();
    if (stages.indexOf(Stage.JOINED) < 1) {
      return with(new TrialPieces(trial.links(), rings, Map.of()));
    }
    Stage last = stages.get(stages.size() - 1);
    Piles next = links(trial.links(), last, whereASampleStands(stages));
    Map<String, Integer> aside = new LinkedHashMap<>();
    next.linkPiles()
        .forEach(
            (size, pile) -> {
              int went = of(PieceKind.LINK, size).waitingFor(last) - pile.waitingFor(last);
              if (went > 0) {
                aside.put(size, went);
              }
            });
    return next.with(new TrialPieces(trial.links(), rings, Map.copyOf(aside)));
  }

  private Piles joinedAgain() {
    List<Stage> stages = of(PieceKind.LINK).stages();
    return trial.linksAside().isEmpty()
        ? this
        : links(trial.linksAside(), Stage.JOINED, stages.get(stages.size() - 2));
  }

  private Piles links(Map<String, Integer> counts, Stage waiting, Stage to) {
    return go(
        PieceKind.LINK,
        counts,
        waiting,
        false,
        (pile, count) -> {
          int going = Math.min(count, pile.waitingFor(waiting));
          return pile.taken(waiting, going, false).placed(to, going);
        });
  }

  private Map<String, Pile> linkPiles() {
    return sizes.piles().isEmpty() ? Map.of(LinkSizes.UNSAID, of(PieceKind.LINK)) : sizes.piles();
  }

  private Piles hung(PieceKind piece, Map<String, Integer> counts) {
    List<Stage> stages = of(piece).stages();
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    if (stages.size() < 2 || all == 0) {
      return this;
    }
    Stage stage = stages.get(stages.size() - 2);
    return change(
        piece, counts, said -> said.atLeast(stage, counts), pile -> pile.atLeast(stage, all));
  }

  private Piles through(Fact.PiecesThrough through) {
    Piles moved = this;
    Stage stage = through.stage();
    boolean redo = through.redo();
    for (Map.Entry<PieceKind, Integer> piece : through.pieces().entrySet()) {
      PieceKind kind = piece.getKey();
      Map<String, Integer> counts = LinkSizes.of(kind, piece.getValue(), through.sizes());
      moved =
          of(kind).begins(stage) && !redo
              ? moved.add(kind, counts, Pile::begun)
              : moved.go(
                  kind, counts, stage, redo, (pile, count) -> pile.moved(stage, count, redo));
    }
    for (String size : through.sizes().keySet()) {
      moved = through.sizes().size() == 1 ? moved.last(stage, size) : moved;
    }
    return moved.lessInHand(through.stage(), through.pieces());
  }

  /** A sample link is finished but for the joining: it waits where links wait for that. */
  private static Stage whereASampleStands(List<Stage> stages) {
    int joined = stages.indexOf(Stage.JOINED);
    if (joined > 0) {
      return stages.get(joined - 1);
    }
    return stages.isEmpty() ? Stage.NONE : stages.get(Math.max(0, stages.size() - 2));
  }

  private Piles lessInHand(Stage stage, Map<PieceKind, Integer> gone) {
    if (!hand.stage().equals(stage)) {
      return this;
    }
    Map<PieceKind, Integer> left = new LinkedHashMap<>();
    hand.pieces()
        .forEach(
            (piece, count) -> {
              int rest = count - gone.getOrDefault(piece, 0);
              if (rest > 0) {
                left.put(piece, rest);
              }
            });
    InHand rest = left.isEmpty() ? InHand.EMPTY : new InHand(stage, left, hand.redo(), hand.size());
    return new Piles(byPiece, sizes, lastSize, rest, lies, trial);
  }

  private Piles last(Stage stage, String size) {
    if (size.isEmpty()) {
      return this;
    }
    Map<Stage, String> last = new LinkedHashMap<>(lastSize);
    last.put(stage, size);
    return new Piles(byPiece, sizes, Map.copyOf(last), hand, lies, trial);
  }

  /** So many more of each size. */
  private Piles add(
      PieceKind piece, Map<String, Integer> counts, BiFunction<Pile, Integer, Pile> how) {
    return change(
        piece, counts, said -> said.added(counts, how), pile -> how.apply(pile, sum(counts)));
  }

  /** So many of each size go from where they wait for a stage. */
  private Piles go(
      PieceKind piece,
      Map<String, Integer> counts,
      Stage stage,
      boolean redo,
      BiFunction<Pile, Integer, Pile> how) {
    return change(
        piece,
        counts,
        said -> said.gone(counts, stage, redo, how),
        pile -> how.apply(pile, sum(counts)));
  }

  private Piles each(PieceKind piece, UnaryOperator<Pile> how) {
    return change(piece, Map.of(), said -> said.each(how), how);
  }

  /** Where a size was ever said, the pile of all is the sum of those of the sizes. */
  private Piles change(
      PieceKind piece,
      Map<String, Integer> counts,
      UnaryOperator<LinkSizes> bySize,
      UnaryOperator<Pile> alike) {
    boolean links = piece.equals(PieceKind.LINK) && !of(piece).stages().isEmpty();
    LinkSizes said = links ? sizes.begun(of(piece), counts) : LinkSizes.NONE;
    Map<PieceKind, Pile> piles = new LinkedHashMap<>(byPiece);
    if (said.piles().isEmpty()) {
      piles.put(piece, alike.apply(of(piece)));
      return new Piles(piles, sizes, lastSize, hand, lies, trial);
    }
    LinkSizes next = bySize.apply(said);
    piles.put(piece, next.all());
    return new Piles(piles, next, lastSize, hand, lies, trial);
  }

  private static int sum(Map<String, Integer> counts) {
    int sum = 0;
    for (int count : counts.values()) {
      sum += count;
    }
    return sum;
  }
}
