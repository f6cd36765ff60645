package linkwright.lesson;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.job.Strikes;
import linkwright.quantity.Count;
import linkwright.routine.StepId;

/**
 * A student as her own book tells of her, across jobs and routines.
 *
 * @param id by what books know her
 * @param learnt what she has shown of each item
 * @param askings what she was asked, in order
 * @param signed what a teacher signed, in order
 * @param studied the pieces she studied, in order
 * @param practice what was set for her to practise, in order
 * @param made what she made, in order
 * @param metal job → what she took and brought back of metal
 * @param enteredLast what was signed, studied or set last and still stands
 * @param undoneLast the strike by which such a one was taken back last; empty where one was entered
 *     since
 */
public record Learner(
    String id,
    Recall learnt,
    List<QuestionPut> askings,
    List<Marked> signed,
    List<Study> studied,
    List<Practice> practice,
    List<Made> made,
    Map<String, LessonFact.MetalCounted> metal,
    Optional<Entered> enteredLast,
    Optional<Entered> undoneLast) {
  public Learner {
    askings = List.copyOf(askings);
    signed = List.copyOf(signed);
    studied = List.copyOf(studied);
    practice = List.copyOf(practice);
    made = List.copyOf(made);
    metal = Map.copyOf(metal);
  }

  /** A question as it was put to her, and what she answered. */
  public record QuestionPut(
      EntryId entry,
      String lesson,
      String item,
      long seed,
      LocalDate day,
      Optional<AnswerGiven> given) {}

  /** What she answered. */
  public record AnswerGiven(String said, boolean right) {}

  /** What was signed, studied, set or taken back, by the name of its entry. */
  public record Entered(EntryId entry, LocalDate day, Fact fact) {}

  /** A teacher's mark. */
  public record Marked(LocalDate day, LessonFact.Signed fact) {}

  /** A piece that was studied. */
  public record Study(LocalDate day, LessonFact.PieceStudied fact) {}

  /** What was set to practise. */
  public record Practice(LocalDate day, LessonFact.PracticeSet fact) {}

  /** What she made at a step of a job. */
  public record Made(LocalDate day, LessonFact.PiecesMade fact) {}

  /**
   * A student from the entries of her book.
   *
   * @param id by what books know her
   * @param entries all of them
   * @param zone where the bench stands: a day begins there
   * @param gapDays days between one asking and the next
   */
  public static Learner of(String id, List<Entry> entries, ZoneId zone, int gapDays) {
    Reading reading = new Reading(zone);
    Strikes strikes = Strikes.in(entries);
    entries.stream().filter(entry -> !strikes.has(entry)).forEach(reading::entry);
    return reading.learner(id, gapDays);
  }

  /** The question that waits for an answer; empty if none does. */
  public Optional<QuestionPut> open() {
    return askings.isEmpty()
        ? Optional.empty()
        : Optional.of(askings.get(askings.size() - 1)).filter(last -> last.given().isEmpty());
  }

  /** The question that was answered last. */
  public Optional<QuestionPut> answeredLast() {
    for (int i = askings.size() - 1; i >= 0; i--) {
      if (askings.get(i).given().isPresent()) {
        return Optional.of(askings.get(i));
      }
    }
    return Optional.empty();
  }

  /** Her lesson on a routine as it stands today: the last one begun, or the first of the day. */
  public Lesson lesson(String routine, List<Item> bank, LocalDate today) {
    int begun = begun(routine, today);
    return begun(lessonId(routine, today, Math.max(1, begun)), bank, today);
  }

  /** The lesson after that. */
  public Lesson nextLesson(String routine, List<Item> bank, LocalDate today) {
    return begun(lessonId(routine, today, begun(routine, today) + 1), bank, today);
  }

  private static String lessonId(String routine, LocalDate day, int number) {
    return routine + "/" + day + "/" + number;
  }

  private int begun(String routine, LocalDate today) {
    String day = routine + "/" + today + "/";
    return askings.stream()
        .filter(asking -> asking.lesson().startsWith(day))
        .mapToInt(asking -> Count.inDigits(asking.lesson().substring(day.length()), 4).orElse(0))
        .max()
        .orElse(0);
  }

  private Lesson begun(String lesson, List<Item> bank, LocalDate today) {
    List<Lesson.LessonAnswer> given = new ArrayList<>();
    for (QuestionPut asking : askings) {
      if (asking.lesson().equals(lesson)) {
        asking
            .given()
            .ifPresent(answer -> given.add(new Lesson.LessonAnswer(asking.item(), answer.right())));
      }
    }
    return new Lesson(lesson, bank, learnt, today, given);
  }

  /** The same without what she has shown of items that nobody asks any more. */
  public Learner without(Predicate<String> gone) {
    Map<String, List<Recall.Answer>> asked = new LinkedHashMap<>(learnt.items());
    asked.keySet().removeIf(gone);
    return new Learner(
        id,
        new Recall(asked, learnt.gapDays()),
        askings,
        signed,
        studied,
        practice,
        made,
        metal,
        enteredLast,
        undoneLast);
  }

  /** What went back at a step, by reason, over all that she made; empty where nothing did. */
  public Map<String, Integer> redo(String routine, StepId step) {
    Map<String, Integer> sums = new LinkedHashMap<>();
    at(routine, step)
        .forEach(made -> made.redo().forEach((reason, n) -> sums.merge(reason, n, Integer::sum)));
    return sums;
  }

  /** How many came through a step or went back from it, over all that she made. */
  public int tried(String routine, StepId step) {
    return at(routine, step)
        .mapToInt(made -> made.through() + made.redo().values().stream().mapToInt(n -> n).sum())
        .sum();
  }

  private Stream<LessonFact.PiecesMade> at(String routine, StepId step) {
    return made.stream()
        .map(Made::fact)
        .filter(fact -> fact.routine().equals(routine) && fact.step().equals(step));
  }

  /** Reads entry by entry. */
  private static final class Reading {
    private final ZoneId zone;
    private final Map<EntryId, Integer> places = new HashMap<>();
    private final List<QuestionPut> askings = new ArrayList<>();
    private final List<Marked> signed = new ArrayList<>();
    private final List<Study> studied = new ArrayList<>();
    private final List<Practice> practice = new ArrayList<>();
    private final List<Made> made = new ArrayList<>();
    private final Map<String, LessonFact.MetalCounted> metal = new LinkedHashMap<>();
    private Optional<Entered> undoneLast = Optional.empty();
    private Optional<Entered> enteredLast = Optional.empty();
    private final Map<String, List<Recall.Answer>> answers = new LinkedHashMap<>();

    Reading(ZoneId zone) {
      this.zone = zone;
    }

    void entry(Entry entry) {
      Fact fact = entry.fact();
      LocalDate day = day(entry.at());
      if (fact instanceof LessonFact.Signed
          || fact instanceof LessonFact.PieceStudied
          || fact instanceof LessonFact.PracticeSet) {
        enteredLast = Optional.of(new Entered(entry.id(), day, fact));
        undoneLast = Optional.empty();
      } else if (fact instanceof Fact.Struck strike && strike.why().equals(Strikes.UNDONE)) {
        undoneLast = Optional.of(new Entered(entry.id(), day, fact));
      }
      if (fact instanceof LessonFact.QuestionAsked asked) {
        places.put(entry.id(), askings.size());
        askings.add(
            new QuestionPut(
                entry.id(), asked.lesson(), asked.item(), asked.seed(), day, Optional.empty()));
      } else if (fact instanceof LessonFact.QuestionAnswered answered) {
        answered(answered, day);
      } else if (fact instanceof LessonFact.Signed mark) {
        signed.add(new Marked(day, mark));
      } else if (fact instanceof LessonFact.PieceStudied study) {
        studied.add(new Study(day, study));
      } else if (fact instanceof LessonFact.PracticeSet set) {
        practice.add(new Practice(day, set));
      } else if (fact instanceof LessonFact.PiecesMade pieces) {
        made.add(new Made(day, pieces));
      } else if (fact instanceof LessonFact.MetalCounted counted) {
        metal.put(counted.job(), counted);
      }
    }

    private void answered(LessonFact.QuestionAnswered answered, LocalDate day) {
      Integer at = places.get(answered.question());
      if (at == null || askings.get(at).given().isPresent()) {
        return;
      }
      QuestionPut asked = askings.get(at);
      askings.set(
          at,
          new QuestionPut(
              asked.entry(),
              asked.lesson(),
              asked.item(),
              asked.seed(),
              asked.day(),
              Optional.of(new AnswerGiven(answered.given(), answered.right()))));
      answers
          .computeIfAbsent(asked.item(), any -> new ArrayList<>())
          .add(new Recall.Answer(day, answered.right()));
    }

    private LocalDate day(Instant at) {
      return at.atZone(zone).toLocalDate();
    }

    Learner learner(String id, int gapDays) {
      return new Learner(
          id,
          new Recall(answers, gapDays),
          askings,
          signed,
          studied,
          practice,
          made,
          metal,
          enteredLast,
          undoneLast);
    }
  }
}
