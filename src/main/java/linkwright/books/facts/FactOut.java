package linkwright.books.facts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;

/** The fields of a fact while they are written, in their order. */
final class FactOut {
  private final Map<String, Object> fields = new LinkedHashMap<>();

  /** A text that always stands there. */
  FactOut text(String name, String text) {
    fields.put(name, text);
    return this;
  }

  FactOut kind(PieceKind kind) {
    return text("piece", kind.id());
  }

  FactOut step(StepId step) {
    return text("step", step.word());
  }

  FactOut someStep(StepId step) {
    return some("step", step.word());
  }

  FactOut someWait(WaitId wait) {
    return some("wait", wait.word());
  }

  FactOut stage(String name, Stage stage) {
    return text(name, stage.id());
  }

  /** How many of each kind of piece. */
  FactOut pieces(Map<PieceKind, Integer> pieces) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    pieces.forEach((kind, count) -> counts.put(kind.id(), count));
    return map("pieces", counts);
  }

  /** How many of each kind of piece; absent when there are none. */
  FactOut someCounts(String name, Map<PieceKind, Integer> pieces) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    pieces.forEach((kind, count) -> counts.put(kind.id(), count));
    return someOf(name, counts);
  }

  /** How many links of each size; absent where no size is said. */
  FactOut sizes(String name, Map<String, Integer> sizes) {
    return someOf(name, sizes);
  }

  /** The stage of each kind of piece; absent when there are none. */
  FactOut someStages(String name, Map<PieceKind, Stage> stages) {
    Map<String, String> words = new LinkedHashMap<>();
    stages.forEach((kind, stage) -> words.put(kind.id(), stage.id()));
    return someOf(name, words);
  }

  /** A text that is absent when it says nothing. */
  FactOut some(String name, String text) {
    if (!text.isEmpty()) {
      fields.put(name, text);
    }
    return this;
  }

  FactOut whole(String name, long number) {
    fields.put(name, number);
    return this;
  }

  FactOut decimal(String name, double number) {
    fields.put(name, number);
    return this;
  }

  FactOut measured(String name, OptionalDouble number) {
    number.ifPresent(known -> fields.put(name, known));
    return this;
  }

  FactOut flag(String name, boolean flag) {
    fields.put(name, flag);
    return this;
  }

  /** A flag that is absent when it is not raised. */
  FactOut raised(String name, boolean flag) {
    if (flag) {
      fields.put(name, true);
    }
    return this;
  }

  FactOut entry(String name, EntryId id) {
    fields.put(name, id.written());
    return this;
  }

  /** Entries by name, absent where nothing is said of them, not even that there are none. */
  FactOut someEntries(String name, Optional<List<EntryId>> ids) {
    ids.ifPresent(known -> fields.put(name, known.stream().map(EntryId::written).toList()));
    return this;
  }

  FactOut map(String name, Map<String, ?> map) {
    fields.put(name, map);
    return this;
  }

  FactOut someOf(String name, Map<String, ?> map) {
    return map.isEmpty() ? this : map(name, map);
  }

  FactOut list(String name, List<String> list) {
    fields.put(name, list);
    return this;
  }

  Map<String, Object> fields() {
    return fields;
  }
}
