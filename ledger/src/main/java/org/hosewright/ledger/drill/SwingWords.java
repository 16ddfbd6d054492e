package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;

/** The sentences about how far one number hangs on single readings.
 *
 * @param what the number, in words
 * @param all the number from all readings in use
 * @param measure how it is said
 */
record SwingWords<Q extends Quantity>(String what, Known<Q> all, Measure<Q> measure) {

    /** What leaving out does to the number.
     *
     * @param without the number by the reading left out, where it would still be known
     * @param untold the other readings
     */
    Swing swing(Map<String, Known<Q>> without, List<String> untold) {
        List<String> order = new ArrayList<>(without.keySet());
        order.sort(Comparator.comparingDouble(reading -> -Math.abs(move(without.getOrDefault(reading, all)))));
        List<String> sentences = new ArrayList<>();
        if (!untold.isEmpty()) {
            sentences.add(untold(untold, without.isEmpty()));
        }
        Optional<String> first = order.stream().findFirst();
        first.ifPresent(reading -> sentences.add(told(order, without)));
        return new Swing(what, first, first.map(without::get), untold, String.join(" ", sentences));
    }

    private double move(Known<Q> known) {
        return known.value().si() - all.value().si();
    }

    private String untold(List<String> readings, boolean none) {
        if (none) {
            return "With any one reading fewer " + what + " could not be told.";
        }
        String which = readings.size() == 1
                ? "reading " + readings.get(0)
                : "any one of the readings " + String.join(", ", readings);
        return "Without " + which + " " + what + " could not be told.";
    }

    private String told(List<String> order, Map<String, Known<Q>> without) {
        String reading = order.get(0);
        Known<Q> first = without.getOrDefault(reading, all);
        double move = move(first);
        if (measure.tenths(move) <= 1) {
            return "No reading moves " + what + " by more than " + measure.change(move) + ".";
        }
        String most = "Without reading " + reading + " " + what + " would come out at "
                + measure.text().apply(first) + ", " + measure.change(move) + (move > 0 ? " more" : " less");
        if (order.size() < 2) {
            return most + ".";
        }
        double next = move(without.getOrDefault(order.get(1), all));
        return most + "; no other reading moves it by more than " + measure.change(next) + ".";
    }
}
