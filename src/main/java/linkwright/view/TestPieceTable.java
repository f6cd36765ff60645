package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Trials;
import linkwright.link.Formed;
import linkwright.quantity.UnitStyle;
import linkwright.standing.TestPieces;
import linkwright.text.Text;

/**
 * The test pieces made: blank, what it measured, what is reckoned for it, what the next should be.
 */
final class TestPieceTable {
  private static final int NUMBER = 4;
  private static final int BLANK = 10;
  private static final int SIZE = 18;

  private TestPieceTable() {}

  static void draw(Canvas area, Model model, Screen.Tests screen) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    Trials trials = job.state().trials();
    if (trials.pieces().isEmpty()) {
      area.wrapped(
          0,
          0,
          area.width(),
          3,
          "No test piece yet. Cut the blank proposed, form it, solder and flatten it, measure it,"
              + " then press n.",
          Tone.PLAIN);
      return;
    }
    String head =
        Text.pad("", NUMBER)
            + Text.pad("blank", BLANK)
            + Text.pad("measured", SIZE)
            + Text.pad("reckoned", SIZE)
            + "next one";
    area.text(0, 0, area.width(), head, Tone.FAINT);
    List<EntryId> ids = new ArrayList<>(trials.pieces().keySet());
    int room = Math.max(1, area.height() - 1);
    int first = Math.max(0, Math.min(screen.at() - room / 2, ids.size() - room));
    for (int i = first; i < Math.min(ids.size(), first + room); i++) {
      boolean sample =
          trials.sample().map(choice -> choice.piece()).filter(ids.get(i)::equals).isPresent();
      boolean at = i == screen.at();
      String mark = at ? area.glyphs().pick("▸", ">") : " ";
      String line =
          Text.pad(mark + (i + 1), NUMBER)
              + row(trials.pieces().get(ids.get(i)), reckoned(screen, i), units)
              + (sample ? "  sample link" : "");
      area.text(0, 1 + i - first, area.width(), line, sample ? Tone.STRONG : tone(at));
    }
  }

  private static Tone tone(boolean at) {
    return at ? Tone.PLAIN : Tone.FAINT;
  }

  private static Optional<Formed> reckoned(Screen.Tests screen, int i) {
    return screen
        .taught()
        .map(TestPieces::made)
        .filter(made -> i < made.size())
        .flatMap(made -> made.get(i));
  }

  private static String row(Fact.TestPieceTried piece, Optional<Formed> reckoned, UnitStyle units) {
    String made =
        reckoned
            .map(link -> by(units.length(link.lengthMm()), units.length(link.widthMm())))
            .orElse("-");
    return Text.pad(units.length(piece.blankMm()), BLANK)
        + Text.pad(size(piece.lengthMm(), piece.widthMm(), units), SIZE)
        + Text.pad(made, SIZE)
        + String.join(" and ", piece.verdicts())
        + (piece.note().isBlank() ? "" : "  " + piece.note());
  }

  private static String size(OptionalDouble length, OptionalDouble width, UnitStyle units) {
    if (length.isEmpty() && width.isEmpty()) {
      return "-";
    }
    return by(one(length, units), one(width, units));
  }

  /** {@code 14.2 x 5.4 mm}: the unit once, if both have it. */
  private static String by(String length, String width) {
    int unit = length.indexOf(' ');
    boolean same = unit > 0 && width.endsWith(length.substring(unit));
    return (same ? length.substring(0, unit) : length) + " x " + width;
  }

  private static String one(OptionalDouble mm, UnitStyle units) {
    return mm.isPresent() ? units.length(mm.getAsDouble()) : "?";
  }
}
