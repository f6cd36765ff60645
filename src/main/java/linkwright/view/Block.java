package linkwright.view;

/** A part of a place laid out for a width: it says how many rows it wants, and draws in fewer. */
interface Block {
  /** Rows in which all of it shows. */
  int wanted();

  /** Rows below which it says nothing any more. */
  int least();

  /** Rows in which it shows what it is there for: others give way first. */
  default int kept() {
    return least();
  }

  /** Rows in which it shows how that begins: a figure is drawn as small as it goes for it. */
  default int begun() {
    return least();
  }

  /** How willingly it gives rows up; the willing go first. */
  GivesWay yields();

  /** Draws from the top of the area, in its height. */
  void draw(Canvas area, int turned);

  /** How many parts it takes in so many rows, each turned on to by a key. */
  default int parts(int rows) {
    return 1;
  }

  /** How many of its parts are turned over each by itself in so many rows. */
  default int turners(int rows) {
    return parts(rows) > 1 ? 1 : 0;
  }

  /** Whether something is typed in it, so that it stays in sight. */
  default boolean typed() {
    return false;
  }

  /** Whether a free row below it parts it from what comes next. */
  default boolean apart() {
    return true;
  }

  /** How willingly rows are given up. */
  enum GivesWay {
    /** It is left out: a key shows it by itself. */
    LEFT_OUT,
    /** It moves up and down under its chosen line. */
    SCROLLS,
    /** It is turned over like pages. */
    TURNS,
    /** It is drawn smaller. */
    SHRINKS
  }
}
