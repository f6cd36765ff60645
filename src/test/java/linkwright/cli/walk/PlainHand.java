package linkwright.cli.walk;

import java.io.BufferedReader;
import java.io.OutputStream;
import java.io.Reader;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BiFunction;
import linkwright.cli.console.Teller;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.shell.Performer;

/** Somebody who types lines of the plain walk, for tests that press keys besides. */
public final class PlainHand {
  private final Queue<String> more = new ConcurrentLinkedQueue<>();
  private final LineSource source;
  private volatile boolean gone;

  public PlainHand() {
    source =
        LineSource.of(
            new BufferedReader(Reader.nullReader()) {
              @Override
              public String readLine() {
                if (gone) {
                  return null;
                }
                String next = more.poll();
                // Where a form asks on, it is left.
                return next == null ? "esc" : next;
              }
            });
  }

  /** All words that can be typed. */
  public static List<String> words() {
    return WalkWord.words();
  }

  /**
   * Types a line, and others after it if it asks for them.
   *
   * @param takes takes each message that comes of it
   */
  public void type(
      String typed,
      Performer performer,
      Model model,
      InstantSource clock,
      InstantSource steady,
      BiFunction<Model, Message, Model> takes) {
    Queue<String> all = new ArrayDeque<>(List.of(typed.split(" / ", -1)));
    String first = all.remove();
    more.clear();
    more.addAll(all);
    WalkCoach coach = new WalkCoach(performer, takes::apply, model);
    WalkLines lines =
        new WalkLines(
            Teller.of(OutputStream.nullOutputStream(), true),
            () -> 80,
            source,
            clock,
            steady,
            coach);
    WalkTelling telling = new WalkTelling(lines, coach);
    telling.tell();
    new TypedLine(lines, coach, telling).obey(first);
    telling.tell();
  }

  /** No line comes any more; who reads them is let go. */
  public void leave() {
    gone = true;
    source.await(100);
  }
}
