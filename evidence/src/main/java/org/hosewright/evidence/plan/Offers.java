package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;

/** All readings that could be taken, what is known without any, and what laying and filling each lay costs. */
final class Offers {
    private final double[][] beforehand;
    private final int unknowns;
    private final List<Offer> list;
    private final List<Double> layings_s;
    private final List<Double> fillings_m3;

    /** Makes the offers.
     *
     * @param unknowns how many unknowns there are
     * @param beforehand rows of what is known before any reading; the offers' own from here on
     * @param list the readings that could be taken
     * @param layings_s time to lay and charge each lay [s]
     * @param fillings_m3 water to fill each lay [m3]
     */
    Offers(int unknowns, double[][] beforehand, List<Offer> list, List<Double> layings_s, List<Double> fillings_m3) {
        this.unknowns = unknowns;
        this.beforehand = beforehand;
        this.list = List.copyOf(list);
        this.layings_s = List.copyOf(layings_s);
        this.fillings_m3 = List.copyOf(fillings_m3);
    }

    int unknowns() {
        return unknowns;
    }

    double[][] beforehand() {
        return beforehand;
    }

    int size() {
        return list.size();
    }

    Offer get(int place) {
        return list.get(place);
    }

    int lays() {
        return layings_s.size();
    }

    double laying_s(int lay) {
        return layings_s.get(lay);
    }

    double filling_m3(int lay) {
        return fillings_m3.get(lay);
    }

    /** The places of the offers on a lay. */
    List<Integer> listOn(int lay) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < list.size(); place++) {
            if (list.get(place).lay() == lay) {
                places.add(place);
            }
        }
        return places;
    }
}
