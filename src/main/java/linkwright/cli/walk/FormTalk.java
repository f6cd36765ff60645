package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import linkwright.coach.content.Part;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.plan.PlanContent;
import linkwright.coach.plan.PlanHeld;
import linkwright.plain.PlainLines;
import linkwright.quantity.Nearest;

/** The coach's forms, a question a line; what is typed goes into the very form of the screen. */
final class FormTalk {
  private static final String LEAVE = "esc";
  private static final String KEEP = "=";
  private static final String EMPTY = "-";
  private static final String BEFORE = "<";
  private static final String SHOW = "?";
  private static final String HELP =
      "An empty line keeps what stands in a field, - empties it, < goes to the one before, ? shows"
          + " all, name: value sets any of them, = keeps the form as it is, esc leaves it.";

  private final Desk desk;
  private final Hands hands;
  private final Set<String> told = new HashSet<>();

  FormTalk(Desk desk, Hands hands) {
    this.desk = desk;
    this.hands = hands;
  }

  /** Asks until the form is kept or left; false when the lines have ended. */
  boolean ask() {
    Form form = form().orElseThrow();
    desk.say(form.title() + ".");
    boolean planned =
        form.purpose() == Form.Purpose.PLAN
            && hands.model().job().map(job -> !job.state().course().wish().isEmpty()).orElse(false);
    desk.say(HELP);
    return talk(planned ? List.of() : all(form));
  }

  /** Fills fields from one line, such as {@code blank 38 mm; length 14 mm}, and keeps the form. */
  boolean answer(String line) {
    for (String part : line.split(";", -1)) {
      if (!part.isBlank() && !named(part.strip(), false)) {
        String word = part.strip();
        List<String> labels = form().orElseThrow().fields().stream().map(Field::label).toList();
        desk.say(
            "“"
                + word
                + "” begins with no field of this form. "
                + Nearest.of(word.replaceAll("[\\s:=].*", ""), labels)
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("There are: " + String.join(", ", labels) + "."));
        return talk(List.of());
      }
    }
    return keep().map(this::talk).orElse(true);
  }

  /** Fills fields by their ids and keeps the form; what is wrong is told. */
  void fill(Map<String, String> texts) {
    Form form = form().orElseThrow();
    for (int i : all(form)) {
      Optional.ofNullable(texts.get(form.fields().get(i).id())).ifPresent(text -> set(i, text));
    }
    keep();
  }

  /** Talks about these fields, then about the whole. */
  private boolean talk(List<Integer> toAsk) {
    List<Integer> open = new ArrayList<>(toAsk);
    int at = 0;
    while (form().isPresent()) {
      boolean whole = at >= open.size();
      desk.say(whole ? "Change a field as in “name: value”, or = to end." : prompt(open.get(at)));
      Optional<String> line = desk.next();
      if (line.isEmpty()) {
        return false;
      }
      told.clear();
      String typed = line.get();
      boolean quit = typed.equalsIgnoreCase(Word.QUIT.word());
      if (quit || typed.equalsIgnoreCase(LEAVE)) {
        hands.press(Key.of(Key.Kind.ESCAPE));
        desk.say("Not kept. What was typed stays for the next time.");
        if (quit) {
          return false;
        }
      } else if (typed.equalsIgnoreCase(Word.HELP.word())) {
        desk.say(HELP);
      } else if (typed.equals(SHOW)) {
        show();
      } else if (typed.equals(BEFORE)) {
        at = Math.max(0, at - 1);
      } else if (typed.equals(KEEP) || (whole && typed.isEmpty())) {
        open = new ArrayList<>(keep().orElse(List.of()));
        at = 0;
      } else if (named(typed, true)) {
        // It was set, and its trouble told.
      } else if (whole) {
        desk.say("Write the field's name, a colon and the value; ? shows all fields.");
      } else if (set(open.get(at), typed)) {
        at++;
      }
      if (!open.isEmpty() && at == open.size() && form().isPresent()) {
        open = new ArrayList<>(keep().orElse(List.of()));
        at = 0;
      }
    }
    return true;
  }

  /** Keeps the form; if it cannot be, tells why and answers which fields to ask for again. */
  private Optional<List<Integer>> keep() {
    hands.press(Key.ctrl("k"));
    Optional<Form> form = form();
    if (form.isEmpty()) {
      return Optional.empty();
    }
    desk.sayAll(hands.takeTold());
    List<Field> fields = form.get().fields();
    List<Integer> wrong =
        all(form.get()).stream().filter(i -> fields.get(i).trouble().isPresent()).toList();
    wrong.forEach(i -> tellTrouble(fields.get(i)));
    return Optional.of(wrong);
  }

  private Optional<Form> form() {
    return hands.model().held().form();
  }

  private static List<Integer> all(Form form) {
    return IntStream.range(0, form.fields().size()).boxed().toList();
  }

  private String prompt(int index) {
    Field field = form().orElseThrow().fields().get(index);
    StringBuilder prompt = new StringBuilder(capital(field.label()));
    if (!field.choices().isEmpty()) {
      List<String> words = field.choices().stream().filter(word -> !word.isEmpty()).toList();
      prompt.append(" (one of ").append(String.join(", ", words)).append(")");
    } else if (!field.hint().isBlank()) {
      prompt.append(" (").append(field.hint()).append(")");
    }
    return prompt.append("? ").append(now(field)).toString();
  }

  private static String now(Field field) {
    return field.text().isBlank() ? "Empty now." : "Now: " + field.text() + ".";
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /** Sets what stands in a field; false when it is wrong, which is told. */
  private boolean set(int index, String typed) {
    if (typed.isEmpty()) {
      return true;
    }
    String text = typed.equals(EMPTY) ? "" : typed;
    while (form().orElseThrow().at() != index) {
      hands.press(Key.of(form().orElseThrow().at() < index ? Key.Kind.DOWN : Key.Kind.UP));
    }
    String before = form().orElseThrow().fields().get(index).text();
    if (!before.equals(text)) {
      hands.press(Key.of(Key.Kind.END));
      for (int i = before.codePointCount(0, before.length()); i > 0; i--) {
        hands.press(Key.of(Key.Kind.BACKSPACE));
      }
      if (!text.isEmpty()) {
        hands.paste(text);
      }
    }
    Field after = form().orElseThrow().fields().get(index);
    tellTrouble(after);
    return after.trouble().isEmpty();
  }

  private void tellTrouble(Field field) {
    field
        .trouble()
        .map(sentence -> capital(field.label()) + ": " + sentence)
        .filter(told::add)
        .ifPresent(desk::say);
  }

  /** Takes {@code name: value}; false if it begins with the name of no field. */
  private boolean named(String typed, boolean colon) {
    String lower = typed.toLowerCase(Locale.ROOT);
    List<Field> fields = form().orElseThrow().fields();
    List<Integer> longestFirst =
        all(form().orElseThrow()).stream()
            .sorted(Comparator.comparing(i -> -fields.get(i).label().length()))
            .toList();
    for (int i : longestFirst) {
      for (String name : List.of(fields.get(i).label(), fields.get(i).id())) {
        if (lower.startsWith(name.toLowerCase(Locale.ROOT))) {
          String rest = typed.substring(name.length());
          boolean ends = rest.matches(colon ? "\\s*[:=].*" : "(\\s*[:=].*|\\s.*|)");
          if (ends) {
            String value = rest.strip().replaceFirst("^[:=]", "").strip();
            set(i, value.isEmpty() ? EMPTY : value);
            return true;
          }
        }
      }
    }
    return false;
  }

  private void show() {
    for (Field field : form().orElseThrow().fields()) {
      desk.say(capital(field.label()) + ": " + field.text());
    }
    Model model = hands.model();
    if (model.held() instanceof PlanHeld plan) {
      desk.sayAll(summary(PlanContent.comesTo(plan.preview(), model)));
    }
  }

  /** What a plan comes to, a line each. */
  static List<String> summary(List<Part> comesTo) {
    return new PlainLines(Act::words).of(comesTo);
  }
}
