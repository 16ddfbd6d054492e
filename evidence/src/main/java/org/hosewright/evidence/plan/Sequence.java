package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;

/** The order of things taken one after another, mixed so that what changes slowly with time is not taken for what they differ in.
 *
 * <p>Each thing stays whole, so that no hose is laid twice; what is chosen is the order with the least correlation between place
 * and size, and among those alike the one that moves least.
 */
final class Sequence {
    /** Up to so many things every order is tried; beyond, small and large ones are taken by turns. */
    private static final int MOST_TRIED = 7;

    private static final double SAME = 1e-9;

    private final List<Double> sizes;
    private List<Integer> best = List.of();
    private double least = Double.POSITIVE_INFINITY;
    private double leastMoved = Double.POSITIVE_INFINITY;

    private Sequence(List<Double> sizes) {
        this.sizes = sizes;
    }

    /** The order, as places of the sizes. */
    static List<Integer> mixed(List<Double> sizes) {
        if (sizes.size() > MOST_TRIED) {
            return alternating(sizes);
        }
        Sequence sequence = new Sequence(sizes);
        sequence.tryAll(new ArrayList<>());
        return sequence.best;
    }

    /** How far an order confuses time with size: the correlation, between -1 and 1; 0 where nothing differs. */
    static double confusion(List<Double> inOrder) {
        double middle = (inOrder.size() - 1) / 2.0;
        double mean =
                inOrder.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double both = 0;
        double time = 0;
        double size = 0;
        for (int i = 0; i < inOrder.size(); i++) {
            both += (i - middle) * (inOrder.get(i) - mean);
            time += (i - middle) * (i - middle);
            size += (inOrder.get(i) - mean) * (inOrder.get(i) - mean);
        }
        return time == 0 || size == 0 ? 0 : both / Math.sqrt(time * size);
    }

    private void tryAll(List<Integer> begun) {
        if (begun.size() == sizes.size()) {
            judge(begun);
            return;
        }
        for (int i = 0; i < sizes.size(); i++) {
            if (!begun.contains(i)) {
                begun.add(i);
                tryAll(begun);
                begun.remove(begun.size() - 1);
            }
        }
    }

    private void judge(List<Integer> order) {
        List<Double> inOrder = order.stream().map(sizes::get).toList();
        double confusion = Math.abs(confusion(inOrder));
        double moved = 0;
        for (int i = 1; i < inOrder.size(); i++) {
            moved += Math.abs(inOrder.get(i) - inOrder.get(i - 1));
        }
        boolean alike = Math.abs(confusion - least) <= SAME;
        if (confusion < least - SAME || (alike && moved < leastMoved - SAME)) {
            least = confusion;
            leastMoved = moved;
            best = List.copyOf(order);
        }
    }

    private static List<Integer> alternating(List<Double> sizes) {
        List<Integer> rising = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            rising.add(i);
        }
        rising.sort((one, other) -> Double.compare(sizes.get(one), sizes.get(other)));
        List<Integer> order = new ArrayList<>();
        int middle = rising.size() / 2;
        for (int i = 0; i < rising.size(); i++) {
            int apart = (i + 1) / 2;
            order.add(rising.get(Math.floorMod(i % 2 == 0 ? middle + apart : middle - apart, rising.size())));
        }
        return order;
    }
}
