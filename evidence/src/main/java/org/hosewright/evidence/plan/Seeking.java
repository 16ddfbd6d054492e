package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.calibration.Foresight;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The numbers that a plan seeks, each in the steps that one decides in: what it does to the pump pressure that is ordered at the
 * longest stretch, or to the flow.
 *
 * @param means what the night is flown with
 * @param longest the longest lay that can be flown
 */
record Seeking(Means means, TestPoint longest) {
    Course course() {
        return new Course(
                longest.chain(),
                longest.line().discharge().id(),
                longest.line().rise(),
                longest.line().nozzle().id(),
                longest.line().setting());
    }

    Pressure tip() {
        return means.line().nozzle().rated(means.line().setting()).at();
    }

    Length length() {
        return longest.line().length();
    }

    /** The step that pump pressures are ordered in. */
    Pressure pumpStep() {
        return Rounding.of(means.units(), Rounding.Way.NEAREST).step();
    }

    /** The step that flows are wanted in. @source judgement: targets are set in such steps */
    Flow flowStep() {
        return means.units() == UnitSystem.US ? Flow.ofGpm(5) : Flow.ofLitresPerMinute(20);
    }

    /** What is decided with the answers, where this tip's pressure tells its flow. */
    List<Sought> decided(Foresight foresight) {
        List<Sought> sought = new ArrayList<>();
        foresight
                .findNeeded(course(), tip())
                .ifPresent(form -> sought.add(new Sought(form, pumpStep().pascals())));
        foresight
                .findDelivered(course(), tip())
                .ifPresent(form -> sought.add(new Sought(form, flowStep().cubicMetresPerSecond())));
        return sought;
    }

    /** The numbers that a question asks for. */
    List<Sought> asked(Question question, Foresight foresight) {
        double q_m3s = flow_m3s();
        double pump_Pa = pumpStep().pascals();
        double share = flowStep().cubicMetresPerSecond() / q_m3s;
        List<Sought> sought = new ArrayList<>();
        switch (question) {
            case HOSE ->
                hoses().forEach(run -> add(
                        sought,
                        foresight.findHose(run.hose().id()),
                        pump_Pa / (q_m3s * q_m3s * run.length().metres())));
            case PIPING ->
                add(sought, foresight.findPiping(longest.line().discharge().id()), pump_Pa / (q_m3s * q_m3s));
            case NOZZLE -> add(sought, foresight.findTip(longest.line().tipName()), share);
            case METER -> means.meter().ifPresent(id -> add(sought, foresight.findMeter(id), share));
            case GAUGES -> gauges().forEach(id -> add(sought, foresight.findGauge(id), pump_Pa / 2));
        }
        return sought;
    }

    private static void add(List<Sought> sought, Optional<double[]> form, double step) {
        form.ifPresent(found -> sought.add(new Sought(found, step)));
    }

    /** The runs of the longest lay, each hose once. */
    List<Run> hoses() {
        Set<String> met = new LinkedHashSet<>();
        return longest.line().runs().stream()
                .filter(run -> met.add(run.hose().id()))
                .toList();
    }

    Set<String> gauges() {
        Set<String> gauges = new LinkedHashSet<>(means.pumpGauges());
        means.tipGauge().ifPresent(gauges::add);
        return gauges;
    }

    private double flow_m3s() {
        return means.line().nozzle().rated(means.line().setting()).flowAt().cubicMetresPerSecond();
    }
}
