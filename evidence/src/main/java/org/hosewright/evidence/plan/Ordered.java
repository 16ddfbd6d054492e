package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hosewright.hydraulics.quantity.Volume;

/** A night's readings in the order to take them: lays mixed, flows within a lay mixed, the shut nozzle last on its lay.
 *
 * @param points the readings
 * @param again true where the last one goes back to the first lay, so that a drift can be seen
 */
record Ordered(List<TestPoint> points, boolean again) {
    /** From this correlation between time and length on, the first lay is gone back to where time and water allow. */
    static final double CONFUSED = 0.35;

    Ordered {
        points = List.copyOf(points);
    }

    static Ordered of(List<TestPoint> chosen, Budget budget) {
        List<List<TestPoint>> lays = mixed(chosen);
        List<TestPoint> inOrder = new ArrayList<>();
        lays.forEach(lay -> inOrder.addAll(within(lay)));
        Ordered once = new Ordered(inOrder, false);
        if (lays.size() < 2 || Math.abs(once.confusion()) < CONFUSED) {
            return once;
        }
        List<TestPoint> more = new ArrayList<>(inOrder);
        more.add(inOrder.get(0));
        Costs costs = new Costs(budget.pace());
        double most_m3 = budget.water().map(Volume::cubicMetres).orElse(Double.POSITIVE_INFINITY);
        boolean affordable = costs.seconds(more) <= budget.time().seconds() && costs.water_m3(more) <= most_m3;
        return affordable ? new Ordered(more, true) : once;
    }

    /** How far the order of the lays confuses time with length, between -1 and 1. */
    double confusion() {
        List<Double> lengths = new ArrayList<>();
        int before = -1;
        for (TestPoint point : points) {
            if (point.lay() != before) {
                lengths.add(point.line().length().metres());
            }
            before = point.lay();
        }
        return Sequence.confusion(lengths);
    }

    private static List<List<TestPoint>> mixed(List<TestPoint> chosen) {
        Map<Integer, List<TestPoint>> byLay = new TreeMap<>();
        chosen.forEach(point ->
                byLay.computeIfAbsent(point.lay(), any -> new ArrayList<>()).add(point));
        List<List<TestPoint>> lays = new ArrayList<>(byLay.values());
        List<Double> lengths =
                lays.stream().map(lay -> lay.get(0).line().length().metres()).toList();
        return Sequence.mixed(lengths).stream().map(lays::get).toList();
    }

    private static List<TestPoint> within(List<TestPoint> lay) {
        List<TestPoint> flowing = lay.stream().filter(point -> !point.shut()).toList();
        List<Double> flows = flowing.stream()
                .map(point -> point.state().flow().cubicMetresPerSecond())
                .toList();
        List<TestPoint> order = new ArrayList<>();
        Sequence.mixed(flows).forEach(place -> order.add(flowing.get(place)));
        lay.stream().filter(TestPoint::shut).forEach(order::add);
        return order;
    }
}
