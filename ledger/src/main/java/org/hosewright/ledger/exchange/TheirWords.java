package org.hosewright.ledger.exchange;

import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.order.OrderedPressure;

/** What a neighbour handed over in the words that pages and papers use: in our units, and in theirs where they differ.
 *
 * @param ours the units that are read here
 * @param theirs the units that it was written in
 */
public record TheirWords(UnitSystem ours, UnitSystem theirs) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

    /** Number and unit: "87 psi (600 kPa)". */
    public String text(Quantity quantity) {
        String here = QuantityShown.of(ours).text(quantity);
        return ours == theirs ? here : here + " (" + QuantityShown.of(theirs).text(quantity) + ")";
    }

    /** Its hose in laying order: "246 ft (75 m) of delivery-45, 1.77 in (45 mm), coupled 64 mm instantaneous". */
    public String hose(HandedPackage handed) {
        return handed.hose().stream().map(this::hose).collect(Collectors.joining("; then "));
    }

    private String hose(HandedHose hose) {
        return text(hose.length()) + " of " + hose.name() + ", " + text(hose.diameter()) + ", in sections of "
                + text(hose.section()) + ", " + coupled(hose.coupling());
    }

    /** Its nozzle: "tip-19, 19 mm smooth bore at 350 kPa, rated 118 gpm (448 L/min), coupling not stated". */
    public String nozzle(HandedPackage handed) {
        HandedNozzle nozzle = handed.nozzle();
        return nozzle.name() + ", " + nozzle.what() + ", rated " + text(nozzle.flow()) + " at " + text(nozzle.at())
                + ", " + coupled(nozzle.coupling());
    }

    /** How far its owner flew it: "Flown to 410 ft (125 m); longer is reckoned." */
    public String flown(HandedPackage handed) {
        return handed.line().pressures().stream()
                .filter(OrderedPressure::tested)
                .map(OrderedPressure::length)
                .max(Comparator.comparingDouble(Length::metres))
                .map(length -> "Flown to " + text(length) + "; longer is reckoned.")
                .orElse("Not flown: reckoned throughout.");
    }

    /** Which order its figures are of: "order 3, 0a1b2c3d, signed by T. Marsh on 19 May 2026". */
    public static String order(Handover handover) {
        return handover.order()
                .map(order -> "order " + order.number() + ", " + order.code() + ", signed by " + order.by() + " on "
                        + DAY.format(order.signed()))
                .orElse("no order");
    }

    private static String coupled(Optional<Coupling> coupling) {
        return coupling.map(there -> "coupled " + there.words()).orElse("coupling not stated");
    }
}
