package linkwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.Pattern;
import linkwright.quantity.Decimals;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.reference.Clasp;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.reference.Temper;
import linkwright.wire.WireSection;
import linkwright.yield.BlanksToCut;
import linkwright.yield.Yield;

/**
 * Reads a wish as it was typed, key by key: everything that is wrong at once, each with its key.
 *
 * @param wish the wish; empty while something is wrong or missing
 * @param troubles key of {@link WishKeys} → what is wrong with what stands there
 */
public record WishReading(Optional<ChainWish> wish, Map<String, String> troubles) {

  public WishReading {
    troubles = Collections.unmodifiableMap(new LinkedHashMap<>(troubles));
  }

  /**
   * Reads a wish.
   *
   * @param texts key → what was typed; a key that is missing or blank takes its usual value
   * @param reference where metals are looked up
   * @param patterns the link patterns there are
   */
  public static WishReading of(
      Map<String, String> texts, Reference reference, List<Pattern> patterns) {
    return new Reader(texts, reference, patterns).read();
  }

  private static final class Reader {
    private final Typed typed;
    private final Reference reference;
    private final List<Pattern> patterns;
    private double wireMm;

    Reader(Map<String, String> texts, Reference reference, List<Pattern> patterns) {
      this.typed = new Typed(texts);
      this.reference = reference;
      this.patterns = patterns;
    }

    WishReading read() {
      Optional<Metal> metal =
          typed
              .needed(WishKeys.METAL, reference::metal, "Name the metal, such as sterling.")
              .map(known -> HeldFigures.metal(known, typed.texts()));
      Optional<WireSection> wire =
          wire(WishKeys.WIRE, "Give the wire's thickness, such as 0.9 mm or 19 AWG.");
      Temper temper = typed.optional(WishKeys.TEMPER, Temper::read).orElse(Temper.SOFT);
      wireMm = wire.map(WireSection::thicknessMm).orElse(0.0);
      WishedLink link = link();
      WishedRepeat repeat =
          typed.optional(WishKeys.LINK_REPEAT, this::repeat).orElse(WishedRepeat.ALIKE);
      Optional<WireSection> ringWire = ringWire(wire);
      Optional<WishedRing> ring = ring(ringWire);
      Optional<Double> finished =
          typed
              .needed(
                  WishKeys.FINISHED,
                  Length::readSize,
                  "Give the finished length, clasp included, such as 45 cm or 18 in.")
              .map(Length::mm);
      Optional<Clasp> named = reference.knownClasp(typed.text(WishKeys.CLASP_LENGTH));
      double clasp =
          named
              .map(known -> HeldFigures.claspMm(known, typed.texts()))
              .or(() -> typed.optional(WishKeys.CLASP_LENGTH, Length::read).map(Length::mm))
              .orElse(0.0);
      double claspG =
          typed
              .optional(WishKeys.CLASP_MASS, Mass::read)
              .map(Mass::grams)
              .or(() -> named.map(known -> HeldFigures.claspG(known, typed.texts())))
              .orElse(0.0);
      double kerf =
          typed.optional(WishKeys.KERF, Length::read).map(Length::mm).orElse(UsualFigures.KERF_MM);
      double tail =
          typed
              .optional(WishKeys.COIL_TAIL, Length::read)
              .map(Length::mm)
              .orElse(UsualFigures.COIL_TAIL_MM);
      double loss = share(WishKeys.USUAL_LOSS, UsualFigures.LOSS);
      double confidence = share(WishKeys.CONFIDENCE, UsualFigures.CHANCE);
      typed.check(
          WishKeys.CONFIDENCE,
          confidence > 0 && confidence < 1,
          "The chance of having cut enough lies above 0 % and below 100 %, such as 90 %.");
      typed.check(
          WishKeys.USUAL_LOSS,
          !(confidence > 0 && confidence < 1)
              || Yield.cut(1, 0, 0, loss, confidence) instanceof BlanksToCut.Blanks,
          "At a usual loss of "
              + Decimals.percent(loss, 1)
              + " no number of blanks gives the chance wished: find out first why so many are"
              + " scrapped, or give a lower one.");
      StockReading stock = new StockReading(typed, metal);
      List<Double> lengths = stock.lengths(WishKeys.STOCK, wire);
      Optional<List<Double>> ringLengths = ringStock(stock, wire, ringWire, ring);
      double extender =
          typed.optional(WishKeys.EXTENDER, Length::readSize).map(Length::mm).orElse(0.0);
      typed.check(
          WishKeys.EXTENDER,
          extender == 0 || finished.isEmpty() || extender < finished.get() - clasp,
          "The extender is the end of the finished length and in it: give less than that, such as"
              + " 5 cm of 50 cm.");
      OptionalDouble endRing = size(WishKeys.RING_ENDS);
      if (!typed.troubles().isEmpty()) {
        return new WishReading(Optional.empty(), typed.troubles());
      }
      return new WishReading(
          Optional.of(
              new ChainWish(
                  typed.text(WishKeys.JOB),
                  metal.orElseThrow(),
                  wire.orElseThrow(),
                  ringWire.or(() -> wire).orElseThrow(),
                  temper,
                  link,
                  repeat,
                  ring,
                  endRing,
                  finished.orElseThrow(),
                  extender,
                  clasp,
                  claspG,
                  kerf,
                  tail,
                  loss,
                  confidence,
                  HeldFigures.solderGCm3(metal.orElseThrow(), reference, typed.texts()),
                  lengths,
                  ringLengths)),
          Map.of());
    }

    private WishedLink link() {
      Optional<Pattern> pattern = typed.optional(WishKeys.LINK_PATTERN, this::pattern);
      OptionalDouble blank = size(WishKeys.LINK_BLANK);
      OptionalDouble length = size(WishKeys.LINK_LENGTH);
      boolean noPattern = typed.text(WishKeys.LINK_PATTERN).isEmpty();
      typed.check(
          WishKeys.LINK_LENGTH,
          !noPattern || length.isPresent() || typed.wrong(WishKeys.LINK_LENGTH),
          "Name a pattern, or give the length of a link as it was measured, such as 14 mm.");
      Map<String, Double> formers = new FormersReading(typed).of(WishKeys.LINK_FORMERS, pattern);
      boolean ring = pattern.filter(Pattern::isRing).isPresent();
      typed.check(
          WishKeys.LINK_BLANK,
          blank.isPresent()
              || typed.wrong(WishKeys.LINK_BLANK)
              || (!noPattern && length.isPresent())
              || (ring && !typed.text(WishKeys.LINK_FORMERS).isEmpty()),
          noPattern
              ? "Give the blank that the link was bent from, such as 38 mm."
              : ring
                  ? "Give the former, such as ring=4 mm; or the link's length, or its blank."
                  : "Give the blank, such as 38 mm; or the link's length, and the blank is found.");
      return new WishedLink(
          pattern,
          blank,
          formers,
          length,
          size(WishKeys.LINK_WIDTH),
          size(WishKeys.LINK_INSIDE),
          HeldFigures.woven(typed.texts()));
    }

    private Read<WishedRepeat> repeat(String text) {
      return new RepeatReading(
              typed.text(WishKeys.LINK_PATTERN),
              patterns.stream().map(Pattern::id).toList(),
              this::other)
          .read(text);
    }

    /** A further link of the chain, by the same keys as the planned one. */
    private Read<WishedLink> other(String name, Map<String, String> texts) {
      Map<String, String> all = new LinkedHashMap<>(typed.texts());
      all.keySet().removeIf(key -> !HeldFigures.isOne(key));
      all.putAll(texts);
      Reader reader = new Reader(all, reference, patterns);
      reader.wireMm = wireMm;
      WishedLink link = reader.link();
      return reader.typed.troubles().values().stream()
          .findFirst()
          .map(sentence -> Read.<WishedLink>bad(sentence))
          .orElse(Read.good(link));
    }

    private Read<Pattern> pattern(String id) {
      Optional<Pattern> found =
          patterns.stream().filter(one -> one.id().equals(id.strip())).findFirst();
      List<String> known = patterns.stream().map(Pattern::id).toList();
      return found
          .map(pattern -> HeldFigures.pattern(pattern, typed.texts()).withFormersFor(wireMm))
          .map(Read::good)
          .orElseGet(
              () ->
                  Read.bad(
                      "No pattern is called “"
                          + id.strip()
                          + "”. "
                          + Nearest.of(id, known)
                              .map(near -> "Did you mean " + near + "?")
                              .orElse("There are: " + String.join(", ", known) + ".")));
    }

    private Optional<WireSection> ringWire(Optional<WireSection> linkWire) {
      return typed.text(WishKeys.RING_WIRE).isEmpty()
          ? linkWire
          : wire(WishKeys.RING_WIRE, "Give the rings' wire, such as 0.9 mm.");
    }

    private Optional<WishedRing> ring(Optional<WireSection> own) {
      boolean asked =
          !typed.text(WishKeys.RING_INSIDE).isEmpty()
              || !typed.text(WishKeys.RING_WIRE).isEmpty()
              || !typed.text(WishKeys.RING_OVAL).isEmpty();
      if (!asked) {
        return Optional.empty();
      }
      Optional<Double> inside =
          typed
              .needed(
                  WishKeys.RING_INSIDE,
                  Length::readSize,
                  "Give the ring's inside diameter, such as 3 mm.")
              .map(Length::mm);
      OptionalDouble oval = size(WishKeys.RING_OVAL);
      if (inside.isEmpty() || own.isEmpty()) {
        return Optional.empty();
      }
      typed.check(
          WishKeys.RING_OVAL,
          oval.isEmpty() || oval.getAsDouble() < inside.get(),
          "An oval is narrower inside than its ring: less than the ring's inside diameter.");
      return Optional.of(new WishedRing(inside.get(), own.get().thicknessMm(), oval));
    }

    private Optional<List<Double>> ringStock(
        StockReading stock,
        Optional<WireSection> linkWire,
        Optional<WireSection> ringWire,
        Optional<WishedRing> ring) {
      if (ring.isEmpty()) {
        return Optional.empty();
      }
      boolean given = !typed.text(WishKeys.RING_STOCK).isEmpty();
      boolean sameWire =
          linkWire.isEmpty() || ringWire.isEmpty() || linkWire.get().isLike(ringWire.get());
      return sameWire && !given
          ? Optional.empty()
          : Optional.of(stock.lengths(WishKeys.RING_STOCK, ringWire));
    }

    private Optional<WireSection> wire(String key, String missing) {
      return typed.needed(key, WireSection::read, missing);
    }

    private OptionalDouble size(String key) {
      return typed
          .optional(key, Length::readSize)
          .map(length -> OptionalDouble.of(length.mm()))
          .orElse(OptionalDouble.empty());
    }

    private double share(String key, double usual) {
      return typed.optional(key, Share::read).map(Share::value).orElse(usual);
    }
  }
}
