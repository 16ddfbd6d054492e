package org.hosewright.hydraulics.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The units that files and people may use, with their exact size in SI.
 *
 * @source BIPM, The International System of Units, 9th edition, 2019; NIST SP 811, 2008, appendix B
 *     (international foot 0.3048 m, avoirdupois pound 0.45359237 kg, US gallon 231 cubic inches)
 */
public enum Unit {
    PSI("psi", Kind.PRESSURE, Constants.PSI_PA),
    BAR("bar", Kind.PRESSURE, 1e5),
    KPA("kPa", Kind.PRESSURE, 1e3),
    GPM("gpm", Kind.FLOW, Constants.GPM_M3S),
    L_MIN("L/min", Kind.FLOW, 1e-3 / 60),
    FT("ft", Kind.LENGTH, Constants.FOOT_M),
    M("m", Kind.LENGTH, 1),
    IN("in", Kind.LENGTH, Constants.INCH_M),
    MM("mm", Kind.LENGTH, 1e-3),
    LBF("lbf", Kind.FORCE, Constants.LBF_N),
    N("N", Kind.FORCE, 1),
    GAL("gal", Kind.VOLUME, Constants.GALLON_M3),
    L("L", Kind.VOLUME, 1e-3),
    S("s", Kind.TIME, 1),
    MIN("min", Kind.TIME, 60),
    F("F", Kind.TEMPERATURE, 5.0 / 9),
    C("C", Kind.TEMPERATURE, 1),
    PERCENT("%", Kind.RATIO, 1e-2);

    private final String symbol;
    private final Kind kind;
    private final double size;

    Unit(String symbol, Kind kind, double size) {
        this.symbol = symbol;
        this.kind = kind;
        this.size = size;
    }

    /** The unit that is written so, exactly. */
    public static Optional<Unit> find(String symbol) {
        for (Unit unit : values()) {
            if (unit.symbol.equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** The units of a kind, the usual one first. */
    public static List<Unit> listOf(Kind kind) {
        List<Unit> found = new ArrayList<>();
        for (Unit unit : values()) {
            if (unit.kind == kind) {
                found.add(unit);
            }
        }
        return List.copyOf(found);
    }

    /** How it is written, exactly. */
    public String symbol() {
        return symbol;
    }

    public Kind kind() {
        return kind;
    }

    /** One of this unit in SI [Pa, m3/s, m, N, m3, s, K, 1]. */
    public double size() {
        return size;
    }

    /** A value in this unit, in SI; temperatures become kelvin above absolute zero. */
    public double toSi(double value) {
        return this == F ? (value - 32) * size + 273.15 : this == C ? value + 273.15 : value * size;
    }

    /** An SI value in this unit. */
    public double ofSi(double si) {
        return this == F ? (si - 273.15) / size + 32 : this == C ? si - 273.15 : si / size;
    }
}
