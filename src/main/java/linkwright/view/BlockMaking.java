package linkwright.view;

import java.util.List;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;
import linkwright.coach.content.PartCases;
import linkwright.coach.content.Pieces;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;

/** Makes the block for each kind of part in a room of that size. */
final class BlockMaking implements PartCases<Block> {
  /** From here on texts stand in two columns: why beside do. */
  private static final int TWO_COLUMNS = 120;

  private final BodyView body;
  private final Glyphs glyphs;
  private final KeyMap keys;
  private final Act turns;
  private final int width;
  private final int height;

  BlockMaking(BodyView body, Glyphs glyphs, KeyMap keys, Act turns, int width, int height) {
    this.body = body;
    this.glyphs = glyphs;
    this.keys = keys;
    this.turns = turns;
    this.width = width;
    this.height = height;
  }

  /** Texts, rows and waits that follow each other are one text to be turned over. */
  Block flow(List<Part> parts) {
    boolean two = width >= TWO_COLUMNS;
    int wide = two ? (width - FlowBlock.GAP) / 2 : width;
    FlowBlock block =
        new FlowBlock(
            FlowRows.of(parts, wide, keys, glyphs), keys.firstOf(turns), two ? 2 : 1, body.told());
    return parts.stream().allMatch(BlockMaking::spare) ? new SpareBlock(block) : block;
  }

  private static boolean spare(Part part) {
    return part instanceof Prose prose && prose.kind() == Prose.Kind.SPARE;
  }

  @Override
  public Block acts(Acts acts) {
    return new ActsBlock(acts, keys, glyphs, width, keys.firstOf(turns), body.told());
  }

  @Override
  public Block bars(Bars bars) {
    return new BarsBlock(bars, glyphs, width, keys.firstOf(turns), body.told());
  }

  @Override
  public Block beside(Beside beside) {
    return new BesideBlock(body, beside, width, height);
  }

  @Override
  public Block drawing(Drawing drawing) {
    return new DrawingBlock(drawing, width, height);
  }

  @Override
  public Block fields(Fields fields) {
    return new FieldsBlock(fields.form(), width, keys::spokenOf, keys.firstOf(turns), body.told());
  }

  @Override
  public Block figure(Figure figure) {
    return new FigureBlock(figure, width, height, glyphs, keys);
  }

  @Override
  public Block pieces(Pieces pieces) {
    return new PiecesBlock(pieces);
  }

  @Override
  public Block prose(Prose prose) {
    return flow(List.of(prose));
  }

  @Override
  public Block question(Question question) {
    return flow(List.of(question));
  }

  @Override
  public Block rows(Rows rows) {
    return flow(List.of(rows));
  }

  @Override
  public Block table(Table table) {
    return new TableBlock(table, width, height, keys, keys.firstOf(turns), body.told());
  }

  @Override
  public Block waiting(WaitShown wait) {
    return flow(List.of(wait));
  }
}
