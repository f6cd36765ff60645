/**
 * What holds for the program's own house: no circles, no room that grows too large, no name that
 * stands twice, no code that nobody calls. Start at {@link linkwright.house.Exceptions}: each check
 * has a list of what does not hold yet, and why; a list may only shrink. Nothing is null.
 */
package linkwright.house;
