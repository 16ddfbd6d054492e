package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.network.Derivatives;
import org.hosewright.hydraulics.network.NetworkState;
import org.hosewright.hydraulics.network.law.Law;

/** Where the numbers of the kit stand in a lay's network: which links lose more with each, and how much more. */
final class KitNumbers {
    private final Map<String, List<Place>> places = new LinkedHashMap<>();

    /** A link that a number stands in.
     *
     * @param link its name
     * @param lossBy how its loss grows with the number, at its flow
     */
    private record Place(String link, DoubleUnaryOperator lossBy) {}

    /** A link with its law. */
    record Lawful(String link, Law law) {}

    void piping(String discharge, String link) {
        add(discharge, new Place(link, q -> q * Math.abs(q)));
    }

    /** A hose's coefficient; hose that goes by a law of its bore has none. */
    void hose(Run run, String link) {
        if (run.hose().law().isEmpty()) {
            double length_m = run.length().metres();
            add(run.hose().id(), new Place(link, q -> length_m * q * Math.abs(q)));
        }
    }

    /** A nozzle's flow factor f: it stands at the pressure of the flow q / f, so that more of it takes less. */
    void tip(End.Outlet outlet, Lawful tip) {
        outlet.nozzle().flow().ifPresent(factor -> {
            double f = factor.value().value();
            add(
                    outlet.nozzle().tipName(outlet.setting()),
                    new Place(tip.link(), q -> -q / f * tip.law().slope(q)));
        });
    }

    private void add(String term, Place place) {
        places.computeIfAbsent(term, none -> new ArrayList<>()).add(place);
    }

    /** How an answer moves with a number; 0 where it stands nowhere. */
    double slope(Derivatives answer, NetworkState state, String term) {
        double sum = 0;
        for (Place place : places.getOrDefault(term, List.of())) {
            sum += answer.byLoss(place.link()) * place.lossBy().applyAsDouble(state.flow_m3s(place.link()));
        }
        return sum;
    }
}
