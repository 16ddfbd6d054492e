package org.hosewright.ledger.order;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.card.CardSet;

/** Every ordered pressure of a company at one moment, as one thing that a person can sign.
 *
 * @param units the units of its figures
 * @param made the day it was worked out; ages of hose tests are taken at it
 * @param way how figures were rounded
 * @param lines by package, in the kit's order
 */
public record OrderSet(UnitSystem units, LocalDate made, Rounding.Way way, List<OrderedLine> lines) {
    /** Lengths as near as this are one length [m]. */
    private static final double SAME_m = 1e-6;

    public OrderSet {
        lines = List.copyOf(lines);
    }

    /** The set that a company's cards show. */
    public static OrderSet of(CardSet cards, Rounding.Way way) {
        List<OrderedLine> lines = cards.engines().stream()
                .flatMap(engine -> engine.lines().stream())
                .map(OrderedLine::of)
                .toList();
        return new OrderSet(cards.kit().units(), cards.made(), way, lines);
    }

    /** Ids of the engines that it holds figures for, in its order. */
    public List<String> engines() {
        Set<String> engines = new LinkedHashSet<>();
        lines.forEach(line -> engines.add(line.engine()));
        return List.copyOf(engines);
    }

    /** The lines of one engine.
     *
     * @throws InvalidInput it holds none
     */
    public List<OrderedLine> linesOf(String engine) {
        List<OrderedLine> found =
                lines.stream().filter(line -> line.engine().equals(engine)).toList();
        if (found.isEmpty()) {
            throw new InvalidInput("engine", engine, "an engine of the set: " + String.join(", ", engines()), "");
        }
        return found;
    }

    /** The pressure ordered for a package at a length of hose, where one stands. */
    public Optional<OrderedPressure> find(String hosePackage, Length hose) {
        return lines.stream()
                .filter(line -> line.hosePackage().equals(hosePackage))
                .flatMap(line -> line.pressures().stream())
                .filter(pressure -> Math.abs(pressure.length().metres() - hose.metres()) < SAME_m)
                .filter(OrderedPressure::stands)
                .findFirst();
    }
}
