package linkwright.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import linkwright.reference.TradeTerm;
import linkwright.routine.Caution;
import linkwright.routine.Ends;
import linkwright.routine.Hazard;
import linkwright.routine.Makes;
import linkwright.routine.Question;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.When;

/**
 * What a student can be asked of a routine, from the routine's own data: in the order in which it
 * is taught, the sequence and its dangers first.
 *
 * <p>An item is left out where its wrong answers could not hide the right one ({@link Likely}), so
 * that none is answered from its wording alone.
 */
public final class QuestionBank {
  private static final int NEAR = 6;

  private final Routine routine;
  private final List<Step> sequence;
  private final Map<String, Caution> cautions = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private final Stems stems = new Stems();

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
   * @param glossary the words of the trade
   */
  public static List<Item> of(Routine routine, List<Caution> cautions, List<TradeTerm> glossary) {
    QuestionBank bank = new QuestionBank(routine, cautions);
    bank.sequenceAndDangers();
    bank.ownQuestions(StepId.NONE, routine.detail().questions());
    bank.lookFors();
    bank.numbers();
    bank.whys();
    bank.faults();
    bank.cards();
    bank.words(glossary);
    return List.copyOf(bank.items);
  }

  private void sequenceAndDangers() {
    for (int i = 0; i < sequence.size(); i++) {
      Step step = sequence.get(i);
      String asks =
          i == 0
              ? routine.title() + ": what is done first of all?"
              : "“" + sequence.get(i - 1).title() + "” is done. What comes next?";
      List<String> near = new ArrayList<>();
      for (int j = Math.max(0, i - NEAR); j < Math.min(sequence.size(), i + NEAR + 1); j++) {
        if (j != i && j != i - 1) {
          near.add(sequence.get(j).title());
        }
      }
      String after = step.why().isEmpty() ? "" : step.why();
      // Its neighbours are what is likely; all titles are told in the routine, so none is left out.
      add(Topic.NEXT, "next/" + step.id(), step.id(), "", asks, step.title(), near, after, false);
      danger(step);
    }
  }

  private void danger(Step step) {
    List<Caution> here = step.cautions().stream().flatMap(id -> card(id).stream()).toList();
    List<String> elsewhere =
        new Elsewhere(step, here, stems)
            .of(cautions.values()).stream().map(Caution::canHappen).toList();
    for (Caution card : here) {
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

  private Optional<Caution> card(String id) {
    return Optional.ofNullable(cautions.get(id));
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
    return routine.steps().stream().filter(other -> !alike(step, other)).map(text).toList();
  }

  private static boolean alike(Step one, Step other) {
    boolean sameStage = one.stage().values().stream().anyMatch(other.stage().values()::contains);
    boolean sameVerb = verb(one).equals(verb(other));
    boolean sameDoing = !one.does().isEmpty() && one.does().equals(other.does());
    // A good joint looks the same in the trial, in the run and in the chain.
    boolean bothJoin =
        one.does().contains(Hazard.FLUX_FUMES) && other.does().contains(Hazard.FLUX_FUMES);
    return sameStage || sameVerb || sameDoing || bothJoin;
  }

  private static String verb(Step step) {
    return step.title().split(" ", 2)[0].toLowerCase(Locale.ROOT);
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
            otherFaults(fault, Remedy::means),
            fault.remedy(),
            true);
        add(
            Topic.REMEDY,
            "remedy/" + at,
            step.id(),
            "",
            seen + " What helps?",
            fault.remedy(),
            otherFaults(fault, Remedy::remedy),
            fault.means(),
            true);
        if (Fates.isPlain(step, fault)) {
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
  private List<String> otherFaults(Remedy fault, Function<Remedy, String> text) {
    return routine.steps().stream()
        .flatMap(step -> step.wrong().stream())
        .filter(other -> !other.sees().equals(fault.sees()))
        .filter(other -> fault.reason().isEmpty() || !other.reason().equals(fault.reason()))
        .filter(other -> Likely.other(fault.means(), List.of(other.means()), stems).size() == 1)
        .map(text)
        .toList();
  }

  private void cards() {
    List<Caution> named =
        routine.steps().stream()
            .flatMap(step -> step.cautions().stream())
            .distinct()
            .flatMap(id -> card(id).stream())
            .toList();
    for (Caution card : named) {
      card(card, "not", card.title() + ": what must not be done?", card.doNot(), Caution::doNot);
      card(
          card,
          "wrong",
          card.title() + ": it has gone wrong. What belongs to it?",
          card.ifItGoesWrong(),
          Caution::ifItGoesWrong);
    }
  }

  private void card(
      Caution card,
      String what,
      String asks,
      List<String> right,
      Function<Caution, List<String>> of) {
    List<String> others =
        cautions.values().stream()
            .filter(other -> !other.id().equals(card.id()))
            .filter(other -> other.covers().stream().noneMatch(card.covers()::contains))
            .flatMap(other -> of.apply(other).stream())
            .filter(text -> isApart(card.title(), text))
            .toList();
    for (int i = 0; i < right.size(); i++) {
      if (!isApart(card.title(), right.get(i))) {
        continue;
      }
      Item.TextItem item =
          new Item.TextItem(
              "card/" + card.id() + "/" + what + "/" + i,
              Topic.CARD,
              StepId.NONE,
              card.id(),
              asks,
              right.get(i),
              Likely.other(right.get(i), others, stems),
              card.shortLine());
      if (Likely.hides(asks, item.right(), item.pool(), stems)) {
        items.add(item);
        return;
      }
    }
  }

  /** A text that speaks of the card's own subject would be right too, or give itself away. */
  private boolean isApart(String title, String text) {
    return Stems.shared(stems.of(title), stems.of(text)) == 0;
  }

  private void numbers() {
    List<Numbers> sums = new ArrayList<>();
    if (routine.makes() == Makes.CHAIN) {
      sums.addAll(
          routine.ends() == Ends.RINGS
              ? List.of(Numbers.RINGS, Numbers.LINKS, Numbers.WIRE, Numbers.BLANK)
              : List.of(Numbers.HOOKED, Numbers.WIRE, Numbers.BLANK));
    } else {
      sums.add(routine.makes() == Makes.STOCK ? Numbers.DRAWN : Numbers.BLANK);
      sums.add(Numbers.WIRE);
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
      List<String> others =
          glossary.stream().filter(other -> !other.equals(term)).map(TradeTerm::says).toList();
      List<String> pool = Likely.other(term.says(), others, stems);
      if (texts.contains(term.word()) && Likely.hides(asks, term.says(), pool, stems)) {
        items.add(
            new Item.TextItem(
                "word/" + term.word(), Topic.WORD, StepId.NONE, "", asks, term.says(), pool, ""));
      }
    }
  }

  private void ownQuestions(StepId step, List<Question> questions) {
    for (int i = 0; i < questions.size(); i++) {
      Question own = questions.get(i);
      items.add(
          new Item.OwnItem(
              id("own/" + (step.isEmpty() ? "" : step + "/") + i),
              step,
              own.asks(),
              own.answers(),
              own.why()));
    }
  }

  private void add(
      Topic topic,
      String name,
      StepId step,
      String caution,
      String asks,
      String right,
      List<String> texts,
      String after,
      boolean hidden) {
    List<String> pool =
        hidden
            ? Likely.other(right, texts, stems)
            : texts.stream().distinct().filter(text -> !text.equals(right)).toList();
    boolean asked = hidden ? Likely.hides(asks, right, pool, stems) : pool.size() >= Likely.WRONG;
    if (!right.isBlank() && asked) {
      items.add(new Item.TextItem(id(name), topic, step, caution, asks, right, pool, after));
    }
  }

  private String id(String name) {
    return routine.id() + "/" + name;
  }
}
