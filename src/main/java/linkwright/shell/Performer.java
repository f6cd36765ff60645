package linkwright.shell;

import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Effect;
import linkwright.coach.Message;
import linkwright.coach.Model;
import linkwright.coach.Turn;
import linkwright.coach.Update;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.job.Fact;

/**
 * Performs the effects of updates and feeds what became of them back, until nothing more is asked.
 * When {@link #take} returns, whatever the model shows as done is on the disk.
 */
public final class Performer {
  private final Books books;
  private final DraftStore drafts;
  private final Runnable bell;
  private boolean left;

  /**
   * A performer.
   *
   * @param home the user's folder
   * @param device the name of this machine in the books
   * @param clock the time of entries
   * @param bell rings once
   */
  public Performer(Home home, String device, InstantSource clock, Runnable bell) {
    this(home, device, clock, bell, Patience.ENDLESS);
  }

  /** The same, with someone who is told how far a long reading of the tray has come. */
  Performer(Home home, String device, InstantSource clock, Runnable bell, Patience patience) {
    this.drafts = new DraftStore(home.drafts());
    this.books = new Books(home, device, clock, drafts, patience);
    this.bell = bell;
  }

  /**
   * The model with the tray read, a first job laid in it if it is empty, and a job opened if one
   * was asked for.
   *
   * @param first the entries of that first job, the opening of the job before all
   */
  public Model begin(Model model, List<Fact> first, Optional<String> job) {
    if (books.empty() && first.get(0) instanceof Fact.JobOpened opened) {
      books.begin(opened.name(), first, model.handbook());
      books.shut();
    }
    Model ready = take(model, books.tray(model.handbook()));
    return job.map(slug -> take(ready, books.open(slug, ready.handbook()))).orElse(ready);
  }

  /** The model after the message and everything that followed from it. */
  public Model take(Model model, Message message) {
    Model current = model;
    Deque<Message> messages = new ArrayDeque<>(List.of(message));
    while (!messages.isEmpty()) {
      Turn turn = Update.update(current, messages.remove());
      current = turn.model();
      List<Message> answers = new ArrayList<>();
      for (Effect effect : turn.effects()) {
        perform(effect, current).ifPresent(answers::add);
      }
      messages.addAll(answers);
    }
    return current;
  }

  /** Whether the program is to end. */
  public boolean left() {
    return left;
  }

  /** Lets go of the open book; for leaving by any way. */
  public void shut() {
    books.shut();
  }

  private Optional<Message> perform(Effect effect, Model model) {
    if (effect instanceof Effect.KeepFacts keep) {
      return Optional.of(books.keep(keep.facts(), model.handbook()));
    }
    if (effect instanceof Effect.BeginJob begin) {
      return Optional.of(books.begin(begin.name(), begin.facts(), model.handbook()));
    }
    if (effect instanceof Effect.OpenJob open) {
      return Optional.of(books.open(open.slug(), model.handbook()));
    }
    if (effect instanceof Effect.AcceptLine accept) {
      return Optional.of(books.accept(accept.check(), model.handbook()));
    }
    if (effect instanceof Effect.ShutJob) {
      books.shut();
    } else if (effect instanceof Effect.ReadTray) {
      return Optional.of(books.tray(model.handbook()));
    } else if (effect instanceof Effect.KeepDraft draft) {
      drafts.keep(draft.slug(), draft.form(), draft.texts());
    } else if (effect instanceof Effect.DropDraft draft) {
      drafts.drop(draft.slug(), draft.form());
    } else if (effect instanceof Effect.RingBell) {
      bell.run();
    } else if (effect instanceof Effect.Leave) {
      left = true;
    }
    return Optional.empty();
  }
}
