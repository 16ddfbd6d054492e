package org.hosewright.bench;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The case "line" as a person's line: a held pump pressure, one hose, one nozzle. */
final class OneLine {
    private static final double LENGTH_m = 60.96;

    private OneLine() {}

    /** The line with its loss varied by a share. */
    static Line of(double share) {
        HoseLoss loss = new HoseLoss(Case.hose(1.75, 40 * share) / LENGTH_m);
        Hose hose = new Hose("hose", Length.ofInches(1.75), Length.ofFeet(50), Known.of(loss), Optional.empty());
        Run run = new Run(hose, new Length(LENGTH_m), new Length(0));
        Fog tip = new Fog(new Flow(22.7 * Case.M3S_PER_GPM), new Pressure(Case.PA_PER_PSI));
        Discharge discharge = new Discharge("out", Optional.empty(), Optional.empty());
        return new Line(discharge, List.of(run), Nozzle.of("tip", tip), "");
    }

    static Pressure pump(double share) {
        return new Pressure(300 * share * Case.PA_PER_FT);
    }

    static LineState solve(Line line, double share) {
        return LineSolver.atPump(line, pump(share));
    }
}
