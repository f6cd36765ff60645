package linkwright.files;

import java.util.List;

/** What can stand in {@code bench.yaml}, and what it is; a test reads a bench that says it all. */
public final class BenchKeys {
  /**
   * One key.
   *
   * @param key its name, groups before it with a point between
   * @param says what it is, with an example
   */
  public record BenchKey(String key, String says) {}

  /** All of them, in the order of the file. */
  public static final List<BenchKey> ALL =
      List.of(
          new BenchKey("bench", "What you call this bench."),
          new BenchKey("persons", "Who works there: [Ana, Jo]."),
          new BenchKey("units", "metric or inch."),
          new BenchKey(
              "formers", "Plier steps and other formers by your own names: {small step: 2.5 mm}."),
          new BenchKey("plate", "The holes of your drawplate: [1.2 mm, 1.1 mm, 1 mm]."),
          new BenchKey("kerf", "What your saw takes: 0.3 mm."),
          new BenchKey("flame.torch", "Your torch, in your own words."),
          new BenchKey("flame.fuel", "Its gas, such as propane."),
          new BenchKey("flame.oxygen", "Whether oxygen is added: true or false."),
          new BenchKey("pickle.kind", "What it is made of, such as citric acid."),
          new BenchKey("pickle.wait", "How long it takes as a rule: 8 min."),
          new BenchKey("pickle.mixed", "The day when it was mixed: 2026-11-20."),
          new BenchKey("solders", "A list of the solders you have; each with the keys below."),
          new BenchKey("solders.solder", "Its name."),
          new BenchKey("solders.grade", "Hard, medium, easy."),
          new BenchKey("solders.alloy", "The metal that it is for."),
          new BenchKey("solders.fineness-permille", "Its fineness in a thousand: 675."),
          new BenchKey("solders.solidus-c", "Where it begins to melt, °C."),
          new BenchKey("solders.liquidus-c", "Where it flows, °C."),
          new BenchKey("solders.strip.width", "The width of its strip: 1 mm."),
          new BenchKey("solders.strip.thickness", "The thickness of its strip: 0.3 mm."),
          new BenchKey("prices.currency", "What prices are in: EUR. Needed with any price."),
          new BenchKey(
              "prices.metal-per-g", "A gram of each metal as you buy it: {sterling: 1.10}."),
          new BenchKey("prices.scrap-credit", "Share of it credited for clean and soldered scrap."),
          new BenchKey("prices.filings-credit", "Share of it credited for filings and sweeps."),
          new BenchKey("prices.solder-per-g", "A gram of solder."),
          new BenchKey("prices.hour", "An hour at the bench."),
          new BenchKey("prices.overhead", "Overhead, a share of the work: 25 %."),
          new BenchKey("prices.margin", "Margin, a share of all that: 30 %."),
          new BenchKey("prices.findings", "Clasp and other findings of a chain."),
          new BenchKey("prices.assay", "Assay and marking of a chain."),
          new BenchKey("prices.carriage", "Carriage of a chain."),
          new BenchKey("prices.tax", "Tax, a share of the price: 19 %."),
          new BenchKey(
              "losses", "Share of pieces that you lose, by stage or all: {soldered: 3 %}."),
          new BenchKey("redos", "Share of joints that you redo, by stage or all: {all: 5 %}."),
          new BenchKey("fire-watch", "How long you watch after the last heat: 60 min."),
          new BenchKey("waits", "Your own waits by id or name: {Pickle the links: 10 min}."),
          new BenchKey("tools", "The tools you have: [torch, saw, loupe]; what lacks is told."));

  private BenchKeys() {}
}
