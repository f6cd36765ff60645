/**
 * The place of the drawer: wire and other metal on hand across jobs, by lot. Start from {@link
 * linkwright.coach.drawer.DrawerPlace}. Nothing is null.
 */
package linkwright.coach.drawer;
