package linkwright.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.reference.Reference;
import linkwright.reference.TradeTerm;
import linkwright.routine.Caution;
import linkwright.routine.ChainEnds;
import linkwright.routine.Hazard;
import linkwright.routine.Makes;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.StudyQuestion;
import linkwright.routine.When;

/**
 * What a student can be asked of a routine, from the routine's own data: in the order in which it
 * is taught, the sequence and its dangers first.
 *
 * <p>An item is left out where its wrong answers could not hide the right one ({@link
 * WrongAnswers}), so that none is answered from its wording alone.
 */
public final class QuestionBank {
  private static final int LATER = 8;
  private static final int NEAR = 12;

  /** What covers eyes and hands or ties hair back is right before anything. */
  private static final Pattern COVERS_HER =
      Pattern.compile("(?i)\\b(eyes?|ears?|hair|sleeves?|gloves?|mask|apron|shoes)\\b");

  private static final Pattern GAS =
      Pattern.compile("(?i)\\b(gas|torch|bottles?|hoses?|unions|flame|extinguisher)\\b");

  private static final Pattern SOLDERS = Pattern.compile("(?i)\\bsolder");

  private final Routine routine;
  private final List<Step> sequence;
  private final Map<String, Caution> cautions = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private final WordStems stems = new WordStems();

  /** Cards of which it was asked what keeps their danger away. */
  private final Set<String> firsts = new HashSet<>();

  private QuestionBank(Routine routine, List<Caution> cautions) {
    this.routine = routine;
    // A step that only some jobs have is in no one's sequence.
    this.sequence =
        routine.steps().stream().filter(step -> step.detail().when().equals(When.ALWAYS)).toList();
    cautions.forEach(card -> this.cautions.put(card.id(), card));
  }

  /**
   * All that can be asked.
   *
   * @param routine the routine
   * @param cautions all cautions there are
   * @param reference the words of the trade, and what a hand has to see, drawn
   */
  public static List<Item> of(Routine routine, List<Caution> cautions, Reference reference) {
    QuestionBank bank = new QuestionBank(routine, cautions);
    bank.sequenceAndDangers();
    bank.ownQuestions(StepId.NONE, routine.detail().questions());
    bank.lookFors();
    bank.items.addAll(Grades.of(routine));
    bank.drawn(reference);
    bank.items.addAll(WaitItems.of(routine));
    bank.numbers();
    bank.whys();
    bank.faults();
    bank.items.addAll(CardItems.of(routine, bank.cautions, bank.stems));
    bank.words(reference.glossary());
    return List.copyOf(bank.items);
  }

  private void sequenceAndDangers() {
    sequence.stream().findFirst().ifPresent(this::order);
    for (int i = 1; i < sequence.size(); i++) {
      Step step = sequence.get(i);
      String asks = "“" + sequence.get(i - 1).title() + "” is done. What comes next?";
      // All titles are told in the routine, so none is left out; what was done is the less likely.
      List<String> near = new ArrayList<>();
      for (int j = i + 1; j < Math.min(sequence.size(), i + LATER + 1); j++) {
        near.add(sequence.get(j).title());
      }
      for (int j = i - 2; j >= 0 && near.size() < NEAR; j--) {
        near.add(sequence.get(j).title());
      }
      add(
          Topic.NEXT,
          "next/" + step.id(),
          step.id(),
          "",
          asks,
          step.title(),
          near,
          step.why(),
          false);
      danger(step);
    }
  }

  /** Before the first step that way is asked on which it leads, and what can hurt there. */
  private void order(Step first) {
    List<String> titles = sequence.stream().skip(1).map(Step::title).toList();
    // A title that stands twice would be right at two places.
    List<String> once =
        titles.stream().filter(title -> Collections.frequency(titles, title) == 1).toList();
    if (once.size() >= OrderItem.ASKED) {
      items.add(
          new OrderItem(
              id("next/" + first.id() + "/order"),
              first.id(),
              routine.title() + ": in which order are these done?",
              once,
              "Before them all comes “" + first.title() + "”."));
    }
    danger(first);
  }

  /** What a hand has to see: each drawing that a step shows, once. */
  private void drawn(Reference reference) {
    routine.steps().stream()
        .flatMap(step -> step.detail().pictures().stream())
        .distinct()
        .flatMap(name -> reference.picture(name).stream())
        .forEach(picture -> items.addAll(DrawnItem.of(picture)));
  }

  private void danger(Step step) {
    List<Caution> here = new CardsAsked(sequence, cautions).at(step);
    List<Caution> apart = metFirst(new CautionsElsewhere(step, here, stems).of(cautions.values()));
    List<String> elsewhere = apart.stream().map(Caution::canHappen).toList();
    for (Caution card : here) {
      first(step, card, apart);
      add(
          Topic.DANGER,
          "danger/" + step.id() + "/" + card.id(),
          step.id(),
          card.id(),
          "Before “" + step.title() + "”: what can happen here?",
          card.canHappen(),
          elsewhere,
          card.shortLine(),
          true);
    }
  }

  /** What this routine warns of somewhere is likelier than what it never does. */
  private List<Caution> metFirst(List<Caution> apart) {
    return CardItems.metFirst(apart, routine);
  }

  /** What keeps it away, asked where the card is met first. */
  private void first(Step step, Caution card, List<Caution> apart) {
    List<String> others =
        apart.stream()
            .flatMap(other -> other.doList().stream())
            .filter(text -> !COVERS_HER.matcher(text).find())
            .filter(text -> !isOfGas(text) || !isOfGas(step.doText()))
            .toList();
    boolean met = CardItems.hasItsOwn(card) || !firsts.add(card.id());
    for (int i = 0; i < card.doList().size() && !met; i++) {
      met =
          isOfTheStep(step, card.doList().get(i))
              && add(
                  Topic.DANGER,
                  "first/" + step.id() + "/" + card.id(),
                  step.id(),
                  card.id(),
                  "Before “" + step.title() + "”: what is done, so that nobody is hurt?",
                  card.doList().get(i),
                  others,
                  card.shortLine(),
                  true);
    }
  }

  /** Solder is spoken of where something is heated; a cold clasp has nothing of it. */
  private static boolean isOfTheStep(Step step, String text) {
    return step.does().contains(Hazard.HEATS) || !SOLDERS.matcher(text).find();
  }

  /** Where a step shuts the gas, what makes a torch safe is right there too. */
  private static boolean isOfGas(String text) {
    return GAS.matcher(text).find();
  }

  private void lookFors() {
    for (Step step : routine.steps()) {
      add(
          Topic.LOOK_FOR,
          "look/" + step.id(),
          step.id(),
          "",
          "“" + step.title() + "”: how do you see that it is right?",
          step.lookFor(),
          unlike(step, Step::lookFor),
          step.why(),
          true);
      ownQuestions(step.id(), step.detail().questions());
    }
  }

  private void whys() {
    for (Step step : routine.steps()) {
      add(
          Topic.WHY,
          "why/" + step.id(),
          step.id(),
          "",
          "“" + step.title() + "”: why is that done, and here?",
          step.why(),
          unlike(step, Step::why),
          "",
          true);
    }
  }

  /** The texts of steps that do something else: of two alike both answers would be right. */
  private List<String> unlike(Step step, Function<Step, String> text) {
    return from(step).stream().filter(other -> !EquallyRight.steps(step, other)).map(text).toList();
  }

  /** All steps, the nearest to one first: what stands beside it is the likelier answer. */
  private List<Step> from(Step step) {
    List<Step> all = routine.steps();
    int at = all.indexOf(step);
    return all.stream()
        .sorted(Comparator.comparingInt(other -> Math.abs(all.indexOf(other) - at)))
        .toList();
  }

  private void faults() {
    for (Step step : routine.steps()) {
      for (int i = 0; i < step.wrong().size(); i++) {
        Remedy fault = step.wrong().get(i);
        String at = step.id() + "/" + i;
        String seen = "At “" + step.title() + "” you see: " + fault.sees() + ".";
        add(
            Topic.FAULT,
            "fault/" + at,
            step.id(),
            "",
            seen + " What does it mean?",
            fault.means(),
            otherFaults(step, fault, Remedy::means),
            fault.remedy(),
            true);
        add(
            Topic.REMEDY,
            "remedy/" + at,
            step.id(),
            "",
            seen + " What helps?",
            fault.remedy(),
            otherFaults(step, fault, Remedy::remedy).stream()
                .filter(other -> !EquallyRight.remedies(fault.remedy(), other, stems))
                .toList(),
            fault.means(),
            true);
        if (AfterFaultWords.isPlain(step, fault)) {
          items.add(
              new Item.FateItem(
                  id("fate/" + at),
                  step.id(),
                  seen + " What becomes of it?",
                  fault.then(),
                  fault.means() + " " + fault.remedy()));
        }
      }
    }
  }

  /** What other faults mean or need; of the same reason both would be right. */
  private List<String> otherFaults(Step step, Remedy fault, Function<Remedy, String> text) {
    return from(step).stream()
        // A test piece gets a verdict, a piece of the run none.
        .filter(other -> isTried(other) == isTried(step))
        .flatMap(other -> other.wrong().stream())
        .filter(other -> !other.sees().equals(fault.sees()))
        .filter(other -> fault.reason().isEmpty() || !other.reason().equals(fault.reason()))
        .filter(
            other -> WrongAnswers.other(fault.means(), List.of(other.means()), stems).size() == 1)
        .map(text)
        .toList();
  }

  private static boolean isTried(Step step) {
    return step.part() == RoutinePart.TRIAL;
  }

  private void numbers() {
    List<SumItems> sums = new ArrayList<>();
    if (routine.makes() == Makes.CHAIN) {
      sums.addAll(
          routine.ends() == ChainEnds.RINGS
              ? List.of(SumItems.RINGS, SumItems.LINKS, SumItems.WIRE, SumItems.BLANK)
              : List.of(SumItems.HOOKED, SumItems.WIRE, SumItems.BLANK));
    } else {
      sums.add(routine.makes() == Makes.STOCK ? SumItems.DRAWN : SumItems.BLANK);
      sums.add(SumItems.WIRE);
    }
    sums.forEach(
        sum -> items.add(new Item.NumbersItem("sum/" + sum.name().toLowerCase(Locale.ROOT), sum)));
  }

  private void words(List<TradeTerm> glossary) {
    String texts =
        String.join(
                " ",
                routine.steps().stream()
                    .flatMap(step -> Stream.of(step.doText(), step.lookFor(), step.mind()))
                    .toList())
            .toLowerCase(Locale.ROOT);
    for (TradeTerm term : glossary) {
      String asks = "What is meant by “" + term.word() + "”?";
      // A thing is hidden among things and a doing among doings, or grammar tells which it is.
      List<String> others =
          glossary.stream()
              .filter(other -> !other.equals(term))
              .map(TradeTerm::says)
              .filter(says -> says.startsWith("To ") == term.says().startsWith("To "))
              .toList();
      List<String> pool = WrongAnswers.other(term.says(), others, stems);
      if (texts.contains(term.word()) && WrongAnswers.hides(asks, term.says(), pool, stems)) {
        items.add(
            new Item.TextItem(
                "word/" + term.word(), Topic.WORD, StepId.NONE, "", asks, term.says(), pool, ""));
      }
    }
  }

  private void ownQuestions(StepId step, List<StudyQuestion> questions) {
    for (int i = 0; i < questions.size(); i++) {
      StudyQuestion own = questions.get(i);
      items.add(
          new Item.OwnItem(
              id("own/" + (step.isEmpty() ? "" : step + "/") + i),
              step,
              own.asks(),
              own.answers(),
              own.why()));
    }
  }

  private boolean add(
      Topic topic,
      String name,
      StepId step,
      String caution,
      String asks,
      String right,
      List<String> texts,
      String after,
      boolean hidden) {
    String subject = caution.isEmpty() ? asks : asks + " " + cautions.get(caution).title();
    List<String> pool =
        hidden
            ? WrongAnswers.nearest(subject, right, texts, stems)
            : texts.stream().distinct().filter(text -> !text.equals(right)).toList();
    boolean asked =
        hidden
            ? WrongAnswers.hides(subject, right, pool, stems)
            : pool.size() >= WrongAnswers.WRONG;
    if (!right.isBlank() && asked) {
      items.add(
          new Item.TextItem(id(name), topic, step, caution, asks, right, pool, after, subject));
      return true;
    }
    return false;
  }

  private String id(String name) {
    return routine.id() + "/" + name;
  }
}
