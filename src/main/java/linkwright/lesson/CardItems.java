package linkwright.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.StepId;
import linkwright.routine.StudyQuestion;

/** What can be asked of the cautions that a routine names: what not to do, and what helps. */
final class CardItems {
  /** A mishap by its name, and what is done then. */
  private static final Pattern MISHAP = Pattern.compile("([^:;,]{3,40}): (.{12,})");

  /** A mishap told in more words than these is a sentence of its own. */
  private static final int NAME_WORDS = 6;

  private static final Pattern WATER = Pattern.compile("(?i)\\b(water|rinse|wash|shower)\\b");

  private static final int SHORTEST_WORD = 3;
  private static final Set<String> SMALL_WORDS = Set.of("the", "and", "has", "you", "own", "not");

  private final Routine routine;
  private final Map<String, Caution> cautions;
  private final WordStems stems;
  private final List<Item> items = new ArrayList<>();

  private CardItems(Routine routine, Map<String, Caution> cautions, WordStems stems) {
    this.routine = routine;
    this.cautions = cautions;
    this.stems = stems;
  }

  static List<Item> of(Routine routine, Map<String, Caution> cautions, WordStems stems) {
    CardItems cards = new CardItems(routine, cautions, stems);
    routine.steps().stream()
        .flatMap(step -> step.cautions().stream())
        .distinct()
        .flatMap(id -> Optional.ofNullable(cautions.get(id)).stream())
        .forEach(cards::card);
    return List.copyOf(cards.items);
  }

  /** Those that a routine names before those that it never meets. */
  static List<Caution> metFirst(List<Caution> cards, Routine routine) {
    Set<String> met = new HashSet<>();
    routine.steps().forEach(step -> met.addAll(step.cautions()));
    return cards.stream().sorted(Comparator.comparing(card -> !met.contains(card.id()))).toList();
  }

  /** Its own questions; of a card that has none what stands in it, beside other work's. */
  private void card(Caution card) {
    if (hasItsOwn(card)) {
      own(card);
    } else {
      besideOthers(card);
    }
  }

  /** Whether it asks for itself, among answers that are about the same danger. */
  static boolean hasItsOwn(Caution card) {
    return card.questions().stream().anyMatch(asked -> asked.answers().size() > WrongAnswers.WRONG);
  }

  private void own(Caution card) {
    for (int i = 0; i < card.questions().size(); i++) {
      StudyQuestion asked = card.questions().get(i);
      List<String> answers = asked.answers();
      if (answers.size() > WrongAnswers.WRONG) {
        items.add(
            new Item.TextItem(
                "card/" + card.id() + "/own/" + i,
                Topic.CARD,
                StepId.NONE,
                card.id(),
                card.title() + ". " + asked.asks(),
                answers.get(0),
                answers.subList(1, answers.size()),
                asked.why().isEmpty() ? card.shortLine() : asked.why()));
      }
    }
  }

  private void besideOthers(Caution card) {
    List<Caution> apart =
        metFirst(CautionsElsewhere.apart(card, routine, cautions, stems), routine);
    List<String> others =
        apart.stream()
            .flatMap(other -> other.doNot().stream())
            .filter(text -> isApart(card.title(), text))
            .toList();
    for (int i = 0; i < card.doNot().size(); i++) {
      String asks = card.title() + ": of these things not to do, which one belongs here?";
      String right = card.doNot().get(i);
      if (isApart(card.title(), right)
          && add(card, "not/" + i, asks, right, WrongAnswers.nearest(asks, right, others, stems))) {
        break;
      }
    }
    for (int i = 0; i < card.ifItGoesWrong().size(); i++) {
      Optional<Mishap> mishap = mishap(card.ifItGoesWrong().get(i));
      if (mishap.isPresent() && mishap(card, i, mishap.get(), apart)) {
        break;
      }
    }
  }

  /** A mishap and what helps; it is named in the question, or its name would tell the answer. */
  private record Mishap(String name, String helps) {}

  private static Optional<Mishap> mishap(String text) {
    return Stream.of(MISHAP.matcher(text))
        .filter(said -> said.matches() && said.group(1).split(" ", -1).length <= NAME_WORDS)
        .map(said -> new Mishap(said.group(1), capital(said.group(2))))
        .findFirst();
  }

  private boolean mishap(Caution card, int i, Mishap asked, List<Caution> apart) {
    List<String> others =
        apart.stream()
            .flatMap(other -> other.ifItGoesWrong().stream())
            .flatMap(text -> mishap(text).stream())
            .filter(other -> isOther(asked.name(), other.name() + " " + other.helps()))
            .map(Mishap::helps)
            // Let go, or stop: what begins alike may be right of both.
            .filter(helps -> !first(helps).equals(first(asked.helps())))
            // Where water helps, longer or more of it is never the worse.
            .filter(helps -> !isWater(helps) || !isWater(asked.helps()))
            .toList();
    String asks = card.title() + ", and this happens: “" + asked.name() + "”. What is done?";
    // All of them: what helps is told in few words, and a few could not hide one with others.
    List<String> pool = WrongAnswers.other(asked.helps(), others, stems);
    return WrongAnswers.hidesOdd(asked.helps(), pool, stems)
        && add(card, "wrong/" + i, asks, asked.helps(), pool);
  }

  private boolean add(Caution card, String what, String asks, String right, List<String> pool) {
    if (!WrongAnswers.hides(asks, right, pool, stems)) {
      return false;
    }
    String id = "card/" + card.id() + "/" + what;
    return items.add(
        new Item.TextItem(
            id, Topic.CARD, StepId.NONE, card.id(), asks, right, pool, card.shortLine()));
  }

  /** A text that speaks of the card's own subject would be right too, or give itself away. */
  private boolean isApart(String title, String text) {
    return WordStems.shared(stems.of(title), stems.of(text)) == 0;
  }

  /** What helps in the same mishap would be right too, however short its word, such as eye. */
  private static boolean isOther(String name, String text) {
    Set<String> own = words(name);
    return words(text).stream().noneMatch(own::contains);
  }

  private static Set<String> words(String text) {
    Set<String> words = new HashSet<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)) {
      if (word.length() >= SHORTEST_WORD && !SMALL_WORDS.contains(word)) {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean isWater(String helps) {
    return WATER.matcher(helps).find();
  }

  private static String first(String text) {
    return text.split("[^A-Za-z]", 2)[0];
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
