package linkwright.view;

import linkwright.coach.content.ActMention;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** The one number of a place in big figures, and below it what it counts. */
final class FigureBlock implements Block {
  private static final int MOST = 9;
  private static final int LEAST = 3;

  private final Figure figure;
  private final String word;
  private final int wanted;
  private final int kept;

  /** Rows of the word below the figure. */
  private final int words;

  FigureBlock(Figure figure, int width, int height, Glyphs glyphs, KeyMap keys) {
    this.figure = figure;
    this.word = ActMention.fill(figure.word(), keys::spokenOf);
    int room = Math.max(LEAST, Math.min(MOST, height / 3));
    this.words = Math.max(1, Text.wrap(glyphs.spelt(word), Math.max(2, width)).size());
    this.wanted =
        BigFigures.high(figure.number(), width, Math.max(1, room - words), glyphs) + words;
    int read = BigFigures.high(figure.number(), width, BigFigures.rowsAt(1, glyphs), glyphs);
    this.kept = Math.min(wanted, read + words);
  }

  @Override
  public int wanted() {
    return wanted;
  }

  @Override
  public int least() {
    return Math.min(Math.max(LEAST, words + 1), wanted);
  }

  /** It can be read from across a bench. */
  @Override
  public int kept() {
    return kept;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.SHRINKS;
  }

  @Override
  public boolean apart() {
    return false;
  }

  @Override
  public void draw(Canvas area, int turned) {
    int room = Math.max(1, area.height() - words);
    int high = BigFigures.high(figure.number(), area.width(), room, area.glyphs());
    // Turned round, figures that fill their room are hard to read: words carry the alarm.
    BigFigures.draw(area.area(0, 0, area.width(), high), figure.number(), Tone.ACCENT);
    boolean due = figure.emphasis() == Emphasis.TROUBLE;
    Tone tone = due ? Tone.STRONG : Tone.FAINT;
    area.wrapped(0, high, area.width(), area.height() - high, word, tone);
  }
}
