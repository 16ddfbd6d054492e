package org.hosewright.hydraulics.working;

import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Unit;

/** The formulas of a tip with its numbers put in.
 *
 * @param paper how numbers are written
 * @param line the line that it sits on
 */
record TipText(Paper paper, Line line) {
    private static final String BORE_SOURCE = "smooth bore, the trade's formula with 29.7 in gpm, in and psi";
    private static final String FOG_SOURCE = "a fixed opening through its rated point";

    private Tip rated() {
        return line.nozzle().rated(line.setting());
    }

    /** The flow that a tip pressure drives. */
    Step flow(Pressure tip, Flow flow) {
        String result = paper.flow(flow) + paper.flowUnit();
        String says = "Flow of " + line.nozzle().id() + " at " + paper.given(tip) + paper.pressureUnit();
        if (rated() instanceof SmoothBore bore) {
            String formula = "Q = " + f() + constant() + " d\u00b2 \u221ap";
            String numbers = factor() + constant() + " \u00d7 " + paper.bore(bore.bore()) + "\u00b2 \u00d7 \u221a"
                    + paper.given(tip);
            return new Step(says, formula, numbers, result, BORE_SOURCE);
        }
        String numbers = factor() + paper.given(point(flow)) + " \u00d7 \u221a(" + paper.given(tip) + " / "
                + paper.given(rated().at()) + ")";
        return new Step(says, "Q = " + f() + "Q rated \u00d7 \u221a(p / p rated)", numbers, result, FOG_SOURCE);
    }

    /** The tip pressure that a flow makes; a part of a sum. */
    Row pressure(LineState state) {
        return row(state.flow(), state.flow(), state.tip());
    }

    /** What the tip as it stands at a state would take at another flow; a part of a sum. */
    Row takes(Flow at, LineState state) {
        double share = at.cubicMetresPerSecond() / state.flow().cubicMetresPerSecond();
        return row(at, state.flow(), new Pressure(state.tip().pascals() * share * share));
    }

    private Row row(Flow at, Flow real, Pressure tip) {
        String says = "Pressure at " + line.nozzle().id() + " at " + paper.flow(at) + paper.flowUnit();
        double value = paper.units().show(tip);
        if (rated() instanceof SmoothBore bore) {
            String formula = "p = (Q / (" + f() + constant() + " d\u00b2))\u00b2";
            String numbers = "(" + paper.flow(at) + " / (" + factor() + constant() + " \u00d7 "
                    + paper.bore(bore.bore()) + "\u00b2))\u00b2";
            return new Row("tip", says, formula, numbers, BORE_SOURCE, value);
        }
        if (holds(real)) {
            String source = "an automatic tip: within its band the pressure says nothing about the flow";
            return new Row("tip", says, "p = p held", paper.given(rated().at()), source, value);
        }
        String point = paper.given(point(real));
        String rated = f().isEmpty() ? point : "(" + factor() + point + ")";
        String numbers = paper.given(rated().at()) + " \u00d7 (" + paper.flow(at) + " / " + rated + ")\u00b2";
        String formula = "p = p rated \u00d7 (Q / " + (f().isEmpty() ? "Q rated" : "(f Q rated)") + ")\u00b2";
        return new Row("tip", says, formula, numbers, FOG_SOURCE, value);
    }

    /** The reaction on the people at the nozzle. */
    Step reaction(LineState state) {
        String says = "Reaction of " + line.nozzle().id();
        String result = paper.force(state.reaction());
        if (rated() instanceof SmoothBore bore) {
            String solid =
                    Paper.significant(paper.us() ? Constants.SOLID_REACTION : Constants.SOLID_REACTION * 1e-3, 4);
            String numbers = solid + " \u00d7 " + factor() + paper.bore(bore.bore()) + "\u00b2 \u00d7 "
                    + paper.given(state.tip());
            return new Step(
                    says, "F = " + solid + " " + f() + "d\u00b2 p", numbers, result, "solid stream, exact form");
        }
        String fog = Paper.significant(
                Constants.FOG_REACTION
                        * unit(paper.units().flow())
                        * Math.sqrt(unit(paper.units().pressure()))
                        / unit(paper.units().force()),
                4);
        String numbers = fog + " \u00d7 " + paper.flow(state.flow()) + " \u00d7 \u221a" + paper.given(state.tip());
        return new Step(says, "F = " + fog + " Q \u221ap", numbers, result, "fog stream, exact form");
    }

    /** True where an automatic tip holds its pressure. */
    boolean holds(Flow flow) {
        double q = flow.cubicMetresPerSecond();
        return line.tip() instanceof Automatic automatic
                && q >= automatic.from().cubicMetresPerSecond()
                && q <= automatic.to().cubicMetresPerSecond();
    }

    /** The rated flow of a fog tip; of an automatic tip, the end of its band that a flow lies beyond. */
    private Flow point(Flow flow) {
        if (rated() instanceof Automatic automatic) {
            boolean below = flow.cubicMetresPerSecond()
                    < ((Automatic) line.tip()).from().cubicMetresPerSecond();
            return below ? automatic.from() : automatic.to();
        }
        return rated() instanceof Fog fog ? fog.rated() : rated().flowAt();
    }

    private String constant() {
        double bore = unit(paper.us() ? Unit.IN : Unit.MM);
        double value = Constants.SMOOTH_BORE
                * bore
                * bore
                * Math.sqrt(unit(paper.units().pressure()));
        return Paper.significant(value / unit(paper.units().flow()), 5);
    }

    private String f() {
        return line.nozzle().flow().isPresent() ? "f " : "";
    }

    private String factor() {
        return line.nozzle()
                .flow()
                .map(known -> Paper.significant(known.value().value(), 5) + " \u00d7 ")
                .orElse("");
    }

    private static double unit(Unit unit) {
        return unit.size();
    }
}
