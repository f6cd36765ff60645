package linkwright.view;

import java.util.List;
import linkwright.coach.content.Acts;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;

/** Acts as a list: key, word, how it stands there. */
final class ActsBlock implements Block {
  private static final int KEY = 2;
  private static final int WORD = 6;
  private static final int STANDS = 22;

  /** Fewer would be turned over too often. */
  private static final int LEAST = 6;

  private final List<Acts.Choice> choices;
  private final KeyMap keys;

  ActsBlock(Acts acts, KeyMap keys) {
    this.choices = acts.choices();
    this.keys = keys;
  }

  @Override
  public int wanted() {
    return choices.size() + (int) choices.stream().filter(Acts.Choice::groupEnds).count();
  }

  @Override
  public int least() {
    return Math.min(LEAST, choices.size());
  }

  @Override
  public int parts(int rows) {
    return rows < 1 ? 1 : (choices.size() + rows - 1) / rows;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.TURNS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    boolean gaps = area.height() >= wanted();
    int y = 0;
    int high = Math.max(1, area.height());
    int first = Math.floorMod(turned, parts(high)) * high;
    for (Acts.Choice choice : choices.subList(first, Math.min(choices.size(), first + high))) {
      boolean now = choice.now();
      area.text(0, y, 1, now ? area.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
      area.text(KEY, y, WORD - KEY, keys.firstOf(choice.act()), Tone.STRONG);
      String word = choice.act().words();
      area.text(WORD, y, STANDS - WORD - 1, word, now ? Tone.ACCENT : Tone.PLAIN);
      int room = Math.max(0, area.width() - STANDS);
      area.text(STANDS, y, room, choice.stands(), now ? Tone.PLAIN : Tone.FAINT);
      area.spot(0, y, area.width(), 1, new Spot.ToAct(choice.act()));
      y += gaps && choice.groupEnds() ? 2 : 1;
    }
  }
}
