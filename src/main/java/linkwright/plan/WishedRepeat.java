package linkwright.plan;

import java.util.List;
import linkwright.quantity.UnitStyle;

/**
 * What comes again along a chain: so many of the link that is planned, and other links between.
 *
 * @param name what the planned link is called in the repeat
 * @param planned how many of the planned link one repeat takes, 1 or more
 * @param others the other links, in the order in which they were named
 */
public record WishedRepeat(String name, int planned, List<OtherLink> others) {
  /** All links are alike. */
  public static final WishedRepeat ALIKE = new WishedRepeat("", 1, List.of());

  public WishedRepeat {
    others = List.copyOf(others);
  }

  /** How many links one repeat has, of all sizes. */
  public int links() {
    return planned + others.stream().mapToInt(OtherLink::perRepeat).sum();
  }

  /**
   * The same in writing, with each other link as it was settled: typed again, it gives the same.
   *
   * @param settled the links of the chain, the planned one first
   */
  public String written(List<LinksOfSize> settled, UnitStyle units) {
    StringBuilder text = new StringBuilder(planned + " link");
    for (int i = 0; i < others.size(); i++) {
      OtherLink other = others.get(i);
      SettledLink link = settled.get(i + 1).link();
      text.append(" + ").append(other.perRepeat()).append(' ').append(other.name());
      other.link().pattern().ifPresent(any -> text.append(" pattern=").append(any.id()));
      text.append(" blank=").append(units.typed(link.blankMm()));
      link.formersMm().forEach((name, mm) -> text.append(' ' + name + "=" + units.typed(mm)));
      if (link.insideFrom() == FigureSource.MEASURED || link.insideFrom() == FigureSource.HERS) {
        text.append(" inside=").append(units.typed(link.insideMm()));
      }
    }
    return text.toString();
  }
}
