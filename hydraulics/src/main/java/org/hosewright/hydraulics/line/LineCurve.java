package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Tip;

/** Pump pressure against flow of a line: pieces of the form still + square q^2, rising, with upward steps between.
 *
 * <p>Hose that follows another law than the square adds its own loss to every piece. Steps come from appliances that lose a flat allowance from a flow upward; pieces meet without a step at the ends
 * of an automatic tip's band. Square pieces are solved in closed form, so that both directions are exact.
 */
final class LineCurve {
    private final List<Piece> pieces = new ArrayList<>();

    private final HoseLaws laws;

    private LineCurve(HoseLaws laws) {
        this.laws = laws;
    }

    /** One piece.
     *
     * @param from_m3s where it begins [m3/s]
     * @param still_Pa the part that does not depend on flow [Pa]
     * @param square the part that does [Pa s2/m6]
     */
    private record Piece(double from_m3s, double still_Pa, double square) {
        double pump_Pa(double flow_m3s) {
            return still_Pa + square * flow_m3s * flow_m3s;
        }
    }

    static LineCurve of(Line line) {
        LineCurve curve = new LineCurve(HoseLaws.of(line));
        TreeSet<Double> starts = new TreeSet<>(List.of(0.0));
        if (line.tip() instanceof Automatic automatic) {
            starts.add(automatic.from().cubicMetresPerSecond());
            starts.add(automatic.to().cubicMetresPerSecond());
        }
        for (Run run : line.runs()) {
            if (run.end().map(Appliance::loss).orElse(null) instanceof ApplianceLoss.Rule rule) {
                starts.add(rule.from().cubicMetresPerSecond());
            }
        }
        double square = Resistance.of(line);
        double lift_Pa = line.runs().stream().mapToDouble(Run::lift_Pa).sum();
        for (double from_m3s : starts) {
            double still_Pa = lift_Pa + flat_Pa(line, from_m3s) + held_Pa(line.tip(), from_m3s);
            curve.pieces.add(new Piece(from_m3s, still_Pa, square + tipSquare(line.tip(), from_m3s)));
        }
        return curve;
    }

    /** The pump pressure that a flow needs; at a step, the upper end of it [Pa]. */
    double pump_Pa(double flow_m3s) {
        return pieceAt(flow_m3s).pump_Pa(flow_m3s) + laws.loss_Pa(flow_m3s);
    }

    /** The flow that a pump pressure drives; within a step, the flow that the step stands at [m3/s]. */
    double flow_m3s(double pump_Pa) {
        for (int i = pieces.size() - 1; i >= 0; i--) {
            Piece piece = pieces.get(i);
            if (pump_Pa > piece.pump_Pa(piece.from_m3s()) + laws.loss_Pa(piece.from_m3s())) {
                double flow_m3s = laws.flow_m3s(pump_Pa - piece.still_Pa(), piece.square());
                return i + 1 < pieces.size()
                        ? Math.min(flow_m3s, pieces.get(i + 1).from_m3s())
                        : flow_m3s;
            }
        }
        return 0;
    }

    /** How fast the pump pressure grows with flow [Pa s/m3]. */
    double slope(double flow_m3s) {
        return 2 * pieceAt(flow_m3s).square() * flow_m3s + laws.slope(flow_m3s);
    }

    private Piece pieceAt(double flow_m3s) {
        Piece found = pieces.get(0);
        for (Piece piece : pieces) {
            found = piece.from_m3s() <= flow_m3s ? piece : found;
        }
        return found;
    }

    private static double flat_Pa(Line line, double from_m3s) {
        double sum_Pa = 0;
        for (Run run : line.runs()) {
            if (run.end().map(Appliance::loss).orElse(null) instanceof ApplianceLoss.Rule rule) {
                sum_Pa += rule.from().cubicMetresPerSecond() <= from_m3s
                        ? rule.allowance().pascals()
                        : 0;
            }
        }
        return sum_Pa;
    }

    private static double held_Pa(Tip tip, double from_m3s) {
        return inBand(tip, from_m3s) ? tip.at().pascals() : 0;
    }

    private static double tipSquare(Tip tip, double from_m3s) {
        if (inBand(tip, from_m3s)) {
            return 0;
        }
        double flow_m3s = tip.flow_m3s(tip.at().pascals());
        if (tip instanceof Automatic automatic && from_m3s > 0 && !below(automatic, from_m3s)) {
            flow_m3s = automatic.to().cubicMetresPerSecond();
        }
        return tip.at().pascals() / (flow_m3s * flow_m3s);
    }

    private static boolean inBand(Tip tip, double from_m3s) {
        return tip instanceof Automatic automatic
                && !below(automatic, from_m3s)
                && from_m3s < automatic.to().cubicMetresPerSecond();
    }

    private static boolean below(Automatic automatic, double from_m3s) {
        return from_m3s < automatic.from().cubicMetresPerSecond();
    }
}
