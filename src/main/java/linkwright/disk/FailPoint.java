package linkwright.disk;

import java.io.IOException;

/**
 * Places in the way of an entry to the disk, by name, where a test lets the program die or the disk
 * fail. In a program that nobody tests nothing happens at them.
 */
public final class FailPoint {
  /** What happens at a place; may throw. */
  public interface Happening {
    void at(String name) throws IOException;
  }

  private static volatile Happening happening = name -> {};

  private FailPoint() {}

  /** Called where the place is. */
  public static void reached(String name) throws IOException {
    happening.at(name);
  }

  /** The same where a failing disk is no matter, but a death is. */
  public static void passed(String name) {
    try {
      happening.at(name);
    } catch (IOException noMatter) {
      return;
    }
  }

  /** For tests: lets something happen at every place while the work runs. */
  public static void during(Happening what, Runnable work) {
    happening = what;
    try {
      work.run();
    } finally {
      happening = name -> {};
    }
  }
}
