package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** Invented lines to draw. */
final class Lines {
    static final Ask AT_TIP = new Ask.AtTip(Pressure.ofPsi(50));
    static final List<Sheet> SHEETS = List.of(Sheet.PHONE, Sheet.LAPTOP, Sheet.PAPER);

    private Lines() {}

    static Hose attack() {
        return new Hose(
                "attack-175",
                Length.ofInches(1.75),
                Length.ofFeet(50),
                QuantityText.hoseLoss("9.25 ± 0.2 psi / 100 ft @ 100 gpm"),
                Optional.of(Pressure.ofPsi(300)));
    }

    static Hose leader() {
        return new Hose(
                "leader-3",
                Length.ofInches(3),
                Length.ofFeet(50),
                QuantityText.hoseLoss("0.75 ± 0.1 psi / 100 ft @ 100 gpm"),
                Optional.of(Pressure.ofPsi(300)));
    }

    static Line line(List<Run> runs) {
        Discharge discharge = new Discharge(
                "crosslay-1", Optional.empty(), Optional.of(QuantityText.pointLoss("1.7 ± 0.8 psi @ 100 gpm")));
        SmoothBore tip = new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50));
        return new Line(discharge, runs, Nozzle.of("seven-eighths", tip), "");
    }

    static Line attackLine(double length_ft, double rise_ft) {
        return line(List.of(new Run(attack(), Length.ofFeet(length_ft), Length.ofFeet(rise_ft))));
    }

    static LineProfile profile(double length_ft, double rise_ft) {
        return LineProfile.of(attackLine(length_ft, rise_ft), LossErrors.UNCORRELATED, AT_TIP, UnitSystem.US);
    }

    /** A line of one or two hoses, uphill or downhill, with up to ten readings and up to three limits. */
    static LineProfile random(Random random) {
        List<Run> runs = new ArrayList<>();
        if (random.nextBoolean()) {
            runs.add(new Run(leader(), Length.ofFeet(50 * (1 + random.nextInt(20))), Length.ofFeet(0)));
        }
        double rise_ft = random.nextInt(120) - 60;
        runs.add(new Run(attack(), Length.ofFeet(50 * (1 + random.nextInt(16))), Length.ofFeet(rise_ft)));
        UnitSystem units = random.nextBoolean() ? UnitSystem.US : UnitSystem.SI;
        LineProfile profile = LineProfile.of(line(runs), LossErrors.UNCORRELATED, AT_TIP, units);
        return profile.withPins(pins(random, profile)).withLimits(limits(random, profile, units));
    }

    static ReachCurve curve(String label, double rise_ft, int sections) {
        List<PressureAt> points = new ArrayList<>();
        for (int i = 1; i <= sections; i++) {
            LineProfile profile = profile(50 * i, rise_ft);
            PressureAt pump = profile.pressure().get(0);
            points.add(new PressureAt(profile.length(), pump.pressure(), pump.half()));
        }
        return new ReachCurve(label, points, Optional.of(Length.ofFeet(700)), Optional.of(Length.ofFeet(650)));
    }

    private static List<Pin> pins(Random random, LineProfile profile) {
        List<Pin> pins = new ArrayList<>();
        int count = random.nextInt(10);
        double pump_Pa = profile.pressure().get(0).pressure().pascals();
        for (int i = 1; i <= count; i++) {
            boolean aside = random.nextInt(4) == 0;
            Length at = random.nextBoolean() ? new Length(0) : profile.length();
            Pressure read = new Pressure(pump_Pa * random.nextDouble());
            String label = "reading " + i + (aside ? ", 13 psi too high" : "");
            pins.add(new Pin(at, read, Pressure.ofPsi(8 * random.nextDouble()), label, aside));
        }
        return pins;
    }

    private static List<LimitBand> limits(Random random, LineProfile profile, UnitSystem units) {
        List<LimitBand> limits = new ArrayList<>();
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Pressure at = Pressure.ofPsi(180 + random.nextInt(120));
            String label = (i == 0 ? "ceiling " : "attack-175, nozzle shut ")
                    + QuantityShown.of(units).text(at);
            limits.add(LimitBand.along(at, profile.length(), label));
        }
        return limits;
    }
}
