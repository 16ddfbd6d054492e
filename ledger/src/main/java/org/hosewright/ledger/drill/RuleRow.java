package org.hosewright.ledger.drill;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a pump pressure that somebody would order really delivers at a length, level, beside what is needed.
 *
 * @param line the line it is about
 * @param length hose length
 * @param rulePump the pump pressure that the rule (or the book) says
 * @param flow flow it delivers
 * @param tip tip pressure it delivers
 * @param reaction reaction it gives
 * @param neededPump pump pressure for the tip pressure the nozzle is meant for
 */
public record RuleRow(
        TestedLine line,
        Length length,
        Pressure rulePump,
        Known<Flow> flow,
        Pressure tip,
        Force reaction,
        Known<Pressure> neededPump) {}
