package linkwright.coach.keys;

/** What each act is good for, in a sentence, for the list of keys and for finding. */
public final class ActHelp {
  private ActHelp() {}

  /** What it is good for. */
  public static String of(Act act) {
    return switch (act) {
      case ROUND -> "back to the places of the job, or to the jobs; what is typed stays";
      case HELP -> "this list; in a form, what the field is and what it changes";
      case FIND -> "anything by its name, and go there";
      case ACROSS ->
          "one number on all of the screen, to be read from across the room; again for everything";
      case UNDO -> "take back what was entered here last; nothing is erased from the book";
      case BRING_BACK -> "enter again what undo took back last";
      case ANSWER -> "a timer that is due rings no more";
      case LEAVE -> "end the program; everything entered is in the book";
      case TO_SETTINGS -> "units, trade words, colours, mouse";
      case STEP_AWAY -> "the hours stop, the timers go on; torch and gas are asked for";
      case TRY_AGAIN -> "write once more what could not be written";
      case GIVE_UP -> "leave unwritten what could not be written";
      case MAKE_AGAIN -> "begin a new job with what this one settled";
      case TO_HANDS -> "what earlier pieces taught of your hands";
      case TO_NEAREST -> "the nearest lengths that you can have, and by what";
      case FIT_RING -> "other rings, so that the length comes out";
      case FIT_LINK -> "other links, so that the length comes out";
      case ONE_FEWER -> "one link fewer than planned";
      case ONE_MORE -> "one link more than planned";
      case JUMP_RINGS -> "wider rings at the ends, so that the length comes out";
      case OTHER_CLASP -> "another clasp, so that the length comes out";
      case LEAVE_OUT -> "a job counts no more in what the hands were taught, or again";
      case LOOK_ON -> "read the next step without opening it";
      case LOOK_BACK -> "read the step before without opening it";
      case OPEN_STEP -> "open the step that is looked at";
      case BACK_FROM_LOOK -> "the step that is open is shown again";
      case PASS_ON -> "leave this step as it is";
      case AGAIN_NOW -> "it is done now";
      case TAKE_UP -> "to the step where the chosen pieces go on";
      case SAY_WHERE -> "note where the chosen pieces lie";
      case TO_PILES -> "what waits between the steps, and where";
      case TO_JOINTS -> "joints as you count them: so many failed of so many";
      case TO_HANDBOOK -> "the words of the trade that stand here, explained";
      case TO_OWN_BENCH -> "what is yours whatever the job";
      case TO_WHAT_IF -> "the plan with one thing changed, beside the one that is kept";
      case CHANGE_BENCH -> "write down what is yours whatever the job";
      case KEEP_TYPED -> "keep what is typed in place of what is taken";
      case VARY -> "try the plan with one thing changed";
      case UP -> "the line above";
      case DOWN -> "the line below";
      case CHOOSE -> "what the chosen line is about";
      case NEW_JOB -> "begin the book of another job";
      case THROUGH -> "one piece has come through this step; a number before it: so many";
      case DONE -> "this step is done, on to the next";
      case TOGETHER -> "the whole batch has come through this step";
      case BEGIN_ONE -> "one more piece was begun";
      case CUT_ONE -> "one blank was cut; a number before it: so many";
      case ONWARD -> "nothing waits here any more: on to where work waits";
      case WAIT_FIRST -> "the wait of this step begins now";
      case MEANWHILE -> "leave the wait running and go to other work";
      case LOOKED -> "you looked and it is clean: the wait is over";
      case TO_DUE -> "to the step whose wait is over";
      case WAIT_OVER -> "the wait is over and answered";
      case HELD_REDO -> "the piece just counted goes back";
      case LEAVE_QUESTION -> "nothing is changed by the question";
      case BACK_AT_BENCH -> "the hours run again";
      case AWAY_NOW -> "leave now, with torch and gas as ticked";
      case NONE_OF_THEM -> "none of these reasons: nothing is counted";
      case ALL -> "all pieces that wait here have come through";
      case REDO -> "one piece failed and is to be done again; a number before it: so many";
      case SCRAP -> "one piece is lost for good; a number before it: so many";
      case TAKE -> "take pieces that are to be done again, or new ones again";
      case NEXT_STEP -> "open the next step, its cautions first";
      case PREVIOUS_STEP -> "open the step before";
      case WAIT -> "begin the wait of this step";
      case SEEN -> "the caution was read: on";
      case TO_PLAN -> "what is wished and what it comes to";
      case TO_TESTS -> "pieces made to find the size";
      case TO_TRIAL -> "a few finished links hung and measured";
      case TO_BENCH -> "the steps, one at a time";
      case TO_WIRE -> "what came, was cut and is left";
      case TO_BOOK -> "every entry of this job";
      case TO_CAUTIONS -> "all safety cards";
      case TO_TIMERS -> "every timer, set and stopped";
      case TO_RECKONER -> "one sum at a time";
      case TO_LOOKUP -> "metals, solders, clasps, patterns and words of the trade";
      case TO_WEIGH_IN -> "weigh, price, close";
      case TO_TRAY -> "all jobs at hand";
      case LOG -> "enter one that was made and measured";
      case SAMPLE -> "the run follows the chosen piece";
      case CHOOSE_TRIAL -> "the plan is counted anew from the chosen one";
      case ADD_WIRE -> "enter lengths that this job may take";
      case CUT -> "enter blanks that were cut elsewhere";
      case DISCARD -> "enter wire that is gone";
      case DRAW -> "thicker wire down to the size wanted; nothing is entered";
      case STRIKE -> "the chosen entry counts no more, for a reason; a struck one comes back";
      case NOTE -> "words for the book";
      case SEARCH -> "only what holds the letters typed";
      case ACCEPT -> "a line whose check fails counts from now on";
      case SHOW_ALL -> "the list is whole again";
      case NEWEST -> "the first line";
      case OLDEST -> "the last line";
      case OPEN_CARD -> "the chosen one whole, or the list again";
      case SET_TIMER -> "a timer of your own";
      case STOP_TIMER -> "the chosen one rings or runs no more";
      case WEIGH -> "what came of it, piece by piece on the scale";
      case WEIGH_OUT -> "metal that the job took";
      case PRICE -> "your own figures for the price";
      case CLOSE -> "the job is done; it can be opened again";
      case TURN -> "what had no room";
      case MORE -> "what had no room";
      case LESS -> "back to what came before";
      case REOPEN -> "go on with a job that was closed";
      case KEEP -> "keep what is typed";
    };
  }
}
