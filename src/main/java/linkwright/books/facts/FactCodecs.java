package linkwright.books.facts;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.job.Fact;
import linkwright.quantity.Read;

/** All facts that a book can hold, with what stands there for each. */
public final class FactCodecs {
  static final List<FactCodec<?>> ALL =
      Stream.of(
              JobCodecs.ALL,
              TrialCodecs.ALL,
              PieceCodecs.ALL,
              SittingCodecs.ALL,
              LotCodecs.ALL,
              LessonCodecs.ALL)
          .<FactCodec<?>>flatMap(List::stream)
          .toList();

  private static final Map<String, FactCodec<?>> BY_KIND = new HashMap<>();
  private static final Map<Class<?>, FactCodec<?>> BY_TYPE = new HashMap<>();

  static {
    for (FactCodec<?> codec : ALL) {
      BY_KIND.put(codec.kind(), codec);
      BY_TYPE.put(codec.type(), codec);
    }
  }

  private FactCodecs() {}

  /** The name of a fact's kind in a book: {@code pieces-through}. */
  public static String kind(Fact fact) {
    return fact instanceof Fact.Unread unread ? unread.kind() : of(fact).kind();
  }

  /** The fields of a fact as they stand in a book, in their order. */
  public static Map<String, Object> fields(Fact fact) {
    return fact instanceof Fact.Unread unread ? unread.fields() : of(fact).write(fact);
  }

  /**
   * The fact that an entry says. A kind that is not known is kept as it is and passed over, as one
   * written by a newer version; so is one whose fields do not make its kind, see {@link #wrong}.
   */
  public static Fact fact(String kind, Map<String, Object> fields) {
    return read(kind, fields) instanceof Read.Good<Fact> good
        ? good.value()
        : new Fact.Unread(kind, fields);
  }

  /** What is wrong with the fields of a kind that is known, a sentence; empty if nothing is. */
  public static Optional<String> wrong(String kind, Map<String, Object> fields) {
    return read(kind, fields).problem();
  }

  /** Whether entries of that kind mean anything here. */
  public static boolean knows(String kind) {
    return BY_KIND.containsKey(kind);
  }

  /** The names of all kinds that mean something here. */
  public static List<String> kinds() {
    return ALL.stream().map(FactCodec::kind).toList();
  }

  /** What each kind may hold: kind → field → what it may be, as the readers ask for it. */
  public static Map<String, Map<String, FieldShape>> shapes() {
    Map<String, Map<String, FieldShape>> shapes = new LinkedHashMap<>();
    ALL.forEach(codec -> shapes.put(codec.kind(), codec.shape()));
    return shapes;
  }

  private static Read<Fact> read(String kind, Map<String, Object> fields) {
    FactCodec<?> codec = BY_KIND.get(kind);
    return codec == null ? Read.good(new Fact.Unread(kind, fields)) : codec.read(fields);
  }

  private static FactCodec<?> of(Fact fact) {
    FactCodec<?> codec = BY_TYPE.get(fact.getClass());
    if (codec == null) {
      throw new IllegalArgumentException("no codec for " + fact.getClass().getName());
    }
    return codec;
  }
}
