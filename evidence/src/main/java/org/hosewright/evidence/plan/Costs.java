package org.hosewright.evidence.plan;

import java.util.List;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;

/** What readings take of a night's time and water.
 *
 * @param pace how long the parts take
 */
record Costs(Pace pace) {
    double seconds(TestPoint point) {
        return point.shut() ? pace.still().seconds() : pace.reading().seconds();
    }

    double water_m3(TestPoint point) {
        return point.state().flow().cubicMetresPerSecond() * pace.flowing().seconds();
    }

    /** Water that fills a line. */
    static double filling_m3(Line line) {
        double sum_m3 = 0;
        for (Run run : line.runs()) {
            Length diameter = run.hose().diameter();
            sum_m3 += Math.PI
                    / 4
                    * diameter.metres()
                    * diameter.metres()
                    * run.length().metres();
        }
        return sum_m3;
    }

    /** Time of a whole night, from the briefing on, its readings in order. */
    double seconds(List<TestPoint> inOrder) {
        double sum_s = pace.setUp().seconds();
        int before = -1;
        for (TestPoint point : inOrder) {
            sum_s += seconds(point);
            sum_s += point.lay() == before ? 0 : pace.relay().seconds();
            before = point.lay();
        }
        return sum_s;
    }

    /** Water of a whole night, its readings in order. */
    double water_m3(List<TestPoint> inOrder) {
        double sum_m3 = 0;
        int before = -1;
        for (TestPoint point : inOrder) {
            sum_m3 += water_m3(point);
            sum_m3 += point.lay() == before ? 0 : filling_m3(point.line());
            before = point.lay();
        }
        return sum_m3;
    }
}
