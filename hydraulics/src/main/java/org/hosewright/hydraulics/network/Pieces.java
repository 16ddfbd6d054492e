package org.hosewright.hydraulics.network;

import java.util.Arrays;
import org.hosewright.hydraulics.network.law.Allowance;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.Powers;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;

/** The laws of a shape's links laid out for many evaluations: squares and powers as bare numbers, the others as they are. */
final class Pieces {
    private static final int SQUARE = 0;
    private static final int POWER = 1;
    private static final int PUMP = 2;
    private static final int OTHER = 3;
    private static final int STEP = 4;

    /** A flow that divides without harm and is none [m3/s]. */
    static final double TINY = 1e-150;

    private final int[] kind;
    private final boolean[] oneWay;
    private final Law[] laws;
    private final double[] still_Pa;

    /** Resistance of a square, or of the power part. */
    private final double[] resistance;

    /** The square part of a power; the power itself, 2 for a square. */
    private final double[] square;

    private final double[] exponent;
    private final Powers[] powers;

    Pieces(int links) {
        kind = new int[links];
        oneWay = new boolean[links];
        laws = new Law[links];
        still_Pa = new double[links];
        resistance = new double[links];
        square = new double[links];
        exponent = new double[links];
        Arrays.fill(exponent, 2);
        powers = new Powers[links];
    }

    int links() {
        return kind.length;
    }

    void set(int link, Law law) {
        oneWay[link] = law instanceof OneWay;
        Law forward = law instanceof OneWay one ? one.forward() : law;
        laws[link] = forward;
        kind[link] = OTHER;
        exponent[link] = 2;
        square[link] = 0;
        if (forward instanceof Square of) {
            kind[link] = SQUARE;
            resistance[link] = of.r();
        } else if (forward instanceof Power of) {
            kind[link] = POWER;
            resistance[link] = of.r();
            exponent[link] = of.n();
            square[link] = of.m();
            powers[link] = of.powers();
        } else if (forward instanceof PumpGain of) {
            kind[link] = PUMP;
            exponent[link] = of.b();
        } else if (forward instanceof Allowance) {
            kind[link] = STEP;
        }
        still_Pa[link] = kind[link] < PUMP ? 0 : forward.loss_Pa(0);
    }

    /** Takes a law over from where it is laid out already. */
    void take(int link, Pieces from, int other) {
        kind[link] = from.kind[other];
        oneWay[link] = from.oneWay[other];
        laws[link] = from.laws[other];
        still_Pa[link] = from.still_Pa[other];
        resistance[link] = from.resistance[other];
        square[link] = from.square[other];
        exponent[link] = from.exponent[other];
        powers[link] = from.powers[other];
    }

    /** Makes tables of the powers that pumps fall by: worth it where a network is solved many times. */
    void tabulate() {
        for (int k = 0; k < kind.length; k++) {
            if (kind[k] == PUMP && laws[k] instanceof PumpGain pump) {
                kind[k] = POWER;
                resistance[k] = pump.a();
                powers[k] = new Powers(pump.b());
            }
        }
    }

    /** A square law's number, one-way or not. */
    void setSquare(int link, double r, boolean one) {
        resistance[link] = r;
        kind[link] = SQUARE;
        exponent[link] = 2;
        oneWay[link] = one;
    }

    boolean isSquare(int link) {
        return kind[link] == SQUARE;
    }

    double square(int link) {
        return resistance[link];
    }

    /** The power of a power law, one of a pump among them once tabulated. */
    double exponent(int link) {
        return exponent[link];
    }

    /** What a power law loses with the square of the flow besides. */
    double besides(int link) {
        return square[link];
    }

    /** Whether a law has no kinks and is quick to turn round. */
    boolean isSmooth(int link) {
        return kind[link] <= PUMP;
    }

    boolean isOneWay(int link) {
        return oneWay[link];
    }

    /** Loss without flow [Pa]; below 0 for a pump. */
    double still_Pa(int link) {
        return still_Pa[link];
    }

    double loss_Pa(int link, double flow_m3s) {
        int of = kind[link];
        return of == SQUARE
                ? resistance[link] * flow_m3s * Math.abs(flow_m3s)
                : of == POWER ? power_Pa(link, flow_m3s) : laws[link].loss_Pa(flow_m3s);
    }

    private double power_Pa(int link, double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double loss = resistance[link] * powers[link].of(size) + square[link] * size * size;
        return still_Pa[link] + (flow_m3s < 0 ? -loss : loss);
    }

    /** Losses of all links at their flows [Pa, m3/s]. */
    void losses(double[] flow_m3s, double[] loss_Pa) {
        for (int k = 0; k < kind.length; k++) {
            loss_Pa[k] = loss_Pa(k, flow_m3s[k]);
        }
    }

    double slope(int link, double flow_m3s, double loss_Pa) {
        return kind[link] == SQUARE ? 2 * resistance[link] * Math.abs(flow_m3s) : laws[link].slope(flow_m3s, loss_Pa);
    }

    /** One over the slope at a flow whose loss is known, but no more than one over a least slope. */
    double conductance(int link, double flow_m3s, double loss_Pa, double least) {
        double slope = slope(link, flow_m3s, loss_Pa);
        return 1 / (slope > least ? slope : least);
    }

    /** The same for every smooth law at once, by the ratio of its loss to its flow; others come out as they may. */
    void conductances(double[] flow_m3s, double[] loss_Pa, double least, double[] conductance) {
        double[] n = exponent;
        double[] still = still_Pa;
        double[] besides = square;
        for (int k = 0; k < conductance.length; k++) {
            double size = Math.max(Math.abs(flow_m3s[k]), TINY);
            double steep = n[k] * Math.abs(loss_Pa[k] - still[k]) + (2 - n[k]) * besides[k] * size * size;
            conductance[k] = size / Math.max(steep, least * size);
        }
    }

    /** Where to draw the line of a link next; see {@link Law#pause_m3s}. */
    double pause_m3s(int link, double from_m3s, double to_m3s) {
        return isSmooth(link) ? to_m3s : laws[link].pause_m3s(from_m3s, to_m3s);
    }

    double misfit_Pa(int link, double flow_m3s, double drop_Pa, double loss_Pa) {
        return kind[link] == STEP ? laws[link].misfit_Pa(flow_m3s, drop_Pa) : Math.abs(drop_Pa - loss_Pa);
    }

    double flow_m3s(int link, double drop_Pa) {
        if (kind[link] == SQUARE) {
            double size = Math.sqrt(Math.abs(drop_Pa) / resistance[link]);
            return drop_Pa < 0 ? -size : size;
        }
        return laws[link] instanceof Power power ? power.flow_m3s(drop_Pa) : laws[link].flow_m3s(drop_Pa);
    }
}
