package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.working.Step;
import org.hosewright.hydraulics.working.Working;

/** The way from the pump to each open tip, piece by piece; every sum closes to the last digit shown. */
public final class Trail {
    private static final int US_DECIMALS = 1;
    private static final int SI_DECIMALS = 0;

    private Trail() {}

    public static List<Working> listOf(LayState lay, UnitSystem units) {
        return lay.open().stream().map(tip -> of(tip, units)).toList();
    }

    /** Each pressure is rounded once; what a piece takes is the difference of the two that stand beside it. */
    private static Working of(AtTip tip, UnitSystem units) {
        int decimals = units == UnitSystem.US ? US_DECIMALS : SI_DECIMALS;
        String unit = " " + units.pressure().symbol();
        QuantityShown shown = QuantityShown.of(units);
        List<Step> steps = new ArrayList<>();
        double before = 0;
        for (Station station : tip.stations()) {
            double now = rounded(units.show(station.pressure()), decimals);
            String text = Numbers.fixed(now, decimals) + unit;
            if (steps.isEmpty()) {
                steps.add(new Step("At the pump, " + shown.text(station.flow()) + " in this line", "", "", text, ""));
            } else {
                double taken = before - now;
                String numbers = Numbers.fixed(before, decimals)
                        + (taken < 0 ? " + " : " - ")
                        + Numbers.fixed(Math.abs(taken), decimals);
                steps.add(new Step(says(station, shown), "", numbers, text, ""));
            }
            before = now;
        }
        return new Working("From the pump to " + tip.outlet().id(), steps);
    }

    private static String says(Station station, QuantityShown shown) {
        String hose = station.length().metres() > 0 ? shown.text(station.length()) + " of " : "";
        return "Behind " + hose + station.what() + " at " + shown.text(station.flow());
    }

    private static double rounded(double value, int decimals) {
        return Numbers.toNearest(value, decimals == 0 ? 1 : 0.1);
    }
}
