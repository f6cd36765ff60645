package linkwright.link;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds where the wire crosses itself: two places more than (π/2)·d apart along the wire (round the
 * loop if closed) and nearer than d less some depth, which 0.01 mm is the least of.
 *
 * <p>The pairs of places make a plane (at, and). It is looked over on a grid of d/16, in which the
 * distance can change by no more than the steps taken, so that far pairs are passed over; connected
 * cells are one region, and its deepest place is then refined to well below a micrometre.
 */
final class Crossings {
  /** No deeper than this is a touch, in millimetres. */
  static final double CLEAR_MM = 0.01;

  private static final int FINEST = 20_000;

  private final CentreLine line;
  private final double wireMm;
  private final double deeperThanMm;
  private final boolean closed;
  private final double lengthMm;
  private final MeantContacts exceptions;
  private final int steps;

  /** One past the last place of the grid: in a loop the last place is the first again. */
  private final int places;

  private final double stepMm;
  private final Point[] grid;

  Crossings(Formed link, double deeperThanMm) {
    line = link.centreLine();
    wireMm = link.wireMm();
    this.deeperThanMm = Math.max(CLEAR_MM, deeperThanMm);
    closed = link.pattern().closed();
    lengthMm = line.lengthMm();
    exceptions = new MeantContacts(link);
    steps = (int) Math.min(FINEST, Math.max(32, Math.ceil(lengthMm / (wireMm / 16))));
    stepMm = lengthMm / steps;
    places = closed ? steps : steps + 1;
    grid = new Point[places];
    for (int i = 0; i < places; i++) {
      grid[i] = line.at(i * stepMm);
    }
  }

  private record Cell(int i, int j) {}

  List<Crossing> all() {
    double tooNearMm = wireMm - deeperThanMm;
    Set<Cell> near = nearCells(tooNearMm + 1.5 * stepMm);
    Set<Cell> unseen = new HashSet<>();
    for (Cell cell : near) {
      if (gridDistance(cell) < tooNearMm && allowed(cell.i * stepMm, cell.j * stepMm)) {
        unseen.add(cell);
      }
    }
    List<Crossing> found = new ArrayList<>();
    Set<Cell> told = new HashSet<>();
    for (Cell seed : inOrder(unseen)) {
      if (unseen.remove(seed)) {
        List<Cell> region = region(seed, unseen);
        told.addAll(region);
        found.add(deepest(region));
      }
    }
    // A graze may be smaller than a cell: its region shows only once its least distance is found.
    for (Cell cell : inOrder(near)) {
      if (!told.contains(cell)
          && neighbours(cell).stream().noneMatch(told::contains)
          && isLeast(cell, near)) {
        Crossing graze = refined(cell);
        if (graze.gapMm() + wireMm < tooNearMm) {
          told.add(cell);
          found.add(graze);
        }
      }
    }
    found.sort(Comparator.comparingDouble(Crossing::atMm).thenComparing(Crossing::andMm));
    return List.copyOf(found);
  }

  private Set<Cell> nearCells(double withinMm) {
    Set<Cell> near = new HashSet<>();
    for (int i = 0; i < places; i++) {
      int j = i + 1;
      while (j < places) {
        double distance = grid[i].distanceMm(grid[j]);
        if (distance < withinMm) {
          if (apart(i * stepMm, j * stepMm)) {
            near.add(new Cell(i, j));
          }
          j++;
        } else {
          j += (int) Math.min(places, Math.max(1, Math.ceil((distance - withinMm) / stepMm)));
        }
      }
    }
    return near;
  }

  private static List<Cell> inOrder(Set<Cell> cells) {
    List<Cell> ordered = new ArrayList<>(cells);
    ordered.sort(Comparator.comparingInt(Cell::i).thenComparingInt(Cell::j));
    return ordered;
  }

  private List<Cell> region(Cell seed, Set<Cell> unseen) {
    List<Cell> region = new ArrayList<>();
    Deque<Cell> open = new ArrayDeque<>(List.of(seed));
    while (!open.isEmpty()) {
      Cell cell = open.pop();
      region.add(cell);
      for (Cell next : neighbours(cell)) {
        if (unseen.remove(next)) {
          open.push(next);
        }
      }
    }
    return region;
  }

  /**
   * The cells around one; in a loop the last place is the first again, and the pair turns round.
   */
  private List<Cell> neighbours(Cell cell) {
    List<Cell> around = new ArrayList<>(8);
    for (int di = -1; di <= 1; di++) {
      for (int dj = -1; dj <= 1; dj++) {
        int i = closed ? Math.floorMod(cell.i + di, places) : cell.i + di;
        int j = closed ? Math.floorMod(cell.j + dj, places) : cell.j + dj;
        around.add(new Cell(Math.min(i, j), Math.max(i, j)));
      }
    }
    return around;
  }

  private double gridDistance(Cell cell) {
    return grid[cell.i].distanceMm(grid[cell.j]);
  }

  private boolean isLeast(Cell cell, Set<Cell> near) {
    double own = gridDistance(cell);
    return allowed(cell.i * stepMm, cell.j * stepMm)
        && neighbours(cell).stream()
            .noneMatch(other -> near.contains(other) && gridDistance(other) < own);
  }

  private Crossing deepest(List<Cell> region) {
    Set<Cell> cells = new HashSet<>(region);
    List<Crossing> lows =
        region.stream()
            .filter(cell -> isLeast(cell, cells))
            .sorted(Comparator.comparingDouble(this::gridDistance))
            .limit(8)
            .map(this::refined)
            .toList();
    double deepestMm =
        lows.stream().mapToDouble(Crossing::gapMm).min().orElse(Double.POSITIVE_INFINITY);
    // Of places equally deep, the first along the wire: not whichever rounding favours.
    return lows.stream()
        .filter(low -> low.gapMm() <= deepestMm + 1e-9 * wireMm)
        .min(Comparator.comparingDouble(Crossing::atMm))
        .orElseGet(() -> refined(region.get(0)));
  }

  /** The lowest place downhill of a cell, never out of the pairs that count. */
  private Crossing refined(Cell cell) {
    Optional<Crossing> meeting = meeting(cell);
    if (meeting.isPresent()) {
      return meeting.get();
    }
    Downhill low =
        Downhill.from(
            cell.i * stepMm, cell.j * stepMm, stepMm, 1e-9 * wireMm, this::distance, this::allowed);
    return told(low.atMm(), low.andMm(), low.distanceMm());
  }

  private Crossing told(double at, double and, double distance) {
    double one = along(at);
    double other = along(and);
    return new Crossing(Math.min(one, other), Math.max(one, other), distance - wireMm);
  }

  /**
   * Where the two centre lines meet near a cell, by Newton's steps on both lines' tangents; empty
   * where they pass each other, run side by side, or meet further away.
   */
  private Optional<Crossing> meeting(Cell cell) {
    double at = cell.i * stepMm;
    double and = cell.j * stepMm;
    for (int i = 0; i < 30; i++) {
      Point one = line.at(along(at));
      Point other = line.at(along(and));
      double dx = other.xMm() - one.xMm();
      double dy = other.yMm() - one.yMm();
      double distance = Math.hypot(dx, dy);
      if (distance < 1e-10 * wireMm) {
        return allowed(at, and) ? Optional.of(told(at, and, distance)) : Optional.empty();
      }
      double h1 = line.headingAt(along(at));
      double h2 = line.headingAt(along(and));
      double across = Math.sin(h2 - h1);
      if (Math.abs(across) < 1e-3) {
        return Optional.empty();
      }
      at += (dx * Math.sin(h2) - dy * Math.cos(h2)) / across;
      and += (dx * Math.sin(h1) - dy * Math.cos(h1)) / across;
      if (Math.abs(at - cell.i * stepMm) + Math.abs(and - cell.j * stepMm) > 2 * wireMm) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The same place within the wire's length: past the end of a loop comes its start. */
  private double along(double mm) {
    return closed ? mm - lengthMm * Math.floor(mm / lengthMm) : mm;
  }

  private double distance(double at, double and) {
    return line.at(along(at)).distanceMm(line.at(along(and)));
  }

  private boolean apart(double at, double and) {
    double way = Math.abs(and - at);
    double shorter = closed ? Math.min(way, Math.abs(lengthMm - way)) : way;
    return shorter > Math.PI / 2 * wireMm;
  }

  private boolean allowed(double at, double and) {
    boolean onTheWire = closed || (at >= 0 && and <= lengthMm && at < and);
    double one = along(at);
    double other = along(and);
    return onTheWire
        && apart(at, and)
        && !exceptions.meant(Math.min(one, other), Math.max(one, other));
  }
}
