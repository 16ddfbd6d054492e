package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** An automatic tip: square below its band, flat within it, square above it.
 *
 * @param holds_Pa pressure held [Pa]; above 0
 * @param from_m3s lowest flow held [m3/s]; above 0
 * @param to_m3s highest flow held [m3/s]; above {@code from_m3s}
 */
public record HeldTip(double holds_Pa, double from_m3s, double to_m3s) implements Law {
    public HeldTip {
        Numbers.requirePositive("pressure held", holds_Pa);
        Numbers.requirePositive("lowest flow held", from_m3s);
        if (!(to_m3s > from_m3s)) {
            throw new InvalidInput("highest flow held", Numbers.plain(to_m3s), "more than the lowest", "");
        }
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double root = size < from_m3s ? size / from_m3s : size > to_m3s ? size / to_m3s : 1;
        return Math.signum(flow_m3s) * holds_Pa * root * root;
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        double end = size < from_m3s ? from_m3s : to_m3s;
        return size >= from_m3s && size <= to_m3s ? 0 : 2 * holds_Pa * size / (end * end);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double root = Math.sqrt(Math.abs(drop_Pa) / holds_Pa);
        return Math.signum(drop_Pa) * root * (root <= 1 ? from_m3s : to_m3s);
    }
}
