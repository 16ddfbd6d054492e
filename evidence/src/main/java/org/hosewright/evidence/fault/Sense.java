package org.hosewright.evidence.fault;

import java.util.Optional;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;

/** The question whether a night as a whole makes sense; where it does not, it gives no numbers.
 *
 * @param survey the night
 * @param hearing what was set aside, and the fit of the rest
 */
public record Sense(Survey survey, Hearing hearing) {
    /** Scatter this many times what the instruments make one expect is not scatter any more. */
    private static final double MOST_SCATTER = 6;

    /** An unknown so many prior standard deviations from its centre is not what its name says. */
    private static final double MOST_DEVIATIONS = 4;

    /** What speaks against the night as a whole, as a sentence. */
    public Optional<String> findObjection() {
        if (hearing.isHopeless()) {
            return Optional.of(
                    "the readings contradict each other as a whole: no hose, piping and nozzle could give them");
        }
        Fit fit = hearing.fit();
        Scatter scatter = fit.joint().scatter();
        if (Math.max(scatter.pump(), Math.max(scatter.tip(), scatter.flow())) > MOST_SCATTER) {
            return Optional.of("the readings scatter more than six times as much as their instruments should");
        }
        for (int place = 0; place < survey.joint().unknowns().size(); place++) {
            double u = fit.minimum().point().unknown(place);
            if (Math.abs(u) > MOST_DEVIATIONS) {
                return Optional.of(objection(survey.joint().unknowns().get(place), u));
            }
        }
        return Optional.empty();
    }

    private static String objection(Unknown unknown, double u) {
        String much = u > 0 ? "more" : "less";
        return switch (unknown.role()) {
            case HOSE ->
                "taken together the readings want far " + much + " loss of " + unknown.id() + " than any such hose has";
            case PIPING ->
                u > 0
                        ? "taken together the readings want far more loss in the piping of " + unknown.id()
                                + " than piping has"
                        : "the lines lose less than their hose alone must: the piping of " + unknown.id()
                                + " cannot give pressure";
            case NOZZLE ->
                "taken together the readings want far " + much + " flow from " + unknown.id()
                        + " than its size or rating allows: it is another tip, plugged, or its pressure is misread";
            case METER, OFFSET, SPAN ->
                unknown.id() + " would have to read far " + much + " than the truth, beyond its accuracy";
            case TAP, FAULT -> "the tip gauge would have to tap where it cannot";
        };
    }
}
