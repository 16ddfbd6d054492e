package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** How a written number becomes SI: times a size, from a unit's own zero.
 *
 * @param size one of it in SI
 * @param unit the unit, where it is a plain one
 */
record Scale(double size, Optional<Unit> unit) {
    static Scale of(Unit unit) {
        return new Scale(unit.size(), Optional.of(unit));
    }

    static Scale of(double size) {
        return new Scale(size, Optional.empty());
    }

    double toSi(Decimal number) {
        return unit.isPresent() ? number.times(unit.get()) : number.times(size);
    }

    double ofSi(double si) {
        return unit.isPresent() ? unit.get().ofSi(si) : si / size;
    }

    /** How many more it takes from a number to a value in SI. */
    double missing(Decimal number, double si) {
        boolean shifted = unit.isPresent() && unit.get().kind() == Kind.TEMPERATURE;
        double from = shifted ? unit.get().toSi(number.hi()) : number.hi() * size;
        return (si - from - (shifted ? 0 : number.lostIn(size))) / size - number.lo();
    }
}
