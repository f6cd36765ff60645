package linkwright.view;

/** A text that stands whole or not at all: a key shows it by itself. */
record SpareBlock(Block text) implements Block {
  @Override
  public int wanted() {
    return text.wanted();
  }

  @Override
  public int least() {
    return 0;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.LEFT_OUT;
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() >= text.wanted()) {
      text.draw(area, 0);
    }
  }
}
