/**
 * What can be done with a key, and which key does it: the acts, the keys, and the user's own choice
 * of them. It knows no place. Start from {@link linkwright.coach.keys.Act}. Nothing is null.
 */
package linkwright.coach.keys;
