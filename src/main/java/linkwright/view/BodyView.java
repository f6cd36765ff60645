package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;

/**
 * Lays what a place says out in a room of cells: blocks one below the other, each as high as it
 * wants while there is room; then lists scroll, texts are turned over, drawings shrink.
 */
final class BodyView {
  private final Glyphs glyphs;
  private final KeyMap keys;
  private final Act turns;

  BodyView(Glyphs glyphs, KeyMap keys, Act turns) {
    this.glyphs = glyphs;
    this.keys = keys;
    this.turns = turns;
  }

  /** Draws it, turned on so often. */
  void draw(Canvas body, Content content, int turned) {
    draw(body, content.parts(), turned, body.height());
  }

  /** How many parts a reader turns through in that room. */
  int parts(Content content, int width, int height) {
    return parts(content.parts(), width, height);
  }

  int parts(List<Part> all, int width, int height) {
    List<List<Block>> pages = pages(blocks(all, width, height), height);
    int room = room(pages, height);
    return pages.stream().mapToInt(page -> parts(page, room)).sum();
  }

  private static int parts(List<Block> page, int height) {
    int[] rows = rows(page, height);
    int parts = 1;
    for (int i = 0; i < rows.length; i++) {
      parts = Math.max(parts, page.get(i).parts(rows[i]));
    }
    return parts;
  }

  /**
   * Draws parts in a room inside a place of that height, by which figures and drawings are sized.
   * Where not all of them have room at once, those that have none come on another page.
   */
  void draw(Canvas body, List<Part> parts, int turned, int placeHeight) {
    List<List<Block>> pages = pages(blocks(parts, body.width(), placeHeight), body.height());
    int room = room(pages, body.height());
    int all = pages.stream().mapToInt(page -> parts(page, room)).sum();
    int at = all == 0 ? 0 : Math.floorMod(turned, all);
    int shown = 0;
    while (shown + 1 < pages.size() && at >= parts(pages.get(shown), room)) {
      at -= parts(pages.get(shown), room);
      shown++;
    }
    if (pages.isEmpty()) {
      return;
    }
    drawPage(body.area(0, 0, body.width(), room), pages.get(shown), at);
    if (pages.size() > 1) {
      String told = "page " + (shown + 1) + " of " + pages.size() + "  " + keys.firstOf(turns);
      body.right(body.height() - 1, told + ": more", Tone.FAINT);
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
      take(blocks, rows, height, willing);
    }
    for (int i = rows.length - 1; i >= 0; i--) {
      int over = sum(rows) - height;
      rows[i] = Math.max(0, rows[i] - Math.max(0, over));
    }
    return rows;
  }

  /** The last of them gives first: what comes first is read first. */
  private static void take(List<Block> blocks, int[] rows, int height, Block.GivesWay willing) {
    for (int i = rows.length - 1; i >= 0; i--) {
      int over = sum(rows) - height;
      if (over > 0 && blocks.get(i).yields() == willing) {
        rows[i] = Math.max(Math.min(rows[i], blocks.get(i).least()), rows[i] - over);
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
