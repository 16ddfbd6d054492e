package org.hosewright.ledger.card;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.HosePackage;

/** The pump pressures of one package, level, from its own length to the longest that is safe.
 *
 * @param hosePackage the package
 * @param hose its hose in words ("1 3/4 in attack-175")
 * @param nozzle its nozzle in words ("7/8 in smooth bore at 50 psi")
 * @param gauge the gauge that the pressures are read on, in words
 * @param evidence what the numbers rest on, in words
 * @param entries by length, shortest first; the first is the package as it lies on the rig
 * @param floorAdder what to add to the gauge's figure for each floor up
 * @param mostGauge the highest figure that the gauge may show on this line, nozzle shut included; absent where
 *     nothing limits pressure
 * @param floorHeight the height that a floor counts
 * @param longestSafe the longest whole sections that are safe, level, less the company's reserve
 * @param stoppedBy what stops it there
 * @param cautions what the driver must keep in mind
 */
public record CardLine(
        HosePackage hosePackage,
        String hose,
        String nozzle,
        String gauge,
        String evidence,
        List<CardEntry> entries,
        Pressure floorAdder,
        Optional<Pressure> mostGauge,
        Length floorHeight,
        Length longestSafe,
        String stoppedBy,
        List<String> cautions) {
    public CardLine {
        entries = List.copyOf(entries);
        cautions = List.copyOf(cautions);
    }

    /** The same with one thing more to keep in mind, before all others. */
    CardLine cautioned(String first) {
        List<String> all = Stream.concat(Stream.of(first), cautions.stream()).toList();
        return new CardLine(
                hosePackage,
                hose,
                nozzle,
                gauge,
                evidence,
                entries,
                floorAdder,
                mostGauge,
                floorHeight,
                longestSafe,
                stoppedBy,
                all);
    }
}
