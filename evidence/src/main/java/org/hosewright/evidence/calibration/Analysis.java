package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fault.Sense;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;

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
        List<Judged> judged = new Judging(survey, hearing).list();
        Optional<String> against = new Sense(survey, hearing).findObjection();
        if (against.isPresent()) {
            return without(
                    judged,
                    against.get(),
                    "the units, the gauges' places, the nozzle and the lengths checked, then the night flown again");
        }
        return whole(hearing, judged);
    }

    private Calibration whole(Hearing hearing, List<Judged> judged) {
        Posterior posterior = Posterior.of(hearing.fit());
        Belief belief = Belief.of(survey, posterior).with(Advice.findStop(survey, posterior, hearing.active()));
        return new Calibration(
                terms(belief),
                Residual.of(hearing.fit()),
                judged,
                Withholding.of(survey, posterior),
                Advice.find(survey, posterior, hearing.active()),
                survey.assumed(),
                belief,
                ifUsed(hearing));
    }

    private boolean hasOpenReading() {
        return survey.night().readings().stream()
                .anyMatch(reading -> !reading.laid().shut());
    }

    private Calibration without(List<Judged> judged, String why, String needs) {
        List<Judged> none = judged.stream().map(Analysis::unused).toList();
        Terms terms = new Terms(Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
        return new Calibration(
                terms,
                Optional.empty(),
                none,
                List.of(new Withheld("every number of this night", why, needs)),
                Optional.empty(),
                survey.assumed(),
                Belief.none(survey),
                Map.of());
    }

    private static Judged unused(Judged judged) {
        Finding finding = judged.finding();
        boolean none = finding.kind() == FindingKind.NONE;
        Finding said = none
                ? new Finding(FindingKind.NONE, List.of(), "not used, since the night as a whole makes no sense", "")
                : finding;
        return new Judged(judged.reading(), judged.predictedPump(), judged.excess(), false, said);
    }

    private Terms terms(Belief belief) {
        return new Terms(
                told(Role.HOSE, belief::hose),
                told(Role.PIPING, belief::discharge),
                told(Role.NOZZLE, belief::tipFactor),
                told(Role.METER, belief::meter),
                told(Role.OFFSET, belief::gauge));
    }

    private <Q extends Quantity> Map<String, Known<Q>> told(Role role, Function<String, Optional<Known<Q>>> answer) {
        Map<String, Known<Q>> told = new LinkedHashMap<>();
        for (int place : survey.joint().unknowns().listOf(role)) {
            Unknown unknown = survey.joint().unknowns().get(place);
            if (!survey.isUnnamed(unknown)) {
                answer.apply(unknown.id()).ifPresent(known -> told.put(unknown.id(), known));
            }
        }
        return told;
    }

    private Map<String, Belief> ifUsed(Hearing hearing) {
        Map<String, Belief> beliefs = new LinkedHashMap<>();
        for (int place = 0; place < survey.night().readings().size(); place++) {
            if (!hearing.active().contains(place)) {
                Reading reading = survey.night().readings().get(place);
                List<Integer> more = new ArrayList<>(hearing.active());
                more.add(place);
                more.sort(null);
                Joint joint = survey.joint().only(more);
                Fit fit = Fit.of(
                        joint, joint.start(hearing.fit().minimum().point().unknowns()));
                beliefs.put(reading.id(), Belief.of(survey, Posterior.of(fit)));
            }
        }
        return beliefs;
    }
}
