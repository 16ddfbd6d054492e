package org.hosewright.ground.walk;

import java.util.List;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** A way that was walked: how long it is, how much it rises, and where every section of hose ends.
 *
 * @param track as recorded
 * @param way the smoothed way, from start to end; two points or more
 * @param distance along the way; without a standard error where the track has no times and is taken as drawn
 * @param raw sum of the distances from fix to fix, the receiver's wandering included
 * @param rise from the start to the end
 * @param section from coupling to coupling
 * @param sections where each section ends, the last one at the end of the way
 * @param marks what people marked
 * @param remarks what was set aside or is not known well, as sentences
 * @param assumed what the result rests on without evidence, as sentences
 */
public record Walk(
        Track track,
        List<WayPoint> way,
        Known<Length> distance,
        Length raw,
        Rise rise,
        Length section,
        List<SectionMark> sections,
        List<WalkedMark> marks,
        List<String> remarks,
        List<String> assumed) {
    public Walk {
        way = List.copyOf(way);
        sections = List.copyOf(sections);
        marks = List.copyOf(marks);
        remarks = List.copyOf(remarks);
        assumed = List.copyOf(assumed);
    }

    /** The way that a track tells. */
    public static Walk of(WalkQuestion question) {
        return new WalkAnalysis(question).walk();
    }

    /** The shortest that the way may be: the lower end of the 95 % interval; never below 0. */
    public Length shortest() {
        return new Length(Math.max(0, distance.value().metres() - half_m()));
    }

    /** The longest that the way may be: the upper end of the 95 % interval. */
    public Length longest() {
        return new Length(distance.value().metres() + half_m());
    }

    /** Whole sections that cover the way even where it is as long as it may be. */
    public int sectionsAtMost() {
        return Math.max(sections.size(), (int) Math.ceil(longest().metres() / section.metres() * (1 - 1e-9)));
    }

    private double half_m() {
        return QuantityShown.HALF_WIDTH * distance.standardErrorSi();
    }
}
