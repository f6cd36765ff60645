package linkwright.coach.kernel;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.lesson.ClassRoom;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.routine.StepId;

/**
 * Whom one teaches here, and the student whose book is at hand.
 *
 * @param roster names, in the teacher's own words
 * @param student the student whose book is at hand, as it tells of her
 * @param room the class that is looked at
 * @param banks routine → what can be asked of it, where that was made already
 * @param unsaid the open step, while a student has still to say which it is; none at any other time
 */
public record StudentsAtHand(
    Roster roster,
    Optional<Learner> student,
    Optional<ClassRoom> room,
    Map<String, List<Item>> banks,
    StepId unsaid) {
  /** Nobody. */
  public static final StudentsAtHand NOBODY =
      new StudentsAtHand(Roster.EMPTY, Optional.empty(), Optional.empty(), Map.of(), StepId.NONE);

  public StudentsAtHand {
    banks = Map.copyOf(banks);
  }

  /** The same with that roster. */
  public StudentsAtHand with(Roster names) {
    return new StudentsAtHand(names, student, room, banks, unsaid);
  }

  /** The same with that student's book at hand. */
  public StudentsAtHand with(Learner learner) {
    return new StudentsAtHand(roster, Optional.of(learner), room, banks, unsaid);
  }

  /** The same with that class looked at. */
  public StudentsAtHand with(ClassRoom other) {
    return new StudentsAtHand(roster, student, Optional.of(other), banks, unsaid);
  }

  /** The same with what can be asked of a routine. */
  public StudentsAtHand with(String routine, List<Item> bank) {
    Map<String, List<Item>> more = new HashMap<>(banks);
    more.put(routine, bank);
    return new StudentsAtHand(roster, student, room, more, unsaid);
  }

  /** The same with that step still to be said; none for nothing. */
  public StudentsAtHand unsaid(StepId step) {
    return step.equals(unsaid) ? this : new StudentsAtHand(roster, student, room, banks, step);
  }

  /** Whether a student has still to say that this step comes, so that it is named nowhere. */
  public boolean hides(StepId step) {
    return !step.isEmpty() && step.equals(unsaid);
  }

  /** Whether a student works at that job. */
  public boolean works(OpenJob job) {
    return roster.names().containsKey(job.person())
        || student.filter(her -> her.id().equals(job.person())).isPresent();
  }

  /** What the student at hand is called; empty if none is. */
  public String name() {
    return student.map(learner -> roster.name(learner.id())).orElse("");
  }
}
