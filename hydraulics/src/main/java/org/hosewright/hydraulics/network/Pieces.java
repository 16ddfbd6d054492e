package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.network.law.Allowance;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;

/** The laws of a shape's links laid out for many evaluations: squares as bare numbers, the others as they are. */
final class Pieces {
    private final double[] square;
    private final boolean[] isSquare;
    private final boolean[] isStep;
    private final boolean[] oneWay;
    private final Law[] laws;
    private final double[] still_Pa;

    Pieces(int links) {
        square = new double[links];
        isSquare = new boolean[links];
        isStep = new boolean[links];
        oneWay = new boolean[links];
        laws = new Law[links];
        still_Pa = new double[links];
    }

    void set(int link, Law law) {
        oneWay[link] = law instanceof OneWay;
        Law forward = law instanceof OneWay one ? one.forward() : law;
        laws[link] = forward;
        isSquare[link] = forward instanceof Square;
        isStep[link] = forward instanceof Allowance;
        square[link] = forward instanceof Square of ? of.r() : 0;
        still_Pa[link] = forward.loss_Pa(0);
    }

    /** A square law's number, one-way or not. */
    void setSquare(int link, double r, boolean one) {
        square[link] = r;
        isSquare[link] = true;
        oneWay[link] = one;
    }

    boolean isSquare(int link) {
        return isSquare[link];
    }

    double square(int link) {
        return square[link];
    }

    boolean isOneWay(int link) {
        return oneWay[link];
    }

    /** Loss without flow [Pa]; below 0 for a pump. */
    double still_Pa(int link) {
        return still_Pa[link];
    }

    double loss_Pa(int link, double flow_m3s) {
        return isSquare[link] ? square[link] * flow_m3s * Math.abs(flow_m3s) : laws[link].loss_Pa(flow_m3s);
    }

    double slope(int link, double flow_m3s, double loss_Pa) {
        return isSquare[link] ? 2 * square[link] * Math.abs(flow_m3s) : laws[link].slope(flow_m3s, loss_Pa);
    }

    /** Where to draw the line of a link next; see {@link Law#pause_m3s}. */
    double pause_m3s(int link, double from_m3s, double to_m3s) {
        return isSquare[link] ? to_m3s : laws[link].pause_m3s(from_m3s, to_m3s);
    }

    double misfit_Pa(int link, double flow_m3s, double drop_Pa, double loss_Pa) {
        return isStep[link] ? laws[link].misfit_Pa(flow_m3s, drop_Pa) : Math.abs(drop_Pa - loss_Pa);
    }

    double flow_m3s(int link, double drop_Pa) {
        if (!isSquare[link]) {
            return laws[link].flow_m3s(drop_Pa);
        }
        double size = Math.sqrt(Math.abs(drop_Pa) / square[link]);
        return drop_Pa < 0 ? -size : size;
    }
}
