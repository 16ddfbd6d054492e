package org.hosewright.hydraulics.equipment;

/** A tip whose flow grows with the square root of its pressure: Q = K sqrt(p). */
public sealed interface KFactorTip extends Tip permits SmoothBore, Fog, Opening {

    /** Flow for the square root of pressure [m3/s per sqrt(Pa)]. */
    double k();

    @Override
    default double pressure_Pa(double flow_m3s) {
        double root = Math.max(0, flow_m3s) / k();
        return root * root;
    }

    @Override
    default double flow_m3s(double pressure_Pa) {
        return k() * Math.sqrt(Math.max(0, pressure_Pa));
    }
}
