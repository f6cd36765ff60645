/**
 * What is the maker's own whatever the job: her tools by their sizes, her flame, pickle, solders,
 * prices, losses and times, as she described them. Start from {@link linkwright.bench.OwnBench}.
 * Lengths are mm, temperatures °C, times s, shares 0 to 1, prices in her currency. Nothing is null;
 * what she did not say is empty.
 */
package linkwright.bench;
