package org.hosewright.hydraulics.line;

import java.util.List;
import org.hosewright.hydraulics.network.law.Law;

/** The hose of a line that follows another law than the square.
 *
 * @param laws each run's
 */
record HoseLaws(List<Law> laws) {
    /** How close the inverse comes, as a share of the flow [1]. */
    private static final double CLOSE = 1e-13;

    private static final int STEPS = 100;

    HoseLaws {
        laws = List.copyOf(laws);
    }

    static HoseLaws of(Line line) {
        return new HoseLaws(line.runs().stream()
                .filter(run -> run.hose().law().isPresent())
                .map(run -> run.hose().over(run.length()))
                .toList());
    }

    double loss_Pa(double flow_m3s) {
        double sum = 0;
        for (Law law : laws) {
            sum += law.loss_Pa(flow_m3s);
        }
        return sum;
    }

    double slope(double flow_m3s) {
        double sum = 0;
        for (Law law : laws) {
            sum += law.slope(flow_m3s);
        }
        return sum;
    }

    /** The flow that these and a square part lose a pressure at; Newton's steps kept between two bounds.
     *
     * @param lost_Pa the pressure [Pa]; above 0
     * @param square the square part [Pa s2/m6]
     */
    double flow_m3s(double lost_Pa, double square) {
        if (laws.isEmpty()) {
            return Math.sqrt(lost_Pa / square);
        }
        double low = 0;
        double high = laws.get(0).flow_m3s(lost_Pa);
        double flow = high;
        for (int step = 0; step < STEPS; step++) {
            double off = square * flow * flow + loss_Pa(flow) - lost_Pa;
            low = off < 0 ? flow : low;
            high = off < 0 ? high : flow;
            double next = flow - off / (2 * square * flow + slope(flow));
            next = next > low && next < high ? next : (low + high) / 2;
            boolean found = Math.abs(next - flow) <= CLOSE * next;
            flow = next;
            if (found) {
                break;
            }
        }
        return flow;
    }
}
