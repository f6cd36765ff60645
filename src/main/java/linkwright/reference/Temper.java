package linkwright.reference;

import java.util.Locale;
import linkwright.quantity.Read;

/** Whether wire is annealed or hard drawn. */
public enum Temper {
  SOFT,
  HARD;

  /** The word written in files and commands. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Reads soft or hard, and the words that mean them. */
  public static Read<Temper> read(String typed) {
    return switch (typed.strip().toLowerCase(Locale.ROOT)) {
      case "soft", "annealed", "dead soft" -> Read.good(SOFT);
      case "hard", "hard drawn", "hard-drawn" -> Read.good(HARD);
      default ->
          Read.bad(
              "“" + typed.strip() + "” is not a temper. Write soft (annealed) or hard (drawn).");
    };
  }
}
