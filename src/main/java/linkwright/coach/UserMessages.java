package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.MessageCases;
import linkwright.coach.kernel.Turn;

/** What the user does, told from what the world answers: only it waits for a write. */
final class UserMessages implements MessageCases<Boolean> {
  private UserMessages() {}

  static boolean is(Message message) {
    return message.answer(new UserMessages());
  }

  /** What was pressed while something was written, read in order against the model after it. */
  static Turn read(Turn first, List<Message> waiting) {
    Turn turn = first;
    for (Message pressed : waiting) {
      List<Effect> effects = new ArrayList<>(turn.effects());
      Turn next = Coach.update(turn.model(), pressed);
      effects.addAll(next.effects());
      turn = new Turn(next.model(), effects, next.next());
    }
    return turn;
  }

  @Override
  public Boolean keyPressed(Message.KeyPressed message) {
    return true;
  }

  @Override
  public Boolean actChosen(Message.ActChosen message) {
    return true;
  }

  @Override
  public Boolean pasted(Message.Pasted message) {
    return true;
  }

  @Override
  public Boolean rowChosen(Message.RowChosen message) {
    return true;
  }

  @Override
  public Boolean fieldChosen(Message.FieldChosen message) {
    return true;
  }

  @Override
  public Boolean led(Message.Led message) {
    return true;
  }

  @Override
  public Boolean studentRead(Message.StudentRead message) {
    return false;
  }

  @Override
  public Boolean classRead(Message.ClassRead message) {
    return false;
  }

  @Override
  public Boolean ticked(Message.Ticked message) {
    return false;
  }

  @Override
  public Boolean resized(Message.Resized message) {
    return false;
  }

  @Override
  public Boolean jobOpened(Message.JobOpened message) {
    return false;
  }

  @Override
  public Boolean jobNotOpened(Message.JobNotOpened message) {
    return false;
  }

  @Override
  public Boolean kept(Message.Kept message) {
    return false;
  }

  @Override
  public Boolean notKept(Message.NotKept message) {
    return false;
  }

  @Override
  public Boolean othersRead(Message.OthersRead message) {
    return false;
  }

  @Override
  public Boolean keptElsewhere(Message.KeptElsewhere message) {
    return false;
  }

  @Override
  public Boolean troubled(Message.Troubled message) {
    return false;
  }

  @Override
  public Boolean trayRead(Message.TrayRead message) {
    return false;
  }

  @Override
  public Boolean trayGoesOn(Message.TrayGoesOn message) {
    return false;
  }

  @Override
  public Boolean settingsKept(Message.SettingsKept message) {
    return false;
  }

  @Override
  public Boolean copied(Message.Copied message) {
    return false;
  }

  @Override
  public Boolean ended(Message.Ended message) {
    return false;
  }

  @Override
  public Boolean benchRead(Message.BenchRead message) {
    return false;
  }

  @Override
  public Boolean drawerRead(Message.DrawerRead message) {
    return false;
  }

  @Override
  public Boolean writtenOut(Message.WrittenOut message) {
    return false;
  }

  @Override
  public Boolean rowsRead(Message.RowsRead message) {
    return false;
  }
}
