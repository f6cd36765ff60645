package linkwright.job;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Facts as named fields and back. The names are the record's own in small letters with hyphens, so
 * a fact is written down once, in {@link Fact}, and the book follows.
 *
 * <p>Values are texts, whole numbers, decimal numbers, truth values, and lists and maps of them.
 */
public final class FactFields {
  /** Whole numbers up to here are exact as decimal ones. */
  private static final double MOST_WHOLE = 1L << 53;

  private static final Map<String, Class<?>> KINDS = new TreeMap<>();

  static {
    for (Class<?> kind : Fact.class.getPermittedSubclasses()) {
      if (kind != Fact.Unread.class) {
        KINDS.put(kindOf(kind), kind);
      }
    }
  }

  /** What Java tells of a record, asked once: asking takes longer than reading the entry. */
  private record Shape(
      List<RecordComponent> components, List<String> names, Constructor<?> constructor) {
    static Shape of(Class<?> type) {
      RecordComponent[] components = type.getRecordComponents();
      String[] names = new String[components.length];
      Class<?>[] types = new Class<?>[components.length];
      for (int i = 0; i < components.length; i++) {
        names[i] = hyphened(components[i].getName());
        types[i] = components[i].getType();
      }
      try {
        return new Shape(List.of(components), List.of(names), type.getDeclaredConstructor(types));
      } catch (NoSuchMethodException impossible) {
        throw new IllegalArgumentException("not a record: " + type.getSimpleName(), impossible);
      }
    }
  }

  private static final ClassValue<Shape> SHAPES =
      new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
          return Shape.of(type);
        }
      };

  private FactFields() {}

  static String kindOf(Class<?> fact) {
    return hyphened(fact.getSimpleName());
  }

  private static String hyphened(String name) {
    return name.replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  /** The fields of a fact in their order; an empty optional has none. */
  public static Map<String, Object> of(Fact fact) {
    if (fact instanceof Fact.Unread unread) {
      return unread.fields();
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    Shape shape = SHAPES.get(fact.getClass());
    for (int i = 0; i < shape.names().size(); i++) {
      String name = shape.names().get(i);
      Object value = valueOf(shape.components().get(i), fact);
      if (value instanceof OptionalDouble measured) {
        measured.ifPresent(known -> fields.put(name, known));
      } else if (value instanceof Optional<?> text) {
        text.ifPresent(known -> fields.put(name, known));
      } else {
        fields.put(name, plain(value));
      }
    }
    return fields;
  }

  private static Object plain(Object value) {
    if (value instanceof EntryId id) {
      return id.toString();
    }
    return value instanceof Integer whole ? (Object) whole.longValue() : value;
  }

  /**
   * Reads a fact. A kind that is not known, or fields that do not make that kind, give {@link
   * Fact.Unread}: the entry is kept and passed over, as one written by a newer version is.
   */
  public static Fact read(String kind, Map<String, Object> fields) {
    Class<?> type = KINDS.get(kind);
    if (type == null) {
      return new Fact.Unread(kind, fields);
    }
    try {
      return build(type, fields);
    } catch (IllegalArgumentException notThatKind) {
      return new Fact.Unread(kind, fields);
    }
  }

  private static Fact build(Class<?> type, Map<String, Object> fields) {
    Shape shape = SHAPES.get(type);
    Object[] values = new Object[shape.names().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = converted(shape.components().get(i), fields.get(shape.names().get(i)));
    }
    try {
      return (Fact) shape.constructor().newInstance(values);
    } catch (ReflectiveOperationException unusable) {
      throw new IllegalArgumentException("not a " + type.getSimpleName(), unusable);
    }
  }

  private static Object converted(RecordComponent component, Object raw) {
    Class<?> type = component.getType();
    if (type == OptionalDouble.class) {
      return raw == null ? OptionalDouble.empty() : OptionalDouble.of(decimal(raw));
    }
    if (type == Optional.class) {
      return Optional.ofNullable(raw).map(String::valueOf);
    }
    if (raw == null) {
      throw new IllegalArgumentException(component.getName() + " is missing");
    }
    if (type == int.class) {
      return count(raw);
    }
    if (type == long.class) {
      return whole(raw);
    }
    if (type == double.class) {
      return decimal(raw);
    }
    if (type == boolean.class && raw instanceof Boolean) {
      return raw;
    }
    if (type == String.class) {
      return String.valueOf(raw);
    }
    if (type == EntryId.class) {
      return EntryId.parse(String.valueOf(raw))
          .orElseThrow(() -> new IllegalArgumentException("no entry is named " + raw));
    }
    if (type == Map.class && raw instanceof Map<?, ?> map) {
      return mapped(component, map);
    }
    if (type == List.class && raw instanceof List<?> list) {
      List<String> texts = new ArrayList<>();
      list.forEach(item -> texts.add(String.valueOf(item)));
      return List.copyOf(texts);
    }
    throw new IllegalArgumentException(component.getName() + " cannot be " + raw);
  }

  private static Map<String, Object> mapped(RecordComponent component, Map<?, ?> raw) {
    Object valueType = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[1];
    Map<String, Object> map = new LinkedHashMap<>();
    raw.forEach(
        (key, value) -> {
          Object kept = value;
          if (valueType == Integer.class) {
            kept = count(value);
          } else if (valueType == Double.class) {
            kept = decimal(value);
          } else if (valueType == String.class) {
            kept = String.valueOf(value);
          }
          map.put(String.valueOf(key), kept);
        });
    return map;
  }

  private static int count(Object raw) {
    long whole = whole(raw);
    if (whole != (int) whole) {
      throw new IllegalArgumentException(raw + " is more than can be counted");
    }
    return (int) whole;
  }

  private static long whole(Object raw) {
    double value = decimal(raw);
    if (value != Math.rint(value) || value > MOST_WHOLE) {
      throw new IllegalArgumentException(raw + " is no whole number");
    }
    return (long) value;
  }

  private static double decimal(Object raw) {
    // Counts, lengths, masses, times and prices: nothing in a book is below nothing.
    if (raw instanceof Number number
        && number.doubleValue() >= 0
        && number.doubleValue() < Double.POSITIVE_INFINITY) {
      return number.doubleValue();
    }
    throw new IllegalArgumentException(raw + " is not a number of 0 or more");
  }

  private static Object valueOf(RecordComponent component, Fact fact) {
    try {
      return component.getAccessor().invoke(fact);
    } catch (ReflectiveOperationException unreadable) {
      throw new IllegalArgumentException("cannot read " + component.getName(), unreadable);
    }
  }
}
