package linkwright.coach;

import linkwright.coach.again.AgainPlace;
import linkwright.coach.bench.BenchPlace;
import linkwright.coach.book.BookPlace;
import linkwright.coach.card.CardPlace;
import linkwright.coach.cautions.CautionsPlace;
import linkwright.coach.classroom.ClassPlace;
import linkwright.coach.drawer.DrawerPlace;
import linkwright.coach.exchange.ExchangePlace;
import linkwright.coach.failed.FailedPlace;
import linkwright.coach.hands.HandsPlace;
import linkwright.coach.joints.JointsPlace;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.lesson.LessonPlace;
import linkwright.coach.lookup.LookUpPlace;
import linkwright.coach.nearest.NearestPlace;
import linkwright.coach.ownbench.OwnBenchPlace;
import linkwright.coach.persons.PersonsPlace;
import linkwright.coach.piles.PilesPlace;
import linkwright.coach.plan.PlanPlace;
import linkwright.coach.reach.ReachPlace;
import linkwright.coach.reckoner.ReckonPlace;
import linkwright.coach.rehearsal.RehearsalPlace;
import linkwright.coach.round.RoundPlace;
import linkwright.coach.saying.SayingPlace;
import linkwright.coach.settings.SettingsPlace;
import linkwright.coach.student.StudentPlace;
import linkwright.coach.testpieces.TestsPlace;
import linkwright.coach.timers.TimersPlace;
import linkwright.coach.tray.TrayPlace;
import linkwright.coach.trial.TrialPlace;
import linkwright.coach.weigh.WeighPlace;
import linkwright.coach.whatif.WhatIfPlace;
import linkwright.coach.wire.WirePlace;

/** All places by their ids: the only class that knows them. */
final class Places {
  private Places() {}

  static Place of(Model model) {
    return of(model.held().place());
  }

  static Place of(PlaceId place) {
    return switch (place) {
      case TRAY -> new TrayPlace();
      case ROUND -> new RoundPlace();
      case PLAN -> new PlanPlace();
      case NEAREST -> new NearestPlace();
      case TEST_PIECES -> new TestsPlace();
      case TRIAL_LENGTH -> new TrialPlace();
      case BENCH -> new BenchPlace();
      case JOINTS -> new JointsPlace();
      case PILES -> new PilesPlace();
      case FAILED -> new FailedPlace();
      case WIRE -> new WirePlace();
      case WEIGH_IN -> new WeighPlace();
      case BOOK -> new BookPlace();
      case CAUTIONS -> new CautionsPlace();
      case TIMERS -> new TimersPlace();
      case RECKONER -> new ReckonPlace();
      case LOOKUP -> new LookUpPlace();
      case SETTINGS -> new SettingsPlace();
      case FIND -> new FindPlace();
      case MADE_AGAIN -> new AgainPlace();
      case HANDS -> new HandsPlace();
      case OWN_BENCH -> new OwnBenchPlace();
      case WHAT_IF -> new WhatIfPlace();
      case REACH -> new ReachPlace();
      case CARD -> new CardPlace();
      case DRAWER -> new DrawerPlace();
      case EXCHANGE -> new ExchangePlace();
      case REHEARSAL -> new RehearsalPlace();
      case LESSON -> new LessonPlace();
      case SAYING -> new SayingPlace();
      case STUDENT -> new StudentPlace();
      case CLASS_ROOM -> new ClassPlace();
      case HELP -> new HelpPlace();
      case HOT_WORK -> new HotWorkPlace();
      case PERSONS -> new PersonsPlace();
    };
  }

  /**
   * Where a job that was opened begins: at the plan if there is none yet, else on the way round.
   * What is no chain can be made without a plan: one that was begun so is not asked for it again.
   */
  static PlaceId firstOf(OpenJob job) {
    boolean needed = job.makesChain() || job.state().course().step().isEmpty();
    return job.state().course().wish().isEmpty() && needed && !job.lookOnly()
        ? PlaceId.PLAN
        : PlaceId.ROUND;
  }
}
