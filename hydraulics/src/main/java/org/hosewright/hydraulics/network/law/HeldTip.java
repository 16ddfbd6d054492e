package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** An automatic tip: square below its band, flat within it, square above it.
 *
 * @param holds_Pa pressure held [Pa]; above 0
 * @param from_m3s lowest flow held [m3/s]; above 0
 * @param to_m3s highest flow held [m3/s]; above {@code from_m3s}
 */
public record HeldTip(double holds_Pa, double from_m3s, double to_m3s) implements Law {
    /** Just past an end of the band, as a share of that end [1]. */
    private static final double BELOW = 1 - 1e-12;

    private static final double ABOVE = 1 + 1e-12;

    private static final List<String> NAMES = List.of("holds_Pa", "from_m3s", "to_m3s");

    public HeldTip {
        Numbers.requirePositive("pressure held", holds_Pa);
        Numbers.requirePositive("lowest flow held", from_m3s);
        if (!(to_m3s > from_m3s) || Double.isInfinite(to_m3s)) {
            throw new InvalidInput("highest flow held", Numbers.plain(to_m3s), "more than the lowest", "");
        }
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double root = root(Math.abs(flow_m3s));
        return Math.signum(flow_m3s) * holds_Pa * root * root;
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double end = end(size);
        return size >= from_m3s && size <= to_m3s ? 0 : 2 * holds_Pa * size / (end * end);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double root = Math.sqrt(Math.abs(drop_Pa) / holds_Pa);
        return Math.signum(drop_Pa) * root * (root <= 1 ? from_m3s : to_m3s);
    }

    @Override
    public double pause_m3s(double from_m3s, double to_m3s) {
        double was = Math.abs(from_m3s);
        double is = from_m3s * to_m3s < 0 ? 0 : Math.abs(to_m3s);
        double sign = Math.signum(from_m3s == 0 ? to_m3s : from_m3s);
        if (was < this.from_m3s) {
            return from_m3s * to_m3s < 0 ? to_m3s : sign * Math.min(is, this.from_m3s);
        }
        if (was > this.to_m3s) {
            return sign * Math.max(is, this.to_m3s);
        }
        return is < this.from_m3s
                ? sign * this.from_m3s * BELOW
                : is > this.to_m3s ? sign * this.to_m3s * ABOVE : to_m3s;
    }

    @Override
    public List<String> listCoefficients() {
        return NAMES;
    }

    @Override
    public double coefficient(int at) {
        return Numbered.require(this, at) == 0 ? holds_Pa : at == 1 ? from_m3s : to_m3s;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new HeldTip(at == 0 ? value : holds_Pa, at == 1 ? value : from_m3s, at == 2 ? value : to_m3s);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double root = root(size);
        boolean ruling = Numbered.require(this, at) == 1 ? size < from_m3s : size > to_m3s;
        double byEnd = ruling ? -2 * holds_Pa * root * root / end(size) : 0;
        return Math.signum(flow_m3s) * (at == 0 ? root * root : byEnd);
    }

    private double root(double size) {
        return size < from_m3s ? size / from_m3s : size > to_m3s ? size / to_m3s : 1;
    }

    private double end(double size) {
        return size < from_m3s ? from_m3s : to_m3s;
    }
}
