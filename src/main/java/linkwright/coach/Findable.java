package linkwright.coach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.keys.Act;
import linkwright.coach.lookup.LookUpItem;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Sum;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;

/**
 * One thing that can be found by its name and gone to.
 *
 * @param kind what sort of thing
 * @param name its name
 * @param words what else it is found by
 * @param place where it is
 * @param id what it is called there; empty for the place itself
 */
record Findable(String kind, String name, List<String> words, PlaceId place, String id) {
  private static final String DOES_IT = " does it at: ";

  Findable {
    words = List.copyOf(words);
  }

  List<String> names() {
    List<String> names = new ArrayList<>(List.of(name, kind));
    names.addAll(words);
    return names;
  }

  /** What tells it from others of its kind and name among those; empty where none is alike. */
  String apart(Model model, List<Findable> among) {
    boolean alone =
        among.stream().filter(any -> any.kind.equals(kind) && any.name.equals(name)).count() < 2;
    return alone
        ? ""
        : switch (place) {
          case BENCH -> kind.equals("step") ? number(model) : at();
          case TRAY -> kind.equals("job") ? id : at();
          default -> at();
        };
  }

  /** An act by its key and place. */
  private String at() {
    return kind.equals("act") ? id.replace(DOES_IT, ", ") : id;
  }

  private String number(Model model) {
    List<Step> steps =
        model.job().flatMap(job -> job.standing().walked()).map(Routine::steps).orElse(List.of());
    int at = steps.stream().map(step -> step.id().word()).toList().indexOf(id);
    return "step " + (at + 1);
  }

  /** All that can be gone to now: places, acts, jobs, steps, cautions, sums, metals, words. */
  static List<Findable> all(Model model) {
    List<Findable> all = new ArrayList<>();
    boolean job = model.job().isPresent();
    TradeWords words = JobWords.tradeWords(model);
    for (PlaceId place : PlaceId.values()) {
      if (place.isFound(job)) {
        all.add(new Findable("place", words.show(word(place)), List.of(), place, ""));
      }
    }
    for (ActTable.Placed placed : ActTable.placed()) {
      boolean named = placed.act() != Act.UP && placed.act() != Act.DOWN;
      if (named && placed.place().isFound(job) && PlaceId.ledToBy(placed.act()).isEmpty()) {
        String key = model.settings().keys().firstOf(placed.act());
        all.add(
            new Findable(
                "act",
                words.show(placed.act().words()),
                List.of(placed.act().id()),
                placed.place(),
                key + DOES_IT + words.show(word(placed.place()))));
      }
    }
    for (TrayJob each : model.tray()) {
      all.add(new Findable("job", each.name(), List.of(each.slug()), PlaceId.TRAY, each.slug()));
    }
    ofJob(all, model);
    ofTrade(all, model);
    return all;
  }

  /** What a place is called. */
  static String word(PlaceId place) {
    return place == PlaceId.ROUND ? "places of the job" : place.act().words();
  }

  /**
   * The steps as they follow each other; to a student, who is asked that, by the alphabet, and none
   * while she is being asked.
   */
  private static void ofJob(List<Findable> all, Model model) {
    Stream<Findable> steps =
        model
            .job()
            .filter(job -> model.learning().unsaid().isEmpty())
            .flatMap(job -> job.standing().walked())
            .map(Routine::steps)
            .orElse(List.of())
            .stream()
            .map(step -> of(step, model));
    (isAsked(model) ? steps.sorted(Comparator.comparing(Findable::name)) : steps).forEach(all::add);
  }

  private static boolean isAsked(Model model) {
    boolean lesson = model.held() instanceof FindHeld held && held.from().place() == PlaceId.LESSON;
    return lesson || model.job().filter(model.learning()::works).isPresent();
  }

  private static Findable of(Step step, Model model) {
    String title = JobWords.fill(step.title(), model);
    return new Findable("step", title, List.of(), PlaceId.BENCH, step.id().word());
  }

  private static void ofTrade(List<Findable> all, Model model) {
    TradeWords words = JobWords.tradeWords(model);
    for (Caution card : model.handbook().cautions()) {
      all.add(
          new Findable(
              "caution",
              words.show(card.title()),
              List.of(card.title(), card.shortLine()),
              PlaceId.CAUTIONS,
              card.id()));
    }
    for (Sum sum : Reckoner.sums()) {
      all.add(
          new Findable(
              "sum", words.show(sum.title()), List.of(sum.id()), PlaceId.RECKONER, sum.id()));
    }
    for (LookUpItem item : LookUpItem.all(model)) {
      all.add(new Findable(item.kind(), item.name(), item.words(), PlaceId.LOOKUP, item.id()));
    }
  }
}
