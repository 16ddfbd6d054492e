package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Says;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Unknowns;
import org.hosewright.evidence.night.Reading;

/** What a night cannot tell: judged for each number by itself, from what the readings alone know of it. */
final class Withholding {
    /** Two unknowns that go together this closely in what the readings leave open are named together. */
    private static final double TOGETHER = 0.6;

    /** A hose and its piping always go together somewhat; this closely only where the lengths are alike. */
    private static final double ONE = 0.95;

    private final Survey survey;
    private final Unknowns unknowns;
    private final Posterior posterior;
    private final Says says;
    private final List<Withheld> withheld = new ArrayList<>();

    private Withholding(Survey survey, Posterior posterior) {
        this.survey = survey;
        this.unknowns = survey.joint().unknowns();
        this.posterior = posterior;
        this.says = new Says(survey.night().units());
    }

    static List<Withheld> of(Survey survey, Posterior posterior) {
        Withholding made = new Withholding(survey, posterior);
        made.taps();
        made.line();
        made.scale();
        made.gauges();
        made.unseen();
        return made.withheld;
    }

    private boolean isTold(int place) {
        return Form.unknown(unknowns, posterior.cloud(), place).isTold(posterior, unknowns);
    }

    private void taps() {
        for (int tap : unknowns.listOf(Role.TAP)) {
            if (unknowns.get(tap).deviation() * posterior.cloud().deviation(tap) > Form.TAP_KNOWN) {
                withheld.add(new TapWords(survey, says).of(unknowns.get(tap).id()));
            }
        }
    }

    private void line() {
        for (Role role : List.of(Role.HOSE, Role.PIPING)) {
            for (int place : unknowns.listOf(role)) {
                if (!isTold(place)) {
                    withheld.add(line(place));
                }
            }
        }
    }

    private Withheld line(int place) {
        Unknown unknown = unknowns.get(place);
        String what = unknown.role() == Role.HOSE ? "loss of " + unknown.id() : "piping loss of " + unknown.id();
        if (Form.unknown(unknowns, posterior.cloud(), place)
                .findTapInTheWay(posterior, unknowns)
                .isPresent()) {
            return new Withheld(
                    what, "it rests on the flow, and the side tap's inside diameter is not known", TapWords.NEEDS);
        }
        if (posterior.fit().joint().lines().stream().noneMatch(line -> line.spare() > 0)) {
            return new Withheld(what, "no needle told the flow beside the pressures", "a flow meter in the line");
        }
        return findTwin(place, what).orElseGet(() -> alone(place, what));
    }

    /** The hose or piping that the readings cannot part it from. */
    private Optional<Withheld> findTwin(int place, String what) {
        Unknown unknown = unknowns.get(place);
        Role other = unknown.role() == Role.HOSE ? Role.PIPING : Role.HOSE;
        Optional<String> partner = findPartner(place, other, ONE);
        if (partner.isPresent()) {
            String why = "the lengths flown are too alike to tell it from "
                    + (other == Role.HOSE ? "" : "the piping of ") + partner.get()
                    + ": only their sum is known, and the pump pressure for the lengths flown stands";
            return Optional.of(new Withheld(what, why, "a reading on a line at least twice as long, or half as long"));
        }
        Optional<String> hose = findPartner(place, Role.HOSE, TOGETHER);
        if (hose.isPresent() && unknown.role() == Role.PIPING) {
            String why = "it is small beside the loss of " + hose.get()
                    + ", and the readings tell how much of the whole is which too loosely";
            return Optional.of(new Withheld(
                    what, why, "a reading on the shortest line that can be laid, at the highest flow it bears"));
        }
        if (hose.isPresent()) {
            String why = "it was always flown with " + hose.get() + " in like shares: only their sum is known";
            return Optional.of(new Withheld(what, why, "a reading with another share of the two"));
        }
        return Optional.empty();
    }

    private Withheld alone(int place, String what) {
        if (findPartner(place, Role.OFFSET, TOGETHER).isPresent()) {
            String why = "the flows are too alike to tell it from the fixed errors of the gauges";
            return new Withheld(
                    what, why, "a reading at a clearly different flow, or the gauges side by side on one fitting");
        }
        if (findPartner(place, Role.NOZZLE, TOGETHER).isPresent()) {
            return new Withheld(what, "it rests on the flow, and nothing fixes the flow's scale", ScaleWords.ANCHOR);
        }
        return new Withheld(
                what, "too few readings, or too much scatter between them", "more readings at lengths far apart");
    }

    private Optional<String> findPartner(int place, Role role, double closely) {
        Cloud alone = posterior.readingsAlone();
        for (int other : unknowns.listOf(role)) {
            double shared = alone.covariance(place, other) / (alone.deviation(place) * alone.deviation(other));
            if (other != place && Math.abs(shared) > closely) {
                return Optional.of(unknowns.get(other).id());
            }
        }
        return Optional.empty();
    }

    private void scale() {
        ScaleWords words = new ScaleWords(survey);
        for (Role role : List.of(Role.NOZZLE, Role.METER)) {
            for (int place : unknowns.listOf(role)) {
                if (!isTold(place)) {
                    withheld.add(words.of(unknowns.get(place)));
                }
            }
        }
    }

    private void gauges() {
        Set<String> open = new LinkedHashSet<>();
        for (Role role : List.of(Role.OFFSET, Role.SPAN)) {
            for (int place : unknowns.listOf(role)) {
                if (!isTold(place)) {
                    open.add(unknowns.get(place).id());
                }
            }
        }
        if (!open.isEmpty()) {
            withheld.add(
                    new Withheld(
                            "fixed error of " + String.join(", ", open),
                            "nothing read tonight fixes it by itself",
                            "the gauges read open to air, or side by side on one fitting; a static reading fixes their difference"));
        }
    }

    /** What no needle of the night could see. */
    private void unseen() {
        Set<String> piping = new LinkedHashSet<>();
        Set<String> automatic = new LinkedHashSet<>();
        for (Reading reading : survey.night().readings()) {
            String discharge = reading.laid().discharge();
            if (!reading.laid().shut() && unknowns.find(Role.PIPING, discharge).isEmpty()) {
                piping.add(discharge);
            }
            if (survey.isBlind(reading)) {
                automatic.add(reading.laid().nozzle());
            }
        }
        piping.forEach(id -> withheld.add(new Withheld(
                "piping loss of " + id,
                "the gauge at the discharge does not see it",
                "the panel gauge, which taps before the piping, read at the same time")));
        automatic.forEach(id -> withheld.add(new Withheld(
                "flow of " + id, "an automatic tip holds its pressure whatever the flow", "a flow meter in the line")));
    }
}
