package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fault.Suspicion;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Survey;

/** Weighs some of a night's readings anew.
 *
 * <p>What was set aside may have been right after all. That stays in the belief with the odds that it has: an interval that took
 * the setting aside for certain would be too narrow.
 */
final class Weighing {
    /** Odds below which a setting aside is as good as certain. */
    private static final double CERTAIN = 0.005;

    private final Survey survey;
    private final List<Suspicion> aside;
    private final double[] near;

    Weighing(Survey survey, Hearing hearing) {
        this.survey = survey;
        this.aside = hearing.listSetAside();
        this.near = hearing.fit().minimum().point().unknowns();
    }

    /** The belief from some readings, with the odds of what was set aside in it. */
    Posterior of(List<Integer> places) {
        return doubted(places, only(places));
    }

    /** The same, the readings' own belief being known. */
    Posterior doubted(List<Integer> places, Posterior alone) {
        List<Posterior> others = new ArrayList<>();
        List<Double> odds = new ArrayList<>();
        for (Suspicion suspicion : aside) {
            if (suspicion.oddsOfInnocence() > CERTAIN) {
                others.add(only(with(places, suspicion.group())));
                odds.add(suspicion.oddsOfInnocence());
            }
        }
        return others.isEmpty() ? alone : alone.orElse(others, odds);
    }

    /** The belief from some readings, taken for all there are. */
    Posterior only(List<Integer> places) {
        Joint joint = survey.joint().only(places);
        return Posterior.of(Fit.of(joint, joint.start(near)));
    }

    private static List<Integer> with(List<Integer> places, List<Integer> more) {
        List<Integer> all = new ArrayList<>(places);
        more.stream().filter(place -> !all.contains(place)).forEach(all::add);
        all.sort(null);
        return all;
    }
}
