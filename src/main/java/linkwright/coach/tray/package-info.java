/**
 * The place of the jobs at hand: one is opened, or a new one begun. Start from {@link
 * linkwright.coach.tray.TrayPlace}. Nothing is null.
 */
package linkwright.coach.tray;
