package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.quantity.Numbers;

/** A loss that grows with the square of the flow: hose, piping, a fitting, a fixed tip. loss = r Q|Q|.
 *
 * @param r the loss at one cubic metre a second [Pa s2/m6]; above 0
 */
public record Square(double r) implements Law {
    private static final List<String> NAMES = List.of("r_Pa_s2_m6");

    public Square {
        Numbers.requirePositive("resistance", r);
    }

    /** A tip or sprinkler that flows K sqrt(p), towards a node that stands at the pressure of the air.
     *
     * @param k flow at one pascal [m3/s per sqrt(Pa)]; above 0
     */
    public static Square ofOutlet(double k) {
        Numbers.requirePositive("flow factor of an outlet", k);
        return new Square(1 / (k * k));
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return r * flow_m3s * Math.abs(flow_m3s);
    }

    @Override
    public double slope(double flow_m3s) {
        return 2 * r * Math.abs(flow_m3s);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        return Math.signum(drop_Pa) * Math.sqrt(Math.abs(drop_Pa) / r);
    }

    @Override
    public List<String> listCoefficients() {
        return NAMES;
    }

    @Override
    public double coefficient(int at) {
        Numbered.require(this, at);
        return r;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new Square(value);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        Numbered.require(this, at);
        return flow_m3s * Math.abs(flow_m3s);
    }
}
