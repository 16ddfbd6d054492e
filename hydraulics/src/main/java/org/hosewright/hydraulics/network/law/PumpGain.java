package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** What a pump at a fixed speed adds: gain = shut - a Q^b; a flow driven backward meets more than the shut-off gain.
 *
 * <p>A pump with a check valve is this law within {@link OneWay}.
 *
 * @param shut_Pa gain with no flow [Pa]; above 0
 * @param a what a cubic metre a second takes off it [Pa (s/m3)^b]; above 0
 * @param b the power, from 1 to 4
 * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, section 3.1 (pump curve through three points)
 */
public record PumpGain(double shut_Pa, double a, double b) implements Law {
    private static final List<String> NAMES = List.of("shut_Pa", "a", "b");

    public PumpGain {
        Numbers.requirePositive("shut-off gain of a pump", shut_Pa);
        Numbers.requirePositive("fall of a pump's gain", a);
        if (!(b >= 1 && b <= 4)) {
            throw new InvalidInput("exponent of a pump's gain", Numbers.plain(b), "1 to 4", "");
        }
    }

    /** The gain through its shut-off pressure and two points: less pressure at more flow, twice.
     *
     * @throws InvalidInput the points give a curve that does not fall ever more steeply
     */
    public static PumpGain through(
            double shut_Pa, double gain1_Pa, double flow1_m3s, double gain2_Pa, double flow2_m3s) {
        Numbers.requirePositive("first flow of a pump's curve", flow1_m3s);
        if (!(shut_Pa > gain1_Pa && gain1_Pa > gain2_Pa && flow2_m3s > flow1_m3s)) {
            throw new InvalidInput(
                    "curve of a pump", Numbers.plain(gain2_Pa) + " Pa", "a gain that falls with flow", "");
        }
        double b = Math.log((shut_Pa - gain2_Pa) / (shut_Pa - gain1_Pa)) / Math.log(flow2_m3s / flow1_m3s);
        return new PumpGain(shut_Pa, (shut_Pa - gain1_Pa) / Math.pow(flow1_m3s, b), b);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return Math.signum(flow_m3s) * a * Math.pow(Math.abs(flow_m3s), b) - shut_Pa;
    }

    @Override
    public double slope(double flow_m3s) {
        return a * b * Math.pow(Math.abs(flow_m3s), b - 1);
    }

    @Override
    public double slope(double flow_m3s, double loss_Pa) {
        return flow_m3s == 0 ? slope(0) : b * (loss_Pa + shut_Pa) / flow_m3s;
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double off_Pa = drop_Pa + shut_Pa;
        return Math.signum(off_Pa) * Math.pow(Math.abs(off_Pa) / a, 1 / b);
    }

    @Override
    public List<String> listCoefficients() {
        return NAMES;
    }

    @Override
    public double coefficient(int at) {
        return Numbered.require(this, at) == 0 ? shut_Pa : at == 1 ? a : b;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new PumpGain(at == 0 ? value : shut_Pa, at == 1 ? value : a, at == 2 ? value : b);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        if (Numbered.require(this, at) == 0) {
            return -1;
        }
        double size = Math.abs(flow_m3s);
        double power = Math.signum(flow_m3s) * Math.pow(size, b);
        return at == 1 ? power : size == 0 ? 0 : a * power * Math.log(size);
    }
}
