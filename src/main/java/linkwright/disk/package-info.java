/**
 * Bytes on the disk: whole or not at all, synced before anybody hears of it, refusals in a
 * jeweller's words. Start from {@link linkwright.disk.Disk}. Faults of the disk are exceptions here
 * ({@code IOException}); whoever calls makes them values. Nothing is null.
 */
package linkwright.disk;
