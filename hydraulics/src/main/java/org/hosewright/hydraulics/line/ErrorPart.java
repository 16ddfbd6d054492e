package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Pressure;

/** What one number's own standard error does to a line's needed pump pressure.
 *
 * @param id the hose, discharge, appliance or nozzle
 * @param pressure the move of the needed pressure; negative where more of the number needs less
 */
public record ErrorPart(String id, Pressure pressure) {

    /** The parts of the error of what is asked; numbers without a stated error have none. */
    public static List<ErrorPart> listOf(Line line, Ask ask) {
        Slopes slopes = Slopes.of(line, LineSolver.solve(line, ask).flow());
        List<ErrorPart> parts = new ArrayList<>();
        for (LossTerm term : LossTerm.listOf(line)) {
            if (term.error().isPresent()) {
                parts.add(new ErrorPart(term.id(), new Pressure(term.weighted() * slopes.pumpPerResistance())));
            }
        }
        double factor =
                line.nozzle().flow().map(known -> known.standardErrorSi()).orElse(0.0);
        if (factor > 0) {
            boolean atTip = ask instanceof Ask.AtTip;
            double per = atTip ? slopes.pumpPerFactorAtTip() : slopes.pumpPerFactorAtFlow();
            parts.add(new ErrorPart(line.tipName(), new Pressure(factor * per)));
        }
        return parts;
    }
}
