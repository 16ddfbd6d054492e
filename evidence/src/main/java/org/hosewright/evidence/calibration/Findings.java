package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fault.Cause;
import org.hosewright.evidence.fault.Drift;
import org.hosewright.evidence.fault.Inquiry;
import org.hosewright.evidence.fault.Inquiry.Foretold;
import org.hosewright.evidence.fault.Suspicion;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Says;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;

/** The sentences about one reading. */
final class Findings {
    /** A pump pressure foretold no better than this share of itself judges nothing. */
    private static final double VAGUE = 0.1;

    private final Says says;
    private final Reading reading;
    private final Line line;
    private final Inquiry inquiry;

    Findings(Survey survey, Reading reading, Inquiry inquiry) {
        this.says = new Says(survey.night().units());
        this.reading = reading;
        this.line = survey.joint().lines().get(survey.night().readings().indexOf(reading));
        this.inquiry = inquiry;
    }

    /** The finding of a founded suspicion. */
    Finding of(Suspicion suspicion) {
        List<FindingKind> open = new ArrayList<>();
        suspicion.listOpen().forEach(cause -> open.add(kind(cause)));
        if (!suspicion.isTold()) {
            return new Finding(FindingKind.CANNOT_TELL, open, pumpExpected() + "; " + cannotTell(open), lookAt(open));
        }
        Cause cause = suspicion.likeliest();
        FindingKind kind = kind(cause);
        open.remove(kind);
        return new Finding(kind, open, expected(cause) + ": " + kindText(kind), check(kind));
    }

    /** The finding of a reading that nothing speaks against. */
    Finding agreeing() {
        if (line.spare() < 1) {
            return none("nothing read beside it that could contradict it");
        }
        Foretold pump = inquiry.foretell(Channel.PUMP);
        boolean vague = pump.deviation() > VAGUE * pump.value();
        return none(vague ? "too little else was read to say whether it is right" : "goes with the other readings");
    }

    private static Finding none(String says) {
        return new Finding(FindingKind.NONE, List.of(), says, "");
    }

    /** A finding with a pair of readings that cannot both be steady.
     *
     * @param otherSuspect whether the night as a whole speaks against the other one
     */
    Finding paired(Finding finding, String pair, boolean otherSuspect) {
        if (finding.kind() != FindingKind.NONE) {
            return new Finding(finding.kind(), finding.also(), pair + "; " + finding.says(), finding.check());
        }
        String again = "read both again, one after the other, once the needles stand still";
        return otherSuspect
                ? new Finding(FindingKind.NONE, List.of(), pair + "; the other readings go with this one", again)
                : new Finding(FindingKind.CANNOT_TELL, List.of(), pair, again);
    }

    /** A finding with an instrument that went off through the night, said at the last reading taken with it. */
    Finding drifting(Finding finding, Drift drift) {
        FindingKind kind = kind(drift.channel());
        String much = drift.channel() == Channel.FLOW
                ? Says.percent(Math.exp(Math.abs(drift.change())) - 1)
                : says.pressure(Math.abs(drift.change()));
        String text = drift.instrument() + " drifts: by this reading it shows about " + much
                + (drift.change() > 0 ? " more" : " less") + " than at the first, beside the other needles";
        return finding.kind() == FindingKind.NONE
                ? new Finding(
                        kind,
                        drift.also().stream().map(Findings::kind).toList(),
                        text,
                        check(kind) + "; take the first reading of the night again")
                : new Finding(finding.kind(), finding.also(), finding.says() + "; " + text, finding.check());
    }

    /** A finding with what a person ruled. */
    Finding ruled(Finding finding, Ruling ruling) {
        String verdict = ruling.use() ? "used by ruling: " : "set aside by ruling: ";
        return new Finding(
                finding.kind(), finding.also(), finding.says() + "; " + verdict + ruling.reason(), finding.check());
    }

    private String expected(Cause cause) {
        return switch (cause) {
            case FLOW_METER -> flowExpected();
            case TIP_GAUGE -> tipExpected();
            case NOZZLE -> line.has(Channel.FLOW) ? flowExpected() : pumpExpected();
            case EXTRA_LOSS, PUMP_GAUGE, LENGTH, RISE -> pumpExpected();
        };
    }

    private String pumpExpected() {
        double expected = inquiry.foretell(Channel.PUMP).value();
        return "expected " + says.pressure(expected) + ", read "
                + says.pressure(reading.shown().pump().pascals());
    }

    private String tipExpected() {
        double expected = inquiry.foretell(Channel.TIP).value();
        return "expected " + says.pressure(expected) + " at the tip, read "
                + says.pressure(reading.shown().tip().orElseThrow().pascals());
    }

    private String flowExpected() {
        double expected = Math.exp(inquiry.foretell(Channel.FLOW).value());
        return "expected " + says.flow(expected) + " on the meter, read "
                + says.flow(reading.shown().flow().orElseThrow().cubicMetresPerSecond());
    }

    private static FindingKind kind(Channel channel) {
        return switch (channel) {
            case PUMP, MID -> FindingKind.PUMP_GAUGE;
            case TIP -> FindingKind.TIP_GAUGE;
            case FLOW -> FindingKind.FLOW_METER;
        };
    }

    private static FindingKind kind(Cause cause) {
        return FindingKind.valueOf(cause.name());
    }

    private static String cannotTell(List<FindingKind> open) {
        return "the readings cannot tell " + either(open, Findings::noun);
    }

    private static String lookAt(List<FindingKind> open) {
        return open.isEmpty() ? "read it again" : either(open, Findings::kindText) + "; then read it again";
    }

    private static String either(List<FindingKind> open, java.util.function.Function<FindingKind, String> words) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < open.size(); i++) {
            text.append(i == 0 ? "" : i == open.size() - 1 ? " or " : ", ").append(words.apply(open.get(i)));
        }
        return text.toString();
    }

    private static String noun(FindingKind kind) {
        return switch (kind) {
            case EXTRA_LOSS -> "an extra loss in the line";
            case NOZZLE -> "the nozzle";
            case FLOW_METER -> "the flow meter";
            case PUMP_GAUGE -> "the pump gauge";
            case TIP_GAUGE -> "the tip gauge";
            case LENGTH -> "a wrong length";
            case RISE -> "a wrong rise";
            case NONE, CANNOT_TELL -> "which";
        };
    }

    private static String kindText(FindingKind kind) {
        return switch (kind) {
            case EXTRA_LOSS -> "walk the line between pump and tip";
            case NOZZLE -> "look into the tip and at its setting";
            case FLOW_METER -> "look at the flow meter";
            case PUMP_GAUGE -> "read the pump gauge again";
            case TIP_GAUGE -> "look at the tip gauge and where it taps";
            case LENGTH -> "count the sections";
            case RISE -> "measure the rise again";
            case NONE, CANNOT_TELL -> "";
        };
    }

    private static String check(FindingKind kind) {
        return switch (kind) {
            case EXTRA_LOSS ->
                "walk the line between pump and tip for a kink, a part-shut gate or debris; then lay it again and"
                        + " read again";
            case NOZZLE -> "shut down, look into the tip for debris, compare its size and setting with what is written";
            case FLOW_METER ->
                "look at the meter for debris and air, let it settle, read it against the tip gauge again";
            case PUMP_GAUGE -> "read the pump gauge again and compare it with another gauge on the same fitting";
            case TIP_GAUGE ->
                "check where the tip gauge taps, bleed it, compare it with another gauge on the same fitting";
            case LENGTH -> "count the sections that are laid, pump to tip";
            case RISE -> "measure the rise from pump to tip again, and whether it is up or down";
            case NONE, CANNOT_TELL -> "";
        };
    }
}
