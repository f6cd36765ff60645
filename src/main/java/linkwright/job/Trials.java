package linkwright.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was tried before the run: test pieces and trial lengths, and which were chosen.
 *
 * @param pieces test pieces by the entry that logged them, in order
 * @param sample which piece is the sample link
 * @param lengths trial lengths by their entries, in order
 * @param chosenLength which trial length the chain follows
 * @param wishAtSample the wish as it stood when the sample was chosen; empty before
 * @param wishAtChoice the wish as it stood when the trial length was chosen; empty before
 */
public record Trials(
    Map<EntryId, Fact.TestPieceTried> pieces,
    Optional<Fact.SampleChosen> sample,
    Map<EntryId, Fact.TrialMeasured> lengths,
    Optional<EntryId> chosenLength,
    Map<String, String> wishAtSample,
    Map<String, String> wishAtChoice) {
  static final Trials NONE =
      new Trials(Map.of(), Optional.empty(), Map.of(), Optional.empty(), Map.of(), Map.of());

  /** The test pieces in the order they were made. */
  public List<Fact.TestPieceTried> inOrder() {
    return new ArrayList<>(pieces.values());
  }

  /** The test piece that is the sample link. */
  public Optional<Fact.TestPieceTried> samplePiece() {
    return sample.flatMap(choice -> Optional.ofNullable(pieces.get(choice.piece())));
  }

  /** The trial length that was chosen. */
  public Optional<Fact.TrialMeasured> chosen() {
    return chosenLength.flatMap(id -> Optional.ofNullable(lengths.get(id)));
  }

  /** The same trials with that length followed, as if it were chosen under that wish. */
  public Trials following(EntryId length, Map<String, String> wish) {
    return new Trials(pieces, sample, lengths, Optional.of(length), wishAtSample, wish);
  }

  Trials after(Entry entry, Map<String, String> wish) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.TestPieceTried tried) {
      return new Trials(
          plus(pieces, entry.id(), tried),
          sample,
          lengths,
          chosenLength,
          wishAtSample,
          wishAtChoice);
    }
    if (fact instanceof Fact.SampleChosen choice) {
      return new Trials(pieces, Optional.of(choice), lengths, chosenLength, wish, wishAtChoice);
    }
    if (fact instanceof Fact.TrialMeasured measured) {
      return new Trials(
          pieces,
          sample,
          plus(lengths, entry.id(), measured),
          chosenLength,
          wishAtSample,
          wishAtChoice);
    }
    return fact instanceof Fact.TrialChosen choice ? following(choice.trial(), wish) : this;
  }

  private static <T> Map<EntryId, T> plus(Map<EntryId, T> map, EntryId id, T value) {
    Map<EntryId, T> more = new LinkedHashMap<>(map);
    more.put(id, value);
    return Collections.unmodifiableMap(more);
  }
}
