package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** A loss that grows with a power of the flow, beside a part that grows with its square.
 *
 * <p>loss = r |Q|^n sign(Q) + m Q|Q|: a main by Hazen-Williams with its fittings; what a hydrant loses below its
 * static pressure.
 *
 * @param r the loss of the power part at one cubic metre a second [Pa (s/m3)^n]; above 0
 * @param n the power, from 1 to 3
 * @param m the loss of the square part at one cubic metre a second [Pa s2/m6]; 0 or more
 * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, section 3.1 (head loss and minor loss of a pipe)
 */
public record Power(double r, double n, double m) implements Law {
    /** Exponent of the Hazen-Williams form [1]. */
    public static final double HAZEN_WILLIAMS = 1.852;

    /** How close the inverse comes, as a share of the flow [1]. */
    private static final double INVERSE = 1e-12;

    private static final int INVERSE_STEPS = 60;

    private static final Powers OF_FLOW = new Powers(HAZEN_WILLIAMS);
    private static final Powers OF_DROP = new Powers(1 / HAZEN_WILLIAMS);

    private static final List<String> NAMES = List.of("r", "n", "m_Pa_s2_m6");

    public Power {
        Numbers.requirePositive("resistance", r);
        Numbers.requireNotNegative("square part of a loss", m);
        if (!(n >= 1 && n <= 3)) {
            throw new InvalidInput("exponent of a loss", Numbers.plain(n), "1 to 3", "");
        }
    }

    /** A law without a square part. */
    public Power(double r, double n) {
        this(r, n, 0);
    }

    /** The powers of flows that the loss grows with. */
    public Powers powers() {
        return n == HAZEN_WILLIAMS ? OF_FLOW : new Powers(n);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double power = n == HAZEN_WILLIAMS ? OF_FLOW.of(size) : Math.pow(size, n);
        return Math.signum(flow_m3s) * (r * power + m * size * size);
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        return n * r * Math.pow(size, n - 1) + 2 * m * size;
    }

    @Override
    public double slope(double flow_m3s, double loss_Pa) {
        double size = Math.abs(flow_m3s);
        if (size == 0) {
            return slope(0);
        }
        double square = m * size;
        return n * (Math.abs(loss_Pa) / size - square) + 2 * square;
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double drop = Math.abs(drop_Pa);
        double flow = n == HAZEN_WILLIAMS ? OF_DROP.of(drop / r) : Math.pow(drop / r, 1 / n);
        for (int step = 0; m > 0 && flow > 0 && step < INVERSE_STEPS; step++) {
            double change = (loss_Pa(flow) - drop) / slope(flow);
            flow = Math.max(flow - change, flow / 2);
            if (Math.abs(change) < INVERSE * flow) {
                break;
            }
        }
        return Math.signum(drop_Pa) * flow;
    }

    @Override
    public List<String> listCoefficients() {
        return NAMES;
    }

    @Override
    public double coefficient(int at) {
        return Numbered.require(this, at) == 0 ? r : at == 1 ? n : m;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new Power(at == 0 ? value : r, at == 1 ? value : n, at == 2 ? value : m);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        double size = Math.abs(flow_m3s);
        if (Numbered.require(this, at) == 2) {
            return flow_m3s * size;
        }
        double power = Math.signum(flow_m3s) * Math.pow(size, n);
        return at == 0 ? power : size == 0 ? 0 : r * power * Math.log(size);
    }
}
