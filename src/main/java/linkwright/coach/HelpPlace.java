package linkwright.coach;

import java.util.List;

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
