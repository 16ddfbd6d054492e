package org.hosewright.evidence.calibration;

import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.TipPrior;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Unknowns;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Constants;

/** The hydraulics of one line at the middle of a belief, with every slope: loss = X q^2, q^2 = F T, F = (f K)^2. */
final class CourseForms {
    private final Tip tip;
    private final OptionalInt factor;
    private final double factorDeviation;
    private final double head_Pa;
    private final double resistance;
    private final double[] resistanceSlopes;
    private final double conductance;

    private CourseForms(
            Unknowns unknowns, Tip tip, OptionalInt factor, TipPrior prior, double f, double head_Pa, Sum resistance) {
        this.tip = tip.flowing(f);
        this.factor = factor;
        this.factorDeviation =
                factor.isPresent() ? unknowns.get(factor.getAsInt()).deviation() : prior.deviation();
        this.head_Pa = head_Pa;
        this.resistance = resistance.value;
        this.resistanceSlopes = resistance.slopes;
        this.conductance = f * f * prior.rate() * prior.rate();
    }

    /** The forms of a line; absent where it has hose, piping or a tip that the night did not meet.
     *
     * @param piping whether the loss of the piping counts
     */
    static Optional<CourseForms> find(Survey survey, Cloud cloud, Course line, boolean piping) {
        Unknowns unknowns = survey.joint().unknowns();
        Nozzle nozzle = survey.night().gear().nozzles().get(line.nozzle());
        if (nozzle == null || TipPrior.isBlind(nozzle.rated(line.setting()))) {
            return Optional.empty();
        }
        Sum resistance = new Sum(unknowns.size());
        for (Stretch part : line.hose()) {
            if (!resistance.add(
                    unknowns, cloud, Role.HOSE, part.hose(), part.length().metres())) {
                return Optional.empty();
            }
        }
        if (piping && !resistance.add(unknowns, cloud, Role.PIPING, line.discharge(), 1)) {
            return Optional.empty();
        }
        Tip tip = nozzle.rated(line.setting());
        TipPrior prior = TipPrior.of(tip, survey.night().gear().gauged().contains(line.nozzle()));
        OptionalInt factor = unknowns.find(Role.NOZZLE, Survey.tipId(nozzle, line.setting()));
        double f = factor.isPresent() ? value(unknowns, cloud, factor.getAsInt()) : prior.centre();
        double head_Pa = Constants.WATER_PA_PER_M * line.rise().metres();
        return Optional.of(new CourseForms(unknowns, tip, factor, prior, f, head_Pa, resistance));
    }

    private static double value(Unknowns unknowns, Cloud cloud, int place) {
        return unknowns.get(place).value(cloud.mean(place));
    }

    /** Pump pressure for a pressure at the tip. */
    Form needed(double tip_Pa) {
        double square = conductance * tip_Pa;
        double loss_Pa = resistance * square;
        return form(tip_Pa + loss_Pa + head_Pa, square, 2 * loss_Pa);
    }

    /** Pressure at the tip that a pump pressure leaves; absent where the rise takes it all. */
    Optional<Form> tip(double pump_Pa) {
        double left_Pa = pump_Pa - head_Pa;
        if (!(left_Pa > 0)) {
            return Optional.empty();
        }
        double divisor = 1 + resistance * conductance;
        double tip_Pa = left_Pa / divisor;
        double byResistance = -tip_Pa * conductance / divisor;
        return Optional.of(form(tip_Pa, byResistance, 2 * resistance * byResistance));
    }

    /** Flow at a pump pressure. */
    Optional<Form> flow(double pump_Pa) {
        return tip(pump_Pa).map(left -> {
            double flow_m3s = Math.sqrt(conductance * left.value());
            double divisor = 1 + resistance * conductance;
            return form(flow_m3s, -flow_m3s * conductance / (2 * divisor), flow_m3s / divisor);
        });
    }

    /** Reaction at a pump pressure: of a smooth bore as its flow times the root of pressure too, as of any stream. */
    Optional<Form> reaction(double pump_Pa) {
        return tip(pump_Pa).map(left -> {
            double flow_m3s = Math.sqrt(conductance * left.value());
            double force_N = tip.reaction_N(left.value(), flow_m3s);
            double divisor = 1 + resistance * conductance;
            double byFactor = 1 - 2 * resistance * conductance / divisor;
            return form(force_N, -force_N * conductance / divisor, force_N * byFactor);
        });
    }

    private Form form(double value, double byResistance, double byLogFactor) {
        double[] slopes = new double[resistanceSlopes.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = byResistance * resistanceSlopes[i];
        }
        double own = byLogFactor * factorDeviation;
        if (factor.isPresent()) {
            slopes[factor.getAsInt()] += own;
            return new Form(value, slopes, 0);
        }
        return new Form(value, slopes, own * own);
    }

    /** A sum of unknowns with its slopes. */
    private static final class Sum {
        private double value;
        private final double[] slopes;

        Sum(int unknowns) {
            slopes = new double[unknowns];
        }

        boolean add(Unknowns unknowns, Cloud cloud, Role role, String id, double weight) {
            OptionalInt place = unknowns.find(role, id);
            if (place.isEmpty()) {
                return false;
            }
            Unknown unknown = unknowns.get(place.getAsInt());
            double u = cloud.mean(place.getAsInt());
            value += weight * unknown.value(u);
            slopes[place.getAsInt()] += weight * unknown.slope(u);
            return true;
        }
    }
}
