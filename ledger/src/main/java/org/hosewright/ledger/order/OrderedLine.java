package org.hosewright.ledger.order;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardLine;

/** The ordered pressures of one package.
 *
 * @param engine id of the engine
 * @param discharge id of the discharge
 * @param hosePackage id of the package
 * @param gauge the gauge that the figures are read on, in words
 * @param evidence what they rest on, in words
 * @param floorAdder what to add for each floor up
 * @param mostGauge the figure never to exceed on this line, where pressure limits it
 * @param longestSafe the longest safe stretch less the reserve
 * @param pressures by length, shortest first
 */
public record OrderedLine(
        String engine,
        String discharge,
        String hosePackage,
        String gauge,
        String evidence,
        Pressure floorAdder,
        Optional<Pressure> mostGauge,
        Length longestSafe,
        List<OrderedPressure> pressures) {
    public OrderedLine {
        pressures = List.copyOf(pressures);
    }

    static OrderedLine of(CardLine line) {
        return new OrderedLine(
                line.hosePackage().engine(),
                line.hosePackage().discharge(),
                line.hosePackage().id(),
                line.gauge(),
                line.evidence(),
                line.floorAdder(),
                line.mostGauge(),
                line.longestSafe(),
                line.entries().stream().map(OrderedPressure::of).toList());
    }
}
