/**
 * What goes out to other programs, table by table, and what comes in from theirs as comma-separated
 * values (RFC 4180). Start from {@link linkwright.exchange.JobTables} and {@link
 * linkwright.exchange.CsvTable}. Units stand in the headings. Nothing is null.
 */
package linkwright.exchange;
