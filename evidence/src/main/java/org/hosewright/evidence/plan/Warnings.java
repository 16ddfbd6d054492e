package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hosewright.evidence.calibration.Foresight;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Says;
import org.hosewright.hydraulics.equipment.SmoothBore;

/** What to know of a plan before it is flown.
 *
 * @param means what the night is flown with
 * @param ordered its readings
 * @param enough whether they tell enough
 */
record Warnings(Means means, Ordered ordered, boolean enough) {
    /** A meter this good fixes the flow by itself. */
    private static final double GOOD_METER = 0.02;

    List<String> list() {
        List<String> says = new ArrayList<>();
        if (!enough) {
            says.add(
                    "Time, water or the count of readings ends this list before every question is answered; more of it would"
                            + " tell more.");
        }
        scale(says);
        lays(says);
        book(says);
        if (means.meter().isEmpty() || means.tipGauge().isEmpty()) {
            says.add("Only one instrument tells the flow: nothing checks it, and a misread one will not be noticed.");
        }
        return says;
    }

    private void book(List<String> says) {
        List<String> unmeasured = means.line().runs().stream()
                .map(run -> run.hose().id())
                .filter(means.gear().bookHoses()::contains)
                .distinct()
                .toList();
        if (!unmeasured.isEmpty()) {
            says.add("The loss of " + String.join(", ", unmeasured)
                    + " is not measured yet: pump pressures may come out far from"
                    + " what is foretold. Raise the pump slowly to the tip pressure, never beyond the pressure not to exceed, and"
                    + " plan again after the first lay.");
        }
    }

    private void scale(List<String> says) {
        if (isAnchored()) {
            return;
        }
        says.add(
                "Nothing fixes the scale of flow: meter, nozzle, hose and piping can all be scaled together and no reading"
                        + " would change. Pump pressure for a tip pressure stands; flow, hose loss, piping and reaction rest on the"
                        + " tip's size or rating. A smooth bore gauged that day with a pitot, or a calibrated meter, would fix it.");
    }

    private boolean isAnchored() {
        boolean bore = means.line().nozzle().rated(means.line().setting()) instanceof SmoothBore
                && means.gear().gauged().contains(means.line().nozzle().id());
        return (bore && isTapKnown()) || isGoodMeter();
    }

    private boolean isTapKnown() {
        return means.gear().instruments().get(means.tipGauge().orElse("")) instanceof Instrument.PressureGauge gauge
                && gauge.tap()
                        .filter(tap ->
                                !(tap instanceof Tap.Side side && side.inside().isEmpty()))
                        .isPresent();
    }

    private boolean isGoodMeter() {
        return means.gear().instruments().get(means.meter().orElse("")) instanceof Instrument.FlowMeter meter
                && meter.accuracy().share() <= GOOD_METER;
    }

    private void lays(List<String> says) {
        long lays = ordered.points().stream().map(TestPoint::lay).distinct().count();
        if (lays == 1) {
            says.add("All readings are on one lay: hose and piping are known only as a sum, and at this length alone.");
        } else if (lays == 2) {
            says.add(
                    "Two lengths: a length written down wrong cannot be told from the hose; count the sections aloud at each lay.");
        }
        if (lays > 1 && !ordered.again() && Math.abs(ordered.confusion()) >= Ordered.CONFUSED) {
            says.add(
                    "Length grows or shrinks through the night: a drift of pump or gauge would look like length. With more time,"
                            + " go back to the first lay at the end.");
        }
    }

    List<String> listAssumed(Foresight after, Budget budget) {
        Set<String> assumed = new LinkedHashSet<>();
        Says says = new Says(means.units());
        Pace pace = budget.pace();
        assumed.add("Time: " + says.text(pace.setUp()) + " to set up, " + says.text(pace.relay()) + " for each lay, "
                + says.text(pace.reading()) + " for each reading with water running "
                + says.text(pace.flowing()) + " of it, " + says.text(pace.still()) + " with the nozzle shut.");
        assumed.add(
                "A number is answered when its 95 % half-width is at most one step of what is ordered: of the pump pressure"
                        + " at the longest lay, or of the flow.");
        assumed.add("A shut reading is foretold at an idle pressure of " + says.text(Checked.IDLE) + ".");
        assumed.add(
                "Pump pressures are foretold with the numbers held now; the limits are checked at the upper 95 % of the"
                        + " losses where an error is stated.");
        assumed.addAll(after.listAssumed());
        return List.copyOf(assumed);
    }
}
