/**
 * The drawer: wire, solder and other metal on hand across jobs, by lot. What came, what the scale
 * said and what was drawn down stand in the drawer's own book; what a job took or gave back stands
 * in the job's book alone and names the lot, so that one entry is the whole of it. Start from
 * {@link linkwright.drawer.Drawer}. Lengths are mm, masses g. Nothing is null.
 */
package linkwright.drawer;
