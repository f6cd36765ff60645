package linkwright.files;

import linkwright.link.Pattern;
import linkwright.reference.Clasp;
import linkwright.reference.FinenessRule;
import linkwright.reference.Limit;
import linkwright.reference.Metal;
import linkwright.reference.Picture;
import linkwright.reference.Solder;
import linkwright.reference.Tool;
import linkwright.reference.TradeTerm;
import linkwright.routine.Caution;
import linkwright.routine.Routine;

/** All that has been read so far, sort by sort. */
record Shelves(
    Shelf<Metal> metals,
    Shelf<Solder> solders,
    Shelf<FinenessRule> finenessRules,
    Shelf<Clasp> clasps,
    Shelf<Limit> limits,
    Shelf<TradeTerm> glossary,
    Shelf<Picture> pictures,
    Shelf<Tool> tools,
    Shelf<Pattern> patterns,
    Shelf<Routine> routines,
    Shelf<Caution> cautions) {
  static Shelves empty() {
    return new Shelves(
        new Shelf<>("metal"),
        new Shelf<>("solder"),
        new Shelf<>("fineness rule"),
        new Shelf<>("clasp"),
        new Shelf<>("limit"),
        new Shelf<>("word"),
        new Shelf<>("drawing"),
        new Shelf<>("tool"),
        new Shelf<>("pattern"),
        new Shelf<>("routine"),
        new Shelf<>("caution"));
  }

  void nextLayer() {
    metals.nextLayer();
    solders.nextLayer();
    finenessRules.nextLayer();
    clasps.nextLayer();
    limits.nextLayer();
    glossary.nextLayer();
    pictures.nextLayer();
    tools.nextLayer();
    patterns.nextLayer();
    routines.nextLayer();
    cautions.nextLayer();
  }
}
