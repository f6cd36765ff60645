package linkwright.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import linkwright.link.ChainCount;
import linkwright.link.Joining;
import linkwright.link.Rings;
import linkwright.quantity.UnitStyle;
import linkwright.wire.WireDrawing;

/** The sums a student is asked, with what a slip would give beside the right answer. */
enum SumItems {
  RINGS {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      int links = 12 + chance.below(50);
      long rings = Joining.RING_AT_EACH_END.rings(links);
      return counts(
          "A chain of " + links + " links, with a ring at each end: how many rings?",
          rings,
          slips(links - 1, links, links - 2, links + 2, links + 3, 2L * links),
          links
              + " links have "
              + (links - 1)
              + " gaps, and a ring more at each end: "
              + rings
              + ".",
          chance);
    }
  },
  LINKS {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      int links = 15 + chance.below(30);
      double link = 10 + chance.below(9);
      double ring = 2 + 0.5 * chance.below(4);
      double clasp = 8 + chance.below(9);
      double all = ChainCount.lengthMm(links, link, ring, clasp, Joining.RING_AT_EACH_END);
      return counts(
          "A chain is to be "
              + units.length(all)
              + " long with its clasp of "
              + units.length(clasp)
              + ". A link adds "
              + units.length(link)
              + ", a ring "
              + units.length(ring)
              + ", with a ring at each end. How many links?",
          links,
          slips(
              Math.round((all - ring) / (link + ring)),
              Math.round((all - clasp) / link),
              Math.round(all / link),
              Math.round(all / (link + 2 * ring)),
              links - 2L,
              links - 1L,
              links + 1L,
              links + 2L),
          "Take off the clasp and one ring, then divide by a link and a ring: ("
              + units.length(all)
              + " - "
              + units.length(clasp)
              + " - "
              + units.length(ring)
              + ") / "
              + units.length(link + ring)
              + " = "
              + links
              + ".",
          chance);
    }
  },
  HOOKED {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      int links = 30 + chance.below(60);
      double link = 3 + 0.5 * chance.below(9);
      double clasp = 8 + chance.below(9);
      double wire = 0.8 + 0.1 * chance.below(5);
      double all = ChainCount.lengthMm(links, link, 0, clasp, Joining.EACH_OTHER);
      return counts(
          "Links that hang in each other, "
              + units.length(link)
              + " inside, of "
              + units.length(wire)
              + " wire. The chain is to be "
              + units.length(all)
              + " with its clasp of "
              + units.length(clasp)
              + ". How many links?",
          links,
          slips(
              Math.round(all / link),
              Math.round((all - clasp) / (link + 2 * wire)),
              Math.round((all - clasp) / (link + wire)),
              Math.round(all / (link + 2 * wire)),
              links + 1L,
              links + 2L,
              links - 2L,
              links - 1L),
          "Wire hooks in wire, so each link adds its inside: ("
              + units.length(all)
              + " - "
              + units.length(clasp)
              + ") / "
              + units.length(link)
              + " = "
              + links
              + ".",
          chance);
    }
  },
  WIRE {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      int wanted = 12 + chance.below(30);
      int spare = 1 + chance.below(4);
      double blank = 14 + chance.below(30);
      double kerf = 0.3 + 0.1 * chance.below(3);
      return amounts(
          "You want "
              + wanted
              + " links and "
              + spare
              + " spare. A blank is "
              + units.length(blank)
              + " and each cut takes "
              + units.length(kerf)
              + ". How much wire?",
          (wanted + spare) * (blank + kerf),
          List.of(
              wanted * blank,
              wanted * (blank + kerf),
              (wanted - spare) * (blank + kerf),
              (wanted + spare) * (blank + 2 * kerf),
              (wanted + spare + 1) * (blank + kerf),
              (wanted + 2 * spare) * (blank + kerf)),
          "Count the spares, and to each blank its cut: ("
              + wanted
              + " + "
              + spare
              + ") x "
              + units.length(blank + kerf)
              + ".",
          units,
          chance);
    }
  },
  BLANK {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      double inside = 2 + 0.5 * chance.below(9);
      double wire = 0.6 + 0.1 * chance.below(9);
      return amounts(
          "A ring is to be "
              + units.length(inside)
              + " inside, of "
              + units.length(wire)
              + " wire. How long is its blank?",
          Rings.blankMm(inside, wire),
          List.of(
              Rings.blankMm(inside - wire, wire),
              Rings.blankMm(inside - wire / 2, wire),
              Rings.blankMm(inside + wire, wire),
              Rings.blankMm(inside + 2 * wire, wire),
              Rings.blankMm(inside, wire) / 2,
              Rings.blankMm(inside, wire) * 1.5),
          "The middle of the wire keeps its length: 3.1416 x ("
              + units.length(inside)
              + " + "
              + units.length(wire)
              + ").",
          units,
          chance);
    }
  },
  DRAWN {
    @Override
    Asked draw(Chance chance, UnitStyle units) {
      double to = 0.7 + 0.1 * chance.below(6);
      double from = to + 0.4 + 0.1 * chance.below(5);
      double start = 100 + 50 * chance.below(9);
      double ratio = from / to;
      return amounts(
          units.length(start)
              + " of "
              + units.length(from)
              + " wire are drawn to "
              + units.length(to)
              + ". How long are they then?",
          WireDrawing.of(from, to, start).orThrow().lengthMm(),
          List.of(
              start * ratio,
              start * Math.sqrt(ratio),
              start * (1 + from - to),
              start * ratio * ratio * ratio,
              start * ratio * ratio * 1.25,
              start * ratio * ratio * ratio * ratio),
          "The metal stays the same, so length grows as thickness falls, twice over: "
              + units.length(start)
              + " x ("
              + units.length(from)
              + " / "
              + units.length(to)
              + ") squared.",
          units,
          chance);
    }
  };

  private static final int WRONG = 3;

  abstract Asked draw(Chance chance, UnitStyle units);

  private static List<Double> slips(long... all) {
    List<Double> slips = new ArrayList<>();
    for (long slip : all) {
      slips.add((double) slip);
    }
    return slips;
  }

  private static Asked counts(
      String asks, long right, List<Double> slips, String working, Chance chance) {
    return asked(asks, (double) right, slips, value -> "" + Math.round(value), working, chance);
  }

  private static Asked amounts(
      String asks,
      double right,
      List<Double> slips,
      String working,
      UnitStyle units,
      Chance chance) {
    String comes = working + " It comes to " + units.length(right) + ".";
    return asked(asks, right, slips, units::length, comes, chance);
  }

  /** Which place the right one has by size among the four is drawn first: size tells nothing. */
  private static Asked asked(
      String asks,
      double right,
      List<Double> slips,
      DoubleFunction<String> shown,
      String working,
      Chance chance) {
    Map<String, Double> distinct = new LinkedHashMap<>();
    slips.stream().filter(slip -> slip > 0).forEach(slip -> distinct.put(shown.apply(slip), slip));
    distinct.remove(shown.apply(right));
    List<String> less = side(distinct, slip -> slip < right, chance);
    List<String> more = side(distinct, slip -> slip > right, chance);
    int fewest = Math.max(0, WRONG - more.size());
    int most = Math.min(WRONG, less.size());
    int below = fewest + chance.below(most - fewest + 1);
    List<String> wrong = new ArrayList<>(less.subList(0, below));
    wrong.addAll(more.subList(0, WRONG - below));
    return Asked.shuffled(asks, shown.apply(right), wrong, working, chance);
  }

  private static List<String> side(
      Map<String, Double> slips, DoublePredicate which, Chance chance) {
    return chance.shuffled(
        slips.entrySet().stream()
            .filter(slip -> which.test(slip.getValue()))
            .map(Map.Entry::getKey)
            .toList());
  }
}
