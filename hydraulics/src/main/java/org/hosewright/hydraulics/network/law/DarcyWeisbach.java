package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.quantity.Numbers;

/** The loss of a pipe or hose of known bore and roughness: loss = (f L/d + K) rho v|v| / 2.
 *
 * <p>Laminar, turbulent and between, without a jump.
 *
 * @param length_m length [m]; above 0
 * @param diameter_m bore [m]; above 0
 * @param roughness_m height of the roughness [m]; 0 or more, less than a twentieth of the bore
 * @param fittings sum of the loss factors of fittings, in velocity heads [1]; 0 or more
 * @param water what flows
 * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, section 3.1 and appendix D.1
 * @validFor full pipes; the turbulent form is for Reynolds numbers to 1e8
 */
public record DarcyWeisbach(double length_m, double diameter_m, double roughness_m, double fittings, Water water)
        implements Law {
    private static final double ROUGHEST = 0.05;
    private static final double INVERSE = 1e-12;
    private static final int INVERSE_STEPS = 100;
    private static final List<String> NAMES = List.of("length_m", "roughness_m", "fittings");

    public DarcyWeisbach {
        Numbers.requirePositive("length of a pipe", length_m);
        Numbers.requirePositive("bore of a pipe", diameter_m);
        Numbers.requireWithin("roughness of a pipe", roughness_m, 0, ROUGHEST * diameter_m, "m");
        Numbers.requireNotNegative("fittings of a pipe", fittings);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double reynolds = reynolds(flow_m3s);
        if (reynolds == 0) {
            return 0;
        }
        double perFactor = velocityHead() * flow_m3s * Math.abs(flow_m3s);
        return (factor(reynolds) * length_m / diameter_m + fittings) * perFactor;
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double reynolds = reynolds(size);
        if (reynolds == 0) {
            return laminar();
        }
        double twice = 2 * factor(reynolds) + reynolds * FrictionFactor.byReynolds(reynolds, roughness_m / diameter_m);
        return velocityHead() * size * (twice * length_m / diameter_m + 2 * fittings);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double drop = Math.abs(drop_Pa);
        double low = 0;
        double high = drop / laminar();
        double flow = high;
        for (int step = 0; step < INVERSE_STEPS && drop > 0; step++) {
            double off = loss_Pa(flow) - drop;
            low = off < 0 ? flow : low;
            high = off < 0 ? high : flow;
            double next = flow - off / slope(flow);
            next = next > low && next < high ? next : (low + high) / 2;
            boolean found = Math.abs(next - flow) <= INVERSE * next;
            flow = next;
            if (found) {
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
        return Numbered.require(this, at) == 0 ? length_m : at == 1 ? roughness_m : fittings;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new DarcyWeisbach(
                at == 0 ? value : length_m,
                diameter_m,
                at == 1 ? value : roughness_m,
                at == 2 ? value : fittings,
                water);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        double reynolds = reynolds(flow_m3s);
        if (Numbered.require(this, at) == 2 || reynolds == 0) {
            return at == 2 ? velocityHead() * flow_m3s * Math.abs(flow_m3s) : 0;
        }
        double byFactor = velocityHead() * flow_m3s * Math.abs(flow_m3s) / diameter_m;
        double byRoughness = FrictionFactor.byRoughness(reynolds, roughness_m / diameter_m) / diameter_m;
        return byFactor * (at == 0 ? factor(reynolds) : length_m * byRoughness);
    }

    private double factor(double reynolds) {
        return FrictionFactor.of(reynolds, roughness_m / diameter_m);
    }

    private double reynolds(double flow_m3s) {
        return 4 * Math.abs(flow_m3s) / (Math.PI * diameter_m * water.viscosity_m2s());
    }

    /** rho / (2 A^2): the velocity head of one cubic metre a second [Pa s2/m6]. */
    private double velocityHead() {
        double area = Math.PI * diameter_m * diameter_m / 4;
        return water.density_kgm3() / (2 * area * area);
    }

    /** Slope of the laminar loss [Pa s/m3]. */
    private double laminar() {
        double fourth = diameter_m * diameter_m * diameter_m * diameter_m;
        return 128 * water.density_kgm3() * water.viscosity_m2s() * length_m / (Math.PI * fourth);
    }
}
