package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;

/**
 * Lays what a place says out in a room of cells: blocks one below the other, each as high as it
 * wants while there is room; then lists scroll, texts are turned over, drawings shrink.
 */
final class BodyView {
  /** Lower rooms show what has no room beside the rest by itself, page after page. */
  private static final int LOW = 14;

  private final Glyphs glyphs;
  private final KeyMap keys;
  private final Act turns;
  private final boolean told;

  /** What was laid out: a page asks for the same parts in the same room several times. */
  private final List<LaidOnce> laid = new ArrayList<>();

  private record LaidOnce(List<Part> parts, int width, int height, List<Block> blocks) {}

  BodyView(Glyphs glyphs, KeyMap keys, Act turns) {
    this(glyphs, keys, turns, true);
  }

  private BodyView(Glyphs glyphs, KeyMap keys, Act turns, boolean told) {
    this.glyphs = glyphs;
    this.keys = keys;
    this.turns = turns;
    this.told = told;
  }

  /** Whether a block says itself which page of it is shown; else the place says it for all. */
  boolean told() {
    return told;
  }

  /**
   * What one turn of the key shows.
   *
   * @param blocks what stands there
   * @param turned how often they are turned on
   */
  private record Shown(List<Block> blocks, int turned) {}

  /** Draws it, turned on so often. */
  void draw(Canvas body, Content content, int turned) {
    draw(body, content.parts(), turned, body.height());
  }

  /** How many parts a reader turns through in that room. */
  int parts(Content content, int width, int height) {
    return parts(content.parts(), width, height, height);
  }

  /** The same of a part of a place of that height. */
  int parts(List<Part> all, int width, int placeHeight, int height) {
    return atOnce(all, width, placeHeight, height)
        ? quiet().shown(all, width, placeHeight, height - 1).size()
        : shown(all, width, placeHeight, height).size();
  }

  /** How many blocks are turned over each by itself. */
  int turners(List<Part> all, int width, int placeHeight, int height) {
    List<List<Block>> pages = pages(blocks(all, width, placeHeight), height);
    return pages.size() > 1
        ? 1 + pages.stream().mapToInt(page -> turners(page, height - 1)).sum()
        : pages.stream().mapToInt(page -> turners(page, height)).sum();
  }

  private static int turners(List<Block> page, int height) {
    int[] rows = rows(page, height);
    int turners = 0;
    for (int i = 0; i < rows.length; i++) {
      turners += page.get(i).turners(rows[i]);
    }
    return turners;
  }

  /** Whether one line tells for all blocks which page is shown: two would share one key. */
  private boolean atOnce(List<Part> all, int width, int placeHeight, int height) {
    if (!told || height < 2) {
      return false;
    }
    List<List<Block>> pages = pages(blocks(all, width, placeHeight), height);
    int room = room(pages, height);
    int turners = pages.size() > 1 ? 1 : 0;
    boolean little = false;
    for (List<Block> page : pages) {
      turners += turners(page, room);
      int[] rows = rows(page, room);
      for (int i = 0; i < rows.length; i++) {
        little |= page.get(i).parts(rows[i]) > 1 && rows[i] * 2 <= room && !anyTyped(page);
      }
    }
    return turners > 1 || (little && placeHeight < LOW);
  }

  private static boolean anyTyped(List<Block> page) {
    return page.stream().anyMatch(Block::typed);
  }

  private BodyView quiet() {
    return new BodyView(glyphs, keys, turns, false);
  }

  /** All that is shown turn by turn. */
  private List<Shown> shown(List<Part> parts, int width, int placeHeight, int height) {
    List<List<Block>> pages = pages(blocks(parts, width, placeHeight), height);
    int room = told ? room(pages, height) : height;
    List<Shown> all = new ArrayList<>();
    for (List<Block> page : pages) {
      int[] rows = rows(page, room);
      boolean alone = !told && placeHeight < LOW && page.size() > 1 && !anyTyped(page);
      int most = 1;
      List<Shown> after = new ArrayList<>();
      for (int i = 0; i < rows.length; i++) {
        Block block = page.get(i);
        most = Math.max(most, block.parts(rows[i]));
        if (block.parts(rows[i]) > 1) {
          for (int turn = 0; turn < block.parts(room); turn++) {
            after.add(new Shown(List.of(block), turn));
          }
        }
      }
      all.add(new Shown(page, 0));
      for (int turn = 1; !alone && turn < most; turn++) {
        all.add(new Shown(page, turn));
      }
      if (alone) {
        all.addAll(after);
      }
    }
    return all;
  }

  /**
   * Draws parts in a room inside a place of that height, by which figures and drawings are sized.
   * Where not all of them have room at once, those that have none come on another page.
   */
  void draw(Canvas body, List<Part> parts, int turned, int placeHeight) {
    boolean atOnce = atOnce(parts, body.width(), placeHeight, body.height());
    BodyView view = atOnce ? quiet() : this;
    boolean several =
        told && pages(blocks(parts, body.width(), placeHeight), body.height()).size() > 1;
    int room = atOnce || several ? body.height() - 1 : body.height();
    List<Shown> all = view.shown(parts, body.width(), placeHeight, atOnce ? room : body.height());
    if (all.isEmpty()) {
      return;
    }
    int at = Math.floorMod(turned, all.size());
    Shown now = all.get(at);
    drawPage(body.area(0, 0, body.width(), room), now.blocks(), now.turned());
    if (atOnce || several) {
      PageLine.draw(body, at, all.size(), keys.firstOf(turns));
    }
  }

  private static int room(List<List<Block>> pages, int height) {
    return pages.size() > 1 ? Math.max(1, height - 1) : height;
  }

  /** As many blocks a page as have room for the least that they need. */
  private static List<List<Block>> pages(List<Block> blocks, int height) {
    boolean fits = blocks.stream().mapToInt(BodyView::least).sum() <= height;
    List<List<Block>> pages = new ArrayList<>();
    int used = 0;
    for (Block block : blocks) {
      int least = least(block);
      if (pages.isEmpty() || (!fits && used > 0 && used + least > height - 1)) {
        pages.add(new ArrayList<>());
        used = 0;
      }
      pages.get(pages.size() - 1).add(block);
      used += least;
    }
    return pages;
  }

  private static int least(Block block) {
    return Math.min(block.wanted(), block.least());
  }

  private static void drawPage(Canvas body, List<Block> blocks, int turned) {
    int[] rows = rows(blocks, body.height());
    int free = body.height() - sum(rows);
    int y = 0;
    for (int i = 0; i < rows.length; i++) {
      blocks.get(i).draw(body.area(0, y, body.width(), rows[i]), turned);
      y += rows[i];
      if (free > 0 && rows[i] > 0 && blocks.get(i).apart()) {
        y++;
        free--;
      }
    }
  }

  /** Rows that the parts want in all, free rows between them counted. */
  int wanted(List<Part> parts, int width, int height) {
    int wanted = 0;
    List<Block> blocks = blocks(parts, width, height);
    for (int i = 0; i < blocks.size(); i++) {
      boolean apart = i + 1 < blocks.size() && blocks.get(i).apart();
      wanted += blocks.get(i).wanted() + (apart ? 1 : 0);
    }
    return wanted;
  }

  private List<Block> blocks(List<Part> parts, int width, int height) {
    for (LaidOnce once : laid) {
      if (once.parts() == parts && once.width() == width && once.height() == height) {
        return once.blocks();
      }
    }
    LaidOnce now = new LaidOnce(parts, width, height, made(parts, width, height));
    laid.add(now);
    return now.blocks();
  }

  private List<Block> made(List<Part> parts, int width, int height) {
    BlockMaking making = new BlockMaking(this, glyphs, keys, turns, width, height);
    List<Block> blocks = new ArrayList<>();
    List<Part> flowing = new ArrayList<>();
    for (Part part : parts) {
      if (FlowBlock.takes(part)) {
        flowing.add(part);
      } else {
        if (!flowing.isEmpty()) {
          blocks.add(making.flow(flowing));
          flowing.clear();
        }
        blocks.add(part.answer(making));
      }
    }
    if (!flowing.isEmpty()) {
      blocks.add(making.flow(flowing));
    }
    return blocks;
  }

  /** What each block gets: all it wants if there is room, else less, the willing first. */
  private static int[] rows(List<Block> blocks, int height) {
    int[] rows = blocks.stream().mapToInt(Block::wanted).toArray();
    for (Block.GivesWay willing : Block.GivesWay.values()) {
      take(blocks, rows, height, willing, Block::kept);
    }
    take(blocks, rows, height, Block.GivesWay.TURNS, Block::begun);
    int[] smallest = rows.clone();
    take(blocks, smallest, height, Block.GivesWay.SHRINKS, Block::least);
    if (sum(smallest) <= height) {
      return smallest;
    }
    // However small the figure: it helps no text to begin, and so it can at least be read.
    take(blocks, rows, height, Block.GivesWay.TURNS, Block::least);
    take(blocks, rows, height, Block.GivesWay.SHRINKS, Block::least);
    for (int i = rows.length - 1; i >= 0; i--) {
      int over = sum(rows) - height;
      rows[i] = Math.max(0, rows[i] - Math.max(0, over));
    }
    return rows;
  }

  /** The last of them gives first: what comes first is read first. */
  private static void take(
      List<Block> blocks,
      int[] rows,
      int height,
      Block.GivesWay willing,
      ToIntFunction<Block> least) {
    for (int i = rows.length - 1; i >= 0; i--) {
      int over = sum(rows) - height;
      if (over > 0 && blocks.get(i).yields() == willing) {
        rows[i] = Math.max(Math.min(rows[i], least.applyAsInt(blocks.get(i))), rows[i] - over);
      }
    }
  }

  private static int sum(int[] rows) {
    int sum = 0;
    for (int row : rows) {
      sum += row;
    }
    return sum;
  }
}
