package linkwright.standing.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;

/**
 * What is out of reason of a lot is asked before it is kept: field → the question. What says
 * nothing of how much there is cannot be kept at all.
 */
public final class LotQuestions {
  /**
   * Where a length and a mass of one wire differ by more than this share, one of them is a slip: a
   * tenth of its thickness is a fifth of its mass. Our own choice.
   */
  private static final double FAR_APART = 0.2;

  /** The scale may say so much more than the books, as a share of them. Our own choice. */
  private static final double MORE = 0.2;

  /** Less than this share of what the books say is as likely a slip. Our own choice. */
  private static final double LESS = 0.5;

  /** Below this nobody is asked, g. Our own choice. */
  private static final double LITTLE_G = 1;

  /** More than this is no bench's drawer, mm and g. Common practice, no source. */
  private static final double MUCH_MM = 200_000;

  private static final double MUCH_G = 2_000;

  private static final String LENGTH = "length";
  private static final String MASS = "mass";

  private final UnitStyle units;
  private final Map<String, String> asked = new LinkedHashMap<>();

  private LotQuestions(UnitStyle units) {
    this.units = units;
  }

  /**
   * What is wrong with what came: without a thickness a length is no amount, and what is of another
   * metal or thickness is another lot.
   */
  public static Map<String, String> wrong(LotFact.LotArrived came, Drawer drawer, UnitStyle units) {
    if (came.wireMm().isEmpty() && came.massG().isEmpty() && came.lengthMm().isPresent()) {
      return Map.of(
          MASS, "Without a thickness a length is no amount: give its mass, such as 20 g.");
    }
    return lot(came.lot(), drawer)
        .filter(lot -> !sameKind(lot, came.metal(), came.wireMm()))
        .map(lot -> Map.of("lot", kind(lot, units)))
        .orElse(Map.of());
  }

  private static String kind(Lot lot, UnitStyle units) {
    return "“"
        + lot.id()
        + "” is "
        + lot.metal()
        + (lot.wireMm().isPresent() ? " of " + units.wire(lot.wireMm().getAsDouble()) : "")
        + ": give what is another metal or thickness a name of its own.";
  }

  private static boolean sameKind(Lot lot, String metal, OptionalDouble wireMm) {
    return wireMm.isPresent()
        ? lot.is(metal, wireMm.getAsDouble())
        : lot.metal().equals(metal) && lot.wireMm().isEmpty();
  }

  /** The lot of that name, if there is one. */
  public static Optional<Lot> lot(String name, Drawer drawer) {
    return drawer.lots().stream().filter(lot -> lot.id().equals(name)).findFirst();
  }

  /** That more is taken out of a lot, in all its lengths, than it holds by the books. */
  public static Optional<String> beyond(List<Fact> came, Lot lot, UnitStyle units) {
    double taken =
        came.stream()
            .filter(Fact.WireAdded.class::isInstance)
            .mapToDouble(fact -> ((Fact.WireAdded) fact).lengthMm())
            .sum();
    double left = lot.lengthMm().orElse(0);
    return taken > left
        ? Optional.of(
            units.length(left) + " are left of it by the books: weigh the lot, or take less.")
        : Optional.empty();
  }

  /** What is wrong with what the scale or the rule said: what is no wire is weighed. */
  public static Map<String, String> wrong(LotFact.LotCounted counted, Lot lot) {
    return lot.wireMm().isEmpty() && counted.massG().isEmpty()
        ? Map.of(MASS, lot.id() + " is counted by its mass: weigh it, such as 12.4 g.")
        : Map.of();
  }

  /** What is asked of what came. */
  public static Map<String, String> ofCame(
      LotFact.LotArrived came, Reference reference, UnitStyle units) {
    LotQuestions questions = new LotQuestions(units);
    questions.apart(came.metal(), came.wireMm(), came.lengthMm(), came.massG(), reference);
    double mm = came.lengthMm().orElse(0);
    double grams = came.massG().orElse(0);
    questions.ask(mm > MUCH_MM, LENGTH, units.length(mm) + " of it?");
    questions.ask(grams > MUCH_G, MASS, units.mass(grams) + " of it?");
    return questions.asked;
  }

  /** That a lot of that name lies there already, and how much of it. */
  public static String there(Lot lot, UnitStyle units) {
    return "“"
        + lot.id()
        + "” lies in the drawer already, "
        + (lot.lengthMm().isPresent()
            ? units.length(lot.lengthMm().getAsDouble())
            : units.mass(lot.massG().orElse(0)))
        + " of it: what comes is added to that. Is it more of the same?";
  }

  /** What is asked of what the scale or the rule said of a lot. */
  public static Map<String, String> ofCounted(
      LotFact.LotCounted counted, Lot lot, Reference reference, UnitStyle units) {
    LotQuestions questions = new LotQuestions(units);
    questions.apart(lot.metal(), lot.wireMm(), counted.lengthMm(), counted.massG(), reference);
    OptionalDouble each = each(lot.metal(), lot.wireMm(), reference);
    double booksG = lot.massG().orElse(0);
    double saidG =
        counted.lengthMm().isPresent() && each.isPresent()
            ? counted.lengthMm().getAsDouble() * each.getAsDouble()
            : counted.massG().orElse(booksG);
    String field = counted.massG().isPresent() ? MASS : LENGTH;
    String said =
        counted.massG().isPresent()
            ? units.mass(counted.massG().getAsDouble())
            : units.length(counted.lengthMm().orElse(0));
    String books =
        counted.massG().isPresent() ? units.mass(booksG) : units.length(lot.lengthMm().orElse(0));
    questions.ask(
        saidG - booksG > Math.max(LITTLE_G, MORE * Math.max(0, booksG)),
        field,
        said + " of " + lot.id() + ", where the books say " + books + ": did more come?");
    questions.ask(
        booksG - saidG > LITTLE_G && saidG < LESS * booksG,
        field,
        said + " of " + lot.id() + ", where the books say " + books + ": is so much gone?");
    return questions.asked;
  }

  /** What is asked of what a lot was drawn down to. */
  public static Map<String, String> ofTurned(
      LotFact.LotTurned turned, Lot from, Reference reference, UnitStyle units) {
    LotQuestions questions = new LotQuestions(units);
    questions.apart(from.metal(), turned.wireMm(), turned.lengthMm(), turned.massG(), reference);
    return questions.asked;
  }

  private static OptionalDouble each(String metal, OptionalDouble wireMm, Reference reference) {
    return wireMm.isPresent()
        ? Drawer.gramsPerMm(metal, wireMm.getAsDouble(), reference)
        : OptionalDouble.empty();
  }

  /** A length and a mass that are not of one wire: kept all the same, the length counts. */
  private void apart(
      String metal,
      OptionalDouble wireMm,
      OptionalDouble lengthMm,
      OptionalDouble massG,
      Reference reference) {
    OptionalDouble each = each(metal, wireMm, reference);
    if (each.isEmpty() || lengthMm.isEmpty() || massG.isEmpty()) {
      return;
    }
    double weighs = lengthMm.getAsDouble() * each.getAsDouble();
    ask(
        Math.abs(weighs - massG.getAsDouble()) > FAR_APART * weighs,
        MASS,
        units.length(lengthMm.getAsDouble())
            + " of that wire weigh "
            + units.mass(weighs)
            + ", not "
            + units.mass(massG.getAsDouble())
            + ": which is it? Kept so, the length counts.");
  }

  private void ask(boolean wonder, String field, String question) {
    if (wonder) {
      asked.putIfAbsent(field, question);
    }
  }
}
