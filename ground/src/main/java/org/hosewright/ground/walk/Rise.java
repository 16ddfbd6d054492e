package org.hosewright.ground.walk;

import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** How much higher a walk ends than it starts, and where that comes from.
 *
 * @param up the end above the start, negative downhill
 * @param source where it comes from
 * @param says the source in words for people: "terrain file N44W073.hgt"
 */
public record Rise(Known<Length> up, RiseSource source, String says) {}
