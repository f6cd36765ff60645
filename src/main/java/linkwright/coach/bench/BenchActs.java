package linkwright.coach.bench;

import java.util.List;
import linkwright.coach.keys.Act;

/** Every act that may be open at the bench. */
final class BenchActs {
  static final List<Act> ALL =
      List.of(
          Act.THROUGH,
          Act.DONE,
          Act.TOGETHER,
          Act.BEGIN_ONE,
          Act.CUT_ONE,
          Act.ONWARD,
          Act.WAIT_FIRST,
          Act.MEANWHILE,
          Act.TO_DUE,
          Act.WAIT_OVER,
          Act.HELD_REDO,
          Act.BACK_AT_BENCH,
          Act.LIT,
          Act.HOT_ON,
          Act.SHUT_FIRST,
          Act.NONE_OF_THEM,
          Act.SEEN,
          Act.LEAVE_QUESTION,
          Act.LOOK_ON,
          Act.LOOK_BACK,
          Act.OPEN_STEP,
          Act.BACK_FROM_LOOK,
          Act.PASS_ON,
          Act.AGAIN_NOW,
          Act.LOOKED,
          Act.ALL,
          Act.REDO,
          Act.SCRAP,
          Act.TAKE,
          Act.OTHER_SIZE,
          Act.NEXT_STEP,
          Act.PREVIOUS_STEP,
          Act.WAIT,
          Act.DRAWN,
          Act.TO_TESTS,
          Act.TO_TRIAL,
          Act.MORE,
          Act.LESS,
          Act.STEP_AWAY,
          Act.TO_PILES,
          Act.TO_JOINTS,
          Act.TO_TIMERS);

  private BenchActs() {}
}
