package linkwright.view;

import linkwright.coach.content.ActMention;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.keys.KeyMap;

/** The one number of a place in big figures, and below it what it counts. */
final class FigureBlock implements Block {
  private static final int MOST = 9;
  private static final int LEAST = 3;

  private final Figure figure;
  private final String word;
  private final int wanted;

  FigureBlock(Figure figure, int width, int height, Glyphs glyphs, KeyMap keys) {
    this.figure = figure;
    this.word = ActMention.fill(figure.word(), keys::spokenOf);
    int room = Math.max(LEAST, Math.min(MOST, height / 3));
    this.wanted = Math.min(room, BigFigures.high(figure.number(), width, room - 1, glyphs) + 1);
  }

  @Override
  public int wanted() {
    return wanted;
  }

  @Override
  public int least() {
    return Math.min(LEAST, wanted);
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
    int high = BigFigures.high(figure.number(), area.width(), area.height() - 1, area.glyphs());
    // Turned round, figures that fill their room are hard to read: words carry the alarm.
    BigFigures.draw(area.area(0, 0, area.width(), high), figure.number(), Tone.ACCENT);
    boolean due = figure.emphasis() == Emphasis.TROUBLE;
    area.text(0, high, area.width(), word, due ? Tone.STRONG : Tone.FAINT);
  }
}
