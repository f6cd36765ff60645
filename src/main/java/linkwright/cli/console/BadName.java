package linkwright.cli.console;

import java.nio.file.InvalidPathException;

/** Says what to do about a name that this system's settings cannot express. */
public final class BadName {
  private BadName() {}

  /** A sentence for a name of a file or folder that could not be taken. */
  public static String sentence(InvalidPathException fault) {
    return "The name \""
        + fault.getInput()
        + "\" cannot be used here: the language settings of this terminal do not know all of its"
        + " letters. Set LANG to one with UTF-8, such as LANG=C.UTF-8, and start again.";
  }
}
