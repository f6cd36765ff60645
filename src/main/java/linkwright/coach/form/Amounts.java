package linkwright.coach.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Read;

/** Amounts typed in a form: each read by itself, a blank field being none. */
public final class Amounts {
  private final Form form;

  public Amounts(Form form) {
    this.form = form;
  }

  /** A length, in mm; empty if nothing readable is typed. */
  public OptionalDouble mm(String id) {
    return Length.readSize(form.text(id))
        .map(length -> OptionalDouble.of(length.mm()))
        .orElse(OptionalDouble.empty());
  }

  /** A mass, in g; empty if nothing readable is typed. */
  public OptionalDouble grams(String id) {
    return Mass.read(form.text(id))
        .map(mass -> OptionalDouble.of(mass.grams()))
        .orElse(OptionalDouble.empty());
  }

  /** The lengths of all fields whose id begins so, by the rest of the id. */
  public Map<String, Double> byName(String prefix) {
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (Field field : form.fields()) {
      if (field.id().startsWith(prefix)) {
        mm(field.id()).ifPresent(mm -> lengths.put(field.id().substring(prefix.length()), mm));
      }
    }
    return lengths;
  }

  /** What is wrong with the lengths typed in these fields and in those whose id begins so. */
  public Map<String, String> troubles(List<String> ids, String prefix) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (Field field : form.fields()) {
      boolean asked =
          ids.contains(field.id()) || (!prefix.isEmpty() && field.id().startsWith(prefix));
      if (asked && !field.text().isBlank()) {
        Read<Length> read = Length.readSize(field.value());
        read.problem().ifPresent(sentence -> troubles.put(field.id(), sentence));
      }
    }
    return troubles;
  }

  /** What is wrong with the masses typed in these fields. */
  public Map<String, String> massTroubles(List<String> ids) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (String id : ids) {
      if (!form.text(id).isEmpty()) {
        Mass.read(form.text(id)).problem().ifPresent(sentence -> troubles.put(id, sentence));
      }
    }
    return troubles;
  }
}
