/**
 * A student's question as it is put and told, wherever she is asked. Start from {@link
 * linkwright.coach.kernel.asking.AskedContent}. Nothing is null.
 */
package linkwright.coach.kernel.asking;
