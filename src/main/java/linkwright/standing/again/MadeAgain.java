package linkwright.standing.again;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.FigureSource;
import linkwright.plan.Plan;
import linkwright.plan.SettledLink;
import linkwright.plan.WishKeys;
import linkwright.plan.WishedRing;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.standing.Closing;
import linkwright.standing.CountedPlan;
import linkwright.standing.Handbook;
import linkwright.standing.PlanDefaults;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/**
 * A job made again: a new wish from what the earlier one settled. What may differ (name, length,
 * metal, thickness) is taken from what is typed; in another metal or wire the link has to be found
 * anew, for it springs otherwise, and only its look, its formers and its rings carry over.
 *
 * @param wish the new job's wish
 * @param settled key of the wish → what is taken that nobody typed: what the earlier job showed or
 *     was reckoned with, what is her bench's
 * @param carries what carries over, in sentences
 * @param anew what is to be tried anew, in sentences; none where metal and wire stay
 * @param earlier what the earlier job came to; empty where no chain was made or weighed
 * @param firstMetal the name of the earlier job's metal; empty without a plan
 * @param inAnotherMetal whether the new one is of another
 */
public record MadeAgain(
    Map<String, String> wish,
    Map<String, Sourced> settled,
    List<String> carries,
    List<String> anew,
    Optional<Closing> earlier,
    String firstMetal,
    boolean inAnotherMetal) {
  /** What may differ from the earlier job, by its keys; an empty text leaves it as it was. */
  public static final List<String> ASKED =
      List.of(WishKeys.JOB, WishKeys.FINISHED, WishKeys.METAL, WishKeys.WIRE);

  public MadeAgain {
    wish = Collections.unmodifiableMap(new LinkedHashMap<>(wish));
    settled = Collections.unmodifiableMap(new LinkedHashMap<>(settled));
    carries = List.copyOf(carries);
    anew = List.copyOf(anew);
  }

  /**
   * What is made again.
   *
   * @param state the earlier job
   * @param changes what is to differ, by the keys of {@link #ASKED}
   * @param units what the fields of the new plan are written in
   */
  public static MadeAgain of(
      JobState state, Handbook handbook, Map<String, String> changes, UnitStyle units) {
    Standing standing = Standing.of(state, handbook);
    Map<String, String> wish = new LinkedHashMap<>(state.course().wish());
    wish.remove(WishKeys.STOCK);
    wish.remove(WishKeys.RING_STOCK);
    changes.forEach(
        (key, text) -> {
          if (!text.isBlank()) {
            wish.put(key, text.strip());
          }
        });
    Making making = new Making(wish, units);
    Optional<Plan> plan = standing.counted().plan();
    plan.ifPresent(settledPlan -> making.chain(settledPlan, standing, state, handbook));
    Optional<Routine> routine = handbook.routine(state.course().routine());
    Map<String, Sourced> taken = new LinkedHashMap<>(PlanDefaults.of(wish, state, handbook));
    taken.putAll(making.settled);
    return new MadeAgain(
        wish,
        taken,
        making.carries,
        making.anew,
        plan.filter(any -> isMade(standing, state)).map(known -> Closing.of(state, known, routine)),
        plan.map(known -> known.wish().metal().name()).orElse(""),
        making.inAnotherMetal);
  }

  private static boolean isMade(Standing standing, JobState state) {
    StillToDo links = standing.left().get(PieceKind.LINK);
    boolean all = links != null && links.more() == 0;
    return all || state.accounts().weighedIn().chainG().isPresent();
  }

  /**
   * The entries that begin the new job.
   *
   * @param book the earlier job's entries: the moment of the first tells which job it was and names
   *     nobody
   */
  public List<Fact> facts(List<Entry> book, JobState earlier) {
    return List.of(
        new Fact.JobOpened(
            wish.getOrDefault(WishKeys.JOB, earlier.course().name()),
            earlier.course().routine(),
            book.isEmpty() ? "" : book.get(0).at().toString()),
        new Fact.PlanSet(wish, settled));
  }

  /** The new job as it stands before anything was done. */
  public JobState begun(JobState earlier, Handbook handbook) {
    List<Entry> book = new ArrayList<>();
    facts(List.of(), earlier)
        .forEach(fact -> book.add(new Entry(book.size() + 1, Instant.EPOCH, "plan", fact)));
    return JobState.replay(book, handbook.stages());
  }

  /** Gathers what carries over. */
  private static final class Making {
    private final Map<String, String> wish;
    private final UnitStyle units;
    private final Map<String, Sourced> settled = new LinkedHashMap<>();
    private final List<String> carries = new ArrayList<>();
    private final List<String> anew = new ArrayList<>();
    private boolean inAnotherMetal;

    Making(Map<String, String> wish, UnitStyle units) {
      this.wish = wish;
      this.units = units;
    }

    void chain(Plan plan, Standing standing, JobState state, Handbook handbook) {
      rings(plan);
      loss(standing, state, handbook);
      CountedPlan typed = CountedPlan.ofTyped(wish, state, handbook);
      String metal = plan.wish().metal().id();
      inAnotherMetal = typed.wish().filter(now -> !now.metal().id().equals(metal)).isPresent();
      boolean other =
          inAnotherMetal
              || typed
                  .wish()
                  .filter(now -> Math.abs(now.wireMm() - plan.wish().wireMm()) >= 0.0005)
                  .isPresent();
      if (other) {
        look(plan.link());
        anew(plan);
      } else {
        link(plan.link());
        if (plan.sized()) {
          take(WishKeys.LINK_REPEAT, plan.wish().repeat().written(plan.sizes(), units));
          carries.add("The other links of a repeat, as they were planned and measured.");
        }
      }
    }

    private void link(SettledLink link) {
      if (link.blankMm() > 0) {
        take(WishKeys.LINK_BLANK, units.typed(link.blankMm()));
        boolean cut = link.blankFrom() == FigureSource.MEASURED;
        carries.add(
            "Blanks of "
                + units.typed(link.blankMm())
                + (cut ? ", as the sample's was." : ", as they were planned."));
      }
      formers(link);
      if (link.insideFrom() == FigureSource.MEASURED || link.insideFrom() == FigureSource.HERS) {
        take(WishKeys.LINK_INSIDE, units.typed(link.insideMm()));
        carries.add("Each link adds " + units.typed(link.insideMm()) + ", as measured.");
      }
      size(link);
    }

    private void look(SettledLink link) {
      wish.remove(WishKeys.LINK_BLANK);
      wish.remove(WishKeys.LINK_INSIDE);
      formers(link);
      size(link);
      if (wish.containsKey(WishKeys.LINK_LENGTH)) {
        carries.add("The look: links of the same outside size.");
      }
    }

    private void anew(Plan plan) {
      anew.add(
          (inAnotherMetal ? "This metal springs otherwise" : "This wire springs otherwise")
              + ": the blank, "
              + (plan.link().blankMm() > 0 ? units.typed(plan.link().blankMm()) + " before, " : "")
              + "is reckoned anew; make a test piece before the run.");
      anew.add("What a link adds to the chain: hang a trial length again.");
      anew.add(
          inAnotherMetal
              ? "Solder, heat and pickle are this metal's own; so may be losses and hours."
              : "Losses and hours were those of the other wire.");
    }

    private void formers(SettledLink link) {
      if (!link.formersMm().isEmpty()) {
        String over =
            link.formersMm().entrySet().stream()
                .map(each -> each.getKey() + "=" + units.typed(each.getValue()))
                .collect(Collectors.joining(", "));
        take(WishKeys.LINK_FORMERS, over);
        carries.add("Formers: " + over.replace("=", " ") + ".");
      }
    }

    private void size(SettledLink link) {
      if (link.lengthMm().isPresent() && link.widthMm().isPresent()) {
        take(WishKeys.LINK_LENGTH, units.typed(link.lengthMm().getAsDouble()));
        take(WishKeys.LINK_WIDTH, units.typed(link.widthMm().getAsDouble()));
      }
    }

    private void rings(Plan plan) {
      plan.wish().ring().ifPresent(this::ring);
    }

    private void ring(WishedRing ring) {
      take(WishKeys.RING_INSIDE, units.typed(ring.insideMm()));
      ring.ovalInsideMm().ifPresent(oval -> take(WishKeys.RING_OVAL, units.typed(oval)));
      carries.add(
          "Rings of "
              + units.typed(ring.insideMm())
              + " inside"
              + oval(ring.ovalInsideMm())
              + ", as they were chosen.");
    }

    private String oval(OptionalDouble oval) {
      return oval.isPresent() ? ", squeezed to " + units.typed(oval.getAsDouble()) : "";
    }

    /**
     * The loss that a new plan reckons with, that run among all her books; where no book tells of
     * any, the loss believed after the run.
     */
    private void loss(Standing standing, JobState state, Handbook handbook) {
      StillToDo links = standing.left().get(PieceKind.LINK);
      int scrapped = state.piles().of(PieceKind.LINK).scrapped();
      if (links != null && links.good() + scrapped > 0) {
        Handbook next = handbook.forJob("", List.of());
        boolean taught = next.hands().lossShare(PieceKind.LINK).isPresent();
        Sourced loss =
            taught
                ? PlanDefaults.loss(handbook.routine(state.course().routine()), next)
                : new Sourced(
                    Decimals.upTo(100 * links.lossShare(), 1) + " %", Sourced.Source.HANDS);
        String share = loss.value();
        take(WishKeys.USUAL_LOSS, loss);
        carries.add(
            "A loss of "
                + share
                + " to reckon with, "
                + (taught
                    ? "as every new plan does: that run among all jobs that count."
                    : "habit and that run together."));
      }
    }

    private void take(String key, String text) {
      take(key, new Sourced(text, Sourced.Source.HANDS));
    }

    private void take(String key, Sourced value) {
      wish.put(key, value.value());
      settled.put(key, value);
    }
  }
}
