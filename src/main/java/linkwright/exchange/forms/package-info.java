/**
 * The forms in which a command answers other programs: YAML, JSON and CSV. Start from {@link
 * linkwright.exchange.forms.OutForm}. Nothing is null.
 */
package linkwright.exchange.forms;
