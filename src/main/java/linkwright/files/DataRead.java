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
record DataRead(
    DataByName<Metal> metals,
    DataByName<Solder> solders,
    DataByName<FinenessRule> finenessRules,
    DataByName<Clasp> clasps,
    DataByName<Limit> limits,
    DataByName<TradeTerm> glossary,
    DataByName<Picture> pictures,
    DataByName<Tool> tools,
    DataByName<Pattern> patterns,
    DataByName<Routine> routines,
    DataByName<Caution> cautions) {
  static DataRead empty() {
    return new DataRead(
        new DataByName<>("metal"),
        new DataByName<>("solder"),
        new DataByName<>("fineness rule"),
        new DataByName<>("clasp"),
        new DataByName<>("limit"),
        new DataByName<>("word"),
        new DataByName<>("drawing"),
        new DataByName<>("tool"),
        new DataByName<>("pattern"),
        new DataByName<>("routine"),
        new DataByName<>("caution"));
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
