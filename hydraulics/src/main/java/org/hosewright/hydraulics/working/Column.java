package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Numbers;

/** Numbers to be added up, rounded together so that the shown parts add up to the shown sum.
 *
 * <p>The sum is rounded the usual way. Parts are rounded down first; the units of the last digit that are then missing
 * go to the parts that lost most. No part is off by a whole unit of its last digit.
 */
final class Column {
    private final List<Double> values = new ArrayList<>();
    private final int decimals;

    Column(int decimals) {
        this.decimals = decimals;
    }

    /** Adds a number and gives its row. */
    int add(double value) {
        values.add(value);
        return values.size() - 1;
    }

    String sum() {
        return Numbers.fixed(total(), decimals);
    }

    /** The parts as shown, row by row. */
    List<String> parts() {
        double unit = 1;
        for (int i = 0; i < decimals; i++) {
            unit *= 10;
        }
        long[] units = new long[values.size()];
        double[] lost = new double[values.size()];
        long missing = Math.round(Numbers.toNearest(total() * unit, 1));
        for (int i = 0; i < units.length; i++) {
            units[i] = (long) Math.floor(values.get(i) * unit);
            lost[i] = values.get(i) * unit - units[i];
            missing -= units[i];
        }
        for (; missing > 0; missing--) {
            int most = 0;
            for (int i = 1; i < lost.length; i++) {
                most = lost[i] > lost[most] ? i : most;
            }
            units[most]++;
            lost[most] = -1;
        }
        List<String> shown = new ArrayList<>();
        for (long count : units) {
            shown.add(Numbers.fixed(count / unit, decimals));
        }
        return shown;
    }

    private double total() {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }
}
