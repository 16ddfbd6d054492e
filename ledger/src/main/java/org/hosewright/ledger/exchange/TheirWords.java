package org.hosewright.ledger.exchange;

import java.util.Optional;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Coupling;

/** What a neighbour handed over in the words that pages and papers use: in our units, and in theirs where they differ.
 *
 * @param ours the units that are read here
 * @param theirs the units that it was written in
 */
public record TheirWords(UnitSystem ours, UnitSystem theirs) {
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

    /** Its nozzle: "tip-19, 19 mm smooth bore at 350 kPa, coupling not stated". */
    public String nozzle(HandedPackage handed) {
        HandedNozzle nozzle = handed.nozzle();
        return nozzle.name() + ", " + nozzle.what() + " (" + text(nozzle.flow()) + "), " + coupled(nozzle.coupling());
    }

    /** Which order its figures are of: "order 3, 0a1b2c3d, signed by T. Marsh on 2026-05-19". */
    public static String order(Handover handover) {
        return handover.order()
                .map(order -> "order " + order.number() + ", " + order.code() + ", signed by " + order.by() + " on "
                        + order.signed())
                .orElse("no order");
    }

    private String coupled(Optional<Coupling> coupling) {
        return coupling.map(there -> "coupled " + QuantityShown.of(theirs).size(there.size()) + " " + there.kind())
                .orElse("coupling not stated");
    }
}
