package linkwright.cli.console;

/** What a command tells the shell that ran it. */
public final class Exit {
  /** All is well. */
  public static final int GOOD = 0;

  /** Problems were found, and told. */
  public static final int PROBLEMS = 1;

  /** The command was not used as it is meant. */
  public static final int WRONG_USE = 2;

  private Exit() {}
}
