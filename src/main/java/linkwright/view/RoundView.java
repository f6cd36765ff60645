package linkwright.view;

import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.Act;
import linkwright.coach.round.RoundWords;

/** The way round: the places of a job in the order of the work, each with how it stands there. */
final class RoundView {
  private RoundView() {}

  static void draw(Canvas body, Model model) {
    List<RoundWords.Stop> stops = RoundWords.of(model);
    int row = 0;
    for (RoundWords.Stop stop : stops) {
      boolean now = stop.now();
      body.text(0, row, 1, now ? body.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
      String key = model.settings().keys().keysOf(stop.act()).stream().findFirst().orElse("");
      body.text(2, row, 4, key, Tone.STRONG);
      body.text(6, row, 15, stop.act().words(), now ? Tone.ACCENT : Tone.PLAIN);
      body.text(
          22, row, Math.max(0, body.width() - 22), stop.stands(), now ? Tone.PLAIN : Tone.FAINT);
      body.spot(0, row, body.width(), 1, new Spot.ToAct(stop.act()));
      row++;
      if (stop.act() == Act.TO_WEIGH_IN) {
        row++;
      }
    }
    List<String> told = model.job().orElseThrow().told();
    for (String sentence : told) {
      row += body.wrapped(0, row + 1, body.width(), 3, sentence, Tone.WARNING);
    }
  }
}
