package org.hosewright.evidence.calibration;

import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.TipPrior;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;

/** The hydraulics of one line at the middle of a belief, with every slope: loss = X q^2, q^2 = F T, F = (f K)^2. */
final class CourseForms {
    private final Tip tip;
    private final OptionalInt factor;
    private final double factorDeviation;
    private final double head_Pa;
    private final double resistance;
    private final double[] resistanceSlopes;
    private final double conductance;

    private CourseForms(Tip tip, OptionalInt factor, TipPrior prior, Length rise, Sum resistance) {
        double f = factor.isPresent() ? resistance.value(factor.getAsInt()) : prior.centre();
        this.tip = tip.flowing(f);
        this.factor = factor;
        this.factorDeviation =
                factor.isPresent() ? resistance.unknown(factor.getAsInt()).deviation() : prior.deviation();
        this.head_Pa = Constants.WATER_PA_PER_M * rise.metres();
        this.resistance = resistance.total();
        this.resistanceSlopes = resistance.slopes();
        this.conductance = f * f * prior.rate() * prior.rate();
    }

    /** The forms of a line at the middle of a belief; absent where it has hose, piping or a tip that the night did not meet.
     *
     * <p>A loss whose logarithm is uncertain is on average larger than in the middle; that is reckoned in, together with what
     * the tip's factor makes of it.
     *
     * @param piping whether the loss of the piping counts
     */
    static Optional<CourseForms> find(Survey survey, Cloud cloud, Course line, boolean piping) {
        return find(survey, line, piping, new Sum(survey.joint().unknowns(), cloud.mean(), Optional.of(cloud)));
    }

    /** The same at a point, with no regard to how uncertain it is. */
    static Optional<CourseForms> findAt(Survey survey, double[] point, Course line, boolean piping) {
        return find(survey, line, piping, new Sum(survey.joint().unknowns(), point, Optional.empty()));
    }

    private static Optional<CourseForms> find(Survey survey, Course line, boolean piping, Sum resistance) {
        Nozzle nozzle = survey.night().gear().nozzles().get(line.nozzle());
        if (nozzle == null || TipPrior.isBlind(nozzle.rated(line.setting()))) {
            return Optional.empty();
        }
        OptionalInt factor = survey.joint().unknowns().find(Role.NOZZLE, nozzle.tipName(line.setting()));
        boolean known = true;
        for (Stretch part : line.hose()) {
            known &= resistance.add(Role.HOSE, part.hose(), part.length().metres(), factor);
        }
        known &= !piping || resistance.add(Role.PIPING, line.discharge(), 1, factor);
        Tip tip = nozzle.rated(line.setting());
        TipPrior prior = TipPrior.of(tip, survey.night().gear().gauged().contains(line.nozzle()));
        return known ? Optional.of(new CourseForms(tip, factor, prior, line.rise(), resistance)) : Optional.empty();
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
}
