package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How much of what is known of one unknown came from each night and from what was believed before.
 *
 * <p>The information on it is a sum over equations; that of a batch's departure is passed on to the nights that flew the batch. For a
 * number that each night tells by itself the shares are those of a weighted mean: without a night, the number would
 * move by its share of what the night says otherwise.
 */
final class Shares {
    private final Hierarchy hierarchy;
    private final double[] ofNights;
    private double ofBelief;

    /** The shares in an unknown.
     *
     * @param problem the hierarchy's
     * @param logs the spreads' logarithms
     * @param covariances of all unknowns with the one
     */
    Shares(Hierarchy hierarchy, Mixed problem, double[] logs, double[] covariances) {
        this.hierarchy = hierarchy;
        ofNights = new double[hierarchy.nights().size()];
        Map<Integer, Double> ofBatches = new LinkedHashMap<>();
        double whole = 0;
        for (Equation equation : problem.equations()) {
            double along = equation.along(covariances);
            int spread = equation.spread();
            double part = along * along * (spread == Equation.KNOWN ? 1 : Math.exp(-2 * logs[spread]));
            whole += part;
            switch (equation.owner().kind()) {
                case BELIEF -> ofBelief += part;
                case NIGHT -> ofNights[equation.owner().index()] += part;
                case BATCH -> ofBatches.merge(equation.owner().index(), part, Double::sum);
            }
        }
        ofBatches.forEach(this::passOn);
        ofBelief /= whole;
        for (int night = 0; night < ofNights.length; night++) {
            ofNights[night] /= whole;
        }
    }

    double ofBelief() {
        return ofBelief;
    }

    /** The nights, those worth most first. */
    List<NightShare> list() {
        List<NightShare> list = new ArrayList<>();
        for (int night = 0; night < ofNights.length; night++) {
            list.add(new NightShare(hierarchy.nights().get(night).id(), ofNights[night]));
        }
        list.sort(Comparator.comparingDouble(NightShare::share).reversed());
        return list;
    }

    private void passOn(int batch, double part) {
        List<Integer> nights = hierarchy.listNightsAt(batch);
        double sum = nights.stream().mapToDouble(night -> ofNights[night]).sum();
        if (!(sum > 0)) {
            ofBelief += part;
            return;
        }
        double[] before = ofNights.clone();
        nights.forEach(night -> ofNights[night] += part * before[night] / sum);
    }
}
