package linkwright.coach;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.job.Entry;
import linkwright.job.Fact;

/** A disk of which one write fails, or each is slow. */
final class FaultyDisk {
  private Model model;
  private final List<Fact> book = new ArrayList<>();
  private final Deque<Effect.KeepFacts> slow = new ArrayDeque<>();
  private final int fails;
  private final boolean late;
  private int number;
  private int writes;

  FaultyDisk(Bencher bench, int fails, boolean late) {
    this.model = bench.model();
    this.number = bench.entries().size();
    this.fails = fails;
    this.late = late;
  }

  List<Fact> book() {
    return List.copyOf(book);
  }

  int writes() {
    return writes;
  }

  PlaceId place() {
    return model.held().place();
  }

  void press(String key) {
    take(new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
  }

  void take(Message message) {
    Turn turn = Coach.update(model, message);
    model = turn.model();
    for (Effect effect : turn.effects()) {
      if (effect instanceof Effect.KeepFacts keep) {
        slow.add(keep);
        if (!late) {
          answer();
        }
      }
    }
  }

  boolean waits() {
    return !slow.isEmpty();
  }

  void answer() {
    Effect.KeepFacts keep = slow.remove();
    if (writes++ == fails) {
      take(new Message.NotKept("The disk is full."));
      return;
    }
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : keep.facts()) {
      entries.add(new Entry(++number, model.now(), "bench", fact));
      book.add(fact);
    }
    take(new Message.Kept(entries));
  }

  Page page() {
    return Pages.of(model);
  }

  boolean failed() {
    return page().open().stream().anyMatch(open -> open.act().equals(Optional.of(Act.TRY_AGAIN)));
  }
}
