package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hosewright.evidence.joint.Says;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** All readings that can be taken within every limit, lay by lay, shortest first; and what stopped the others. */
final class Points {
    /** Pressures at the tip that are tried, as shares of what it is meant for. */
    private static final double[] SHARES = {0.6, 0.8, 1, 1.2, 1.4};

    /** Flows of an automatic tip that are tried, as shares of its band. */
    private static final double[] BAND = {0.2, 0.5, 0.8};

    private final Means means;
    private final Checked checked;
    private final List<List<TestPoint>> lays = new ArrayList<>();
    private final Map<String, String> stopped = new LinkedHashMap<>();

    private Points(Means means) {
        this.means = means;
        this.checked = new Checked(means);
    }

    /** The points of a night.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput hose that must not be flown, see {@link SafeHose}
     */
    static Points of(Means means) {
        Points points = new Points(means);
        SafeHose.require(means.line(), means.bounds());
        new Lays(means).list().forEach(points::add);
        return points;
    }

    List<List<TestPoint>> lays() {
        return lays.stream().map(List::copyOf).toList();
    }

    List<TestPoint> all() {
        return lays.stream().flatMap(List::stream).toList();
    }

    /** What is out of reach, and what stops it, as sentences. */
    List<String> listStopped() {
        return List.copyOf(stopped.values());
    }

    private void add(Line line) {
        List<TestPoint> here = new ArrayList<>();
        for (String gauge : means.pumpGauges()) {
            for (Ask ask : asks(line.nozzle().rated(line.setting()))) {
                TestPoint point = checked.flowing(lays.size(), line, ask, gauge);
                if (!isStopped(point)) {
                    here.add(point);
                }
            }
        }
        if (here.isEmpty()) {
            return;
        }
        for (String gauge : means.pumpGauges()) {
            TestPoint still = checked.still(lays.size(), line, gauge);
            if (means.tipGauge().isPresent() && still.state().tip().pascals() > 0 && !isStopped(still)) {
                here.add(still);
            }
        }
        lays.add(here);
    }

    private boolean isStopped(TestPoint point) {
        for (Limit limit : point.limits()) {
            if (limit.broken()) {
                Says says = new Says(means.units());
                stopped.putIfAbsent(
                        limit.what(),
                        "Not planned: " + says.text(point.line().length()) + " with "
                                + says.text(point.state().tip())
                                + " at the tip and beyond, stopped by " + limit.what() + ": " + says.text(limit.at())
                                + " where " + says.text(limit.limit()) + " is the most (" + limit.rule(means.units())
                                + ").");
                return true;
            }
        }
        return false;
    }

    private List<Ask> asks(Tip tip) {
        List<Ask> asks = new ArrayList<>();
        if (tip instanceof Automatic automatic) {
            double from_m3s = automatic.from().cubicMetresPerSecond();
            double wide_m3s = automatic.to().cubicMetresPerSecond() - from_m3s;
            for (double share : BAND) {
                asks.add(new Ask.AtFlow(new Flow(from_m3s + share * wide_m3s)));
            }
            return asks;
        }
        Pressure step = means.units() == UnitSystem.US ? Pressure.ofPsi(5) : Pressure.ofKPa(25);
        TreeSet<Double> pressures_Pa = new TreeSet<>();
        for (double share : SHARES) {
            pressures_Pa.add(Numbers.toNearest(share * tip.at().pascals(), step.pascals()));
        }
        pressures_Pa.forEach(pressure_Pa -> asks.add(new Ask.AtTip(new Pressure(pressure_Pa))));
        return asks;
    }
}
