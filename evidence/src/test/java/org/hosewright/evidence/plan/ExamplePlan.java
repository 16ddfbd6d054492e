package org.hosewright.evidence.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Gear;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The invented company's crosslay, about to be flown: 1 3/4 in hose by the book, 7/8 in tip gauged, ceiling 250 psi. */
final class ExamplePlan {
    static final double BOOK_C = 15.5;

    boolean gauged = true;
    boolean metered = true;
    double onHand_ft = 800;
    double rise_ft = 0;
    double test_psi = 300;
    double hours = 3;
    TestAge age = TestAge.IN_DATE;
    Optional<Crew> crew = Optional.of(new Crew(2, Force.ofLbf(75)));
    Tap pumpTap = new Tap.BeforePiping();

    Hose hose() {
        return new Hose(
                "attack-175",
                Length.ofInches(1.75),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(BOOK_C)),
                Optional.of(Pressure.ofPsi(test_psi)));
    }

    Means means() {
        Nozzle nozzle = Nozzle.of("seven-eighths", new SmoothBore(Length.ofInches(7.0 / 8), Pressure.ofPsi(50)));
        Discharge discharge = new Discharge("crosslay-1", Optional.of(Length.ofInches(2)), Optional.empty());
        Line line = new Line(discharge, List.of(new Run(hose(), Length.ofFeet(200), new Length(0))), nozzle, "");
        Bounds bounds = Bounds.NONE
                .withPump(Optional.of(Pressure.ofPsi(250)), Optional.of(Flow.ofGpm(1500)))
                .withCrew(crew)
                .withHoseTests(Map.of("attack-175", age));
        return new Means(
                line,
                Length.ofFeet(onHand_ft),
                Length.ofFeet(rise_ft),
                gear(nozzle, discharge),
                List.of("gauge-a"),
                Optional.of("gauge-b"),
                metered ? Optional.of("meter-1") : Optional.empty(),
                bounds,
                LossErrors.UNCORRELATED,
                UnitSystem.US);
    }

    private Gear gear(Nozzle nozzle, Discharge discharge) {
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        instruments.put("gauge-a", gauge("gauge-a", 400, pumpTap));
        instruments.put("gauge-b", gauge("gauge-b", 200, new Tap.Pitot()));
        instruments.put("meter-1", new Instrument.FlowMeter("meter-1", new Accuracy(0.05, Accuracy.Of.READING)));
        return new Gear(
                Map.of("attack-175", hose()),
                Set.of("attack-175"),
                Map.of("crosslay-1", discharge),
                Map.of("seven-eighths", nozzle),
                gauged ? Set.of("seven-eighths") : Set.of(),
                instruments);
    }

    private static Instrument gauge(String id, double range, Tap tap) {
        return new Instrument.PressureGauge(
                id,
                Optional.of(Pressure.ofPsi(range)),
                new Accuracy(0.005, Accuracy.Of.RANGE),
                Optional.of(tap),
                Optional.empty());
    }

    Plan plan(Question... questions) {
        return Planning.of(means(), budget(), Set.of(questions), Optimality.I);
    }

    Budget budget() {
        return new Budget(new Seconds(3600 * hours), Optional.empty(), Pace.USUAL);
    }
}
