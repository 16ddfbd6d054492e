package org.hosewright.ledger.practice;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** What an order answers to a problem.
 *
 * @param line the ordered line it is about
 * @param level the ordered pressure on level ground
 * @param figure what the gauge must show: the level figure and the floors' adders
 */
public record Answer(OrderedLine line, OrderedPressure level, Pressure figure) {

    /** The answer of an order; empty where it orders nothing there, or the floors lift it above the line's highest figure. */
    public static Optional<Answer> find(OrderSet set, Problem problem) {
        return set.lines().stream()
                .filter(line -> line.hosePackage().equals(problem.hosePackage()))
                .findFirst()
                .flatMap(line -> set.find(problem.hosePackage(), problem.length())
                        .flatMap(level -> answer(line, level, problem.floors())));
    }

    private static Optional<Answer> answer(OrderedLine line, OrderedPressure level, int floors) {
        Pressure figure = new Pressure(
                level.figure().pascals() + floors * line.floorAdder().pascals());
        return line.mostGauge()
                        .filter(most -> figure.pascals() > most.pascals())
                        .isPresent()
                ? Optional.empty()
                : Optional.of(new Answer(line, level, figure));
    }
}
