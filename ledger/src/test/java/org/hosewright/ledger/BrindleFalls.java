package org.hosewright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument.PressureGauge;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.kit.NozzleRecord;

/** A small kit of the invented company, made by hand. */
public final class BrindleFalls {
    public static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    private BrindleFalls() {}

    /** One engine, one package, measured hose.
     *
     * @param gauge the panel gauge, where one is named
     * @param offset what it reads less what is true [psi]
     * @param least least flow of the package [gpm]
     */
    public static Kit kit(Optional<Tap> gauge, double offset, double least) {
        return new Kit(
                "Brindle Falls Fire Company",
                "America/New_York",
                UnitSystem.US,
                Map.of(2, Force.ofLbf(75)),
                Map.of("attack-175", hose()),
                Map.of("seven-eighths", nozzle()),
                Map.of(),
                Map.of("engine-41", engine(gauge.isPresent())),
                gauge.map(tap -> Map.of("gauge-a", gauge(tap, offset))).orElse(Map.of()),
                Map.of("crosslay-1-200", named(least)),
                Optional.empty(),
                Optional.of(Length.ofFeet(50)),
                Map.of("drill-night", night()));
    }

    /** The same with the flows that its night flew. */
    public static Kit flown(Kit kit, Map<String, FlownRange> flown) {
        NightRecord night = night();
        NightRecord told = new NightRecord(
                night.date(), night.readings(), night.correlation(), night.tested(), flown, night.flow());
        return new Kit(
                kit.company(),
                kit.zone(),
                kit.units(),
                kit.crewReaction(),
                kit.hoses(),
                kit.nozzles(),
                kit.appliances(),
                kit.engines(),
                kit.instruments(),
                kit.packages(),
                kit.rule(),
                kit.reserve(),
                Map.of("drill-night", told));
    }

    private static HoseRecord hose() {
        Hose hose = new Hose(
                "attack-175",
                Length.ofInches(1.75),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(9.25), HoseLoss.ofUs(0.2)),
                Optional.of(Pressure.ofPsi(300)));
        Basis basis = new Basis(Basis.Kind.TEST, "drill-night");
        return new HoseRecord(
                hose,
                basis,
                Optional.of(LocalDate.of(2026, 4, 11)),
                OptionalInt.of(2019),
                Optional.empty(),
                Optional.empty());
    }

    private static NozzleRecord nozzle() {
        return new NozzleRecord(
                Nozzle.of("seven-eighths", new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50))),
                Optional.empty(),
                Optional.empty());
    }

    private static EngineRecord engine(boolean gauge) {
        Discharge outlet = new Discharge(
                "crosslay-1", Optional.empty(), Optional.of(Known.of(PointLoss.ofUs(1.7), PointLoss.ofUs(0.8))));
        Engine engine = new Engine(
                "engine-41",
                Optional.of(Flow.ofGpm(1500)),
                Optional.of(Pressure.ofPsi(250)),
                Optional.empty(),
                Map.of("crosslay-1", outlet));
        return new EngineRecord(engine, Map.of(), gauge ? Optional.of("gauge-a") : Optional.empty());
    }

    private static InstrumentRecord gauge(Tap tap, double offset) {
        PressureGauge gauge = new PressureGauge(
                "gauge-a",
                Optional.of(Pressure.ofPsi(400)),
                new Accuracy(0.005, Accuracy.Of.RANGE),
                Optional.of(tap),
                Optional.empty());
        return new InstrumentRecord(gauge, Optional.of(Known.of(Pressure.ofPsi(offset))), Optional.empty());
    }

    private static HosePackage named(double least) {
        return new HosePackage(
                "crosslay-1-200",
                "engine-41",
                "crosslay-1",
                List.of(new Stretch("attack-175", Length.ofFeet(200))),
                "seven-eighths",
                "",
                OptionalInt.of(2),
                Optional.of(Flow.ofGpm(161)),
                Optional.of(Flow.ofGpm(least)),
                Optional.empty());
    }

    private static NightRecord night() {
        return new NightRecord(
                Optional.of(LocalDate.of(2026, 5, 12)),
                OptionalInt.of(8),
                Map.of("attack-175/crosslay-1", -0.8),
                Optional.of(Length.ofFeet(750)),
                Map.of(),
                Map.of());
    }
}
