package linkwright.shell;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * A click for each count and a tone for a wait that is due, where the machine can sound them and
 * the user asked for them. The terminal's bell rings for what is due all the same. Nobody waits: a
 * thread of its own plays, and sounds that pile up are left out.
 */
final class Sounds implements AutoCloseable {
  /** The word by which clicks are asked for. */
  static final String CLICKS = "clicks";

  /** The word by which tones are asked for. */
  static final String TONES = "tones";

  /** Samples a second. */
  static final int RATE = 22_050;

  private static final int LOUDEST = 12_000;
  private static final byte[] CLICK = samples(1800, 0.012);
  private static final byte[] TONE = samples(660, 0.6);
  private static final byte[] END = {};

  private final boolean clicks;
  private final boolean tones;
  private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>(2);

  private Sounds(boolean clicks, boolean tones) {
    this.clicks = clicks;
    this.tones = tones;
  }

  /** Sounds as they stand among the kinds of what is heard; silent without their words. */
  static Sounds of(String kinds) {
    List<String> wanted = List.of(kinds.split("[,\\s]+"));
    Sounds sounds = new Sounds(wanted.contains(CLICKS), wanted.contains(TONES));
    if (sounds.clicks || sounds.tones) {
      Thread player = new Thread(sounds::play, "sounds");
      player.setDaemon(true);
      player.start();
    }
    return sounds;
  }

  void click() {
    if (clicks) {
      waiting.offer(CLICK);
    }
  }

  void tone() {
    if (tones) {
      waiting.offer(TONE);
    }
  }

  /**
   * A sine that fades, as 16 bits a sample, mono, the low byte first.
   *
   * @param hertz its frequency, above 0
   * @param seconds how long, above 0
   */
  static byte[] samples(double hertz, double seconds) {
    int count = (int) Math.round(seconds * RATE);
    byte[] bytes = new byte[2 * count];
    for (int i = 0; i < count; i++) {
      double fade = 1 - (double) i / count;
      int value = (int) (LOUDEST * fade * Math.sin(2 * Math.PI * hertz * i / RATE));
      bytes[2 * i] = (byte) value;
      bytes[2 * i + 1] = (byte) (value >> 8);
    }
    return bytes;
  }

  private void play() {
    AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
    try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
      line.open(format);
      line.start();
      for (byte[] sound = waiting.take(); sound.length > 0; sound = waiting.take()) {
        line.write(sound, 0, sound.length);
      }
      line.drain();
    } catch (LineUnavailableException | IllegalArgumentException | LinkageError silent) {
      // No way to sound anything here: the bell has to do.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    waiting.clear();
    waiting.offer(END);
  }
}
