package org.hosewright.evidence.joint;

import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;

/** What a tip gauge sees of the pressure at the tip.
 *
 * @param share the share of the total pressure; the most it can be where unknown
 * @param known false at a side tap of unknown diameter behind a smooth bore
 */
record TapView(double share, boolean known) {
    private static final TapView ALL = new TapView(1, true);

    /** The view of a reading's tip gauge.
     *
     * <p>A fog tip is rated by the pressure at its inlet, so a side tap there reads what the rating means; with the nozzle
     * shut there is no velocity head anywhere.
     */
    static TapView of(Reading reading, GaugeUse gauge, Tip tip) {
        boolean side = gauge.tap().isPresent() && gauge.tap().get() instanceof Tap.Side;
        if (!side || reading.laid().shut() || !(tip instanceof SmoothBore bore)) {
            return ALL;
        }
        return ((Tap.Side) gauge.tap().get())
                .inside()
                .map(inside -> new TapView(SideTap.share(bore, inside), true))
                .orElse(new TapView(1, false));
    }
}
