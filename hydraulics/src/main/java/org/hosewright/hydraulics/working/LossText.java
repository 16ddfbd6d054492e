package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a line takes at a flow, piece by piece with its numbers put in.
 *
 * @param paper how numbers are written
 * @param line the line
 * @param flow its flow
 */
record LossText(Paper paper, Line line, Flow flow) {
    private static final String LOSS_SOURCE = "FL = C (Q/100)\u00b2 (L/100), the trade's coefficient form";

    /** All pieces but the tip, in the order that the water meets them, rise last. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(piping());
        for (Run run : line.runs()) {
            rows.add(hose(run));
            run.end().ifPresent(end -> rows.add(appliance(end)));
        }
        rows.add(rise());
        return rows;
    }

    Row hose(Run run) {
        String name = run.hose().id();
        Pressure loss = run.hose().loss(run.length(), flow);
        if (run.hose().law().isPresent()) {
            String law = run.hose().law().get().says();
            return new Row(name, "Loss of " + paper.length(run.length()) + " of " + name, "", "", law, show(loss));
        }
        String numbers = paper.loss(run.hose().loss().value()) + " \u00d7 " + paper.hundreds(flow) + "\u00b2 \u00d7 "
                + paper.hundreds(run.length());
        return new Row(
                name,
                "Loss of " + paper.length(run.length()) + " of " + name,
                "C (Q/100)\u00b2 (L/100)",
                numbers,
                LOSS_SOURCE,
                show(loss));
    }

    Row piping() {
        String id = line.discharge().id();
        if (line.discharge().loss().isEmpty()) {
            return new Row("piping", "Loss of the piping of " + id, "", "0", "not known: none is counted", 0);
        }
        return point("piping", "Loss of the piping of " + id, line.discharge().lossOrNone());
    }

    Row appliance(Appliance appliance) {
        String says = "Loss of " + appliance.id();
        if (appliance.loss() instanceof ApplianceLoss.Quadratic quadratic) {
            return point(appliance.id(), says, quadratic.loss().value());
        }
        ApplianceLoss.Rule rule = (ApplianceLoss.Rule) appliance.loss();
        Pressure loss = new Pressure(rule.loss_Pa(flow.cubicMetresPerSecond()));
        String source = "flat allowance from " + paper.given(rule.from()) + paper.flowUnit() + " upward";
        return new Row(appliance.id(), says, "", paper.given(loss), source, show(loss));
    }

    Row rise() {
        Length rise = line.rise();
        Pressure lift = new Pressure(Constants.WATER_PA_PER_M * rise.metres());
        String head = paper.us() ? "0.434" : "9.817";
        String says = rise.metres() == 0
                ? "Tip level with the pump"
                : "Tip " + paper.height(rise) + " " + paper.units().length().symbol()
                        + (rise.metres() > 0 ? " above the pump" : " below the pump");
        String numbers = (rise.metres() < 0 ? "\u2212" : "") + head + " \u00d7 " + paper.height(rise);
        return new Row("rise", says, head + " h", numbers, "a column of water", show(lift));
    }

    private Row point(String name, String says, PointLoss loss) {
        String numbers = paper.loss(loss) + " \u00d7 " + paper.hundreds(flow) + "\u00b2";
        return new Row(
                name,
                says,
                "k (Q/100)\u00b2",
                numbers,
                "loss that grows with the square of the flow",
                show(loss.at(flow)));
    }

    private double show(Pressure pressure) {
        return paper.units().show(pressure);
    }
}
