package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.Pages;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.plain.PlainLines;
import linkwright.routine.TradeWords;

/** The coach's page in the lines of a walk: what is said, then what can be typed. */
final class WalkPage {
  /** What has a word of its own at every place, and is told by help alone. */
  private static final Set<Act> EVERYWHERE =
      Set.of(Act.HELP, Act.FIND, Act.ROUND, Act.LEAVE, Act.ACROSS, Act.TO_SETTINGS, Act.LESS);

  /** Where a student is asked. */
  private static final Set<PlaceId> STUDENTS = Set.of(PlaceId.LESSON, PlaceId.SAYING);

  private final Page page;
  private final Optional<Act> common;
  private final boolean round;
  private final boolean studentAsked;
  private final TradeWords words;

  /** That a flame may be lit, which the head of the screen says; empty where it is asked about. */
  private final Optional<String> flame;

  /** The page that a line is typed at. */
  WalkPage(Model model) {
    this(model, true);
  }

  private WalkPage(Model model, boolean stays) {
    this.page = Pages.of(model);
    this.words = JobWords.tradeWords(model);
    boolean closed = model.job().map(job -> job.state().course().closed()).orElse(false);
    this.common =
        page.open().stream()
            .flatMap(open -> open.act().stream())
            .findFirst()
            .filter(act -> stays && act != Act.UNDO && !EVERYWHERE.contains(act))
            // What is asked is answered by its number; an empty line leads nowhere else.
            .filter(act -> !(asks() && PlaceId.ledToBy(act).isPresent()))
            // A book is opened, and a mark set in it, by the word for it and by no slip.
            .filter(act -> act != Act.TO_STUDENT && act != Act.SIGN_STEP)
            // What is said of gas is said by a word: an empty line may come from before it was
            // asked.
            .filter(act -> act != Act.FLAMES_OUT)
            // What is closed is not opened again by a line that is empty by mistake.
            .filter(act -> !(closed && act == Act.REOPEN));
    this.studentAsked = asks() && STUDENTS.contains(model.held().place());
    this.round = model.held().place() == PlaceId.ROUND;
    this.flame = HotWorkWords.told(model).filter(any -> model.held().place() != PlaceId.HOT_WORK);
  }

  /** A page that is left before the next line: what it names, an empty line does not do. */
  static WalkPage passed(Model model) {
    return new WalkPage(model, false);
  }

  /** What an empty line does: the first act that is open; empty if it does nothing. */
  Optional<Act> common() {
    return common;
  }

  /** The act of this page that goes by such a line, as the page reads it; empty for none. */
  Optional<Act> called(String line) {
    return typed().filter(act -> WalkWord.names(line, act, says(act))).findFirst();
  }

  /** Whether an act is open now. */
  boolean opens(Act act) {
    return typed().anyMatch(act::equals);
  }

  /** What this page offers beside what there is everywhere. */
  Stream<Act> offered() {
    return typed().filter(act -> !EVERYWHERE.contains(act));
  }

  /** Whether a number answers a student's question here. */
  boolean asksStudent() {
    return studentAsked;
  }

  /** Whether that number is one of the answers. */
  boolean answers(int number) {
    return page.body().parts().stream()
        .filter(Question.class::isInstance)
        .flatMap(part -> ((Question) part).answers().stream())
        .anyMatch(answer -> answer.key().equals(Integer.toString(number)));
  }

  /** The layout in lines, with acts named by the words of the walk. */
  PlainLines plain() {
    return new PlainLines(
        act ->
            common.filter(act::equals).isPresent() ? "an empty line" : WalkWord.naming(act, words));
  }

  /**
   * By what one page is told from another: a place, step, card or question has a name of its own.
   */
  List<String> names() {
    List<String> names = new ArrayList<>(List.of(page.body().title()));
    page.body().parts().forEach(part -> name(part).ifPresent(names::add));
    return names;
  }

  /** Where one is: the job, the place, the step and what stands in front, in one sentence. */
  String where() {
    List<String> parts = new ArrayList<>(List.of(page.job()));
    parts.addAll(names());
    inFront()
        .ifPresent(
            front -> {
              parts.remove(front);
              parts.add("in front stands: " + front);
            });
    return PlainLines.sentence("Here: " + plain().filled(String.join("; ", parts)));
  }

  private static Optional<String> name(Part part) {
    return part instanceof Prose prose && prose.kind() == Prose.Kind.HEAD
        ? Optional.of(prose.text())
        : first(part);
  }

  private static Optional<String> first(Part part) {
    if (part instanceof Question question) {
      return Optional.of(question.asks());
    }
    return part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION_TITLE
        ? Optional.of(prose.text())
        : Optional.empty();
  }

  /** What stands in front of the place: a caution or a question; empty for nothing. */
  Optional<String> inFront() {
    return page.body().parts().stream().flatMap(part -> first(part).stream()).findFirst();
  }

  /** The form that is open, in the user's words and units. */
  Optional<Form> form() {
    return Beside.flat(page.body().parts())
        .filter(Fields.class::isInstance)
        .map(part -> ((Fields) part).form())
        .findFirst();
  }

  boolean asks() {
    return page.body().parts().stream().anyMatch(Question.class::isInstance);
  }

  /** Whether it tells how an answer was. */
  boolean tellsAnswer() {
    return AskedContent.tells(page.body().parts());
  }

  /** The table that an act would be about; empty if there is none. */
  Optional<Table> table() {
    return page.body().parts().stream()
        .filter(Table.class::isInstance)
        .map(Table.class::cast)
        .filter(table -> table.chosen() >= 0)
        .findFirst();
  }

  /** What is told of the last act. */
  String told() {
    return plain().filled(page.told());
  }

  /** All that is said here, but for what may wait until it is asked for. */
  List<String> said() {
    List<Part> now = page.body().parts().stream().filter(part -> !later(part)).toList();
    List<String> lines = new ArrayList<>();
    if (round) {
      lines.add("Job: " + page.job() + ".");
    }
    lines.addAll(plain().of(new Content(page.body().title(), now)));
    if (round) {
      page.chain().ifPresent(pieces -> lines.addAll(plain().pieces(pieces)));
    }
    if (!page.still().isBlank() && inFront().isEmpty()) {
      lines.add(page.still() + ".");
    }
    flame.map(plain()::filled).ifPresent(lines::add);
    return lines;
  }

  /** What may wait: why, and what may go wrong. */
  List<String> later() {
    return plain().of(page.body().parts().stream().filter(WalkPage::later).toList());
  }

  private static boolean later(Part part) {
    return part instanceof Prose prose && prose.kind().later();
  }

  /** The fire watch and the wait that ends first, unless the page says them anyway. */
  List<String> nextWaits() {
    List<String> said = said();
    return page.nextWaits().stream()
        .filter(wait -> said.stream().noneMatch(line -> says(line, wait)))
        .flatMap(wait -> plain().waiting(wait).stream())
        .toList();
  }

  private static boolean says(String line, WaitShown wait) {
    return line.contains(wait.name()) && line.contains(wait.job());
  }

  /** What an empty line does, in words. */
  List<String> emptyLine() {
    return common.map(act -> List.of("An empty line: " + says(act) + ".")).orElse(List.of());
  }

  /** The other words that do something here. */
  List<String> words() {
    String words =
        typed()
            .filter(act -> !EVERYWHERE.contains(act))
            .filter(act -> !(act == Act.MORE && later().isEmpty()))
            .filter(act -> common.filter(act::equals).isEmpty())
            .distinct()
            .map(act -> word(act))
            .distinct()
            .collect(Collectors.joining(", "));
    List<String> told = new ArrayList<>();
    if (studentAsked) {
      told.add("A number answers; repeat says the question again.");
    }
    if (!words.isEmpty()) {
      told.add("Or type " + words + ".");
    }
    return told;
  }

  private String word(Act act) {
    String word = words.show(WalkWord.of(act));
    String says = says(act);
    return WalkWord.names(word, act, says) ? says : word + " (" + says + ")";
  }

  private String says(Act act) {
    return page.open().stream()
        .filter(open -> open.act().filter(act::equals).isPresent())
        .map(Page.Open::says)
        .findFirst()
        .orElse(act.words());
  }

  private Stream<Act> typed() {
    Stream<Act> listed =
        page.body().parts().stream()
            .filter(Acts.class::isInstance)
            .flatMap(part -> ((Acts) part).choices().stream())
            .map(Acts.Choice::act);
    return Stream.concat(page.open().stream().flatMap(open -> open.act().stream()), listed);
  }
}
