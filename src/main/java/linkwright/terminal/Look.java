package linkwright.terminal;

import java.util.Locale;
import java.util.Optional;

/** The themes a user may wish for, each made for one sort of background. */
public enum Look {
  /** For backgrounds from black to #2b2b2b. */
  DARK,
  /** For backgrounds from white to #e8e8e8. */
  LIGHT,
  /** For a black background, with contrast of 7 : 1 and more and nothing faint. */
  HIGH_CONTRAST,
  /** For any background that is not known: colours that stand out 4.5 : 1 on black and on white. */
  EITHER,
  /** For a white background, with contrast of 7 : 1 and more and nothing faint. */
  HIGH_CONTRAST_LIGHT,
  /** Without any colour. */
  NO_COLOUR;

  /** The name that a user writes: {@code dark}, {@code light}, {@code high-contrast}… */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The look that a user named, if there is one. */
  public static Optional<Look> named(String word) {
    for (Look look : values()) {
      if (look.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(look);
      }
    }
    return Optional.empty();
  }
}
