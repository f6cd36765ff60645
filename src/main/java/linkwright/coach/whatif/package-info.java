/**
 * The place where the same wish is compared in other metal, wire, ring or length. Start from {@link
 * linkwright.coach.whatif.WhatIfPlace}. Lengths are mm, masses g. Nothing is null.
 */
package linkwright.coach.whatif;
