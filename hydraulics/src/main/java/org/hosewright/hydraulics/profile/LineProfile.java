package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A line from the pump at the left to the tip at the right, to scale in length, with all that is pinned to it.
 *
 * @param units for the round numbers on the axes
 * @param hose in laying order; not empty
 * @param pressure along the line from the pump to the tip, two or more; two at one distance are a step
 * @param ground under it from the pump to the tip; empty is level, two at one distance are a wall
 * @param pins readings
 * @param limits pressures not to be passed
 * @param pump the answer at the pump
 * @param tip the answer at the tip
 */
public record LineProfile(
        UnitSystem units,
        List<HoseRun> hose,
        List<PressureAt> pressure,
        List<GroundAt> ground,
        List<Pin> pins,
        List<LimitBand> limits,
        Answer pump,
        Answer tip) {
    public LineProfile {
        hose = List.copyOf(hose);
        pressure = List.copyOf(pressure);
        ground = List.copyOf(ground);
        pins = List.copyOf(pins);
        limits = List.copyOf(limits);
        if (hose.isEmpty() || pressure.size() < 2) {
            throw new InvalidInput("line profile", "", "at least one hose and the pressure at its ends", "");
        }
    }

    /** The profile of a line solved for what is asked, with the band that its losses' errors leave.
     *
     * <p>Its answers are the pump pressure and the tip's flow, pressure and reaction.
     */
    public static LineProfile of(Line line, LossErrors errors, Ask ask, UnitSystem units) {
        return SolvedLine.of(line, errors, ask).profile(units);
    }

    public LineProfile withPins(List<Pin> pins) {
        return new LineProfile(units, hose, pressure, ground, pins, limits, pump, tip);
    }

    public LineProfile withLimits(List<LimitBand> limits) {
        return new LineProfile(units, hose, pressure, ground, pins, limits, pump, tip);
    }

    public LineProfile withGround(List<GroundAt> ground) {
        return new LineProfile(units, hose, pressure, ground, pins, limits, pump, tip);
    }

    public LineProfile withAnswers(Answer pump, Answer tip) {
        return new LineProfile(units, hose, pressure, ground, pins, limits, pump, tip);
    }

    /** The whole length of hose. */
    public Length length() {
        return new Length(
                hose.stream().mapToDouble(run -> run.length().metres()).sum());
    }

    /** The profile on a sheet. */
    public Drawing draw(Sheet sheet) {
        return ProfileDrawing.of(this, sheet);
    }
}
