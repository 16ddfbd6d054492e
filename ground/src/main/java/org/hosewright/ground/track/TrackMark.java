package org.hosewright.ground.track;

import org.hosewright.hydraulics.quantity.Numbers;

/** A mark that a person made while walking.
 *
 * @param kind what was marked
 * @param at index of the last fix before the tap; 0 or more
 * @param note in the person's own words; may be empty
 */
public record TrackMark(MarkKind kind, int at, String note) {
    public TrackMark {
        Numbers.requireNotNegative("place of a mark", at);
    }
}
