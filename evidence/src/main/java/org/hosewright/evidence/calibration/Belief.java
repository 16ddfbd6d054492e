package org.hosewright.evidence.calibration;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknowns;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.Ratio;

/** What a night lets one believe about the line: every answer with its standard error, absent where the night cannot tell it.
 *
 * <p>A standard error here is such that 1.96 of them make the 95 % half-width, few readings included.
 */
public final class Belief {
    private final Survey survey;
    private final Unknowns unknowns;
    private final Optional<Posterior> posterior;
    private final Optional<String> stop;

    private Belief(Survey survey, Optional<Posterior> posterior, Optional<String> stop) {
        this.survey = survey;
        this.stop = stop;
        this.unknowns = survey.joint().unknowns();
        this.posterior = posterior;
    }

    static Belief of(Survey survey, Posterior posterior) {
        return new Belief(survey, Optional.of(posterior), Optional.empty());
    }

    /** The same with what two more readings would change. */
    Belief with(Optional<String> newStop) {
        return new Belief(survey, posterior, newStop);
    }

    /** That two more readings of any kind would change nothing that one decides, as a sentence; absent while they would. */
    public Optional<String> stop() {
        return stop;
    }

    /** The belief of a night that tells nothing. */
    static Belief none(Survey survey) {
        return new Belief(survey, Optional.empty(), Optional.empty());
    }

    /** True pump pressure, at a gauge before the piping, that puts a true total pressure on the tip. */
    public Optional<Known<Pressure>> neededPump(Course line, Pressure tip) {
        return told(line, true, forms -> Optional.of(forms.needed(tip.pascals())), Pressure::new);
    }

    /** The same at a gauge at the discharge, which does not see the loss of the piping. */
    public Optional<Known<Pressure>> neededAtDischarge(Course line, Pressure tip) {
        return told(line, false, forms -> Optional.of(forms.needed(tip.pascals())), Pressure::new);
    }

    /** Flow that a true pump pressure, at a gauge before the piping, delivers. */
    public Optional<Known<Flow>> delivered(Course line, Pressure pump) {
        return told(line, true, forms -> forms.flow(pump.pascals()), Flow::new);
    }

    /** Total pressure at the tip that a true pump pressure leaves. */
    public Optional<Known<Pressure>> tip(Course line, Pressure pump) {
        return told(line, true, forms -> forms.tip(pump.pascals()), Pressure::new);
    }

    /** Reaction on the crew at a true pump pressure. */
    public Optional<Known<Force>> reaction(Course line, Pressure pump) {
        return told(line, true, forms -> forms.reaction(pump.pascals()), Force::new);
    }

    /** Loss of a hose. */
    public Optional<Known<HoseLoss>> hose(String id) {
        return told(Role.HOSE, id, HoseLoss::new);
    }

    /** Loss of a discharge's piping. */
    public Optional<Known<PointLoss>> discharge(String id) {
        return told(Role.PIPING, id, PointLoss::new);
    }

    /** Flow factor of a tip, by its nozzle's id with the setting where there are several, even where the night alone does not tell it: the one that this night's hose losses go with. */
    public Optional<Known<Ratio>> nozzle(String tip) {
        OptionalInt place = tipPlace(tip);
        return place.isEmpty()
                ? Optional.empty()
                : posterior.map(found -> known(value(found, place.getAsInt()), found, Ratio::new));
    }

    /** Flow factor of a tip that the night tells, by the name of the tip's unknown. */
    public Optional<Known<Ratio>> tipFactor(String tip) {
        return told(Role.NOZZLE, tip, Ratio::new);
    }

    /** Reading of a meter over the true flow. */
    public Optional<Known<Ratio>> meter(String id) {
        return told(Role.METER, id, Ratio::new);
    }

    /** Reading of a gauge less the true pressure; only for a gauge whose fixed error does not grow with the reading. */
    public Optional<Known<Pressure>> gauge(String id) {
        return told(Role.OFFSET, id, Pressure::new);
    }

    /** Correlation of the errors of two numbers, between -1 and 1; 0 where the night has not both.
     *
     * @param one id of a hose, a discharge or a nozzle
     * @param other id of another
     */
    public double correlation(String one, String other) {
        OptionalInt first = place(one);
        OptionalInt second = place(other);
        if (posterior.isEmpty() || first.isEmpty() || second.isEmpty()) {
            return 0;
        }
        var cloud = posterior.get().cloud();
        int i = first.getAsInt();
        int j = second.getAsInt();
        return cloud.covariance(i, j) / (cloud.deviation(i) * cloud.deviation(j));
    }

    private OptionalInt place(String id) {
        OptionalInt hose = unknowns.find(Role.HOSE, id);
        OptionalInt line = hose.isPresent() ? hose : unknowns.find(Role.PIPING, id);
        return line.isPresent() ? line : tipPlace(id);
    }

    /** The place of a tip's factor. */
    private OptionalInt tipPlace(String tip) {
        return unknowns.find(Role.NOZZLE, tip);
    }

    /** An answer about a line: told where it is determined at the most likely point, given at the middle of the belief. */
    private <Q extends Quantity> Optional<Known<Q>> told(
            Course line, boolean piping, Function<CourseForms, Optional<Form>> question, DoubleFunction<Q> make) {
        if (posterior.isEmpty()) {
            return Optional.empty();
        }
        Posterior found = posterior.get();
        boolean told = CourseForms.findAt(survey, found.readingsAlone().mean(), line, piping)
                .flatMap(question)
                .filter(form -> form.isTold(found, unknowns))
                .isPresent();
        return told
                ? CourseForms.find(survey, found.cloud(), line, piping)
                        .flatMap(question)
                        .map(form -> known(form, found, make))
                : Optional.empty();
    }

    private <Q extends Quantity> Optional<Known<Q>> told(Role role, String id, DoubleFunction<Q> make) {
        OptionalInt place = unknowns.find(role, id);
        return place.isEmpty()
                ? Optional.empty()
                : posterior.map(found -> value(found, place.getAsInt())).flatMap(form -> told(form, make));
    }

    private <Q extends Quantity> Optional<Known<Q>> told(Form form, DoubleFunction<Q> make) {
        return posterior.filter(found -> form.isTold(found, unknowns)).map(found -> known(form, found, make));
    }

    private static <Q extends Quantity> Known<Q> known(Form form, Posterior posterior, DoubleFunction<Q> make) {
        return Known.of(make.apply(form.value()), make.apply(form.deviation(posterior)));
    }

    /** An unknown's value; where its logarithm is normal, the mean is a little above the middle. */
    private Form value(Posterior found, int place) {
        return Form.unknown(unknowns, found.cloud(), place);
    }
}
