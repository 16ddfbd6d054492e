package org.hosewright.evidence.plan;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** A test night planned: its readings in order, what they should tell, and what they take.
 *
 * @param means what it is flown with
 * @param budget what it may use up
 * @param questions what it is flown for
 * @param points the readings in the order to take them
 * @param foreseen how well each number should be known afterwards
 * @param withheld what it could not tell, and what would settle it
 * @param warnings what to know before flying it, as sentences
 * @param stopped what is out of reach and what stops it, as sentences
 * @param assumed each default that it rests on, as a sentence
 * @param time from the briefing to the last reading
 * @param water what flows and fills
 */
public record Plan(
        Means means,
        Budget budget,
        Set<Question> questions,
        List<TestPoint> points,
        List<Foreseen> foreseen,
        List<Withheld> withheld,
        List<String> warnings,
        List<String> stopped,
        List<String> assumed,
        Seconds time,
        Volume water) {
    public Plan {
        questions = Collections.unmodifiableSet(new TreeSet<>(questions));
        points = List.copyOf(points);
        foreseen = List.copyOf(foreseen);
        withheld = List.copyOf(withheld);
        warnings = List.copyOf(warnings);
        stopped = List.copyOf(stopped);
        assumed = List.copyOf(assumed);
    }

    /** How often hose is laid. */
    public int layings() {
        int count = 0;
        int before = -1;
        for (TestPoint point : points) {
            count += point.lay() == before ? 0 : 1;
            before = point.lay();
        }
        return count;
    }
}
