package org.hosewright.ground.walk;

import org.hosewright.hydraulics.quantity.Length;

/** Where a section of hose ends.
 *
 * @param section count of sections to here; 1 or more
 * @param hose length of hose to here
 * @param place on the way; the way's end for the last section, which may reach further
 * @param spare hose that is left when this section's end stands at its place; 0 but for the last section
 */
public record SectionMark(int section, Length hose, WayPoint place, Length spare) {}
