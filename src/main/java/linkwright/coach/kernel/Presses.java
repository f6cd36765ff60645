package linkwright.coach.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.Pauses;

/**
 * What a key was pressed for last, so that one that bounces or is held counts once. Moments are of
 * the steady clock.
 *
 * @param key the last key; empty if none was pressed, or none that could bounce
 * @param act what it did when it counted last
 * @param came when it came last, whether it counted or not
 * @param counted when it counted last
 * @param between from the time before that it counted to the last, for the same act
 * @param repeatingSince when it began to come faster than anybody presses; empty if it does not
 * @param drawn since when the screen that it led to stands; empty until that is known
 */
public record Presses(
    Optional<Key> key,
    Optional<Act> act,
    Instant came,
    Instant counted,
    Duration between,
    Optional<Instant> repeatingSince,
    Optional<Instant> drawn) {
  /** Held so long it is meant. */
  public static final Duration HELD = Duration.ofSeconds(1);

  private static final Duration LONG = Duration.ofDays(1);

  /** Nothing was pressed yet. */
  public static final Presses NONE =
      new Presses(
          Optional.empty(),
          Optional.empty(),
          Instant.MIN,
          Instant.MIN,
          LONG,
          Optional.empty(),
          Optional.empty());

  /** Whether the key comes too soon after the last time for what it would do now. */
  public boolean tooSoon(Key pressed, Act meant, Instant at) {
    Optional<Duration> pause = Pauses.after(meant);
    if (pause.isEmpty() || key.filter(pressed::equals).isEmpty()) {
      return false;
    }
    if (act.filter(last -> Pauses.leadsOn(last, meant)).isPresent()) {
      // What it does changed under her hand: a burst is over before it goes on with other work.
      return unread(pressed, at);
    }
    Instant since = pause.get().equals(Pauses.UNREAD) ? seen(counted) : counted;
    return Duration.between(came, at).compareTo(Pauses.bounce(meant)) < 0
        || Duration.between(since, at).compareTo(pause.get()) < 0;
  }

  /** Whether nobody could have read yet what that key led to. */
  public boolean unread(Key again, Instant at) {
    return key.filter(again::equals).isPresent()
        && Pauses.sameBurst(
            act, Duration.between(seen(came), at), Duration.between(seen(counted), at));
  }

  /** Nothing is read before it stands on the screen. */
  private Instant seen(Instant moment) {
    return drawn.filter(moment::isBefore).orElse(moment);
  }

  /** The same, with since when the screen stands; only the first one after a count is its own. */
  public Presses drawn(Instant since) {
    return drawn.isEmpty() && came.equals(counted) && since.isAfter(counted)
        ? new Presses(key, act, came, counted, between, repeatingSince, Optional.of(since))
        : this;
  }

  /** The press came before what it answers could be read; the next of that key comes after it. */
  public Presses refused(Key pressed, Act meant, Instant at) {
    return key.filter(pressed::equals).isPresent() ? passedOver(at) : counted(pressed, meant, at);
  }

  /** The press came and counted. */
  public Presses counted(Key pressed, Act meant, Instant at) {
    boolean again =
        key.filter(pressed::equals).isPresent() && act.filter(meant::equals).isPresent();
    return new Presses(
        Optional.of(pressed),
        Optional.of(meant),
        at,
        at,
        again ? Duration.between(counted, at) : LONG,
        Optional.empty(),
        Optional.empty());
  }

  /** The press came and counted nothing. */
  public Presses passedOver(Instant at) {
    boolean repeats = Duration.between(came, at).compareTo(Pauses.BOUNCE) < 0;
    Optional<Instant> since =
        repeats ? repeatingSince.or(() -> Optional.of(came)) : Optional.empty();
    return new Presses(key, act, at, counted, between, since, drawn);
  }

  /** Whether the key is held since a second or longer. */
  public boolean held() {
    return repeatingSince
        .filter(since -> Duration.between(since, came).compareTo(HELD) >= 0)
        .isPresent();
  }

  /** Whether the last two counts are one press: a held key waits so long before it repeats. */
  public boolean countedTwice() {
    return between.compareTo(Pauses.UNREAD) < 0;
  }
}
