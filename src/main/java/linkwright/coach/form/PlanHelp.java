package linkwright.coach.form;

import java.util.Map;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;

/** What each field of a plan takes, an example of it, what it is and what it changes. */
public final class PlanHelp {
  /**
   * One field.
   *
   * @param measure what it takes
   * @param hint an example, with amounts to be put into the user's units
   * @param help what it is and what it changes
   */
  public record FieldHelp(Measure measure, String hint, String help) {}

  /** What a plan file says beside the wish: which routine it is made by. */
  public static final String ROUTINE =
      "The routine that it is made by. It changes what a link adds to the chain, the usual loss and"
          + " the hours; where it is left out, the plainest routine for the link is taken, and"
          + " told where another would count otherwise. For instance rope.";

  private static final Map<String, FieldHelp> ENTRIES =
      Map.ofEntries(
          entry(
              WishKeys.JOB,
              Measure.WORDS,
              "Anna's bracelet",
              "What the job is called. It changes nothing else."),
          entry(
              WishKeys.METAL,
              Measure.WORDS,
              "any part of its name or fineness",
              "What the chain is made of. It changes the weight, the price, the solders, the"
                  + " springback, the heat and the fineness mark."),
          entry(
              WishKeys.WIRE,
              Measure.WIRE,
              "{wire:0.9}",
              "The thickness of the links' wire. It changes nearly everything: the blank, the"
                  + " strength, the weight, which rings pass. Wire that is not round: half-round,"
                  + " square or strip first, then its width x its thickness."),
          entry(
              WishKeys.TEMPER,
              Measure.WORDS,
              "soft, as annealed, or hard, as drawn",
              "How hard the wire is when it is bent. Hard wire springs back more, so the blank and"
                  + " the formers change."),
          entry(
              WishKeys.LINK_PATTERN,
              Measure.WORDS,
              "any part of its name",
              "The shape of a link: its bends, its formers and where it is soldered. It changes the"
                  + " blank and what a link adds to the chain."),
          entry(
              WishKeys.LINK_LENGTH,
              Measure.LENGTH,
              "the look you want, {mm:14}",
              "The length of one link over all. The blank is found from it; it changes how many"
                  + " links the chain has."),
          entry(
              WishKeys.LINK_WIDTH,
              Measure.LENGTH,
              "{mm:5}",
              "The width of one link over all. It changes which formers do."),
          entry(
              WishKeys.LINK_BLANK,
              Measure.LENGTH,
              "{mm:38}; empty: found from the length",
              "The wire cut for one link. Typed, it goes before the one found from the length."),
          entry(
              WishKeys.LINK_FORMERS,
              Measure.LENGTH,
              "name={mm:2.5}, name={mm:3}; empty: the pattern's own",
              "The inside sizes of the formers that you have, or your own names for them at your"
                  + " bench. They change the link's size."),
          entry(
              WishKeys.LINK_INSIDE,
              Measure.LENGTH,
              "only if measured: what it adds to the chain",
              "What one link adds to the chain, measured on finished links. It goes before what is"
                  + " reckoned from the pattern."),
          entry(
              WishKeys.LINK_REPEAT,
              Measure.WORDS,
              "only if links differ: 1 link + 2 round ring={mm:3}",
              "How the links follow one another where they are of several sizes: how many of the"
                  + " planned link, then how many of each other, by its pattern's name and its own"
                  + " sizes: blank, length, width, inside, formers. Each size is counted, cut and"
                  + " weighed by itself."),
          entry(
              WishKeys.RING_INSIDE,
              Measure.LENGTH,
              "{mm:3}; the ring between two links",
              "The inside diameter of the rings that join the links. It changes the finished"
                  + " length, the strength and whether two wires pass it."),
          entry(
              WishKeys.RING_WIRE,
              Measure.WIRE,
              "empty: the links' wire",
              "The thickness of the rings' wire. It changes their strength and their weight."),
          entry(
              WishKeys.RING_OVAL,
              Measure.LENGTH,
              "width once squeezed, {mm:2.4}; empty: round",
              "The inside width of a ring once it is squeezed to an oval. The ring gets longer by"
                  + " it, and so does the chain."),
          entry(
              WishKeys.RING_ENDS,
              Measure.LENGTH,
              "a jump ring at each end, {mm:5}; empty: none",
              "The inside diameter of a jump ring at each end, of the links' wire. Both add their"
                  + " length, their wire and a joint each."),
          entry(
              WishKeys.FINISHED,
              Measure.LENGTH,
              "clasp and its rings in it, {mm:450}",
              "The length that the finished chain is to have, clasp included. It changes how many"
                  + " links there are."),
          entry(
              WishKeys.EXTENDER,
              Measure.LENGTH,
              "the end of the finished length, {mm:50}; empty: none",
              "How much of the finished length, at its end, is extender: the clasp takes any of its"
                  + " links, and the chain closes so much shorter. Its links are made with the"
                  + " others."),
          entry(
              WishKeys.CLASP_LENGTH,
              Measure.LENGTH,
              "inside end to inside end, pulled, {mm:14}; or its name",
              "What the clasp adds to the length. The links make up the rest."),
          entry(
              WishKeys.CLASP_MASS,
              Measure.MASS,
              "{g:1.2}",
              "What the clasp weighs. It changes the weight of the whole and where a mark is"
                  + " needed."),
          entry(
              WishKeys.STOCK,
              Measure.LENGTH,
              "{mm:2000}, {mm:412} or by weight {g:12}",
              "The lengths of wire that this job may take. They change what is short and how sure"
                  + " it is that the wire will do."),
          entry(
              WishKeys.RING_STOCK,
              Measure.LENGTH,
              "on hand, only if it is another wire",
              "The lengths of the rings' own wire. They change what is short."),
          entry(
              WishKeys.KERF,
              Measure.LENGTH,
              "0 with cutters, {mm:0.3} with a saw blade",
              "What each cut takes away. It changes the wire needed."),
          entry(
              WishKeys.COIL_TAIL,
              Measure.LENGTH,
              "what you hold of a coil, {mm:10}",
              "The end of a coil of rings that cannot be used. It changes the wire needed."),
          entry(
              WishKeys.USUAL_LOSS,
              Measure.SHARE,
              "links scrapped, 5 %",
              "How many of a hundred links are scrapped. It changes how many blanks are to be"
                  + " cut."),
          entry(
              WishKeys.CONFIDENCE,
              Measure.SHARE,
              "of having cut enough, 90 %",
              "How sure you want to be that enough come good. It changes how many blanks are to be"
                  + " cut."),
          entry(
              PartPlan.PIECES,
              Measure.NUMBER,
              "1; of each kind of piece",
              "How many are to be made. It changes the wire needed."));

  private PlanHelp() {}

  private static Map.Entry<String, FieldHelp> entry(
      String key, Measure measure, String hint, String help) {
    return Map.entry(key, new FieldHelp(measure, hint, help));
  }

  /** What is said of that field. */
  public static FieldHelp of(String key) {
    return ENTRIES.get(key);
  }
}
