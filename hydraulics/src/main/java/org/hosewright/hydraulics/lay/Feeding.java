package org.hosewright.hydraulics.lay;

import java.util.List;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Supply.Feed;
import org.hosewright.hydraulics.lay.Supply.SupplyHose;
import org.hosewright.hydraulics.limit.RatedCurve;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a supply leaves at the intake that it leads to.
 *
 * <p>The pressure at the intake is the one unknown where several lines feed it: each brings less the higher it stands.
 * Each engine of a relay holds its own pump pressure, so that what happens before it stays before it.
 *
 * @param supply the supply
 */
record Feeding(Supply supply) {
    /** Flows are told apart down to this share [1]. */
    private static final double CLOSE = 1e-12;

    /** A pressure that falls short by no more still counts as kept [Pa]: the last digits of sums. */
    static final double SAME_PA = 1e-4;

    private static final ApplianceLoss NOTHING = Splits.quadratic(PointLoss.NONE);

    /** More than any supply gives [m3/s]: the search for the most ends there. */
    private static final double MOST_M3S = 10;

    /** The most flow of a supply, and what sets it. */
    record Most(double flow_m3s, String what) {}

    /** The pressure at the intake at a flow [Pa]. */
    double intake_Pa(double flow_m3s) {
        Feed first = supply.feeds().get(0);
        if (supply.feeds().size() == 1 && first.lines().size() == 1) {
            return source_Pa(first, flow_m3s) - drop_Pa(first.lines().get(0), flow_m3s);
        }
        double high = 0;
        double low = 0;
        double step = 1e5;
        while (sum_m3s(high) > flow_m3s) {
            high += step;
            step *= 2;
        }
        for (step = 1e5; sum_m3s(low) < flow_m3s; step *= 2) {
            low -= step;
        }
        return Rising.zero(p -> flow_m3s - sum_m3s(p), low, high, 1e5);
    }

    private double sum_m3s(double intake_Pa) {
        double sum = 0;
        for (Feed feed : supply.feeds()) {
            sum += flow_m3s(feed, intake_Pa);
        }
        return sum;
    }

    /** What one source brings at an intake pressure [m3/s]. */
    double flow_m3s(Feed feed, double intake_Pa) {
        if (feed.lines().stream().anyMatch(line -> line.runs().isEmpty())) {
            return Rising.zero(q -> intake_Pa - source_Pa(feed, q), 0, MOST_M3S, 0);
        }
        double high = 1e-3;
        while (linesBring_m3s(feed, high, intake_Pa) > high && high < MOST_M3S) {
            high *= 2;
        }
        return Rising.zero(q -> q - linesBring_m3s(feed, q, intake_Pa), 0, high, 0);
    }

    private double linesBring_m3s(Feed feed, double drawn_m3s, double intake_Pa) {
        double drop_Pa = source_Pa(feed, drawn_m3s) - intake_Pa;
        double sum = 0;
        for (SupplyHose line : feed.lines()) {
            sum += line_m3s(line, drop_Pa);
        }
        return sum;
    }

    /** What one line lets through; its clapper lets nothing back. */
    static double line_m3s(SupplyHose line, double drop_Pa) {
        if (drop_Pa <= drop_Pa(line, 0)) {
            return 0;
        }
        if (line.runs().isEmpty()) {
            throw new InvalidInput("hose of a supply line beside others", "", "hose in laying order", "");
        }
        boolean square = line.runs().stream()
                .allMatch(run -> run.hose().law().isEmpty()
                        && run.end().map(Appliance::loss).orElse(NOTHING) instanceof ApplianceLoss.Quadratic);
        if (square) {
            double still_Pa = drop_Pa(line, 0);
            return Math.sqrt((drop_Pa - still_Pa) / (drop_Pa(line, 1) - still_Pa));
        }
        double high = 1e-3;
        while (drop_Pa(line, high) < drop_Pa) {
            high *= 2;
        }
        return Rising.zero(q -> drop_Pa(line, q) - drop_Pa, 0, high, 0);
    }

    /** What a line takes at a flow, rise included [Pa]. */
    static double drop_Pa(SupplyHose line, double flow_m3s) {
        double sum = 0;
        for (Run run : line.runs()) {
            sum += Leg.hose_Pa(run, flow_m3s) + Splits.lift_Pa(run.rise());
            sum += run.end().map(end -> end.loss().loss_Pa(flow_m3s)).orElse(0.0);
        }
        return sum;
    }

    /** The pressure at the start of a source's lines [Pa]. */
    double source_Pa(Feed feed, double flow_m3s) {
        Flow flow = new Flow(Math.max(0, flow_m3s));
        if (feed.source() instanceof Source.Hydrant hydrant) {
            return hydrant.curve().pressureAt(flow).pascals();
        }
        if (feed.source() instanceof Source.Tank tank) {
            return -tank.loss().at(flow).pascals();
        }
        if (feed.source() instanceof Source.Draft draft) {
            return -Splits.lift_Pa(draft.lift()) - draft.strainer().at(flow).pascals();
        }
        Source.Pumper pumper = (Source.Pumper) feed.source();
        return pump_Pa(pumper, feed, flow_m3s)
                - pumper.discharge().lossOrNone().at(flow).pascals();
    }

    /** The pump pressure of an engine of a relay: the one that was set, or what leaves the next intake its least [Pa].
     *
     * <p>An idling pump passes on what it is fed: it never gives less.
     */
    double pump_Pa(Source.Pumper pumper, Feed feed, double flow_m3s) {
        if (pumper.pump().isPresent()) {
            return pumper.pump().get().pascals();
        }
        if (supply.feeds().size() > 1 || feed.lines().size() > 1) {
            String what = "pump pressure of " + pumper.engine().id();
            throw new InvalidInput(what, "", "a pressure, since it is not the only line into that intake", "");
        }
        Flow flow = new Flow(flow_m3s);
        double needed_Pa = supply.keep().pascals()
                + drop_Pa(feed.lines().get(0), flow_m3s)
                + pumper.discharge().lossOrNone().at(flow).pascals();
        return Math.max(needed_Pa, new Feeding(pumper.supply()).intake_Pa(flow_m3s));
    }

    /** The least pressure that may stand at the intake: what is to be kept, or for lifted water what the air gives [Pa]. */
    double least_Pa() {
        boolean lifts = supply.feeds().stream()
                .allMatch(feed -> feed.source() instanceof Source.Draft || feed.source() instanceof Source.Tank);
        return lifts ? -Suction.of(supply).working_Pa() : supply.keep().pascals();
    }

    /** The most flow that keeps every intake and pump within its bounds. */
    Most most() {
        double low = 0;
        double high = MOST_M3S;
        if (worst(0).spare() < 0) {
            return new Most(0, worst(0).what());
        }
        if (worst(high).spare() >= 0) {
            return new Most(high, worst(high).what());
        }
        while (high - low > CLOSE * high) {
            double middle = (low + high) / 2;
            if (worst(middle).spare() >= 0) {
                low = middle;
            } else {
                high = middle;
            }
            if (middle == low && middle == high) {
                break;
            }
        }
        return new Most(low, worst(high).what());
    }

    /** What is nearest its bound at a flow, or furthest beyond it. */
    private Spare worst(double flow_m3s) {
        Spare worst = new Spare("the intake", intake_Pa(flow_m3s) - least_Pa() + SAME_PA);
        for (Feed feed : supply.feeds()) {
            boolean alone = supply.feeds().size() == 1;
            double own_m3s = alone ? flow_m3s : flow_m3s(feed, intake_Pa(flow_m3s));
            if (feed.source() instanceof Source.Tank tank && tank.most().isPresent()) {
                double over = tank.most().get().cubicMetresPerSecond() - own_m3s;
                worst = worst.or(new Spare("the tank's piping", over * 1e9));
            }
            if (feed.source() instanceof Source.Pumper pumper) {
                worst = worst.or(ofPump(pumper, feed, own_m3s));
            }
        }
        return worst;
    }

    private Spare ofPump(Source.Pumper pumper, Feed feed, double flow_m3s) {
        double pump_Pa = pump_Pa(pumper, feed, flow_m3s);
        Feeding before = new Feeding(pumper.supply());
        String id = pumper.engine().id();
        Spare spare = before.worst(flow_m3s).named(id);
        if (pumper.engine().ceiling().isPresent()) {
            double over_Pa = pumper.engine().ceiling().get().pascals() - pump_Pa;
            spare = spare.or(new Spare("the ceiling of " + id, over_Pa));
        }
        if (pumper.engine().rated().isPresent()) {
            Pressure net = new Pressure(pump_Pa - before.intake_Pa(flow_m3s));
            double most =
                    new RatedCurve(pumper.engine().rated().get()).capacity(net).cubicMetresPerSecond();
            spare = spare.or(new Spare("the pump of " + id, (most - flow_m3s) * 1e9));
        }
        return spare;
    }

    /** What is left to a bound, negative beyond it. */
    private record Spare(String what, double spare) {
        Spare or(Spare other) {
            return other.spare < spare ? other : this;
        }

        Spare named(String engine) {
            return what.equals("the intake") ? new Spare("the intake of " + engine, spare) : this;
        }
    }

    /** The sources, for a walk along them. */
    List<Feed> feeds() {
        return supply.feeds();
    }
}
