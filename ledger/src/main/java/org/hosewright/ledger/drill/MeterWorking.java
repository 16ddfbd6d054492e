package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.working.Step;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.line.KitLines;

/** A meter's factor by hand: what it showed beside the flow that a smooth bore's pressure tells, reading by reading.
 *
 * @param report the night
 * @param meter id of the meter
 */
record MeterWorking(DrillReport report, String meter) {

    /** The working; empty where no used reading has the meter and a smooth bore's tip pressure. */
    Optional<Working> working(Known<Ratio> factor) {
        List<Step> steps = new ArrayList<>();
        double sum = 0;
        for (Reading reading : report.night().readings()) {
            Optional<Double> ratio = used(reading) ? ratio(reading) : Optional.empty();
            if (ratio.isPresent()) {
                steps.add(step(reading, ratio.get()));
                sum += ratio.get();
            }
        }
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        String mean = Numbers.fixed(sum / steps.size(), 3);
        steps.add(new Step("The mean of these.", "", "", mean, ""));
        steps.add(new Step(
                "All readings weighed together, and how well the bore and the gauges are known with them.",
                "",
                "",
                shown().change(factor),
                "the fit of this night"));
        return Optional.of(new Working("Factor of " + meter, steps));
    }

    private boolean used(Reading reading) {
        return report.calibration().readings().stream()
                .anyMatch(judged -> judged.used() && judged.reading().equals(reading.id()));
    }

    private Optional<Double> ratio(Reading reading) {
        boolean has = reading.with().meter().equals(Optional.of(meter))
                && reading.shown().flow().isPresent()
                && reading.shown().tip().isPresent()
                && bore(reading).isPresent();
        return has
                ? Optional.of(reading.shown().flow().get().cubicMetresPerSecond()
                        / byTip(reading).cubicMetresPerSecond())
                : Optional.empty();
    }

    private Optional<SmoothBore> bore(Reading reading) {
        var tip = KitLines.get(report.night().gear().nozzles(), reading.laid().nozzle(), "nozzle")
                .rated(reading.laid().setting());
        return tip instanceof SmoothBore bore ? Optional.of(bore) : Optional.empty();
    }

    private Flow byTip(Reading reading) {
        double tip_Pa = reading.shown().tip().orElseThrow().pascals();
        return new Flow(bore(reading).orElseThrow().flow_m3s(tip_Pa));
    }

    private Step step(Reading reading, double ratio) {
        boolean us = report.kit().units() == UnitSystem.US;
        SmoothBore bore = bore(reading).orElseThrow();
        double tip = report.kit().units().show(reading.shown().tip().orElseThrow());
        double size = us ? bore.bore().inches() : bore.bore().millimetres();
        String numbers = (us ? "29.7" : "0.06637") + " x " + Numbers.plain(Numbers.toNearest(size, 0.001))
                + "^2 x sqrt(" + Numbers.plain(Numbers.toNearest(tip, 0.1)) + ") = " + shown().text(byTip(reading));
        String result = "the meter showed "
                + shown().text(reading.shown().flow().orElseThrow()) + ": " + Numbers.fixed(ratio, 3) + " times that";
        return new Step(
                "Reading " + reading.id() + ".", us ? "29.7 d^2 sqrt(p)" : "0.06637 d^2 sqrt(p)", numbers, result, "");
    }

    private QuantityShown shown() {
        return QuantityShown.of(report.kit().units());
    }
}
