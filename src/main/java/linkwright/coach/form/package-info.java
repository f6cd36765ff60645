/**
 * What a place asks for: fields that are typed, what is wrong with them, what is asked before they
 * are kept. It knows no place. Start from {@link linkwright.coach.form.Form}. Nothing is null; what
 * was not typed is an empty text.
 */
package linkwright.coach.form;
