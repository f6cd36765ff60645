package linkwright.coach.kernel;

import linkwright.coach.content.Content;

/** How many parts an output needs for what a place says: a card is seen when its last part was. */
@FunctionalInterface
public interface Paging {
  /** An output that has room for everything at once. */
  Paging WHOLE = (content, width, height, chain) -> 1;

  /** Parts in a window of that size; chain says whether the chain is drawn above it. */
  int parts(Content content, int width, int height, boolean chain);
}
