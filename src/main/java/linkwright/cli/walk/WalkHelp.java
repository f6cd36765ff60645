package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.keys.Act;
import linkwright.coach.lookup.LookUpItem;
import linkwright.quantity.SaidIn;
import linkwright.routine.TradeWords;
import linkwright.text.Narrowing;

/** What can be typed, what one word does, and what a word of the trade means. */
final class WalkHelp {
  private static final int MOST = 8;
  private static final String LISTS = "lists";
  private static final String ROUTINES = "routines";

  private final WalkLines lines;
  private final WalkCoach coach;

  WalkHelp(WalkLines lines, WalkCoach coach) {
    this.lines = lines;
    this.coach = coach;
  }

  /** All words, or that one: a word of the walk first, else one of the trade. */
  void tell(String word) {
    if (word.isEmpty()) {
      WalkWord.help(words(coach.model())).forEach(this::say);
      return;
    }
    Optional<WalkWord> own = WalkWord.of(word);
    Optional<Act> act =
        Arrays.stream(Act.values()).filter(each -> WalkWord.names(word, each, "")).findFirst();
    if (own.isPresent()) {
      say(own.get().told());
    } else if (act.isPresent()) {
      say(act.get().words() + ": " + act.get().help() + ".");
    } else {
      look(word);
    }
  }

  /** The words that do something: a rehearsal takes few, and without a job none is about one. */
  private static List<WalkWord> words(Model model) {
    boolean learns = model.job().isEmpty() && model.held().place() != PlaceId.REHEARSAL;
    return RehearsedLine.words(model).stream().filter(word -> !learns || !word.isOfJob()).toList();
  }

  /** With its examples in the user's units. */
  private void say(String line) {
    TradeWords words = JobWords.tradeWords(coach.model());
    lines.say(words.show(SaidIn.units(line, coach.model().settings().units())));
  }

  /** Tells all that there is of one sort, or the sorts; false if it is the name of none. */
  boolean listed(String sort) {
    List<String> ofSort = ofSort(sort.strip().replaceFirst("(?i)^lists?\\s+", ""));
    if (!ofSort.isEmpty()) {
      lines.say("There are: " + String.join("; ", ofSort) + ".");
    }
    return !ofSort.isEmpty();
  }

  /** What is known of a thing of the trade; several of that name are named only. */
  void look(String words) {
    List<LookUpItem> found = Narrowing.of(words, LookUpItem.all(coach.model()), WalkHelp::names);
    boolean known = !found.isEmpty() && called(found.get(0), words);
    if (listed(words) || (!known && !words.isEmpty() && listed(words + "s"))) {
      return;
    }
    if (words.isEmpty() || found.isEmpty()) {
      lines.say(
          words.isEmpty()
              ? "What is to be looked up? Write a metal, a solder or a word of the trade after it."
              : "Nothing here is called “"
                  + words
                  + "”. Write a metal, a solder or a word of the trade.");
      return;
    }
    LookUpItem best = found.get(0);
    if (!known) {
      List<String> near = found.stream().limit(MOST).map(LookUpItem::name).toList();
      lines.say("Nothing is called “" + words + "”. Did you mean " + String.join(", ", near) + "?");
      return;
    }
    WalkPage page = new WalkPage(coach.model());
    lines.sayAll(
        page.plain().prose(new Prose(Prose.Kind.HEAD, best.name() + " (" + best.kind() + ")")));
    lines.sayAll(page.plain().of(best.says()));
    if (found.size() > 1) {
      List<String> others =
          found.subList(1, Math.min(MOST, found.size())).stream().map(LookUpItem::name).toList();
      lines.say("Also: " + String.join(", ", others) + ".");
    }
  }

  /** All that there is of one sort, such as metals; of lists, what can be listed. */
  private List<String> ofSort(String words) {
    List<LookUpItem> all = LookUpItem.all(coach.model());
    if (words.equalsIgnoreCase(ROUTINES)) {
      TradeWords trade = JobWords.tradeWords(coach.model());
      return coach.model().handbook().routines().stream()
          .map(each -> trade.show(each.title()))
          .toList();
    }
    if (words.equalsIgnoreCase(LISTS)) {
      return Stream.concat(
              Stream.of(ROUTINES), all.stream().map(item -> item.kind() + "s").distinct())
          .toList();
    }
    return all.stream()
        .filter(item -> words.equalsIgnoreCase(item.kind() + "s"))
        .map(LookUpItem::name)
        .toList();
  }

  /** Whether it goes by these words; part of a word is only a guess. */
  private static boolean called(LookUpItem item, String words) {
    Pattern whole =
        Pattern.compile(
            "(?<![\\p{L}\\d])" + Pattern.quote(words) + "(?![\\p{L}\\d])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    return names(item).stream().anyMatch(name -> whole.matcher(name).find());
  }

  private static List<String> names(LookUpItem item) {
    List<String> names = new ArrayList<>(List.of(item.name(), item.id()));
    names.addAll(item.words());
    return names;
  }
}
