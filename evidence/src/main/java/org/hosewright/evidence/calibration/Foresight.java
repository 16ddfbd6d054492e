package org.hosewright.evidence.calibration;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Unknowns;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a night would tell whose readings are foretold and not taken yet, if its instruments read as well as stated. */
public final class Foresight {
    private final Survey survey;
    private final Posterior posterior;
    private final double[] point;

    private Foresight(Survey survey) {
        this.survey = survey;
        this.point = point(survey);
        this.posterior = Posterior.foreseen(survey.joint(), point);
    }

    /** The foresight of a night of foretold readings.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a reading that cannot be
     */
    public static Foresight of(Night foretold) {
        return new Foresight(Survey.of(foretold));
    }

    /** The priors' centres, the piping as its discharge has it. */
    private static double[] point(Survey survey) {
        Unknowns unknowns = survey.joint().unknowns();
        Map<String, Discharge> discharges = survey.night().gear().discharges();
        double[] u = new double[unknowns.size()];
        for (int place : unknowns.listOf(Role.PIPING)) {
            Unknown piping = unknowns.get(place);
            Optional<Known<PointLoss>> loss =
                    Optional.ofNullable(discharges.get(piping.id())).flatMap(Discharge::loss);
            u[place] = loss.map(known -> known.value().k() / piping.deviation()).orElse(0.0);
        }
        return u;
    }

    /** The answers with the standard errors that they would have. */
    public Belief belief() {
        return Belief.of(survey, posterior);
    }

    /** What the night could not tell, and what would settle it. */
    public List<Withheld> listWithheld() {
        return Withholding.of(survey, posterior);
    }

    /** What it takes as given. */
    public List<String> listAssumed() {
        return survey.assumed();
    }

    public int unknowns() {
        return survey.joint().unknowns().size();
    }

    /** The covariance of the unknowns after the night, in their prior standard deviations. */
    public double[][] covariance() {
        return posterior.fit().minimum().information().covariance();
    }

    /** What is believed before any reading, as rows of derivatives by unknown and a residual. */
    public double[][] beforehand() {
        return posterior.fit().minimum().rows(0);
    }

    /** What a reading adds, as such rows.
     *
     * @param place its place in the night
     */
    public double[][] told(int place) {
        return posterior.fit().minimum().rows(place + 1);
    }

    /** How the pump pressure for a tip pressure hangs on the unknowns [Pa]. */
    public Optional<double[]> findNeeded(Course line, Pressure tip) {
        return CourseForms.findAt(survey, point, line, isPipingMet(line))
                .map(forms -> forms.needed(tip.pascals()).slopes());
    }

    /** How the flow at the pump pressure for a tip pressure hangs on the unknowns [m3/s]. */
    public Optional<double[]> findDelivered(Course line, Pressure tip) {
        return CourseForms.findAt(survey, point, line, isPipingMet(line))
                .flatMap(forms -> forms.flow(forms.needed(tip.pascals()).value()))
                .map(Form::slopes);
    }

    private boolean isPipingMet(Course line) {
        return survey.joint().unknowns().find(Role.PIPING, line.discharge()).isPresent();
    }

    /** How a hose's loss hangs on the unknowns [Pa s2/m7]. */
    public Optional<double[]> findHose(String id) {
        return find(Role.HOSE, id);
    }

    /** How a discharge's piping hangs on the unknowns [Pa s2/m6]. */
    public Optional<double[]> findPiping(String id) {
        return find(Role.PIPING, id);
    }

    /** How a tip's flow factor hangs on the unknowns. */
    public Optional<double[]> findTip(String name) {
        return find(Role.NOZZLE, name);
    }

    /** How a meter's factor hangs on the unknowns. */
    public Optional<double[]> findMeter(String id) {
        return find(Role.METER, id);
    }

    /** How a gauge's offset hangs on the unknowns [Pa]; absent for a gauge whose error grows with the reading. */
    public Optional<double[]> findGauge(String id) {
        return find(Role.OFFSET, id);
    }

    private Optional<double[]> find(Role role, String id) {
        Unknowns unknowns = survey.joint().unknowns();
        OptionalInt place = unknowns.find(role, id);
        if (place.isEmpty()) {
            return Optional.empty();
        }
        double[] form = new double[unknowns.size()];
        form[place.getAsInt()] = unknowns.get(place.getAsInt()).slope(point[place.getAsInt()]);
        return Optional.of(form);
    }
}
