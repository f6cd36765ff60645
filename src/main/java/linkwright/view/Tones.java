package linkwright.view;

import linkwright.coach.content.Emphasis;

/** How emphasis is drawn. */
final class Tones {
  private Tones() {}

  static Tone of(Emphasis emphasis) {
    return switch (emphasis) {
      case NOW -> Tone.ACCENT;
      case MAIN -> Tone.STRONG;
      case PLAIN -> Tone.PLAIN;
      case ASIDE -> Tone.FAINT;
      case TROUBLE -> Tone.WARNING;
    };
  }
}
