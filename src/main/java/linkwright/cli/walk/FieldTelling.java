package linkwright.cli.walk;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.form.Field;
import linkwright.coach.form.Offered;

/** Tells of a field of a form what can be chosen in it and what it is. */
final class FieldTelling {
  private static final Pattern BEFORE =
      Pattern.compile("(list|what)(?:\\s+(.+))?", Pattern.CASE_INSENSITIVE);
  private static final Pattern AFTER =
      Pattern.compile("(.+?)\\s*[:=]\\s*(list|what)", Pattern.CASE_INSENSITIVE);

  private static final Pattern LENGTH =
      Pattern.compile("\\d[\\d.]*(?: \\d+/\\d+)? (?:mm|cm|m|in|ft)\\b");
  private static final Pattern EXAMPLE =
      Pattern.compile("Write it like this: (\\d[\\d.]* (?:mm|in))\\.$");

  private final WalkLines lines;

  FieldTelling(WalkLines lines) {
    this.lines = lines;
  }

  /** Answers list and what, of the field that is asked for or the one named; else false. */
  boolean answers(String typed, Optional<Field> asked, Function<String, Optional<Field>> called) {
    Matcher before = BEFORE.matcher(typed);
    Matcher after = AFTER.matcher(typed);
    boolean first = before.matches();
    if (!first && !after.matches()) {
      return false;
    }
    Optional<String> name = Optional.ofNullable(first ? before.group(2) : after.group(1));
    Optional<Field> field = name.isPresent() ? called.apply(name.get()) : asked;
    String word = first ? before.group(1) : after.group(2);
    if (field.isEmpty() && name.isPresent()) {
      return false;
    }
    if (field.isEmpty()) {
      lines.say("Write " + word + " and the name of a field; ? shows all fields.");
    } else if (word.equalsIgnoreCase("list")) {
      list(field.get());
    } else {
      explain(field.get());
    }
    return true;
  }

  private void list(Field field) {
    if (field.choices().isEmpty()) {
      lines.say(
          field.isFree() || field.hint().isBlank()
              ? "Anything can be written here."
              : "There is no list for this. " + Field.hintTold(field.hint()));
    }
    for (Offered choice : field.choices()) {
      if (!choice.id().isEmpty()) {
        lines.say(
            choice.says().isEmpty()
                ? "“" + choice.id() + "”."
                : choice.id() + ": " + choice.says() + ".");
      }
    }
  }

  /** What is wrong, ending with the field's own example of a length where it has one. */
  static String wrong(Field field, String sentence) {
    Matcher own = LENGTH.matcher(field.hint());
    Matcher any = EXAMPLE.matcher(sentence);
    return own.find() && any.find()
        ? sentence.substring(0, any.start(1)) + own.group() + sentence.substring(any.end(1))
        : sentence;
  }

  void explain(Field field) {
    lines.say(String.join(" ", field.explained()));
  }
}
