package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.quantity.Nearest;

/** The coach's forms, a question a line; what is typed goes into the very form of the screen. */
final class FormTalk {
  private static final String LEAVE = "esc";
  private static final String KEEP = "=";
  private static final String EMPTY = "-";
  private static final String BEFORE = "<";
  private static final String SHOW = "?";
  private static final int MOST_NAMED = 6;
  private static final String HELP =
      "An empty line keeps what stands in a field, - empties it, < goes to the one before, ? shows"
          + " all, list tells what can be chosen, what explains the field, name: value sets any of"
          + " them, a line in double quotes is always the value, = keeps the form as it is, esc"
          + " leaves it, throw away gives up what is typed.";

  private final WalkLines lines;
  private final WalkCoach coach;
  private final FieldTelling telling;
  private final Set<String> told = new HashSet<>();
  private boolean asksIfSo;

  FormTalk(WalkLines lines, WalkCoach coach) {
    this.lines = lines;
    this.coach = coach;
    this.telling = new FieldTelling(lines);
  }

  /** Asks until the form is kept or left; false when the lines have ended. */
  boolean ask() {
    Form form = form().orElseThrow();
    lines.say(capital(form.title()) + ".");
    boolean planned =
        form.purpose() == Form.Purpose.PLAN
            && coach.model().job().map(job -> !job.state().course().wish().isEmpty()).orElse(false);
    lines.say(HELP);
    return talk(planned ? List.of() : asked(form));
  }

  /** Fills fields from one line, such as {@code blank 38 mm; length 14 mm}, and keeps the form. */
  boolean answer(String line) {
    for (String part : line.split(";", -1)) {
      if (!part.isBlank() && !named(part.strip(), false)) {
        String word = part.strip();
        List<String> labels = form().orElseThrow().fields().stream().map(Field::label).toList();
        lines.say(
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

  /** The same, and empties the others: what is only usual is none of it. */
  void fillAlone(Map<String, String> texts) {
    Map<String, String> all = new LinkedHashMap<>();
    for (Field field : form().orElseThrow().fields()) {
      all.put(field.id(), EMPTY);
    }
    all.putAll(texts);
    fill(all);
  }

  /** Talks about these fields, then about the whole. */
  private boolean talk(List<Integer> toAsk) {
    List<Integer> open = new ArrayList<>(toAsk);
    int at = 0;
    while (form().isPresent()) {
      if (coach.failing()) {
        if (!again()) {
          return false;
        }
        continue;
      }
      boolean whole = at >= open.size();
      lines.say(whole ? "Change a field as in “name: value”, or = to end." : prompt(open.get(at)));
      Optional<String> line = lines.next();
      if (line.isEmpty()) {
        return false;
      }
      told.clear();
      String typed = line.get();
      boolean quit = typed.equalsIgnoreCase(WalkWord.QUIT.word());
      if (quit || typed.equalsIgnoreCase(LEAVE)) {
        coach.press(Key.of(Key.Kind.ESCAPE));
        lines.say("Not kept. What was typed stays for the next time.");
        if (quit) {
          return false;
        }
      } else if (WalkWord.names(typed, Act.THROW_AWAY, "")) {
        coach.choose(Act.THROW_AWAY);
        lines.sayAll(coach.takeTold());
      } else if (typed.equalsIgnoreCase(WalkWord.HELP.word())) {
        lines.say(HELP);
      } else if (typed.equals(SHOW)) {
        show();
      } else if (typed.equals(BEFORE)) {
        at = Math.max(0, at - 1);
      } else if (typed.equals(KEEP) || (whole && typed.isEmpty())) {
        open = new ArrayList<>(keep().orElse(List.of()));
        at = 0;
      } else if (asksIfSo && typed.matches("(?i)no?") && !isChoice(typed, open, at)) {
        lines.say("Nothing is kept. Set it right as in “name: value”; esc leaves the form.");
      } else if (asksIfSo && typed.matches("(?i)y(es)?") && !isChoice(typed, open, at)) {
        open = new ArrayList<>(keep().orElse(List.of()));
        at = 0;
      } else if (told(typed, whole ? Optional.empty() : Optional.of(open.get(at)))) {
        // It was answered, and is no value.
      } else if (!whole && typed.matches("\".+\"")) {
        at += set(open.get(at), typed.substring(1, typed.length() - 1)) ? 1 : 0;
      } else if (named(typed, true)) {
        // It was set, and its trouble told.
      } else if (isPersonsWord(typed)) {
        if (correctsWho(typed)) {
          open = new ArrayList<>(keep().orElse(List.of()));
          at = 0;
        }
      } else if (answeredHere(typed, whole ? Optional.empty() : Optional.of(open.get(at)))) {
        // It is a word of the walk or the name of a field: told, and never taken as a value.
      } else if (whole) {
        lines.say("Write the field's name, a colon and the value; ? shows all fields.");
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

  /** Whether the field that is asked for can be set to that word. */
  private boolean isChoice(String typed, List<Integer> open, int at) {
    return at < open.size()
        && form().orElseThrow().fields().get(open.get(at)).choices().stream()
            .anyMatch(each -> each.id().equalsIgnoreCase(typed));
  }

  /** Answers what is asked of a field: of the one in front, or of the one named. */
  private boolean told(String typed, Optional<Integer> at) {
    Optional<Field> asked = at.map(index -> form().orElseThrow().fields().get(index));
    return telling.answers(typed, asked, this::called);
  }

  /** Tells of a line that is no value: the name of a field, a word of the walk; else false. */
  private boolean answeredHere(String typed, Optional<Integer> at) {
    Optional<Field> asked = at.map(index -> form().orElseThrow().fields().get(index));
    List<Offered> choices = asked.map(Field::choices).orElse(List.of());
    if (typed.isEmpty() || choices.stream().anyMatch(each -> each.id().equalsIgnoreCase(typed))) {
      return false;
    }
    Optional<Field> field = called(typed);
    Optional<WalkWord> word = WalkWord.of(WalkWord.first(typed));
    String first = WalkWord.first(typed);
    boolean words = asked.filter(each -> each.isFree() || each.offers(first)).isPresent();
    boolean alone = word.isPresent() && (first.equals(typed) || !words);
    if (field.isPresent()) {
      lines.say(
          "“"
              + typed
              + "” names a field. "
              + now(field.get())
              + " To set it write its name, a colon and the value; in double quotes it is a"
              + " value.");
    } else if (word.filter(WalkWord.REPEAT::equals).isPresent() && alone) {
      show();
    } else if (word.filter(WalkWord.HELP::equals).isPresent()) {
      help(typed.substring(WalkWord.first(typed).length()).strip());
    } else if (alone || word.filter(WalkWord::isNoText).isPresent()) {
      lines.say(
          "“"
              + typed
              + "” is for the walk, and a form is open: nothing is entered. esc leaves the form"
              + " first, and what is typed stays. In double quotes it is a value all the same.");
    } else if (typed.matches("\\p{L}[^:=\\d]*[:=].*") && asked.filter(Field::isFree).isEmpty()) {
      lines.say(
          "No field here is called “"
              + typed.split("\\s*[:=]", 2)[0]
              + "”: nothing is set. There are: "
              + String.join(", ", form().orElseThrow().fields().stream().map(Field::label).toList())
              + ".");
    } else {
      return false;
    }
    return true;
  }

  /** What a field is, where the word names one; else what the walk's help says of it. */
  private void help(String word) {
    called(word).ifPresentOrElse(telling::explain, () -> new WalkHelp(lines, coach).tell(word));
  }

  private Optional<Field> called(String name) {
    return form().orElseThrow().fields().stream()
        .filter(each -> each.label().equalsIgnoreCase(name) || each.id().equalsIgnoreCase(name))
        .findFirst();
  }

  /** Whether a line that would be taken for a person's name begins with a word of the walk. */
  private boolean isPersonsWord(String typed) {
    return form().orElseThrow().purpose() == Form.Purpose.PERSON
        && !typed.isEmpty()
        && (WalkWord.of(WalkWord.first(typed)).isPresent()
            || Act.withId(WalkWord.first(typed)).isPresent()
            || new WalkPage(coach.model()).called(typed).isPresent());
  }

  /** Takes {@code who NAME}; any other word of the walk is told to be no name, and false. */
  private boolean correctsWho(String typed) {
    String name = typed.substring(WalkWord.first(typed).length()).strip();
    if (WalkWord.first(typed).equalsIgnoreCase(WalkWord.WHO.word()) && !name.isEmpty()) {
      return set(0, name);
    }
    lines.say(
        "“"
            + typed
            + "” begins with a word of the walk and is not taken for a name; nothing is entered."
            + " Write the name, or who and the name; esc leaves this first. In double quotes it"
            + " is a name all the same.");
    return false;
  }

  /** Keeps the form; if it cannot be, tells why and answers which fields to ask for again. */
  private Optional<List<Integer>> keep() {
    coach.press(Key.ctrl("k"));
    Optional<Form> form = form();
    if (form.isEmpty()) {
      return Optional.empty();
    }
    List<String> said = coach.takeTold();
    lines.sayAll(said);
    asksIfSo = said.stream().anyMatch(each -> each.contains(Asking.ONCE_MORE));
    List<Field> fields = form.get().fields();
    List<Integer> wrong =
        all(form.get()).stream().filter(i -> fields.get(i).trouble().isPresent()).toList();
    wrong.forEach(i -> tellTrouble(fields.get(i)));
    return Optional.of(wrong);
  }

  /** The form that is open, as it is said: in her words and units, what is typed as it is. */
  private Optional<Form> form() {
    Optional<Form> held = coach.model().held().form();
    return held.flatMap(any -> new WalkPage(coach.model()).form()).or(() -> held);
  }

  private static List<Integer> all(Form form) {
    return IntStream.range(0, form.fields().size()).boxed().toList();
  }

  /** What is asked one by one: what decides; the rest is set by its name. */
  private static List<Integer> asked(Form form) {
    return form.lines().stream().filter(line -> line < form.fields().size()).toList();
  }

  private String prompt(int index) {
    Field field = form().orElseThrow().fields().get(index);
    StringBuilder prompt = new StringBuilder(capital(field.label()));
    if (!field.choices().isEmpty()) {
      List<String> words =
          field.choices().stream().map(Offered::id).filter(word -> !word.isEmpty()).toList();
      prompt
          .append(
              field.takesParts()
                  ? " (one of "
                  : words.size() > MOST_NAMED ? " (" + field.hint() + ", of " : " (such as ")
          .append(
              words.size() > MOST_NAMED
                  ? words.size() + ": list tells them"
                  : String.join(", ", words))
          .append(")");
    } else if (!field.hint().isBlank()) {
      prompt.append(" ").append(field.beside());
    }
    return prompt.append("? ").append(now(field)).toString();
  }

  private static String now(Field field) {
    if (field.text().isBlank()) {
      return "Empty now.";
    }
    return (field.trouble().isPresent() ? "Not taken: " : "Now: ") + field.now() + ".";
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
    asksIfSo = false;
    coach.field(index);
    String before = form().orElseThrow().fields().get(index).text();
    if (!before.equals(text)) {
      coach.press(Key.of(Key.Kind.END));
      for (int i = before.codePointCount(0, before.length()); i > 0; i--) {
        coach.press(Key.of(Key.Kind.BACKSPACE));
      }
      if (!text.isEmpty()) {
        coach.paste(text);
      }
    }
    coach.takeTold().stream().filter(told::add).forEach(lines::say);
    Field after = form().orElseThrow().fields().get(index);
    tellTrouble(after);
    return after.trouble().or(after::whichOne).isEmpty();
  }

  private void tellTrouble(Field field) {
    field
        .trouble()
        .or(field::whichOne)
        .map(new WalkPage(coach.model()).plain()::filled)
        .map(sentence -> capital(field.label()) + ": " + FieldTelling.wrong(field, sentence))
        .filter(told::add)
        .ifPresent(lines::say);
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
    WalkPage page = new WalkPage(coach.model());
    lines.sayAll(page.said());
  }

  /** What could not be written is tried again or given up; nothing typed is lost by either. */
  private boolean again() {
    WalkPage page = new WalkPage(coach.model());
    lines.sayAll(page.said());
    lines.sayAll(page.emptyLine());
    lines.sayAll(page.words());
    Optional<String> line = lines.next();
    line.filter(typed -> typed.isEmpty() || WalkWord.names(typed, Act.TRY_AGAIN, ""))
        .ifPresent(typed -> coach.choose(Act.TRY_AGAIN));
    line.filter(typed -> WalkWord.names(typed, Act.GIVE_UP, ""))
        .ifPresent(typed -> coach.choose(Act.GIVE_UP));
    lines.sayAll(coach.takeTold());
    return line.filter(typed -> !typed.equalsIgnoreCase(WalkWord.QUIT.word())).isPresent();
  }
}
