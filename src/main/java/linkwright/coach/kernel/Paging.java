package linkwright.coach.kernel;

import linkwright.coach.content.Content;

/** How many parts an output needs for what a place says: a card is seen when its last part was. */
@FunctionalInterface
public interface Paging {
  /** An output that has room for everything at once. */
  Paging WHOLE = (content, told, still, width, height, chain) -> 1;

  /**
   * Parts in a window of that size, of what stands at the foot too.
   *
   * @param told a sentence that is told at the foot; empty for none
   * @param still what is still to do; empty for nothing
   * @param chain whether the chain is drawn above it
   */
  int parts(Content content, String told, String still, int width, int height, boolean chain);
}
