package linkwright.reference;

import java.util.List;

/**
 * A tool by the name that routines lay it out under, so that it can be held against her bench.
 *
 * @param name its name
 * @param alsoCalled other names of it, as a bench may list it
 * @param laidOutFor the words of {@code does} for which a step lays it out unasked
 */
public record Tool(String name, List<String> alsoCalled, List<String> laidOutFor) {
  /** Copies the lists. */
  public Tool {
    alsoCalled = List.copyOf(alsoCalled);
    laidOutFor = List.copyOf(laidOutFor);
  }
}
