/**
 * The thin shell: performs the coach's effects on the disk, and runs the loop of key, update,
 * effects, repaint. Start from {@link linkwright.shell.BenchLoop}. Nothing is null.
 */
package linkwright.shell;
