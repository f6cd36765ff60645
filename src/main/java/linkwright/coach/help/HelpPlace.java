package linkwright.coach.help;

import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** All keys of the screen it was asked on; any key goes back. */
final class HelpPlace implements Place {
  @Override
  public List<Act> acts(Model model) {
    return List.of();
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.to(model);
  }

  @Override
  public Turn typed(Model model, Key key) {
    return model.held() instanceof HelpHeld help
        ? Turn.to(model.with(help.from()))
        : Turn.to(model);
  }
}
