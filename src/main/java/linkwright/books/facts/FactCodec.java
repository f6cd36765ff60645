package linkwright.books.facts;

import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
import linkwright.job.Fact;
import linkwright.quantity.Read;

/**
 * How one sort of fact stands in a book.
 *
 * @param kind its name there
 * @param type the fact's type
 * @param writer puts its fields
 * @param reader makes it of its fields
 */
record FactCodec<F extends Fact>(
    String kind, Class<F> type, BiConsumer<F, FactOut> writer, Function<FactIn, F> reader) {

  Map<String, Object> write(Fact fact) {
    FactOut out = new FactOut();
    writer.accept(type.cast(fact), out);
    return out.fields();
  }

  /** The fact, or what is wrong with its fields, all of it. */
  Read<Fact> read(Map<String, Object> fields) {
    FactIn in = new FactIn(fields);
    F fact = reader.apply(in);
    return in.troubles().isEmpty()
        ? Read.good(fact)
        : Read.bad("This entry is of the kind " + kind + ", but " + joined(in) + ".");
  }

  /** The fields that it reads, in their order. */
  Map<String, FieldShape> shape() {
    FactIn in = FactIn.ofShape();
    // Only what it asks for counts here, not the fact that it makes of nothing.
    Fact unused = reader.apply(in);
    return in.asked();
  }

  private static String joined(FactIn in) {
    return String.join(", and ", in.troubles());
  }
}
