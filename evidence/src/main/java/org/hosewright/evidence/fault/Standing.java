package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;

/** The readings that count for the moment, weighed together, and what can be asked about some of them beside the others.
 *
 * @param survey the night
 * @param active places of the readings that count, in order
 * @param fit their fit
 */
record Standing(Survey survey, List<Integer> active, Fit fit) {
    /** A linearised misfit below this is not worth a closer look. */
    private static final double CLOSER_LOOK = 5;

    Standing {
        active = List.copyOf(active);
    }

    /** Weighs the readings, beginning near some unknowns. */
    static Standing of(Survey survey, List<Integer> active, double[] near) {
        Joint joint = survey.joint().only(active);
        return new Standing(survey, active, Fit.of(joint, joint.start(near)));
    }

    /** The same with other readings. */
    Standing with(List<Integer> other) {
        return of(survey, other, fit.minimum().point().unknowns());
    }

    /** How much of the misfit some readings cause, by the slopes, beside the scatter that would be left. */
    double misfit(List<Integer> group) {
        List<Integer> blocks =
                group.stream().map(place -> active.indexOf(place) + 1).toList();
        double excess = fit.minimum().excess(blocks);
        double left = Math.max(0.1, 1 - excess / fit.freedom().pump());
        return excess / left;
    }

    boolean deservesLook(List<Integer> group) {
        return misfit(group) > CLOSER_LOOK;
    }

    /** What speaks against some readings beside the others. */
    Suspicion ask(List<Integer> group) {
        return ask(group, List.of());
    }

    /** The same with some more left out. */
    Suspicion ask(List<Integer> group, List<Integer> hidden) {
        List<Integer> beside = new ArrayList<>(active);
        beside.removeAll(hidden);
        Inquiry inquiry = new Inquiry(survey.joint(), beside, group, fit);
        Possible possible =
                group.size() > 1 ? Possible.together(survey, group.get(0)) : Possible.alone(survey, group.get(0));
        return new Suspicion(group, inquiry.innocent(), inquiry.guilty(possible));
    }

    /** Log-likelihood of some readings all being right beside the others. */
    double innocent(List<Integer> group) {
        return new Inquiry(survey.joint(), active, group, fit).innocent();
    }

    boolean isFounded(Suspicion suspicion) {
        return suspicion.isFounded(
                suspicion.group().stream().map(survey.night().readings()::get).anyMatch(Reading::doubt));
    }
}
