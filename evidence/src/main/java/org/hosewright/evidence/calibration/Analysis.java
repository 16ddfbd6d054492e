package org.hosewright.evidence.calibration;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fault.Sense;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Survey;

/** The way from a night's readings to its calibration. */
final class Analysis {
    private final Survey survey;

    Analysis(Survey survey) {
        this.survey = survey;
    }

    Calibration calibration() {
        if (!hasOpenReading()) {
            return without(
                    List.of(),
                    "there is no reading with the nozzle open",
                    "readings with water flowing, at two lengths");
        }
        Hearing hearing = Hearing.of(survey);
        Judging judging = new Judging(survey, hearing);
        Optional<String> against = new Sense(survey, hearing).findObjection();
        if (against.isPresent()) {
            return without(
                    judging.listUnused(),
                    against.get(),
                    "the units, the gauges' places, the nozzle and the lengths checked, then the night flown again");
        }
        return whole(hearing, judging.list());
    }

    private Calibration whole(Hearing hearing, List<Judged> judged) {
        Weighing weighing = new Weighing(survey, hearing);
        Posterior posterior = weighing.doubted(hearing.active(), Posterior.of(hearing.fit()));
        LeavingOut leaving = LeavingOut.of(survey, hearing, weighing);
        Belief belief = Belief.of(survey, posterior).with(Advice.findStop(survey, posterior, hearing.active()));
        return new Calibration(
                Terms.of(survey, belief),
                Residual.of(hearing.fit()),
                judged,
                Withholding.of(survey, posterior),
                Advice.find(survey, posterior, hearing.active()),
                survey.assumed(),
                belief,
                leaving.ifUsed(),
                leaving);
    }

    private boolean hasOpenReading() {
        return survey.night().readings().stream()
                .anyMatch(reading -> !reading.laid().shut());
    }

    private Calibration without(List<Judged> judged, String why, String needs) {
        Terms terms = new Terms(Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
        return new Calibration(
                terms,
                Optional.empty(),
                judged,
                List.of(new Withheld("every number of this night", why, needs)),
                Optional.empty(),
                survey.assumed(),
                Belief.none(survey),
                Map.of(),
                LeavingOut.none(survey));
    }
}
