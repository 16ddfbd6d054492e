package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
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
                && bore(reading).isPresent()
                && side(reading).isPresent() == inside(reading).isPresent();
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
        return new Flow(bore(reading).orElseThrow().flow_m3s(atTip(reading).pascals()));
    }

    /** The tip's true pressure: a side tap misses the velocity head there. */
    private Pressure atTip(Reading reading) {
        double shown_Pa = reading.shown().tip().orElseThrow().pascals();
        double share = inside(reading)
                .map(inside -> bore(reading).orElseThrow().bore().metres() / inside.metres())
                .orElse(0.0);
        return new Pressure(shown_Pa / (1 - share * share * share * share));
    }

    /** The inside diameter at the tip gauge's side tap; empty for a pitot. */
    private Optional<Length> inside(Reading reading) {
        return side(reading).flatMap(Tap.Side::inside);
    }

    private Optional<Tap.Side> side(Reading reading) {
        return reading.with()
                .tipGauge()
                .map(id -> report.night().gear().instruments().get(id))
                .filter(Instrument.PressureGauge.class::isInstance)
                .flatMap(one -> ((Instrument.PressureGauge) one).tap())
                .filter(Tap.Side.class::isInstance)
                .map(Tap.Side.class::cast);
    }

    private Step step(Reading reading, double ratio) {
        boolean us = report.kit().units() == UnitSystem.US;
        String numbers = (us ? "29.7" : "0.06637") + " × "
                + size(bore(reading).orElseThrow().bore()) + "² × √"
                + Numbers.plain(Numbers.toNearest(report.kit().units().show(atTip(reading)), 0.1)) + " = "
                + shown().text(byTip(reading));
        String result = "the meter showed "
                + shown().text(reading.shown().flow().orElseThrow()) + ": " + Numbers.fixed(ratio, 3) + " times that";
        String formula = us ? "29.7 d² √p" : "0.06637 d² √p";
        return new Step("Reading " + reading.id() + sideTap(reading) + ".", formula, numbers, result, "");
    }

    /** What a side tap adds to the hand calculation; empty for a pitot. */
    private String sideTap(Reading reading) {
        return inside(reading)
                .map(inside -> ": its side tap showed "
                        + shown().text(reading.shown().tip().orElseThrow()) + ", which is "
                        + shown().text(atTip(reading)) + " at the tip, divided by 1 − ("
                        + size(bore(reading).orElseThrow().bore()) + "/" + size(inside) + ")⁴")
                .orElse("");
    }

    private String size(Length length) {
        boolean us = report.kit().units() == UnitSystem.US;
        return Numbers.plain(Numbers.toNearest(us ? length.inches() : length.millimetres(), 0.001));
    }

    private QuantityShown shown() {
        return QuantityShown.of(report.kit().units());
    }
}
