package linkwright.shell;

import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.WaitShown;
import linkwright.terminal.Display;

/** What is told beside the screen: the window's title, a notice when a wait is due, a voice. */
final class Outward {
  private final Display display;
  private final Voice voice;
  private final Sounds sounds;
  private Optional<Page> before = Optional.empty();
  private String title = "";

  Outward(Display display, Voice voice, Sounds sounds) {
    this.display = display;
    this.voice = voice;
    this.sounds = sounds;
  }

  /** Tells what is new on a page. */
  void tell(Page now) {
    String named = title(now);
    if (!named.equals(title)) {
      title = named;
      display.title(named);
    }
    List<WaitShown> due =
        before.map(was -> Utterances.newlyDue(was, now)).orElseGet(() -> due(now));
    if (!due.isEmpty()) {
      due.forEach(wait -> display.notice(Utterances.isDue(wait)));
      sounds.tone();
    }
    if (before.isEmpty()) {
      voice.say(Utterances.asked(now));
    } else {
      List<Utterance> said = Utterances.between(before.get(), now);
      voice.say(Utterances.left(before.get(), now), said);
      if (said.stream().anyMatch(each -> each.kind() == Utterance.Kind.COUNT)) {
        sounds.click();
      }
    }
    before = Optional.of(now);
  }

  private static List<WaitShown> due(Page page) {
    return page.waits().stream().filter(WaitShown::due).toList();
  }

  /** The job and its count. */
  private static String title(Page page) {
    String count =
        figure(page.body().parts())
            .map(figure -> ": " + figure.number().replace("/", " of ") + " " + figure.word())
            .filter(words -> !words.contains("{"))
            .orElse("");
    return page.job() + count;
  }

  static Optional<Figure> figure(List<Part> parts) {
    return Beside.flat(parts).filter(Figure.class::isInstance).map(Figure.class::cast).findFirst();
  }
}
