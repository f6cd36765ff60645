package linkwright.coach.content;

/** A page with one of its components as another, for tests. */
public final class OtherPage {
  private OtherPage() {}

  public static Page turned(Page page, int part) {
    return of(page, page.body(), part);
  }

  public static Page saying(Page page, Content body) {
    return of(page, body, page.turned());
  }

  /** The same with that sentence told. */
  public static Page telling(Page page, String told) {
    return new Page(
        page.job(),
        page.body(),
        page.turned(),
        page.turns(),
        page.waits(),
        page.hotWork(),
        page.chain(),
        page.still(),
        told,
        true,
        page.open(),
        page.away(),
        page.across());
  }

  private static Page of(Page page, Content body, int turned) {
    return new Page(
        page.job(),
        body,
        turned,
        page.turns(),
        page.waits(),
        page.hotWork(),
        page.chain(),
        page.still(),
        page.told(),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }
}
