package linkwright.coach.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.job.EntryId;
import linkwright.job.InWait;
import linkwright.job.JobState;
import linkwright.job.OnWay;
import linkwright.job.TimerRun;
import linkwright.routine.Wait;

/**
 * What is in the wait of a step, what comes out of it now, and what has yet to go in. What goes in
 * later has its own wait, and comes out when that is over.
 *
 * @param in what went in, in that order
 * @param out what comes out now: its wait is over
 * @param goesIn what has not been in the wait
 * @param next the wait that is to begin; empty if none is
 */
record AtWait(
    List<InWait> in, Map<OnWay, Integer> out, Map<OnWay, Integer> goesIn, Optional<Wait> next) {
  static AtWait of(Model model, AtBench at) {
    JobState state = model.job().orElseThrow().state();
    List<InWait> in = state.course().waits().at(at.step().id());
    Map<OnWay, Integer> there = at.there(state);
    Set<EntryId> runs =
        model.timers().running().stream()
            .filter(timer -> !timer.rings(model.steady()))
            .map(TimerRun::id)
            .collect(Collectors.toUnmodifiableSet());
    List<InWait> over =
        in.stream().filter(each -> each.running().stream().noneMatch(runs::contains)).toList();
    Map<OnWay, Integer> goesIn = without(there, in);
    // What was looked to comes out by itself: another lot whose time is over is looked at, too.
    List<InWait> seen = over.stream().filter(each -> each.running().isEmpty()).toList();
    List<InWait> comes = at.looked() && !seen.isEmpty() ? seen : over;
    return new AtWait(in, out(at, there, comes), goesIn, next(at, in, over, goesIn));
  }

  private static Map<OnWay, Integer> without(Map<OnWay, Integer> there, List<InWait> in) {
    if (in.stream().anyMatch(InWait::isAll)) {
      return Map.of();
    }
    Map<OnWay, Integer> left = new LinkedHashMap<>(there);
    left.replaceAll((way, count) -> count - in.stream().mapToInt(each -> each.of(way)).sum());
    left.values().removeIf(count -> count <= 0);
    return left;
  }

  private static Map<OnWay, Integer> out(AtBench at, Map<OnWay, Integer> there, List<InWait> over) {
    List<InWait> done =
        over.stream()
            .filter(each -> at.timed().stream().allMatch(wait -> begun(each, wait)))
            .toList();
    if (at.timed().isEmpty() || done.stream().anyMatch(InWait::isAll)) {
      return there;
    }
    Map<OnWay, Integer> out = new LinkedHashMap<>(there);
    out.replaceAll((way, count) -> done.stream().mapToInt(each -> each.of(way)).sum());
    out.values().removeIf(count -> count == 0);
    return out;
  }

  /** The first one for what comes new, else the next one for what is through its own. */
  private static Optional<Wait> next(
      AtBench at, List<InWait> in, List<InWait> over, Map<OnWay, Integer> goesIn) {
    boolean fresh = at.together() ? !goesIn.isEmpty() : in.isEmpty();
    return at.timed().stream()
        .filter(wait -> fresh || over.stream().anyMatch(each -> !begun(each, wait)))
        .findFirst();
  }

  private static boolean begun(InWait each, Wait wait) {
    return each.begun().contains(wait.id());
  }

  /** Whether the timer is of something that does not come out yet. */
  boolean staysIn(EntryId timer) {
    return in.stream().anyMatch(each -> each.running().contains(timer))
        && in.stream().anyMatch(each -> each.running().isEmpty() && !each.isAll());
  }

  /** Whether anything can be done with what is here before a wait ends. */
  boolean hasWork() {
    return !out.isEmpty() || !goesIn.isEmpty();
  }
}
