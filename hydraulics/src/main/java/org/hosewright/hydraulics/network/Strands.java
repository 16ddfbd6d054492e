package org.hosewright.hydraulics.network;

import java.util.Arrays;

/** The links of a core, each number a row with a lane for each scenario: their lines, flows, losses and misfits.
 *
 * <p>Every law is taken as smooth and as running both ways.
 */
final class Strands {
    private final Shape shape;
    private final Pieces pieces;
    private final double[][] head;
    private final double[][] rise;
    private final double[][] resistance;
    private final double[][] flow;
    private final double[][] loss;
    private final double[][] next;
    private final double[][] conductance;

    /** Largest misfit, loss and flow of a link, and the least flow of a one-way link, for each scenario. */
    final double[] off_Pa;

    final double[] span_Pa;
    final double[] largest_m3s;
    final double[] forward_m3s;

    /** Lays the links of a core out.
     *
     * @param head heads by places, in rows; shared
     * @param rise their rises in the step under way; shared
     */
    Strands(Iterate core, double[][] head, double[][] rise) {
        shape = core.shape;
        pieces = core.pieces;
        this.head = head;
        this.rise = rise;
        int lanes = head[0].length;
        resistance = new double[shape.links()][lanes];
        flow = new double[shape.links()][lanes];
        loss = new double[shape.links()][lanes];
        next = new double[shape.links()][lanes];
        conductance = new double[shape.links()][lanes];
        off_Pa = new double[lanes];
        span_Pa = new double[lanes];
        largest_m3s = new double[lanes];
        forward_m3s = new double[lanes];
        for (int k = 0; k < resistance.length; k++) {
            Arrays.fill(resistance[k], pieces.square(k));
        }
    }

    double[] flow(int link) {
        return flow[link];
    }

    double[] conductance(int link) {
        return conductance[link];
    }

    /** What each link passes when its drop is kept. */
    double[] next(int link) {
        return next[link];
    }

    /** Takes the resistances of some links over from the core. */
    void take(int lane, int[] links) {
        for (int k : links) {
            resistance[k][lane] = pieces.square(k);
        }
    }

    /** Straight lines from no flow to what a drop drives that is typical of each link.
     *
     * @param held_Pa what the fixed heads of each scenario span
     */
    void resist(double[] held_Pa) {
        for (int k = 0; k < flow.length; k++) {
            boolean end = pieces.isOneWay(k) && shape.isAtFixed(k);
            resist(k, end ? Newton.START_AT_END : Newton.START, held_Pa);
        }
    }

    private void resist(int k, double share, double[] held_Pa) {
        double still = pieces.still_Pa(k);
        double[] by = conductance[k];
        double[] r = resistance[k];
        if (pieces.isSquare(k)) {
            for (int l = 0; l < by.length; l++) {
                by[l] = Math.sqrt(1 / (r[l] * share * held_Pa[l]));
            }
        } else {
            for (int l = 0; l < by.length; l++) {
                double typical_Pa = share * held_Pa[l];
                by[l] = pieces.flow_m3s(k, still + typical_Pa) / typical_Pa;
            }
        }
        double[] from = head[shape.from()[k]];
        double[] to = head[shape.to()[k]];
        double[] kept = next[k];
        for (int l = 0; l < by.length; l++) {
            kept[l] = (from[l] - to[l] - still) * by[l];
        }
    }

    /** Puts each flow at what its drop drives: resistors give better drops than flows. */
    void drive() {
        for (int k = 0; k < flow.length; k++) {
            if (pieces.isSquare(k)) {
                driveSquare(k);
            } else {
                drivePower(k);
            }
            double[] from = head[shape.from()[k]];
            double[] to = head[shape.to()[k]];
            double[] lost = loss[k];
            for (int l = 0; l < lost.length; l++) {
                lost[l] = from[l] - to[l];
            }
        }
    }

    private void driveSquare(int k) {
        double[] from = head[shape.from()[k]];
        double[] to = head[shape.to()[k]];
        double[] r = resistance[k];
        double[] at = flow[k];
        for (int l = 0; l < at.length; l++) {
            double size = Math.abs(at[l]) + Pieces.TINY;
            at[l] *= Math.sqrt(Math.abs(from[l] - to[l]) / (r[l] * size * size));
        }
    }

    private void drivePower(int k) {
        double[] from = head[shape.from()[k]];
        double[] to = head[shape.to()[k]];
        double[] at = flow[k];
        for (int l = 0; l < at.length; l++) {
            at[l] = pieces.flow_m3s(k, from[l] - to[l]);
        }
    }

    /** Makes each link straight where it stands.
     *
     * @param least the least slope of each scenario [Pa s/m3]
     */
    void straighten(double[] least) {
        for (int k = 0; k < flow.length; k++) {
            slope(k, least);
            double[] from = head[shape.from()[k]];
            double[] to = head[shape.to()[k]];
            double[] at = flow[k];
            double[] lost = loss[k];
            double[] by = conductance[k];
            double[] kept = next[k];
            for (int l = 0; l < at.length; l++) {
                kept[l] = at[l] + (from[l] - to[l] - lost[l]) * by[l];
            }
        }
    }

    private void slope(int k, double[] least) {
        double still = pieces.still_Pa(k);
        double n = pieces.exponent(k);
        double square = (2 - n) * pieces.besides(k);
        double[] at = flow[k];
        double[] lost = loss[k];
        double[] by = conductance[k];
        for (int l = 0; l < at.length; l++) {
            double size = Math.max(Math.abs(at[l]), Pieces.TINY);
            double steep = n * Math.abs(lost[l] - still) + square * size * size;
            by[l] = size / Math.max(steep, least[l] * size);
        }
    }

    /** Follows the rises along the lines. */
    void move() {
        for (int k = 0; k < flow.length; k++) {
            move(k);
        }
    }

    /** Works the losses where the flows stand and how far they miss the drops. */
    void measure() {
        Arrays.fill(off_Pa, 0);
        Arrays.fill(span_Pa, 0);
        Arrays.fill(largest_m3s, 0);
        Arrays.fill(forward_m3s, Double.POSITIVE_INFINITY);
        for (int k = 0; k < flow.length; k++) {
            lose(k);
            measure(k);
            if (pieces.isOneWay(k)) {
                double[] at = flow[k];
                for (int l = 0; l < at.length; l++) {
                    forward_m3s[l] = Math.min(forward_m3s[l], at[l]);
                }
            }
        }
    }

    private void move(int k) {
        double[] from = rise[shape.from()[k]];
        double[] to = rise[shape.to()[k]];
        double[] at = flow[k];
        double[] by = conductance[k];
        double[] kept = next[k];
        for (int l = 0; l < at.length; l++) {
            at[l] = kept[l] + (from[l] - to[l]) * by[l];
        }
    }

    private void lose(int k) {
        double[] at = flow[k];
        double[] lost = loss[k];
        if (pieces.isSquare(k)) {
            double[] r = resistance[k];
            for (int l = 0; l < at.length; l++) {
                lost[l] = r[l] * at[l] * Math.abs(at[l]);
            }
        } else {
            for (int l = 0; l < at.length; l++) {
                lost[l] = pieces.loss_Pa(k, at[l]);
            }
        }
    }

    /** One array is written a loop: so the compiler takes several lanes at once. */
    private void measure(int k) {
        double[] from = head[shape.from()[k]];
        double[] to = head[shape.to()[k]];
        double[] lost = loss[k];
        for (int l = 0; l < lost.length; l++) {
            off_Pa[l] = Math.max(off_Pa[l], Math.abs(from[l] - to[l] - lost[l]));
        }
        raise(span_Pa, lost);
        raise(largest_m3s, flow[k]);
    }

    private static void raise(double[] most, double[] by) {
        for (int l = 0; l < most.length; l++) {
            most[l] = Math.max(most[l], Math.abs(by[l]));
        }
    }
}
