package org.hosewright.evidence.plan;

import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.SideTap;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** What the tip gauge is foretold to show.
 *
 * @param means the night's gear
 * @param gauge its id
 */
record TipView(Means means, String gauge) {
    Pressure shows(Line line, LineState state, boolean shut) {
        Optional<Length> inside = findSideTap();
        if (!shut && inside.isPresent() && line.nozzle().rated(line.setting()) instanceof SmoothBore bore) {
            return new Pressure(state.tip().pascals() * SideTap.share(bore, inside.get()));
        }
        return state.tip();
    }

    private Optional<Length> findSideTap() {
        if (means.gear().instruments().get(gauge) instanceof Instrument.PressureGauge found) {
            return found.tap()
                    .filter(Tap.Side.class::isInstance)
                    .map(Tap.Side.class::cast)
                    .flatMap(Tap.Side::inside);
        }
        return Optional.empty();
    }
}
