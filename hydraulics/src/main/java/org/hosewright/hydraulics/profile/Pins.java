package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hosewright.hydraulics.quantity.Pressure;

/** Readings as dots with error bars; those set aside have another shape and keep their names. */
final class Pins {
    private static final double RADIUS_em = 0.33;
    private static final double CAP_em = 0.33;

    private Pins() {}

    static void stick(Pen pen, Plot plot, List<Pin> pins) {
        for (Pin pin : pins) {
            Role role = role(pin);
            Point at = at(plot, pin);
            if (pin.half().pascals() > 0) {
                double top = plot.y(
                        new Pressure(pin.pressure().pascals() + pin.half().pascals()));
                double bottom = plot.y(
                        new Pressure(pin.pressure().pascals() - pin.half().pascals()));
                double cap = CAP_em * pen.em();
                pen.stroke(role, at.x(), top, at.x(), bottom);
                pen.stroke(role, at.x() - cap, top, at.x() + cap, top);
                pen.stroke(role, at.x() - cap, bottom, at.x() + cap, bottom);
            }
            pen.dot(role, at, RADIUS_em * pen.em(), pin.aside() ? Shape.DIAMOND : Shape.CIRCLE);
        }
    }

    /** Names, those set aside first, so that they find room. */
    static void name(Names names, Plot plot, List<Pin> pins) {
        List<Pin> asideFirst = new ArrayList<>(pins);
        asideFirst.sort(Comparator.comparing(pin -> !pin.aside()));
        for (Pin pin : asideFirst) {
            names.beside(role(pin), at(plot, pin), pin.label());
        }
    }

    private static Role role(Pin pin) {
        return pin.aside() ? Role.PIN_ASIDE : Role.PIN;
    }

    private static Point at(Plot plot, Pin pin) {
        return new Point(plot.x(pin.at()), plot.y(pin.pressure()));
    }
}
