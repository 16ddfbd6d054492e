package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Where lengths and pressures stand in a drawing, both to scale.
 *
 * @param left x of length 0
 * @param right x of the whole length
 * @param top y of the highest pressure
 * @param bottom y of the lowest pressure
 * @param length the whole length; above 0
 * @param low lowest pressure
 * @param high highest pressure; above the lowest
 */
public record Plot(double left, double right, double top, double bottom, Length length, Pressure low, Pressure high) {
    public Plot {
        Numbers.requirePositive("length of a drawing", length.metres());
        Numbers.requirePositive("pressures of a drawing", high.pascals() - low.pascals());
        Numbers.requirePositive("width of a drawing", right - left);
        Numbers.requirePositive("height of a drawing", bottom - top);
    }

    public double x(Length at) {
        return left + (right - left) * at.metres() / length.metres();
    }

    public double y(Pressure pressure) {
        double share = (pressure.pascals() - low.pascals()) / (high.pascals() - low.pascals());
        return bottom - (bottom - top) * share;
    }

    /** The length at an x, held to the line. */
    public Length lengthAt(double x) {
        double share = Math.max(0, Math.min(1, (x - left) / (right - left)));
        return new Length(share * length.metres());
    }

    public Pressure pressureAt(double y) {
        double share = (bottom - y) / (bottom - top);
        return new Pressure(low.pascals() + share * (high.pascals() - low.pascals()));
    }
}
