package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How much of what is known of one unknown came from each night and from what was believed of hose before.
 *
 * <p>The information on it is a sum over equations; that of what only carries a night's word (a batch's departure, an instrument's error,
 * a change since) is passed on to the nights that it carries. For a number that each night tells by itself the shares are those of a weighted mean: without a night, the number would
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
        Map<Integer, Double> ofLinks = new LinkedHashMap<>();
        double whole = 0;
        for (Equation equation : problem.equations()) {
            double along = equation.along(covariances);
            int spread = equation.spread();
            double part = along * along * (spread == Equation.KNOWN ? 1 : Math.exp(-2 * logs[spread]));
            whole += part;
            switch (equation.owner().kind()) {
                case BELIEF -> ofBelief += part;
                case NIGHT -> ofNights[equation.owner().index()] += part;
                case LINK -> ofLinks.merge(equation.owner().index(), part, Double::sum);
            }
        }
        double[] own = ofNights.clone();
        ofLinks.forEach((link, part) -> passOn(link, part, own));
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

    private void passOn(int link, double part, double[] own) {
        List<Integer> nights = hierarchy.listNightsAt(link);
        double sum = nights.stream().mapToDouble(night -> own[night]).sum();
        if (!(sum > 0)) {
            ofBelief += part;
            return;
        }
        nights.forEach(night -> ofNights[night] += part * own[night] / sum);
    }
}
