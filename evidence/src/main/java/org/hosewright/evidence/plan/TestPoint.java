package org.hosewright.evidence.plan;

import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Pressure;

/** One planned reading, checked beforehand.
 *
 * @param lay which lay it is taken on, from 0, shortest first
 * @param line what is laid
 * @param shut true for a reading with the nozzle shut
 * @param pumpGauge id of the gauge at the pump that is read
 * @param state what is foretold, at the true pressures
 * @param mostPump the highest that the pump pressure is expected to be, at the upper 95 % of the losses
 * @param never the pump pressure not to go above, whatever the tip gauge shows; absent where nothing sets one
 * @param limits where it stands against each limit, the most used first
 */
public record TestPoint(
        int lay,
        Line line,
        boolean shut,
        String pumpGauge,
        LineState state,
        Pressure mostPump,
        Optional<Pressure> never,
        List<Limit> limits) {
    public TestPoint {
        limits = List.copyOf(limits);
    }

    /** The hose, by the company's names. */
    public List<Stretch> chain() {
        return line.runs().stream()
                .map(run -> new Stretch(run.hose().id(), run.length()))
                .toList();
    }

    /** What a gauge at the pump is foretold to show. */
    public Pressure atPumpGauge(Means means) {
        boolean behind = !shut && means.isBehindPiping(pumpGauge);
        return behind ? state.atDischargeGauge() : state.pump();
    }

    /** The reading as it is foretold.
     *
     * @param id its name
     */
    public Reading foretold(String id, Means means) {
        Laid laid = new Laid(
                Optional.empty(),
                line.discharge().id(),
                chain(),
                Optional.of(line.rise()),
                line.nozzle().id(),
                line.setting(),
                shut,
                "");
        ReadWith with = new ReadWith(Optional.of(pumpGauge), means.tipGauge(), shut ? Optional.empty() : means.meter());
        Shown shown = new Shown(
                atPumpGauge(means),
                means.tipGauge().map(gauge -> new TipView(means, gauge).shows(line, state, shut)),
                with.meter().map(meter -> state.flow()),
                Optional.empty(),
                Optional.empty());
        return new Reading(id, laid, shown, with, false);
    }
}
