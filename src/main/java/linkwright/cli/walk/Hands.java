package linkwright.cli.walk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Act;
import linkwright.coach.Key;
import linkwright.coach.KeyNames;
import linkwright.coach.Message;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.coach.TrayJob;
import linkwright.job.Fact;
import linkwright.shell.Performer;

/** Works the coach's keys for a walk and gathers what the coach says to them. */
final class Hands {
  /** What screens say of their keys, and the word that does the same here. */
  private static final String[][] WORDS = {
    {"(esc, then i)", "(type weigh)"},
    {"(esc, then w)", "(type wire)"},
    {": n logs one", ": log does it"},
    {"(esc, then k)", "(type book)"},
    {"(z brings it back)", "(restore brings it back)"},
    {"Press the number", "Type the number"},
  };

  private final Performer performer;
  private final List<String> told = new ArrayList<>();
  private Model model;

  Hands(Performer performer, Model model) {
    this.performer = performer;
    this.model = model;
  }

  Model model() {
    return model;
  }

  boolean left() {
    return performer.left();
  }

  void shut() {
    performer.shut();
  }

  /** Puts the first job into an empty tray and opens it. */
  void openFirst(List<Fact> facts) {
    model = performer.begin(model, facts, Optional.empty());
    press(Act.CHOOSE);
  }

  /** Opens a job by its book's name. */
  void open(String slug) {
    TrayJob job = new TrayJob(slug, slug, "", List.of(), Instant.EPOCH, false);
    take(new Message.TrayRead(List.of(job)));
    press(Act.CHOOSE);
  }

  void press(Act act) {
    press(KeyNames.read(act.keys().get(0)).orElseThrow());
  }

  void press(Key key) {
    take(new Message.KeyPressed(key));
    if (!model.notice().text().isBlank()) {
      told.add(worded(model.notice().text()));
    }
  }

  void paste(String text) {
    take(new Message.Pasted(text));
  }

  /** Lets the clock go on. */
  void tick(Instant now) {
    take(new Message.Ticked(now));
  }

  private void take(Message message) {
    model = performer.take(model, message);
  }

  /** Goes to a place of the job by the way round; a form that is open is left, its text kept. */
  void go(Act place) {
    if (model.screen().form().isPresent()) {
      press(Key.of(Key.Kind.ESCAPE));
    }
    if (!(model.screen() instanceof Screen.Round)) {
      press(Act.ROUND);
    }
    press(place);
  }

  /** What the coach has said since this was asked last. */
  List<String> takeTold() {
    List<String> all = List.copyOf(told);
    told.clear();
    return all;
  }

  private static String worded(String notice) {
    String text = notice;
    for (String[] pair : WORDS) {
      text = text.replace(pair[0], pair[1]);
    }
    return text;
  }
}
