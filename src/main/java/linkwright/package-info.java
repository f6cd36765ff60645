/**
 * Linkwright: a bench coach for soldered chain made by hand. {@link linkwright.Main} starts it.
 *
 * <p>The rooms below this package depend on each other in one direction only; DEVELOPERS.md draws
 * it and {@code ArchitectureTest} holds it.
 */
package linkwright;
