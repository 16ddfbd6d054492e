package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.fault.Drift;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fault.Inquiry;
import org.hosewright.evidence.fault.Inquiry.Foretold;
import org.hosewright.evidence.fault.Suspicion;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** The verdict on each reading of a night. */
final class Judging {
    /** From so many readings on their own scatter counts for a pair of them; below, a bad pair would hide in it. */
    private static final int ENOUGH = 6;

    private final Survey survey;
    private final Hearing hearing;
    private final Pairs pairs;
    private final Optional<Drift> drift;

    Judging(Survey survey, Hearing hearing) {
        this.survey = survey;
        this.hearing = hearing;
        this.drift = hearing.findDrift();
        boolean enough = hearing.active().size() >= ENOUGH;
        this.pairs = Pairs.of(survey, enough ? hearing.fit().joint().scatter() : Scatter.EXPECTED);
    }

    List<Judged> list() {
        List<Judged> judged = new ArrayList<>();
        for (int place = 0; place < survey.night().readings().size(); place++) {
            judged.add(judge(place));
        }
        return judged;
    }

    /** Where no hose could give the readings, what one of them should have been means nothing; two that contradict each other
     * by themselves, and no others, are called out all the same.
     */
    List<Judged> listUnused() {
        List<Judged> judged = new ArrayList<>();
        for (int place = 0; place < survey.night().readings().size(); place++) {
            Reading reading = survey.night().readings().get(place);
            Finding none =
                    new Finding(FindingKind.NONE, List.of(), "not used, since the night as a whole makes no sense", "");
            Findings findings = new Findings(survey, reading, hearing.inquire(place));
            Finding said = pairs.findLone(place)
                    .map(pair -> findings.paired(none, pair.says(), false))
                    .orElse(none);
            judged.add(new Judged(reading.id(), Known.of(reading.shown().pump()), new Pressure(0), false, said));
        }
        return judged;
    }

    private Judged judge(int place) {
        Reading reading = survey.night().readings().get(place);
        double read_Pa = reading.shown().pump().pascals();
        Inquiry inquiry = hearing.inquire(place);
        boolean used = hearing.active().contains(place);
        Finding finding = finding(place, inquiry);
        if (survey.joint().lines().get(place).spare() < 1) {
            Known<Pressure> same = Known.of(reading.shown().pump());
            return new Judged(reading.id(), same, new Pressure(0), used, finding);
        }
        Foretold pump = inquiry.foretell(Channel.PUMP);
        Known<Pressure> predicted = Known.of(new Pressure(pump.value()), new Pressure(pump.deviation()));
        return new Judged(reading.id(), predicted, new Pressure(read_Pa - pump.value()), used, finding);
    }

    Finding finding(int place) {
        return finding(place, hearing.inquire(place));
    }

    private Finding finding(int place, Inquiry inquiry) {
        Reading reading = survey.night().readings().get(place);
        Findings findings = new Findings(survey, reading, inquiry);
        Optional<Suspicion> suspicion = hearing.findSuspicion(place);
        Optional<Ruling> ruling = Optional.ofNullable(survey.night().rulings().get(reading.id()));
        Finding finding = suspicion.map(findings::of).orElseGet(findings::agreeing);
        Optional<Pairs.Pair> pair = pairs.find(place);
        if (pair.isPresent()) {
            boolean other = hearing.findSuspicion(pair.get().other(place)).isPresent();
            finding = findings.paired(finding, pair.get().says(), other);
        }
        if (drift.isPresent() && drift.get().last() == place) {
            finding = findings.drifting(finding, drift.get());
        }
        return ruling.isPresent() ? findings.ruled(finding, ruling.get()) : finding;
    }
}
