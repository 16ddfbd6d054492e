package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** Needed pump pressure against length, level and at several rises, under the limits that stop it.
 *
 * @param units for the round numbers on the axes
 * @param section from coupling to coupling, for the ticks
 * @param curves the first one is the main one, with its band; not empty
 * @param limits pressures not to be passed
 */
public record ReachDrawing(UnitSystem units, Length section, List<ReachCurve> curves, List<LimitBand> limits) {
    public ReachDrawing {
        curves = List.copyOf(curves);
        limits = List.copyOf(limits);
        if (curves.isEmpty()) {
            throw new InvalidInput("reach drawing", "", "at least one curve", "");
        }
    }

    /** The longest length that any curve goes to. */
    public Length length() {
        double most_m = 0;
        for (ReachCurve curve : curves) {
            for (PressureAt point : curve.points()) {
                most_m = Math.max(most_m, point.at().metres());
            }
        }
        return new Length(most_m);
    }

    /** The curves on a sheet. */
    public Drawing draw(Sheet sheet) {
        return CurvesDrawing.of(this, sheet);
    }
}
