/**
 * The longest chain, or the heaviest wire, that can be had from what there is: some wire, so much
 * metal, money, hours. Start from {@link linkwright.standing.reach.WithinReach}. Lengths are mm,
 * masses g, times h. Nothing is null.
 */
package linkwright.standing.reach;
