package linkwright.shell;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import linkwright.view.Ascii;

/**
 * Says sentences by a command of the user's own, such as a speech program that takes a sentence as
 * its last argument. It never makes anybody wait: sentences are handed to a thread of their own, of
 * each kind only the newest waits, of what has become due all, what belongs to a step that was left
 * is dropped, and the most urgent kind is said first. Silent without a command.
 */
public final class Voice implements AutoCloseable {
  /** A card whole takes about a minute; the next sentence must not be spoken over it. */
  private static final long MOST_MILLIS = 180_000;

  /** In which signs words reach a program: those of the language that the machine is set to. */
  private static final Charset HANDED_OVER =
      Charset.forName(System.getProperty("sun.jnu.encoding", "UTF-8"));

  private final List<String> command;
  private final Set<Utterance.Kind> kinds;
  private final Map<Utterance.Kind, String> waiting = new EnumMap<>(Utterance.Kind.class);
  private String speaking = "";
  private boolean closed;

  private Voice(List<String> command, Set<Utterance.Kind> kinds) {
    this.command = List.copyOf(command);
    this.kinds = Set.copyOf(kinds);
  }

  /**
   * A voice.
   *
   * @param command the command and its first arguments, with spaces between; blank for silence
   * @param kinds what is said: cautions, waits, counts, steps, still-to-do; blank for all
   */
  public static Voice of(String command, String kinds) {
    List<String> words = command.isBlank() ? List.of() : List.of(command.strip().split("\\s+"));
    Set<Utterance.Kind> wanted = new HashSet<>();
    for (Utterance.Kind kind : Utterance.Kind.values()) {
      if (kinds.isBlank() || List.of(kinds.split("[,\\s]+")).contains(kind.word())) {
        wanted.add(kind);
      }
    }
    Voice voice = new Voice(words, wanted);
    if (!words.isEmpty()) {
      Thread thread = new Thread(voice::speak, "speaks");
      thread.setDaemon(true);
      thread.start();
    }
    return voice;
  }

  /**
   * Takes sentences to be said; the newest of a kind takes the place of one that waits still. Only
   * of the waits at the bench none makes another unheard. What is being said just now is not said
   * once more.
   */
  void say(List<Utterance> utterances) {
    say(Set.of(), utterances);
  }

  /**
   * The same after a step or a place was left.
   *
   * @param left of these kinds nothing is said any more that waits still
   */
  void say(Set<Utterance.Kind> left, List<Utterance> utterances) {
    if (command.isEmpty()) {
      return;
    }
    synchronized (waiting) {
      waiting.keySet().removeAll(left);
      for (Utterance each : utterances) {
        if (kinds.contains(each.kind()) && !each.text().equals(speaking)) {
          waiting.merge(
              each.kind(),
              each.text(),
              (older, newer) -> each.kind() == Utterance.Kind.WAIT ? older + " " + newer : newer);
        }
      }
      waiting.notifyAll();
    }
  }

  private Optional<String> next() throws InterruptedException {
    synchronized (waiting) {
      // What was said to its end is no more being said: come to again, it is heard again.
      speaking = "";
      while (waiting.isEmpty() && !closed) {
        waiting.wait();
      }
      // An enum map goes through its keys in their order: the most urgent first.
      Optional<Utterance.Kind> first = waiting.keySet().stream().findFirst();
      first.ifPresent(kind -> speaking = waiting.get(kind));
      return first.map(waiting::remove);
    }
  }

  private void speak() {
    try {
      Optional<String> text = next();
      while (text.isPresent()) {
        run(text.get());
        text = next();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What the signs of a place cannot hold, in words: a program would hear a question mark. */
  static String inSignsOf(Charset signs, String text) {
    return signs.newEncoder().canEncode(text)
        ? text
        : Ascii.of(
            text.replaceAll(" ?°(?=[CF]\\b)", " degrees ")
                .replaceAll(" ?°", " degrees")
                .replaceAll("± ?", "plus or minus "));
  }

  /** A command that is not there, or fails, says nothing: the screen says all of it anyway. */
  private void run(String text) throws InterruptedException {
    List<String> words = new ArrayList<>(command);
    String spoken = inSignsOf(HANDED_OVER, text);
    words.add(spoken);
    try {
      ProcessBuilder program =
          new ProcessBuilder(words)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD);
      // For a program that takes its last word for part of a script, and a comment there.
      program.environment().put("LINKWRIGHT_SAYS", spoken);
      Process process = program.start();
      process.getOutputStream().close();
      if (!process.waitFor(MOST_MILLIS, TimeUnit.MILLISECONDS)) {
        process.destroy();
      }
    } catch (IOException notThere) {
      synchronized (waiting) {
        waiting.clear();
      }
    }
  }

  @Override
  public void close() {
    synchronized (waiting) {
      closed = true;
      waiting.clear();
      waiting.notifyAll();
    }
  }
}
