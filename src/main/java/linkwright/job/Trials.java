package linkwright.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was tried before the run: test pieces and trial lengths, and which were chosen.
 *
 * @param pieces test pieces by the entry that logged them, in order
 * @param sample which piece is the sample link
 * @param samples name of another link of the chain → which piece is its sample, and the wish then
 * @param lengths trial lengths by their entries, in order
 * @param chosenLength which trial length the chain follows
 * @param wishAtSample the wish as it stood when the sample was chosen; empty before
 * @param wishAtChoice the wish as it stood when the trial length was chosen; empty before
 */
public record Trials(
    Map<EntryId, Fact.TestPieceTried> pieces,
    Optional<Fact.SampleChosen> sample,
    Map<String, SampleOf> samples,
    Map<EntryId, Fact.TrialMeasured> lengths,
    Optional<EntryId> chosenLength,
    Map<String, String> wishAtSample,
    Map<String, String> wishAtChoice) {
  /** Wire that differs by less is the same, mm; finer than any gauge tells. */
  private static final double SAME_WIRE_MM = 0.0005;

  static final Trials NONE =
      new Trials(
          Map.of(), Optional.empty(), Map.of(), Map.of(), Optional.empty(), Map.of(), Map.of());

  /**
   * The sample of another link of the chain than the planned one.
   *
   * @param choice which piece it is
   * @param wish the wish as it stood when it was chosen
   */
  public record SampleOf(Fact.SampleChosen choice, Map<String, String> wish) {}

  /** The test pieces in the order they were made. */
  public List<Fact.TestPieceTried> inOrder() {
    return new ArrayList<>(pieces.values());
  }

  /** The last test piece, where it is of wire of that thickness. */
  public Optional<Fact.TestPieceTried> lastOf(double wireMm) {
    return inOrder().stream()
        .skip(Math.max(0, pieces.size() - 1L))
        .filter(last -> Math.abs(last.wireMm() - wireMm) < SAME_WIRE_MM)
        .findFirst();
  }

  /** The test piece that is the sample link. */
  public Optional<Fact.TestPieceTried> samplePiece() {
    return sample.flatMap(choice -> Optional.ofNullable(pieces.get(choice.piece())));
  }

  /** The test piece that is the sample of that link; the planned one has no name. */
  public Optional<Fact.TestPieceTried> samplePiece(String size) {
    return size.isEmpty()
        ? samplePiece()
        : Optional.ofNullable(samples.get(size))
            .flatMap(sampled -> Optional.ofNullable(pieces.get(sampled.choice().piece())));
  }

  /** What was chosen before as the sample of the same link. */
  Optional<Fact.SampleChosen> before(Fact.SampleChosen choice) {
    String size = sizeOf(choice);
    return size.isEmpty() ? sample : Optional.ofNullable(samples.get(size)).map(SampleOf::choice);
  }

  /** Whether that piece is a sample. */
  public boolean isSample(EntryId piece) {
    return Stream.concat(sample.stream(), samples.values().stream().map(SampleOf::choice))
        .anyMatch(choice -> choice.piece().equals(piece));
  }

  private String sizeOf(Fact.SampleChosen choice) {
    Fact.TestPieceTried piece = pieces.get(choice.piece());
    return piece == null ? "" : piece.size();
  }

  /** The trial length that was chosen. */
  public Optional<Fact.TrialMeasured> chosen() {
    return chosenLength.flatMap(id -> Optional.ofNullable(lengths.get(id)));
  }

  /** The same trials with that length followed, as if it were chosen under that wish. */
  public Trials following(EntryId length, Map<String, String> wish) {
    return new Trials(pieces, sample, samples, lengths, Optional.of(length), wishAtSample, wish);
  }

  Trials after(Entry entry, Map<String, String> wish) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.TestPieceTried tried) {
      return new Trials(
          plus(pieces, entry.id(), tried),
          sample,
          samples,
          lengths,
          chosenLength,
          wishAtSample,
          wishAtChoice);
    }
    if (fact instanceof Fact.SampleChosen choice) {
      String size = sizeOf(choice);
      return size.isEmpty()
          ? new Trials(
              pieces, Optional.of(choice), samples, lengths, chosenLength, wish, wishAtChoice)
          : new Trials(
              pieces,
              sample,
              plus(samples, size, new SampleOf(choice, wish)),
              lengths,
              chosenLength,
              wishAtSample,
              wishAtChoice);
    }
    if (fact instanceof Fact.TrialMeasured measured) {
      return new Trials(
          pieces,
          sample,
          samples,
          plus(lengths, entry.id(), measured),
          chosenLength,
          wishAtSample,
          wishAtChoice);
    }
    return fact instanceof Fact.TrialChosen choice ? following(choice.trial(), wish) : this;
  }

  private static <K, T> Map<K, T> plus(Map<K, T> map, K id, T value) {
    Map<K, T> more = new LinkedHashMap<>(map);
    more.put(id, value);
    return Collections.unmodifiableMap(more);
  }
}
