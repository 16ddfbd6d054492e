package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.line.Slopes;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A line solved for what is asked, and the pressure at points along it.
 *
 * <p>Where the tip's pressure or flow is asked for, the band at a point is that of the pressure which the rest of the
 * line needs. Where the pump's pressure is given, the band opens from the pump to the tip with what has been lost.
 */
record SolvedLine(Line line, LossErrors errors, Ask ask, LineState state) {
    /** Parts that a run is cut into; straight between. */
    private static final int PARTS = 4;

    static SolvedLine of(Line line, LossErrors errors, Ask ask) {
        return new SolvedLine(line, errors, ask, LineSolver.solve(line, ask));
    }

    LineProfile profile(UnitSystem units) {
        QuantityShown shown = QuantityShown.of(units);
        List<HoseRun> hose = new ArrayList<>();
        List<GroundAt> ground = new ArrayList<>(List.of(new GroundAt(new Length(0), new Length(0))));
        double at_m = 0;
        double height_m = 0;
        for (Run run : line.runs()) {
            String label = shown.text(run.length()) + " " + run.hose().id();
            hose.add(new HoseRun(run.length(), run.hose().section(), label));
            at_m += run.length().metres();
            height_m += run.rise().metres();
            ground.add(new GroundAt(new Length(at_m), new Length(height_m)));
        }
        Answer pump = Answer.of(shown.text(state.pump()), List.of("to pump"));
        List<String> beside = new ArrayList<>(List.of(shown.text(state.tip()), shown.text(state.reaction())));
        if (line.rise().metres() != 0) {
            beside.add(shown.rise(line.rise()));
        }
        Answer tip = Answer.of(shown.text(state.flow()), beside);
        return new LineProfile(units, hose, pressures(), ground, List.of(), List.of(), pump, tip);
    }

    private List<PressureAt> pressures() {
        List<PressureAt> points = new ArrayList<>();
        double here_Pa = state.pump().pascals();
        points.add(point(0, here_Pa, half_Pa(0, line)));
        here_Pa -= state.pipingLoss().pascals();
        double lost_Pa = state.pipingLoss().pascals();
        double at_m = 0;
        for (int i = 0; i < line.runs().size(); i++) {
            Run run = line.runs().get(i);
            double loss_Pa = loss_Pa(run);
            double lift_Pa = Constants.WATER_PA_PER_M * run.rise().metres();
            for (int part = 0; part < PARTS; part++) {
                double share = (double) part / PARTS;
                double pressure_Pa = here_Pa - share * (loss_Pa + lift_Pa);
                double half_Pa = half_Pa(lost_Pa + share * loss_Pa, rest(i, part));
                points.add(point(at_m + share * run.length().metres(), pressure_Pa, half_Pa));
            }
            at_m += run.length().metres();
            lost_Pa += loss_Pa;
            here_Pa -= loss_Pa + lift_Pa;
            boolean last = i + 1 == line.runs().size();
            points.add(point(at_m, here_Pa, last ? atTip_Pa() : half_Pa(lost_Pa, rest(i + 1, 0))));
            here_Pa -= atEnd_Pa(run);
        }
        return points;
    }

    private static PressureAt point(double at_m, double pressure_Pa, double half_Pa) {
        return new PressureAt(new Length(at_m), new Pressure(pressure_Pa), new Pressure(half_Pa));
    }

    private double loss_Pa(Run run) {
        return run.hose().loss(run.length(), state.flow()).pascals();
    }

    private double atEnd_Pa(Run run) {
        return run.end()
                .map(end -> end.loss().loss_Pa(state.flow().cubicMetresPerSecond()))
                .orElse(0.0);
    }

    /** The line from a part of a run on, behind the piping. */
    private Line rest(int from, int part) {
        Run first = line.runs().get(from);
        double left = (double) (PARTS - part) / PARTS;
        List<Run> runs = new ArrayList<>(line.runs().subList(from, line.runs().size()));
        runs.set(
                0,
                first.withLength(new Length(left * first.length().metres()))
                        .withRise(new Length(left * first.rise().metres())));
        Discharge behind = new Discharge(line.discharge().id(), line.discharge().size(), Optional.empty());
        return new Line(behind, runs, line.nozzle(), line.setting());
    }

    /** Half-width of the band where so much has been lost.
     *
     * @param rest the line from there on
     */
    private double half_Pa(double lost_Pa, Line rest) {
        double all_Pa =
                state.pump().pascals() - state.tip().pascals() - state.rise().pascals();
        if (ask instanceof Ask.AtPump) {
            return all_Pa > 0 ? atTip_Pa() * Math.max(0, Math.min(1, lost_Pa / all_Pa)) : 0;
        }
        return QuantityShown.HALF_WIDTH
                * LineSolver.neededPump(rest, errors, ask).standardErrorSi();
    }

    /** Half-width of the band at the tip: none where the tip is what was asked for. */
    private double atTip_Pa() {
        if (!(ask instanceof Ask.AtPump given)) {
            return 0;
        }
        double error_m3s = LineSolver.delivered(line, errors, given.pressure()).standardErrorSi();
        return QuantityShown.HALF_WIDTH * Slopes.of(line, state.flow()).tipPerFlow() * error_m3s;
    }
}
