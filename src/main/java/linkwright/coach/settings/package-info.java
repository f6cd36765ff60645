/**
 * The place where the user's choices are changed. Start from {@link
 * linkwright.coach.settings.SettingsPlace}. Nothing is null.
 */
package linkwright.coach.settings;
