package org.hosewright.hydraulics.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.limit.RatedCurve;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.supply.TankTime;

/** The supply side of a lay while it flows.
 *
 * @param pressure at the intake of the engine at the fire, below 0 where it lifts water
 * @param least the least that may stand there
 * @param most the most flow that keeps every intake and every pump of the supply within its bounds
 * @param shortest what sets that
 * @param pumps the engines that relay the water, the one at the source first
 * @param hoses the hose of the supply, from the source on
 * @param tank how long a tank lasts, where it is one
 */
public record Intake(
        Pressure pressure,
        Pressure least,
        Flow most,
        String shortest,
        List<PumpState> pumps,
        List<Piece> hoses,
        Optional<TankTime> tank) {
    public Intake {
        pumps = List.copyOf(pumps);
        hoses = List.copyOf(hoses);
    }

    /** An engine of a relay while it pumps.
     *
     * @param with the engine
     * @param intake pressure at its intake
     * @param least the least that may stand there
     * @param pump its pump pressure
     * @param flow through it
     */
    public record PumpState(Engine with, Pressure intake, Pressure least, Pressure pump, Flow flow) {
        public String engine() {
            return with.id();
        }

        /** How it stands against its own ceiling, where one is set. */
        Optional<Limit> findCeiling() {
            return with.ceiling()
                    .map(most -> new Limit(
                            "the ceiling of " + engine(), LimitKind.CEILING, pump, most, "set by the company"));
        }

        /** How it stands against its own capacity, where it is known. */
        Optional<Limit> findCapacity() {
            return with.rated().map(rated -> new RatedCurve(rated).limit("the capacity of " + engine(), flow, net()));
        }

        /** What the pump adds. */
        public Pressure net() {
            return new Pressure(pump.pascals() - intake.pascals());
        }
    }

    /** The supply side at a flow. */
    static Intake of(Supply supply, Flow flow) {
        double flow_m3s = Numbers.requireNotNegative("flow", flow.cubicMetresPerSecond());
        Feeding feeding = new Feeding(supply);
        SupplyTrace trace = new SupplyTrace();
        trace.walk(supply, flow_m3s);
        Feeding.Most most = feeding.most();
        return new Intake(
                new Pressure(feeding.intake_Pa(flow_m3s)),
                new Pressure(feeding.least_Pa()),
                new Flow(most.flow_m3s()),
                most.what(),
                trace.pumps(),
                trace.hoses(),
                trace.tank());
    }
}
