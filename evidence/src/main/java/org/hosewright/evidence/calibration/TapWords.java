package org.hosewright.evidence.calibration;

import org.hosewright.evidence.joint.Says;
import org.hosewright.evidence.joint.SideTap;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.quantity.Length;

/** What is said where a side tap's inside diameter is not known: how large the error is likely to be.
 *
 * @param survey the night
 * @param says how numbers are said
 */
record TapWords(Survey survey, Says says) {
    static final String NEEDS = "the inside diameter of the waterway at the side tap, or a pitot at the tip";

    private static final double[] WATERWAYS_IN = {1.5, 2.5, 3};

    /** A waterway is at least this much wider than the tip. */
    private static final double WIDER = 1.2;

    /** What is withheld for one tap. */
    Withheld of(String tap) {
        StringBuilder likely = new StringBuilder();
        for (Reading reading : survey.night().readings()) {
            boolean hers = tap.endsWith(" behind " + reading.laid().nozzle());
            if (hers && likely.length() == 0 && survey.tip(reading) instanceof SmoothBore bore) {
                likely.append(likely(bore));
            }
        }
        return new Withheld(
                "flow, tip pressure and reaction",
                tap.replace(" behind ", " reads on a side tap behind ")
                        + " and misses the velocity head there, and the inside diameter is not known"
                        + likely,
                NEEDS);
    }

    private String likely(SmoothBore bore) {
        for (double waterway_in : WATERWAYS_IN) {
            Length inside = Length.ofInches(waterway_in);
            if (inside.metres() > WIDER * bore.bore().metres()) {
                double more = 1 / SideTap.share(bore, inside);
                return ": in a " + says.text(inside) + " waterway a " + says.text(bore.bore()) + " tip has "
                        + Says.percent(more - 1) + " more pressure than the gauge shows, and "
                        + Says.percent(Math.sqrt(more) - 1) + " more flow";
            }
        }
        return "";
    }
}
