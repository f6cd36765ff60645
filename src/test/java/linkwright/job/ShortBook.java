package linkwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/** Short books of one machine, an entry a second. */
final class ShortBook {
  private ShortBook() {}

  static final StagesByKind STAGES =
      routine ->
          routine.equals("cable")
              ? Map.of(PieceKind.LINK, Stage.all(List.of("cut", "formed", "joined", "finished")))
              : Map.of();

  static EntryId id(int number) {
    return new EntryId("bench", number);
  }

  /** The facts as entries, numbered from 1. */
  static List<Entry> of(Fact... facts) {
    List<Entry> book = new ArrayList<>();
    Arrays.stream(facts)
        .forEach(
            fact -> {
              int number = book.size() + 1;
              book.add(new Entry(number, Instant.ofEpochSecond(number), "bench", fact));
            });
    return book;
  }

  static JobState state(Fact... facts) {
    return JobState.replay(of(facts), STAGES);
  }
}
