package linkwright.job;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.routine.PieceKind;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Stage;

/**
 * Pieces of one kind that failed at one stage for one reason.
 *
 * @param piece the kind
 * @param size of which size the links were; empty where none was said
 * @param stage at which they failed
 * @param reason why, one of {@link Remedy#REASONS}
 * @param redo how often one of them went back, 0 or more: a piece that fails twice counts twice
 * @param scrap how many of them are lost for good, 0 or more
 * @param last when the last of them failed
 */
public record FailedPieces(
    PieceKind piece, String size, Stage stage, String reason, int redo, int scrap, Instant last) {

  /** All that failed in a job by its book, what failed most often first. */
  public static List<FailedPieces> in(List<Entry> entries) {
    Strikes strikes = Strikes.in(entries);
    Map<List<Object>, FailedPieces> all = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (!strikes.has(entry)) {
        of(entry)
            .ifPresent(
                failed ->
                    all.merge(
                        List.of(failed.piece, failed.size, failed.stage, failed.reason),
                        failed,
                        FailedPieces::and));
      }
    }
    return all.values().stream()
        .sorted(Comparator.comparingInt(FailedPieces::times).reversed())
        .toList();
  }

  private static Optional<FailedPieces> of(Entry entry) {
    if (entry.fact() instanceof Fact.PiecesSentBack back) {
      return Optional.of(
          new FailedPieces(
              back.piece(), back.size(), back.from(), back.reason(), back.count(), 0, entry.at()));
    }
    if (entry.fact() instanceof Fact.PiecesScrapped gone) {
      return Optional.of(
          new FailedPieces(
              gone.piece(), gone.size(), gone.stage(), gone.reason(), 0, gone.count(), entry.at()));
    }
    return Optional.empty();
  }

  private FailedPieces and(FailedPieces more) {
    Instant later = more.last.isAfter(last) ? more.last : last;
    return new FailedPieces(
        piece, size, stage, reason, redo + more.redo, scrap + more.scrap, later);
  }

  /** How often in all: those that went back and those that are lost. */
  public int times() {
    return redo + scrap;
  }

  /**
   * What the routine says of it at the steps that lead to that stage: of what went back, what is to
   * be redone, of what is lost, what is lost by it. Several, where it knows several causes.
   */
  public List<Remedy> cures(Routine routine) {
    return routine.steps().stream()
        .filter(step -> stage.equals(step.stage().get(piece)))
        .flatMap(step -> step.wrong().stream())
        .filter(remedy -> remedy.reason().equals(reason) && cameOf(remedy))
        .distinct()
        .toList();
  }

  private boolean cameOf(Remedy remedy) {
    return switch (remedy.then()) {
      case REDO -> redo > 0;
      case SCRAP -> scrap > 0;
      case CARRY_ON -> false;
    };
  }
}
